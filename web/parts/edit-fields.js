// What a draft states beside its lines: name, goal, yield, oven, method, description and so on.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {repeat} from "/lib/lit-html/directives/repeat.js";
import {number} from "/format.js";
import {problemAt} from "/parts/edit-problems.js";
import {change} from "/parts/edit-state.js";
import {choiceField, textArea, textField} from "/parts/fields.js";

/** Name and goal. */
export function headFields(state, ui) {
  return html`<section class="edit-head" aria-label="Name and goal">
    ${top(state, "name", "Name", textField)} ${goalField(state, ui)}
  </section>`;
}

function top(state, name, label, field, options = {}) {
  const id = `draft-${name}`;
  return field({
    id,
    label,
    value: state.document[name] ?? "",
    problem: problemAt(state, name, id),
    typed: (text) => setTop(state, name, text, id),
    ...options,
  });
}

function setTop(state, name, text, field) {
  change(state, field, (document) => {
    document[name] = text;
  });
}

function goalField(state, ui) {
  const value = state.document.goal ?? "";
  const options = [["", "No goal"], ...ui.goals.map(({goal, name}) => [goal, name])];
  return choiceField({
    id: "draft-goal",
    label: "Goal",
    value,
    options: withValue(options, value),
    chosen: (goal) => setTop(state, "goal", goal, null),
  });
}

function withValue(options, value) {
  return options.some(([each]) => each === value) ? options : [...options, [value, value]];
}

/** Description, storage and reference, folded away. */
export function aboutFields(state, ui) {
  const value = state.document.reference ?? "";
  const options = [["", "None"], ...ui.formulas.map(({formula, name}) => [formula, name])];
  return html`<details
    class="edit-fold"
    .open=${ui.about}
    @toggle=${(event) => ui.opened(event.target.open)}
  >
    <summary><h2>Description, storage and reference</h2></summary>
    ${top(state, "description", "Description", textArea, {rows: 3})}
    ${top(state, "storage", "Storage, how to keep what was baked", textArea, {rows: 2})}
    ${choiceField({
      id: "draft-reference",
      label: "Reference, the conventional formula it was rebuilt from",
      value,
      options: withValue(options, value),
      chosen: (formula) => setTop(state, "reference", formula, null),
    })}
  </details>`;
}

/** What a batch gives: so many pieces, or so much dough a piece. */
export function yieldFields(state) {
  const given = state.document.yield ?? {};
  const byDough = given.dough_per_piece_g !== undefined;
  const choice = (dough, words) => html`<label class="tick">
    <input
      type="radio"
      name="yield-by"
      .checked=${byDough === dough}
      @change=${() => divideBy(state, dough)}
    />
    <span>${words}</span>
  </label>`;
  const name = byDough ? "dough_per_piece_g" : "pieces";
  const field = (key, label, unit) =>
    textField({
      id: `yield-${key}`,
      label,
      unit,
      size: "short",
      inputmode: "decimal",
      value: text(given[key]),
      problem: problemAt(state, `yield.${key}`, `yield-${key}`),
      typed: (typed) => setYield(state, key, typed),
    });
  return html`<section class="edit-yield">
    <h2>Yield</h2>
    <fieldset class="yield-by">
      <legend class="unseen">A batch is divided by</legend>
      ${choice(false, "a number of pieces")} ${choice(true, "dough a piece")}
    </fieldset>
    <div class="yield-fields">
      ${name === "pieces" ? field("pieces", "Pieces", "") : field(name, "Dough a piece", "g")}
      ${field("handling_loss_percent", "Loss on handling", "%")}
    </div>
  </section>`;
}

const text = (value) => (value === undefined || value === null ? "" : String(value));

function setYield(state, key, typed) {
  change(state, `yield-${key}`, (document) => {
    document.yield = {...document.yield, [key]: typed};
  });
}

// What the other way of saying it is now is taken over, so that nothing moves by the choice.
function divideBy(state, dough) {
  const known = state.sheet?.sheet.yield ?? {};
  const value = known[dough ? "dough_per_piece_g" : "pieces"] ?? null;
  change(state, null, (document) => {
    const rest = {...document.yield};
    delete rest.pieces;
    delete rest.dough_per_piece_g;
    const typed = value === null ? "" : number(value);
    document.yield = {[dough ? "dough_per_piece_g" : "pieces"]: typed, ...rest};
  });
}

const STAGE = [
  ["temperature", "Temperature", "190 °C", "short"],
  ["minutes", "Minutes", "24", "short"],
  ["rack", "Rack", "middle", ""],
  ["steam", "Steam", "none", ""],
  ["vessel", "Baked in or on", "", ""],
  ["note", "Note", "", ""],
];

