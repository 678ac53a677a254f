// Levers: a wish for a figure, and every change of the formula that grants it.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {formulaPage, revisionName, worksheetPage} from "/address.js";
import {flowing} from "/format.js";
import {answer, askAgain, askedOf, wrong} from "/parts/asked.js";
import {leverAnswers} from "/parts/lever-answers.js";
import {leverForm} from "/parts/lever-form.js";
import {refused} from "/views/failure.js";

const LISTS = ["want", "keep", "at_least", "at_most", "within"];
const TEXTS = ["batch", "pieces", "readable"];

export const leversView = {
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
      ui: same ? before.ui : {all: false, open: new Set()},
    };
    data.asked.want ??= [""];
    if (isAsked(data)) {
      await answer(data, asking(data), signal);
      data.typing = false;
    }
    return data;
  },

  title: ({start}) => `Levers of ${start.name} ${revisionName(start)}`,

  draw(data, place, tools) {
    const {start, sheet, refused: not} = data;
    const failure = wrong(data);
    const changed = (asked) => {
      data.asked = {...data.asked, ...asked};
      if (isAsked(data)) {
        askAgain(data, asking(data), tools.redraw);
      } else {
        Object.assign(data, {sheet: null, failure: null});
        askAgain(data, () => Promise.resolve(null), tools.redraw);
      }
    };
    return html`<article class="page levers">
      <header class="lever-head">
        <h1>What to change in ${start.name}
          <span class="revision-number">${revisionName(start)}</span></h1>
        <p class="sub">
          Say what a figure shall be; every change of the formula that does it is worked out.
          <a href=${worksheetPage(start.address)}>Worksheet</a>,
          <a href=${formulaPage(start.formula, {line: start.variant})}>timeline</a>
        </p>
      </header>
      <div class="lever-columns">
        ${leverForm(data, failure, changed)}
        <div class="lever-result">
          ${not ? html`<div class="caution" role="alert">${refused(not)}</div>` : nothing}
          ${sheet && failure ? html`<p class="quiet">Below: what was asked before.</p>` : nothing}
          ${sheet ? leverAnswers(data, tools, changed) : nothing}
          ${!sheet && !failure ? explanation(start) : nothing}
          ${!sheet && failure ? html`<p class="say">${flowing(failure.message)}</p>` : nothing}
        </div>
      </div>
      <section class="caution">
        <h2>Allergens and cautions</h2>
        <ul>
          ${start.cautions.map((words) => html`<li>${words}</li>`)}
        </ul>
        <p>Local food codes and licensed practice decide.</p>
      </section>
    </article>`;
  },

  drawn(content) {
    content.querySelector("#want-0")?.focus({preventScroll: true});
  },

  left: (data) => data.asking?.abort(),
};

function isAsked({asked}) {
  return asked.want.some((text) => text.trim() !== "");
}

function asking(data) {
  return (signal) => api.lever(data.address, data.asked, signal);
}

function explanation(start) {
  if (start.lines.length === 0) {
    return html`<p class="say">The formula has no lines yet, so there is nothing to change.</p>`;
  }
  return html`<section class="lever-explanation">
    <h2>What the answer holds</h2>
    <ul>
      <li>Every change of one line that does it, with the grams, and what else it moves: batch,
        moisture, macros, cost. Those that disturb the rest least come first.</li>
      <li>The least change of all lines together.</li>
      <li>Or why it cannot be done, and how near one can come.</li>
    </ul>
    <p class="quiet">Several wishes are granted together. Lines can stay or have limits.</p>
  </section>`;
}
