// Scaling: a formula for more or fewer pieces, another size, a tin, or what is at hand, in amounts
// that can be measured.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {formulaPage, revisionName, worksheetPage} from "/address.js";
import {flowing} from "/format.js";
import {answer, askAgain, askedOf, withoutBlanks, wrong} from "/parts/asked.js";
import {scaleForm} from "/parts/scale-form.js";
import {scaleResult} from "/parts/scale-result.js";
import {refused} from "/views/failure.js";

const LISTS = ["have"];
const TEXTS = [
  "pieces", "dough_per_piece", "baked_per_piece", "tin", "from_tin", "density", "fill",
  "handling_loss", "baking_loss", "readable",
];
// What alone asks for nothing.
const HOW = ["readable", "density", "fill", "from_tin", "baking_loss"];

export const scaleView = {
  rereads: true,

  async load({parts, query}, {before, signal}) {
    const same = before?.address === parts.address;
    const data = {
      address: parts.address,
      start: await api.leverStart(parts.address, signal),
      asked: askedOf(query, LISTS, TEXTS),
      sheet: null,
      failure: null,
      refused: null,
      ui: same ? before.ui : {size: null, tin: null, have: null},
    };
    if (isAsked(data)) {
      await answer(data, asking(data), signal);
      data.typing = false;
    }
    return data;
  },

  title: ({start}) => `Scale ${start.name} ${revisionName(start)}`,

  draw(data, place, tools) {
    const {start, sheet} = data;
    const failure = wrong(data);
    const changed = (asked) => {
      data.asked = withoutBlanks({...data.asked, ...asked});
      askAgain(data, isAsked(data) ? asking(data) : () => Promise.resolve(null), tools.redraw);
    };
    return html`<article class="page scaled">
      <header class="lever-head">
        <h1>Scale ${start.name} <span class="revision-number">${revisionName(start)}</span></h1>
        <p class="sub">
          To a number of pieces, a size, a tin, or what is at hand.
          <a href=${worksheetPage(start.address)}>Worksheet</a>,
          <a href=${formulaPage(start.formula, {line: start.variant})}>timeline</a>
        </p>
      </header>
      <div class="lever-columns">
        ${scaleForm(data, changed, tools.redraw)}
        <div class="lever-result">
          ${data.refused
            ? html`<div class="caution" role="alert">${refused(data.refused)}</div>`
            : nothing}
          ${failure
            ? html`<div class="scale-failure" role="status">
                <p class="problem">${flowing(failure.message)}</p>
                <p>${flowing(failure.hint)}</p>
              </div>`
            : nothing}
          ${sheet && failure ? html`<p class="quiet">Below: what was asked before.</p>` : nothing}
          ${sheet ? scaleResult(data, tools) : nothing}
          ${!sheet && !failure ? asWritten(start) : nothing}
        </div>
      </div>
      <section class="caution">
        <h2>Allergens and cautions</h2>
        <ul>
          ${(sheet ?? start).cautions.map((words) => html`<li>${words}</li>`)}
        </ul>
        <p>Local food codes and licensed practice decide.</p>
      </section>
    </article>`;
  },

  drawn(content) {
    content.querySelector("#scale-pieces")?.focus({preventScroll: true});
  },

  left: (data) => data.asking?.abort(),
};

function isAsked({asked}) {
  return Object.keys(asked).some((name) => !HOW.includes(name));
}

function asking(data) {
  return (signal) => api.scale(data.address, data.asked, signal);
}

function asWritten(start) {
  if (start.lines.length === 0) {
    return html`<p class="say">The formula has no lines yet, so there is nothing to scale.</p>`;
  }
  return html`<section>
    <h2>As the formula states it</h2>
    <table class="scaled-lines">
      <thead>
        <tr>
          <th scope="col">Line</th>
          <th scope="col" class="number">Amount</th>
        </tr>
      </thead>
      <tbody>
        ${start.lines.map(
          (line) => html`<tr>
            <th scope="row">${line.name}</th>
            <td class="number">${flowing(line.entered)}</td>
          </tr>`,
        )}
      </tbody>
    </table>
    <p class="quiet">Say how many, how large, or what is at hand.</p>
  </section>`;
}
