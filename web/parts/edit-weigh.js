// The draft at the scale: big figures that can be changed, and lines ticked off when weighed.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";
import {repeat} from "/lib/lit-html/directives/repeat.js";
import {massNumber, massUnit, number} from "/format.js";
import {sheetLine, wish} from "/parts/edit-live.js";
import {tick} from "/parts/edit-state.js";

const TARGETS = {
  grams: {of: (line) => massNumber(line.grams), name: "Mass"},
  percent_of_batch: {of: (line) => line.percent_of_batch, name: "Percent of the batch"},
  bakers_percent: {of: (line) => line.bakers_percent, name: "Baker’s percentage"},
};

const SCALES = [
  ["pieces", "pieces"],
  ["dough_per_piece", "dough a piece"],
  ["batch", "batch"],
];

/** Draws it. ui keeps the cell that is typed into, what was refused, and the scale form. */
export function weighMode(state, ui) {
  const lines = state.document.lines ?? [];
  return html`<section class="weigh-mode" aria-labelledby="weigh-heading">
    <h2 id="weigh-heading" class="unseen">At the scale</h2>
    ${scaleForm(state, ui)} ${bowl(state)}
    <table class="scale-table" role="table">
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">In the bowl</th>
          <th role="columnheader" scope="col" class="number">Mass, ${massUnit()}</th>
          <th role="columnheader" scope="col" class="number">% of batch</th>
          <th role="columnheader" scope="col" class="number">Baker’s %</th>
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${repeat(
          state.keys.lines,
          (key) => key,
          (key, at) => row(state, ui, key, at, lines[at]),
        )}
      </tbody>
    </table>
    <p class="quiet">
      A percentage changes its own line; the other lines stay. A mass can be typed with another unit
      too, such as “1.2 kg”.
    </p>
  </section>`;
}

function row(state, ui, key, at, line) {
  const shown = sheetLine(state, at);
  if (!shown) {
    return nothing;
  }
  const done = state.weighed.includes(key);
  const name = line.food ? shown.name : "a food not chosen yet";
  const refused = ui.refused?.key === key ? ui.refused : null;
  return html`<tr role="row" class=${done ? "done" : ""}>
    <th role="rowheader" scope="row">
      <label class="tick">
        <input
          type="checkbox"
          id="weighed-${key}"
          .checked=${live(done)}
          @change=${(event) => tick(state, key, event.target.checked)}
        />
        <span><span class="weigh-name">${name}</span>${shown.flour
            ? html` <span class="quiet">flour</span>`
            : nothing}
          ${remark(line, shown)}</span>
      </label>
      ${refused
        ? html`<p class="problem" role="alert" id="weigh-${key}-problem">
            ${refused.failure.message} ${refused.failure.hint}
          </p>`
        : nothing}
    </th>
    ${Object.keys(TARGETS).map((target) =>
      cell(state, ui, {key, at, shown, target, name, refused}))}
  </tr>`;
}

function remark(line, shown) {
  const entered = /^[\d.]+ ?g$/.test(shown.entered) ? null : shown.entered;
  const words = [entered, line.note].filter(Boolean).join("; ");
  return words ? html`<span class="remark">${words}</span>` : nothing;
}

function cell(state, ui, {key, at, shown, target, name, refused}) {
  const {of, name: what} = TARGETS[target];
  const id = `weigh-${key}-${target}`;
  const value = of(shown);
  const typing = ui.cell?.id === id;
  const text = typing ? ui.cell.text : value === null ? "" : number(value);
  const wrong = refused?.target === target;
  return html`<td role="cell" class="number">
    <span class="cell-name" aria-hidden="true">${cellName(target)}</span>
    <input
      id=${id}
      class="cell ${target}"
      type="text"
      inputmode="decimal"
      autocomplete="off"
      aria-label="${what} of ${name}"
      aria-invalid=${wrong ? "true" : nothing}
      aria-describedby=${wrong ? `weigh-${key}-problem` : nothing}
      placeholder=${target === "grams" ? "unknown" : "–"}
      .value=${live(text)}
      @focus=${(event) => event.target.select()}
      @input=${(event) => typed(state, ui, {id, key, at, target}, event.target.value)}
      @blur=${() => leave(state, ui, id)}
      @keydown=${(event) => event.key === "Enter" && event.target.blur()}
    />
  </td>`;
}

