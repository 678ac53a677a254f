// A formula beside the conventional one that it was rebuilt from: line by line, piece by piece.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {formulaPage, worksheetPage} from "/address.js";
import {capital, flowing} from "/format.js";
import {choiceField} from "/parts/fields.js";
import {plot} from "/parts/figures.js";
import {goalMark, goalWords} from "/parts/goal.js";
import {partsTable, SHARES} from "/parts/rebuild-lines.js";
import {cost} from "/parts/replace-answer.js";
import {refused} from "/views/failure.js";

export const rebuildView = {
  rereads: true,

  async load({parts, query}, {before, signal}) {
    const reference = query.get("reference") ?? undefined;
    const shown = before?.shown ?? SHARES[0][0];
    const own = {address: parts.address, reference, shown};
    try {
      const sheet = await api.rebuild(parts.address, reference, signal);
      return {...own, sheet, failure: null, formulas: []};
    } catch (thrown) {
      const failure = api.expected(thrown);
      if (failure.reason !== "invalid" || reference) {
        throw failure;
      }
      return {...own, sheet: null, failure, formulas: (await api.formulas(signal)).formulas};
    }
  },

  title: ({sheet}) =>
    sheet ? `${sheet.rebuild.name} beside ${sheet.reference.name}` : "Beside its reference",

  draw: (data, place, tools) => {
    const {sheet} = data;
    if (!sheet) {
      return without(data, tools);
    }
    return html`<div class="page rebuild-page">
      <h1>${sheet.rebuild.name} beside ${sheet.reference.name}</h1>
      <p class="rebuild-sides">
        <span>
          <span class="side-mark" aria-hidden="true"></span>
          <a href=${worksheetPage(sheet.reference.address)}>${sheet.reference.address}</a>
        </span>
        <span>
          <span class="side-mark to" aria-hidden="true"></span>
          <a href=${worksheetPage(sheet.rebuild.address)}>${sheet.rebuild.address}</a>
        </span>
        <a
          href=${formulaPage(sheet.rebuild.formula, {
            line: sheet.rebuild.variant,
            from: sheet.reference.address,
            to: sheet.rebuild.address,
          })}
          >What changed, and why</a
        >
      </p>
      <p class="say">${flowing(sheet.summary)}</p>
      ${lines(data, tools)}
      <div class="columns">
        <div>${pieces(sheet)}</div>
        <div>${goal(sheet.goal)} ${allergens(sheet)} ${formula(sheet)} ${cost(sheet.cost)}</div>
      </div>
      ${toKnow(sheet)}
    </div>`;
  },
};

/** No reference is stated: any other formula can be chosen to look at. */
function without(data, tools) {
  const formula = data.address.split(/[@/]/)[0];
  return html`<div class="page rebuild-page">
    <h1>Beside its reference</h1>
    ${refused(data.failure)}
    ${choiceField({
      id: "rebuild-reference",
      label: "Set it beside",
      value: "",
      chosen: (reference) => tools.go(`/rebuild/${data.address}?reference=${reference}`),
      options: [
        ["", "Choose a formula…"],
        ...data.formulas
          .filter((each) => each.formula !== formula)
          .map((each) => [each.formula, each.name ?? each.formula]),
      ],
    })}
  </div>`;
}

function lines(data, tools) {
  return html`<section>
    <div class="heading">
      <h2>Lines, by the part that they play</h2>
      ${choiceField({
        id: "rebuild-shown",
        label: "Compare",
        value: data.shown,
        chosen: (shown) => {
          data.shown = shown;
          tools.redraw();
        },
        options: SHARES.map(([key, words]) => [key, words]),
      })}
    </div>
    ${partsTable(data.sheet, data.shown)}
  </section>`;
}

function figures(list, caption) {
  return html`<table class="figure-table replace-figures">
    <caption class="unseen">${caption}</caption>
    <thead class="unseen">
      <tr>
        <th scope="col">Figure</th>
        <th scope="col">Chart</th>
        <th scope="col">Reference and rebuild</th>
        <th scope="col">Change</th>
      </tr>
    </thead>
    <tbody>
      ${list.filter(isThere).map(
        (each) => html`<tr>
          <th scope="row">${capital(each.label)}</th>
          <td class="plot">${plot(each, null)}</td>
          <td class="values">${flowing(each.change_text)}</td>
          <td class="number change">${each.delta_text}</td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}

/** Polyols and allulose are told only where there are any. */
function isThere(each) {
  const none = each.from === 0 && each.to === 0;
  return !none || !["polyols_g", "allulose_g"].includes(each.figure);
}

function pieces(sheet) {
  return html`<section>
    <h2>A piece</h2>
    ${figures(sheet.pieces, "A piece of the reference and of the rebuild")}
    <details class="more">
      <summary>The same for 100 g of dough</summary>
      ${figures(sheet.hundred, "100 g of dough of the reference and of the rebuild")}
    </details>
  </section>`;
}

function formula(sheet) {
  return html`<section>
    <h2>The dough</h2>
    ${figures(sheet.batch, "The dough of the reference and of the rebuild")}
  </section>`;
}

function goal(goalOf) {
  return goalOf === null
    ? nothing
    : html`<section>
        <h2>Goal: ${goalOf.name}</h2>
        <ul class="rules">
          ${goalOf.rules.map(
            (rule) => html`<li>
              ${capital(flowing(rule.rule))}
              <span class="remark">
                <span class="side-mark" aria-hidden="true"></span>
                reference ${goalMark(rule.from, goalWords(rule.from))} ${flowing(rule.from_text)}
              </span>
              <span class="remark">
                <span class="side-mark to" aria-hidden="true"></span>
                rebuild ${goalMark(rule.to, goalWords(rule.to))} ${flowing(rule.to_text)}
              </span>
            </li>`,
          )}
        </ul>
      </section>`;
}

function allergens(sheet) {
  const words = (list) => (list.length === 0 ? "none" : list.join(", "));
  return html`<section>
    <h2>Allergens</h2>
    <dl class="pairs">
      <div>
        <dt>Only in the rebuild</dt>
        <dd>${words(sheet.allergens_gained)}</dd>
      </div>
      <div>
        <dt>Only in the reference</dt>
        <dd>${words(sheet.allergens_lost)}</dd>
      </div>
    </dl>
    ${sheet.allergens_unknown_in.length > 0
      ? html`<p class="problem">
          Allergens are unknown in ${sheet.allergens_unknown_in.join(", ")}.
        </p>`
      : nothing}
  </section>`;
}

function toKnow(sheet) {
  const list = (items) => html`<ul>
    ${items.map((words) => html`<li>${flowing(words)}</li>`)}
  </ul>`;
  return html`${sheet.structure.length > 0
      ? html`<section class="caution rebuild-structure">
          <h2>What the figures do not show</h2>
          ${list(sheet.structure)}
        </section>`
      : nothing}
    ${sheet.remarks.length > 0
      ? html`<section>
          <h2>To know</h2>
          ${list(sheet.remarks)}
        </section>`
      : nothing}
    <section class="caution">
      <h2>Allergens and cautions of the rebuild</h2>
      ${list(sheet.cautions)}
      <p>Local food codes and licensed practice decide.</p>
    </section>`;
}
