// The figures of a revision as a label would state them, with claims, allergens and cautions.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {labelPage, revisionName, worksheetPage} from "/address.js";
import {capital, figureMass} from "/format.js";
import {choiceField, textField} from "/parts/fields.js";
import {goalShape} from "/parts/goal.js";
import {allergens, amountTable, sourceWords, unknowns} from "/parts/label-table.js";
import {refused} from "/views/failure.js";

const PAUSE_MS = 200;
const OWN = "own";
const REGIONS = [
  ["", "United States and European Union"],
  ["us", "United States"],
  ["eu", "European Union"],
];
const ENERGY = [
  ["", "Each region’s own"],
  ["foods", "As the foods state it"],
  ["US factors", "US factors"],
  ["EU factors", "EU factors"],
];
const VERDICTS = [
  ["would meet", true, "The figures would meet"],
  ["cannot be told", null, "Cannot be told"],
  ["would miss", false, "The figures would miss"],
];

export const labelView = {
  rereads: true,

  async load({parts, query}, {before, signal}) {
    const chosen = Object.fromEntries(
      ["regions", "loss", "energy", "reference"].map((name) => [name, query.get(name) ?? ""]),
    );
    const same = before?.address === parts.address;
    const typing = same ? before.typing : {...chosen};
    const rest = {address: parts.address, chosen, typing, own: same && before.own};
    try {
      return {...rest, sheet: await api.label(parts.address, chosen, signal), failure: null};
    } catch (thrown) {
      const failure = api.expected(thrown);
      if (!same && !Object.values(chosen).some(Boolean)) {
        throw failure;
      }
      const sheet = same ? before.sheet : await api.label(parts.address, {}, signal);
      return {...rest, sheet, failure};
    }
  },

  title: ({sheet}) => `${sheet.name} ${labelled(sheet)}, label figures`,

  draw: (data, place, tools) => {
    const {sheet, failure} = data;
    return html`<article class="page sheet-of-paper label-page">
      ${head(data)} ${form(data, tools)}
      ${failure && !fieldOf(failure) ? refused(failure) : nothing}
      ${failure
        ? html`<p class="problem">The figures below do not know of this choice yet.</p>`
        : nothing}
      ${basis(sheet)} ${sheet.regions.map(region)} ${cautions(sheet)}
    </article>`;
  },

  left: (data) => clearTimeout(data.pause),
};

function head({sheet, address}) {
  return html`<header class="sheet-head">
    <h1>
      <bdi>${sheet.name}</bdi>
      <span class="revision-number">${labelled(sheet)}, label figures</span>
    </h1>
    <p class="caution label-aid">${sheet.aid}</p>
    ${sheet.foods_changed_since
      ? html`<p class="caution">
          Foods, goal or settings changed since this revision, and these figures are those of today.
        </p>`
      : nothing}
    <p class="actions">
      <a href=${worksheetPage(address)}>Worksheet</a>
      <button type="button" @click=${() => print()}>Print</button>
    </p>
  </header>`;
}

function labelled({address, revision, variant}) {
  return revisionName({commit: address.endsWith("@edited") ? null : "", revision, variant});
}

const FIELDS = ["loss", "energy", "reference", "regions"];

function fieldOf(failure) {
  return FIELDS.includes(failure.where) ? failure.where : null;
}

