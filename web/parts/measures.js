// The measures of all pieces: a table at the desk; at the oven one measure of all pieces at a time,
// with large steps up and down.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";
import {repeat} from "/lib/lit-html/directives/repeat.js";
import {count, number} from "/format.js";
import {stepped} from "/parts/bake-document.js";

// name, what it is called, its unit, the step of its buttons, and the group that it is shown in.
const FIELDS = [
  {name: "rack", label: "Place", wide: true, group: "oven"},
  {name: "temperature", label: "Oven", unit: "heat", step: 5, group: "oven"},
  {name: "minutes", label: "Time", unit: "min", step: 1, group: "oven"},
  {name: "dough", label: "Dough mass", short: "Dough", unit: "mass", step: 1, group: "dough"},
  {name: "baked", label: "Baked mass", short: "Baked", unit: "mass", step: 1, group: "baked"},
  {name: "core", label: "Core", unit: "heat", step: 1, group: "baked"},
  {name: "width", label: "Width", unit: "mm", step: 1, group: "size"},
  {name: "height", label: "Height", unit: "mm", step: 1, group: "size"},
];
// Measures of pieces that lie together are alike until they are baked.
const ALIKE = ["rack", "temperature", "minutes", "dough", "baked"];
const GROUPS = [
  ["oven", "Oven"],
  ["dough", "Dough"],
  ["baked", "Baked"],
  ["size", "Size"],
];
const OUNCE_STEP = 0.1;

/**
 * Draws them. state is {document, figures, group, fixedLetters}; tools are touched (after a
 * change), redraw, remove(key), problems (field → sentence), setting (what a first step begins
 * with, or null).
 */
export function measures(state, tools) {
  const {document} = state;
  const {pieces} = document.form;
  return html`<div class="measures" data-group=${state.group}>
    ${groups(state, tools)}
    <table class="measure-table" role="table">
      <caption class="unseen">Measures of the pieces</caption>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">Piece</th>
          ${FIELDS.map(
            (field) => html`<th role="columnheader" scope="col" class=${field.group}>
              ${field.label}${unit(field, document) ? `, ${unit(field, document)}` : ""}
            </th>`,
          )}
          <th role="columnheader" scope="col" class="baked number">Loss</th>
          <th role="columnheader" scope="col" class="size number">Width by height</th>
          <th role="columnheader" scope="col"><span class="unseen">Take away</span></th>
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${repeat(
          pieces,
          (piece) => piece.key,
          (piece, at) => row(piece, at, state, tools),
        )}
      </tbody>
      <tfoot role="rowgroup">
        ${sameForAll(state, tools)}
      </tfoot>
    </table>
  </div>`;
}

function groups(state, {redraw}) {
  return html`<fieldset class="measure-groups">
    <legend class="unseen">What to measure</legend>
    ${GROUPS.map(
      ([group, name]) => html`<label>
        <input
          type="radio"
          name="measure-group"
          .checked=${live(state.group === group)}
          @change=${() => {
            state.group = group;
            redraw();
          }}
        />
        <span>${name}</span>
      </label>`,
    )}
  </fieldset>`;
}

function unit({unit: kind}, document) {
  const {units} = document.form;
  return kind === "mass" ? units.mass : kind === "heat" ? `°${units.temperature}` : kind;
}

function row(piece, at, state, tools) {
  const {figures, fixedLetters} = state;
  const id = piece.id.trim().toLowerCase();
  const where = figures?.pieces.findIndex((each) => each.id === id) ?? -1;
  const known = where < 0 ? null : figures.pieces[where];
  const missing = where < 0 ? null : figures.missing[where];
  return html`<tr role="row">
    <th role="rowheader" scope="row" class="letter">
      ${fixedLetters?.has(piece.key)
        ? html`<b>${piece.id}</b>`
        : input(piece, {name: "id", label: "Letter"}, at, state, tools)}
    </th>
    ${FIELDS.map(
      (field) => html`<td role="cell" class=${field.group}>
        <span class="label" aria-hidden="true">${field.short ?? field.label}</span>
        ${stepper(piece, field, at, state, tools)}
      </td>`,
    )}
    <td role="cell" class="baked number result">
      <span class="label">Loss</span>
      ${result(known?.loss_percent ?? null, " %", missing?.loss)}
    </td>
    <td role="cell" class="size number result">
      <span class="label">W by h</span>
      ${result(known?.spread_factor ?? null, "", missing?.spread)}
    </td>
    <td role="cell" class="away">
      <button type="button" class="plain" aria-label="Take piece ${piece.id} away"
        @click=${() => tools.remove(piece.key)}>Take away</button>
    </td>
  </tr>`;
}

