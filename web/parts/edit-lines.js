// The lines of a draft: food, amount as typed, what that weighs now and before, flour, note.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";
import {repeat} from "/lib/lit-html/directives/repeat.js";
import {massNumber, massUnit, number, signed} from "/format.js";
import {problemAt} from "/parts/edit-problems.js";
import {sheetLine} from "/parts/edit-live.js";
import {change} from "/parts/edit-state.js";
import {foodChooser, foodField} from "/parts/food-chooser.js";

/** Draws them. ui is what the page alone knows: which line is open, what is dragged. */
export function lineEditor(state, ui) {
  const lines = state.document.lines ?? [];
  return html`<section class="edit-lines" aria-labelledby="lines-heading">
    <div class="heading">
      <h2 id="lines-heading">Ingredients</h2>
      ${lines.length > 1
        ? html`<p class="quiet keys">Alt and ↑ or ↓ moves a line</p>`
        : nothing}
    </div>
    ${lines.length > 0 ? titles() : html`<p class="quiet">There are none yet.</p>`}
    <ol class="edit-line-list">
      ${repeat(
        state.keys.lines,
        (key) => key,
        (key, at) => row(state, ui, key, at, lines[at]),
      )}
    </ol>
    ${leftOut(state)}
    <p class="actions">
      <button type="button" id="add-line" @click=${() => addLine(state, ui)}>Add a line</button>
    </p>
  </section>`;
}

function titles() {
  return html`<div class="line-titles" aria-hidden="true">
    <span></span><span>Food</span><span>Amount</span>
    <span class="number">Weighs, ${massUnit()}</span><span>Flour</span><span></span>
  </div>`;
}

function row(state, ui, key, at, line) {
  const shown = sheetLine(state, at);
  const name = shown && line.food ? shown.name : "new line";
  const open = ui.openLine === key;
  return html`<li
    class="edit-line ${ui.dragged === key ? "dragged" : ""} ${ui.over === key ? "over" : ""}"
    @keydown=${(event) => press(state, ui, event, key)}
    @dragover=${(event) => ui.dragged && over(state, ui, event, key)}
    @drop=${(event) => drop(state, ui, event, key)}
  >
    <span
      class="grip"
      draggable="true"
      title="Drag to move"
      aria-hidden="true"
      @dragstart=${(event) => grab(state, ui, event, key)}
      @dragend=${() => letGo(state, ui)}
      >${at + 1}</span
    >
    ${foodField(chooser(state, ui, key, line, shown), foodProblem(state, ui, key, at))}
    ${amountField(state, key, at, line, name)}
    <div class="weighs">${weighs(state, shown)}</div>
    <label class="flour-mark">
      <input
        type="checkbox"
        id="line-${key}-flour"
        aria-label="${name} counts as flour"
        .checked=${live(Boolean(line.flour))}
        @change=${(event) => setFlour(state, key, event.target.checked)}
      />
      <span aria-hidden="true">flour</span>
    </label>
    <button
      type="button"
      class="plain more-of-line"
      id="line-${key}-more"
      aria-expanded=${String(open)}
      @click=${() => {
        ui.openLine = open ? null : key;
        state.redraw();
      }}
    >
      ${open ? "Less" : "More"}<span class="unseen"> for line ${at + 1}, ${name}</span>
    </button>
    ${amountProblem(state, key, at)}
    ${!open && line.note ? html`<p class="remark line-note">${line.note}</p>` : nothing}
    ${open ? more(state, ui, key, at, line, name) : nothing}
  </li>`;
}

function chooser(state, ui, key, line, shown) {
  const id = `line-${key}-food`;
  let chosen = ui.choosers.get(key);
  if (!chosen) {
    chosen = foodChooser({
      id,
      label: "Food",
      unseen: true,
      chosen: ({slug, name}) => {
        ui.names.set(slug, name);
        setLine(state, key, null, {food: slug});
      },
      redraw: () => state.redraw(),
    });
    ui.choosers.set(key, chosen);
  }
  const slug = line.food ?? "";
  const typing = document.activeElement?.id === id;
  if (!typing && !chosen.open && (slug || chosen.slug)) {
    chosen.text = slug ? (shown?.food === slug ? shown.name : ui.names.get(slug) ?? slug) : "";
  }
  chosen.slug = slug;
  chosen.label = `Food of line ${state.keys.lines.indexOf(key) + 1}`;
  return chosen;
}

function foodProblem(state, ui, key, at) {
  return problemAt(state, `lines.${at}.food`, `line-${key}-food`);
}

function amountField(state, key, at, line, name) {
  const id = `line-${key}-amount`;
  const problem = problemAt(state, `lines.${at}.amount`, id);
  return html`<div class="field amount-field ${problem ? "wrong" : ""}">
    <input
      id=${id}
      type="text"
      autocomplete="off"
      aria-label="Amount of ${name}"
      placeholder="150 g"
      aria-invalid=${problem ? "true" : nothing}
      aria-describedby=${problem ? `${id}-problem` : nothing}
      .value=${live(line.amount ?? "")}
      @keyup=${(event) => event.key === "Tab" && selectNumber(event.target)}
      @input=${(event) => setLine(state, key, id, {amount: event.target.value})}
    />
  </div>`;
}

// For who comes with the Tab key: what is typed replaces the number, and the unit stays.
function selectNumber(field) {
  const number = /^[^\p{L}]*[\p{N}]/u.exec(field.value);
  if (number) {
    field.setSelectionRange(0, number[0].length);
  }
}