function form(data, tools) {
  const {typing, sheet, failure} = data;
  const problem = (name) =>
    failure && fieldOf(failure) === name ? `${failure.message} ${failure.hint}` : null;
  const put = (name, pause) => (value) => {
    typing[name] = value;
    tools.redraw();
    clearTimeout(data.pause);
    data.pause = setTimeout(() => {
      tools.go(labelPage(data.address, typing), {replace: true});
    }, pause);
  };
  const {references} = sheet;
  const known = references.some((each) => each.key === typing.reference);
  const own = data.own || (typing.reference !== "" && !known);
  const chooseReference = (key) => {
    data.own = key === OWN;
    put("reference", 0)(key === OWN ? "" : key);
  };
  return html`<form class="label-form" @submit=${(event) => event.preventDefault()}>
    ${choiceField({
      id: "label-regions",
      label: "By the rules of",
      value: typing.regions,
      options: REGIONS,
      chosen: put("regions", 0),
    })}
    ${textField({
      id: "label-loss",
      label: "Loss on baking",
      hint: measured(sheet),
      unit: "%",
      size: "short",
      inputmode: "decimal",
      value: typing.loss,
      problem: problem("loss"),
      typed: put("loss", PAUSE_MS),
    })}
    ${choiceField({
      id: "label-energy",
      label: "Energy",
      value: typing.energy,
      options: ENERGY,
      chosen: put("energy", 0),
    })}
    ${choiceField({
      id: "label-reference",
      label: "US reference amount",
      hint: "By which United States claims are judged.",
      value: own ? OWN : typing.reference,
      options: [
        ["", "None chosen"],
        ...references.map((each) => [each.key, `${each.g} g: ${each.words}`]),
        [OWN, "Another mass…"],
      ],
      chosen: chooseReference,
    })}
    ${own
      ? textField({
          id: "label-reference-own",
          label: "That mass",
          size: "short",
          placeholder: "45 g",
          value: typing.reference,
          problem: problem("reference"),
          typed: put("reference", PAUSE_MS),
        })
      : nothing}
  </form>`;
}

function measured(sheet) {
  return sheet.loss.measured_percent === null
    ? "Nothing was weighed: enter an allowance, such as 12."
    : "Empty for what was weighed.";
}

function basis(sheet) {
  return html`<section class="label-basis" aria-live="polite">
    <p class="say">${sheet.loss.words}</p>
    <p>
      A piece: ${figureMass(sheet.piece, "dough_g")} as dough, ${figureMass(sheet.piece, "baked_g")}
      as baked.
    </p>
    ${sheet.remarks.map((remark) => html`<p class="quiet">${remark}</p>`)}
  </section>`;
}

function region(each) {
  const heading = `label-${each.region}`;
  return html`<section class="label-region" aria-labelledby=${heading}>
    <h2 id=${heading}>${each.name}</h2>
    ${amountTable(each)}
    <p class="quiet">${each.energy}</p>
    ${each.daily_values ? html`<p class="quiet">${each.daily_values}.</p>` : nothing}
    ${each.notes.slice(0, 1).map((note) => html`<p class="quiet">${note}</p>`)}
    <div class="label-columns">
      <div>${allergens(each)} ${unknowns(each)}</div>
      <div>${claims(each)}</div>
    </div>
  </section>`;
}

function claims(each) {
  return html`<section class="label-claims">
    <h3>Claims</h3>
    ${each.notes.slice(1).map((note) => html`<p class="quiet">${note}</p>`)}
    ${VERDICTS.map(([verdict, met, words]) => {
      const some = each.claims.filter((claim) => claim.verdict === verdict);
      return some.length === 0
        ? nothing
        : html`<details ?open=${met === true}>
            <summary>${goalShape(met)} ${words} ${some.length}</summary>
            <ul>
              ${some.map(claimItem)}
            </ul>
          </details>`;
    })}
    <details>
      <summary>Figures cannot judge ${each.unjudged.length}</summary>
      <ul>
        ${each.unjudged.map(
          (one) => html`<li>
            <b>${one.claim}</b>: ${one.why}
            <span class="remark">${sourceWords(one.source)}</span>
          </li>`,
        )}
      </ul>
    </details>
  </section>`;
}

function claimItem(claim) {
  return html`<li>
    <b>${claim.claim}</b>: ${claim.because}
    <span class="remark">
      ${capital(claim.condition)}. ${sourceWords(claim.source)}.
      ${claim.further ?? nothing}
    </span>
  </li>`;
}

function cautions(sheet) {
  return html`<section class="caution">
    <h2>Cautions</h2>
    <ul>
      ${sheet.cautions.map((words) => html`<li>${words}</li>`)}
    </ul>
    <p>Local food codes and licensed practice decide.</p>
  </section>`;
}

// On paper nothing is folded away.
addEventListener("beforeprint", () => {
  document.querySelectorAll(".label-page details").forEach((each) => {
    each.open = true;
  });
});