function result(value, unitText, missing) {
  return value === null
    ? html`<span class="unknown-yet">unknown<small>${missing ? `: ${missing}` : ""}</small></span>`
    : html`<b>${number(value)}${unitText}</b>`;
}

function stepper(piece, field, at, state, tools) {
  const {document} = state;
  if (!field.step) {
    return input(piece, field, at, state, tools);
  }
  const ounces = unit(field, document) === "oz";
  const step = ounces ? OUNCE_STEP : field.step;
  const move = (direction) => {
    const before = piece[field.name] || beginning(field, at, state);
    const next = piece[field.name] ? stepped(before, direction * step) : before;
    if (next) {
      piece[field.name] = next;
      tools.touched();
    }
  };
  const name = `${field.label} of ${piece.id || "the piece"}`;
  return html`<span class="stepper">
    <button type="button" tabindex="-1" aria-label="${name}: less" @click=${() => move(-1)}>
      −
    </button>
    ${input(piece, field, at, state, tools, move)}
    <button type="button" tabindex="-1" aria-label="${name}: more" @click=${() => move(1)}>
      +
    </button>
  </span>`;
}

// A first step begins where the last piece before it stands, for pieces of a tray are alike.
function beginning(field, at, {document, setting}) {
  for (let i = at - 1; i >= 0; i -= 1) {
    const text = document.form.pieces[i][field.name];
    if (text) {
      return text;
    }
  }
  return setting?.[field.name] ?? "";
}

function input(piece, field, at, state, tools, move) {
  const {document} = state;
  const id = `piece-${piece.key}-${field.name}`;
  const problem = tools.problems.get(`pieces.${at}.${field.name}`);
  const says = unit(field, document);
  const label = `${field.label} of piece ${piece.id || at + 1}${says ? `, ${says}` : ""}`;
  return html`<span class="measure">
    <input
      id=${id}
      name=${id}
      type="text"
      class=${field.wide ? "wide" : nothing}
      aria-label=${label}
      inputmode=${field.step ? "decimal" : nothing}
      autocomplete="off"
      autocapitalize="off"
      enterkeyhint="next"
      list=${field.name === "rack" ? "places" : nothing}
      aria-invalid=${problem ? "true" : nothing}
      aria-describedby=${problem ? `${id}-problem` : nothing}
      .value=${live(piece[field.name])}
      @input=${(event) => {
        piece[field.name] = event.target.value;
        tools.touched();
      }}
      @keydown=${(event) => keyed(event, field, at, state, move)}
    />
    ${problem ? html`<small class="problem" id="${id}-problem">${problem}</small>` : nothing}
  </span>`;
}

// Enter goes down the column, as one measures piece after piece; arrows step the number.
function keyed(event, field, at, {document}, move) {
  if (event.key === "Enter") {
    event.preventDefault();
    const {pieces} = document.form;
    const next = pieces[(at + (event.shiftKey ? pieces.length - 1 : 1)) % pieces.length];
    const target = globalThis.document.getElementById(`piece-${next.key}-${field.name}`);
    target?.focus();
    target?.select();
  } else if (move && (event.key === "ArrowUp" || event.key === "ArrowDown")) {
    event.preventDefault();
    move(event.key === "ArrowUp" ? 1 : -1);
  }
}

// Fills what is empty only: what was measured is never written over.
function sameForAll({document}, {touched}) {
  const {pieces} = document.form;
  const cell = (field) => {
    const said = pieces.find((piece) => piece[field.name])?.[field.name];
    const empty = pieces.filter((piece) => !piece[field.name]);
    if (!ALIKE.includes(field.name) || !said || empty.length === 0 || pieces.length < 2) {
      return nothing;
    }
    const words = `${field.label}: ${said} for the ${count(empty.length, "piece")} without`;
    const fill = () => {
      empty.forEach((piece) => {
        piece[field.name] = said;
      });
      touched();
    };
    return html`<button type="button" class="same" title=${words} aria-label=${words}
      @click=${fill}><span class="label">${field.label}: </span>${said} for all</button>`;
  };
  return html`<tr role="row">
    <th role="rowheader" scope="row"><span class="unseen">The same for all pieces</span></th>
    ${FIELDS.map((field) => html`<td role="cell" class=${field.group}>${cell(field)}</td>`)}
    <td role="cell" class="baked"></td>
    <td role="cell" class="size"></td>
    <td role="cell" class="away"></td>
  </tr>`;
}