function cellName(target) {
  return {grams: massUnit(), percent_of_batch: "% of batch", bakers_percent: "baker’s %"}[target];
}

async function typed(state, ui, {id, key, at, target}, text) {
  ui.cell = {id, text};
  ui.refused = null;
  if (!text.trim()) {
    state.redraw();
    return;
  }
  const failure = await wish(state, id, {target, place: at, value: text.trim()});
  if (failure && ui.cell?.id === id) {
    ui.refused = {key, target, failure};
  }
  state.redraw();
}

function leave(state, ui, id) {
  if (ui.cell?.id === id) {
    ui.cell = null;
    state.redraw();
  }
}

// What is in the bowl so far, as a bar that fills, and what is still to come.
function bowl(state) {
  const {bowl: filled, sheet} = state.sheet;
  const whole = sheet.yield.batch_g;
  const share = whole && filled.in_bowl_g !== null ? (100 * filled.in_bowl_g) / whole : 0;
  const words = (key) => bounded(filled, key);
  return html`<div class="bowl" role="status">
    <p>
      In the bowl <b>${words("in_bowl_g")}</b>
      <span class="quiet">of ${bounded(sheet.yield, "batch_g")}; still to come
        ${words("left_g")}</span>
    </p>
    <svg class="bowl-bar" width="100%" height="10" aria-hidden="true">
      <rect class="all" width="100%" height="10"/>
      <rect class="filled" width="${share}%" height="10"/>
    </svg>
  </div>`;
}

function bounded(set, key) {
  const value = set[key];
  if (value !== null) {
    return `${number(massNumber(value))} ${massUnit()}`;
  }
  const least = set.bounds?.[key]?.at_least;
  return least ? `at least ${number(massNumber(least))} ${massUnit()}` : "unknown";
}

function scaleForm(state, ui) {
  const {form} = ui;
  const unit = form.to === "pieces" ? "" : massUnit();
  return html`<form
    class="scale-to"
    @submit=${(event) => {
      event.preventDefault();
      scale(state, ui);
    }}
  >
    <label for="scale-value">Scale to</label>
    <input
      id="scale-value"
      type="text"
      inputmode="decimal"
      autocomplete="off"
      aria-describedby="scale-problem"
      placeholder=${standsAt(state, form.to)}
      .value=${live(form.value)}
      @input=${(event) => {
        form.value = event.target.value;
        form.failure = null;
        state.redraw();
      }}
    />
    ${unit ? html`<span class="unit">${unit}</span>` : nothing}
    <select
      id="scale-target"
      aria-label="Scale to what"
      @change=${(event) => {
        Object.assign(form, {to: event.target.value, failure: null});
        state.redraw();
      }}
    >
      ${SCALES.map(
        ([key, words]) => html`<option value=${key} .selected=${key === form.to}>${words}</option>`,
      )}
    </select>
    <button type="submit">Scale</button>
    <p class="problem" id="scale-problem" role="alert" ?hidden=${!form.failure}>
      ${form.failure ? `${form.failure.message} ${form.failure.hint}` : ""}
    </p>
  </form>`;
}

function standsAt(state, to) {
  const {yield: now} = state.sheet.sheet;
  const value = now[{pieces: "pieces", dough_per_piece: "dough_per_piece_g", batch: "batch_g"}[to]];
  return value === null ? "" : number(to === "pieces" ? value : massNumber(value));
}

async function scale(state, ui) {
  const {form} = ui;
  if (!form.value.trim()) {
    document.getElementById("scale-value").focus();
    return;
  }
  form.failure = await wish(state, null, {target: form.to, value: form.value.trim()});
  if (!form.failure) {
    ui.say(`Scaled to ${form.value.trim()} ${SCALES.find(([key]) => key === form.to)[1]}.`);
    form.value = "";
  }
  state.redraw();
}
