// What mattered over the bakes of a formula: for each outcome the changes that went together with
// it, a sentence first, then how large and how sure, then the figures behind.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {formulaPage, matteredPage, print as printed} from "/address.js";
import {capital, count, flowing} from "/format.js";
import {effectChart, effectLegend} from "/parts/effect-chart.js";
import {effectTable} from "/parts/effect-table.js";

const MOST_CLEAR = 6;
const MOST_ALONG = 2;

export const matteredView = {
  rereads: true,

  async load({parts, query}, {before, signal}) {
    const variants = query.get("variants") === "yes";
    const sheet = await api.mattered(parts.address, variants, signal);
    return {sheet, open: before?.open ?? new Set()};
  },

  title: ({sheet}) => `What mattered: ${sheet.name}`,

  draw: (data, place, tools) => {
    const {sheet} = data;
    const told = sheet.outcomes.filter((outcome) => !outcome.missing);
    const untold = sheet.outcomes.filter((outcome) => outcome.missing);
    return html`<article class="page mattered">
      ${head(sheet, place, tools)}
      ${told.length > 0 ? html`${contents(told)} ${effectLegend()}` : nothing}
      ${outcomes(told, (outcome) => section(outcome, sheet, data, tools))} ${missing(untold)}
      ${method(sheet)}
    </article>`;
  },
};

// What stands out first; where something does, the rest is folded away.
function outcomes(told, drawn) {
  const clear = told.filter(standsOut);
  const others = told.filter((outcome) => !standsOut(outcome));
  return clear.length === 0 || others.length === 0
    ? told.map(drawn)
    : html`${clear.map(drawn)}
        <details class="mattered-others">
          <summary><h2>${count(others.length, "outcome")} of which nothing can be told yet</h2></summary>
          ${others.map(drawn)}
        </details>`;
}

function standsOut(outcome) {
  return outcome.effects.some(({standing}) => standing === "clear");
}

function head(sheet, place, tools) {
  const {formula, variant} = sheet;
  const line = variant ? `the variant ${variant}` : "the main line";
  const others = sheet.variants.length > 0;
  const pieces = `${count(sheet.bakes, "bake")} with ${count(sheet.pieces, "piece")}`;
  const which = sheet.with_variants ? `${line} and all other lines` : line;
  return html`<header>
    <h1>What mattered <span class="revision-number">${sheet.name}</span></h1>
    <p class="sub">
      ${pieces} of ${which}.
      ${sheet.unread > 0
        ? `${count(sheet.unread, "bake")} left out, as what was weighed is not in this history.`
        : nothing}
    </p>
    <p class="say">${flowing(sheet.summary)}</p>
    <p class="actions">
      <a href=${formulaPage(formula, {line: variant, to: sheet.address})}
        >Timeline and comparison</a>
      ${others
        ? html`<label class="mattered-lines">
            <input type="checkbox" .checked=${sheet.with_variants}
              @change=${(event) =>
                tools.go(matteredPage(place.parts.address, event.target.checked), {replace: true})}>
            Count the bakes of ${variant ? "the other lines" : "the variants"} too
          </label>`
        : nothing}
    </p>
  </header>`;
}

function contents(told) {
  return html`<nav class="mattered-contents" aria-label="Outcomes">
    ${told.map(
      (outcome) => html`<a href=${"#" + anchor(outcome)} @click=${() => unfold(outcome)}
        >${capital(outcome.label)}${standsOut(outcome)
          ? html` <span class="mattered-clear"><span aria-hidden="true">●</span
              ><span class="unseen">something stands out</span></span>`
          : nothing}</a>`,
    )}
  </nav>`;
}

function unfold(outcome) {
  const fold = document.getElementById(anchor(outcome)).closest("details");
  if (fold) {
    fold.open = true;
  }
}

function anchor(outcome) {
  return "of-" + outcome.outcome.replaceAll(/[^a-z0-9]+/g, "-");
}

function section(outcome, sheet, data, tools) {
  const key = outcome.outcome;
  const all = data.open.has(key);
  const shown = all ? outcome.effects : surest(outcome);
  const more = outcome.effects.length - shown.length;
  const toggle = () => {
    if (all) {
      data.open.delete(key);
    } else {
      data.open.add(key);
    }
    tools.redraw();
  };
  return html`<section class="mattered-outcome" id=${anchor(outcome)}
    aria-labelledby=${anchor(outcome) + "-name"}>
    <h2 id=${anchor(outcome) + "-name"}>
      ${outcome.finding ? html`Finding: ${outcome.label}` : capital(outcome.label)}
    </h2>
    <p class="mattered-sentence">${flowing(outcome.sentence)}</p>
    ${shown.length > 0 ? effectChart(outcome, shown, sheet) : nothing}
    ${more > 0 || all
      ? html`<button type="button" class="plain" aria-expanded=${all ? "true" : "false"}
          @click=${toggle}>
          ${all ? "Only what stands out" : `Show ${count(more, "less sure change")}`}
        </button>`
      : nothing}
    <p class="quiet">${remarks(outcome)}</p>
    <details class="behind">
      <summary>The figures behind</summary>
      ${effectTable(outcome, sheet)}
    </details>
  </section>`;
}

// What stands out beside all other changes; without that, what stands out by itself.
function surest({effects}) {
  const clear = effects.filter(({standing}) => standing === "clear");
  const along = effects.filter(({standing}) => standing === "along");
  return clear.length > 0 ? clear.slice(0, MOST_CLEAR) : along.slice(0, MOST_ALONG);
}

function remarks(outcome) {
  const known = `Known of ${count(outcome.pieces, "piece")} of ${count(outcome.bakes, "bake")}`;
  const parts = [
    outcome.unknown_pieces > 0
      ? `${known}; ${count(outcome.unknown_pieces, "piece")} of which it is not known left out.`
      : known + ".",
    outcome.set_aside > 0
      ? `${count(outcome.set_aside, "piece")} set aside, as a change is not known of them.`
      : "",
    outcome.multiplicity ?? "",
    outcome.left_out > 0
      ? `${count(outcome.left_out, "change")} not looked at, as they moved too rarely or are not
        known of enough pieces.`
      : "",
  ];
  return parts.filter(Boolean).join(" ");
}

function missing(untold) {
  return untold.length === 0
    ? nothing
    : html`<section class="mattered-missing">
        <h2>Not enough is known of</h2>
        <dl class="pairs">
          ${untold.map(
            (outcome) => html`<div>
              <dt>${capital(outcome.label)}</dt>
              <dd>${outcome.sentence}</dd>
            </div>`,
          )}
        </dl>
      </section>`;
}

function method({model, formula, variant}) {
  const line = printed({formula, variant: variant ?? "", point: ""});
  return html`<section class="mattered-model">
    <h2>How this is worked out, and what it cannot tell</h2>
    <p>${model.name} ${model.why}</p>
    <ul>
      ${model.cannot.map((words) => html`<li>${words}</li>`)}
    </ul>
    <p class="quiet">On the command line: <code>ovenmark mattered ${line}</code></p>
  </section>`;
}