function amountProblem(state, key, at) {
  const id = `line-${key}-amount`;
  const problem = problemAt(state, `lines.${at}.amount`, id);
  return html`<p class="problem line-problem" id="${id}-problem" ?hidden=${!problem}>
    ${problem}
  </p>`;
}

// Now filled, before hollow beneath it when it was another.
function weighs(state, shown) {
  if (!shown) {
    return nothing;
  }
  const now =
    shown.grams === null
      ? html`<b class="unknown" title=${shown.how}>unknown</b>`
      : html`<b>${shown.approximate ? "≈ " : ""}${number(massNumber(shown.grams))}</b>`;
  const before = state.sheet.comparison?.lines.find((line) => line.id === shown.id);
  if (!before || before.change === "same" || before.change === "rewritten") {
    return now;
  }
  if (before.change === "added") {
    return html`${now}<span class="was">new</span>`;
  }
  const was = before.from_g === null ? "unknown" : number(massNumber(before.from_g));
  return html`${now}
    <span class="was">
      <span class="unseen">was </span><span class="ring" aria-hidden="true"></span>${was}${
        before.delta_g === null ? nothing : html` <span class="delta"
          >${signed(massNumber(before.delta_g))}</span>`}
      ${before.change === "replaced"
        ? html`<span class="of">of ${before.other_name}</span>`
        : nothing}
    </span>`;
}

function more(state, ui, key, at, line, name) {
  const last = state.keys.lines.length - 1;
  const noteId = `line-${key}-note`;
  const act = (words, run, off = false) =>
    html`<button type="button" ?disabled=${off} @click=${run}>
      ${words}<span class="unseen"> ${name}</span>
    </button>`;
  return html`<div class="line-more">
    <div class="field">
      <label for=${noteId}>Note</label>
      <div class="control">
        <input
          id=${noteId}
          type="text"
          autocomplete="off"
          placeholder="35 °C, sifted …"
          .value=${live(line.note ?? "")}
          @input=${(event) => setLine(state, key, noteId, {note: event.target.value})}
        />
      </div>
    </div>
    <p class="line-acts">
      ${act("Move up", () => moveLine(state, ui, key, -1), at === 0)}
      ${act("Move down", () => moveLine(state, ui, key, 1), at === last)}
      ${act("Remove", () => removeLine(state, ui, key))}
    </p>
  </div>`;
}

function leftOut(state) {
  const gone = (state.sheet?.comparison?.lines ?? []).filter((line) => line.change === "removed");
  return gone.length === 0
    ? nothing
    : html`<p class="left-out">
        <span class="ring" aria-hidden="true"></span> Left out:
        ${gone.map((line) => `${line.name} ${line.from_entered ?? ""}`.trim()).join(", ")}
      </p>`;
}

/* what can be done */

const placeOf = (state, key) => state.keys.lines.indexOf(key);

function setLine(state, key, field, values) {
  change(state, field, (document) => Object.assign(document.lines[placeOf(state, key)], values));
}

function setFlour(state, key, flour) {
  change(state, null, (document) => {
    const line = document.lines[placeOf(state, key)];
    if (flour) {
      line.flour = true;
    } else {
      delete line.flour;
    }
  });
}

/** Adds an empty line at the end and goes there. */
export function addLine(state, ui) {
  let key = null;
  change(state, null, (document, keys, newKey) => {
    document.lines = [...(document.lines ?? []), {food: "", amount: ""}];
    key = newKey();
    keys.lines.push(key);
  });
  focusOn(`line-${key}-food`);
}

function removeLine(state, ui, key) {
  const at = placeOf(state, key);
  change(state, null, (document, keys) => {
    document.lines.splice(at, 1);
    keys.lines.splice(at, 1);
  });
  ui.openLine = null;
  ui.say(`Line ${at + 1} is removed. Undo brings it back.`);
  const next = state.keys.lines[Math.min(at, state.keys.lines.length - 1)];
  focusOn(next ? `line-${next}-amount` : "add-line");
}

function moveLine(state, ui, key, by) {
  const at = placeOf(state, key);
  moveTo(state, ui, key, at + by);
}

function moveTo(state, ui, key, to) {
  const at = placeOf(state, key);
  if (to < 0 || to >= state.keys.lines.length || to === at) {
    return;
  }
  const focused = document.activeElement?.id;
  change(state, null, (document, keys) => {
    document.lines.splice(to, 0, ...document.lines.splice(at, 1));
    keys.lines.splice(to, 0, ...keys.lines.splice(at, 1));
  });
  ui.say(`Now line ${to + 1} of ${state.keys.lines.length}.`);
  if (focused) {
    focusOn(focused);
  }
}

function focusOn(id) {
  document.getElementById(id)?.focus();
}

function press(state, ui, event, key) {
  if (!event.altKey || !["ArrowUp", "ArrowDown"].includes(event.key)) {
    return;
  }
  event.preventDefault();
  event.stopPropagation();
  moveLine(state, ui, key, event.key === "ArrowUp" ? -1 : 1);
}

function grab(state, ui, event, key) {
  ui.dragged = key;
  event.dataTransfer.effectAllowed = "move";
  event.dataTransfer.setData("text/plain", "");
  state.redraw();
}

function over(state, ui, event, key) {
  event.preventDefault();
  if (ui.over !== key) {
    ui.over = key;
    state.redraw();
  }
}

function drop(state, ui, event, key) {
  if (ui.dragged) {
    event.preventDefault();
    moveTo(state, ui, ui.dragged, placeOf(state, key));
    letGo(state, ui);
  }
}

function letGo(state, ui) {
  Object.assign(ui, {dragged: null, over: null});
  state.redraw();
}