/** The stages in the oven. */
export function ovenFields(state) {
  return html`<section class="edit-oven">
    <h2>Oven</h2>
    ${repeat(
      state.keys.bake,
      (key) => key,
      (key, at) => stage(state, key, at, state.document.bake[at]),
    )}
    <p class="actions">
      <button type="button" id="add-stage" @click=${() => addStage(state)}>
        ${state.keys.bake.length === 0 ? "Add the oven" : "Add a stage"}
      </button>
    </p>
  </section>`;
}

function stage(state, key, at, values) {
  const many = state.keys.bake.length > 1;
  return html`<fieldset class="stage">
    <legend class=${many ? "" : "unseen"}>Stage ${at + 1}</legend>
    <div class="stage-fields">
      ${STAGE.map(([name, label, hint, size]) => {
        const id = `stage-${key}-${name}`;
        return textField({
          id,
          label,
          size: size || undefined,
          inputmode: name === "minutes" ? "decimal" : undefined,
          placeholder: hint,
          value: text(values[name]),
          problem: problemAt(state, `bake.${at}.${name}`, id),
          typed: (typed) =>
            change(state, id, (document) => {
              document.bake[state.keys.bake.indexOf(key)][name] = typed;
            }),
        });
      })}
    </div>
    <p class="line-acts">
      ${many
        ? html`<button
            type="button"
            ?disabled=${at === 0}
            @click=${() => move(state, "bake", at, -1)}
          >
            Move up<span class="unseen"> stage ${at + 1}</span>
          </button>`
        : nothing}
      <button type="button" class="plain" @click=${() => remove(state, "bake", at, "add-stage")}>
        Remove<span class="unseen"> stage</span> ${many ? at + 1 : "the oven"}
      </button>
    </p>
  </fieldset>`;
}

function addStage(state) {
  add(state, "bake", {}, (key) => `stage-${key}-temperature`);
}

/** The steps of the method. */
export function methodFields(state, ui) {
  const last = state.keys.method.length - 1;
  const act = (words, at, off, run) =>
    html`<button type="button" class="plain" ?disabled=${off} @click=${run}>
      ${words}<span class="unseen"> step ${at + 1}</span>
    </button>`;
  return html`<section class="edit-method">
    <h2>Method</h2>
    <ol class="edit-steps">
      ${repeat(
        state.keys.method,
        (key) => key,
        (key, at) => {
          const id = `step-${key}`;
          return html`<li @keydown=${(event) => press(state, ui, event, key)}>
            <span class="grip-number" aria-hidden="true">${at + 1}</span>
            ${textArea({
              id,
              label: `Step ${at + 1}`,
              unseen: true,
              rows: rowsFor(state.document.method[at]),
              value: state.document.method[at],
              typed: (typed) =>
                change(state, id, (document) => {
                  document.method[state.keys.method.indexOf(key)] = typed;
                }),
            })}
            <p class="step-acts">
              ${act("Up", at, at === 0, () => move(state, "method", at, -1))}
              ${act("Down", at, at === last, () => move(state, "method", at, 1))}
              ${act("Remove", at, false, () => remove(state, "method", at, "add-step"))}
            </p>
          </li>`;
        },
      )}
    </ol>
    <div role="status">
      ${(state.sheet?.sheet.named_unweighed ?? []).map(
        ({text}) => html`<p class="problem">${text}</p>`,
      )}
    </div>
    <p class="actions">
      <button type="button" id="add-step" @click=${() => addStep(state)}>Add a step</button>
    </p>
  </section>`;
}

function rowsFor(step) {
  const wrapped = (line) => Math.max(1, Math.ceil(line.length / 62));
  const lines = step.split("\n").reduce((sum, line) => sum + wrapped(line), 0);
  return Math.min(10, lines);
}

function addStep(state) {
  add(state, "method", "", (key) => `step-${key}`);
}

function press(state, ui, event, key) {
  if (event.altKey && ["ArrowUp", "ArrowDown"].includes(event.key)) {
    event.preventDefault();
    const id = document.activeElement?.id;
    const at = state.keys.method.indexOf(key);
    move(state, "method", at, event.key === "ArrowUp" ? -1 : 1);
    ui.say(`Now step ${state.keys.method.indexOf(key) + 1} of ${state.keys.method.length}.`);
    document.getElementById(id)?.focus();
  }
}

function add(state, part, value, id) {
  let key = null;
  change(state, null, (document, keys, newKey) => {
    document[part] = [...(document[part] ?? []), value];
    key = newKey();
    keys[part].push(key);
  });
  document.getElementById(id(key))?.focus();
}

function move(state, part, at, by) {
  const to = at + by;
  if (to < 0 || to >= state.keys[part].length) {
    return;
  }
  change(state, null, (document, keys) => {
    document[part].splice(to, 0, ...document[part].splice(at, 1));
    keys[part].splice(to, 0, ...keys[part].splice(at, 1));
  });
}

function remove(state, part, at, then) {
  change(state, null, (document, keys) => {
    document[part].splice(at, 1);
    keys[part].splice(at, 1);
  });
  document.getElementById(then)?.focus();
}
