// What was read from pasted text, line by line, with a choice wherever something is in doubt.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {count, mass} from "/format.js";
import {textField} from "/parts/fields.js";
import {foodChooser, foodField} from "/parts/food-chooser.js";

/** What a person settled so far; keep it with the data of the view. */
export function noChoices() {
  return {foods: {}, amounts: {}, leftOut: []};
}

/** The lines that still need a choice. */
export function openLines(read) {
  return read.lines.filter((line) => line.doubts.length > 0);
}

/** The id of the first line that needs a choice, or null. */
export function firstOpen(read) {
  const line = openLines(read)[0];
  return line ? lineId(line) : null;
}

/**
 * Draws what was read.
 *
 * state: {choices, opened: Set of line texts, choosers: {}, typed: {}}, kept with the view's data.
 * settle(change) is called with a function that changes the choices; redraw draws the same again.
 */
export function pastedLines(read, state, settle, redraw) {
  const acts = {state, settle, redraw};
  const shown = ingredientsWithHeadings(read.lines);
  const beside = read.lines.filter((line) => line.kind === "note");
  const left = read.lines.filter((line) => line.kind === "left_out");
  return html`<p class="standing ${openLines(read).length > 0 ? "open" : ""}" role="status">
      ${standing(read)}
    </p>
    ${shown.length > 0
      ? html`<ol class="pasted" aria-label="Ingredients as they were read">
          ${shown.map((line) => (line.kind === "heading" ? heading(line) : ingredient(line, acts)))}
        </ol>`
      : nothing}
    ${left.length > 0 ? leftOut(left, acts) : nothing}
    ${read.method.length > 0
      ? html`<details class="pasted-rest">
          <summary>Method: ${count(read.method.length, "step")}</summary>
          <ol>
            ${read.method.map((step) => html`<li>${step}</li>`)}
          </ol>
        </details>`
      : nothing}
    ${beside.length > 0
      ? html`<details class="pasted-rest">
          <summary>Not taken: ${count(beside.length, "line")}</summary>
          <p class="quiet">
            Neither an ingredient nor a step. To take a line, put an amount in front of it, or move
            it below a line that says “Method”.
          </p>
          <ul>
            ${beside.map((line) => html`<li>${line.text}</li>`)}
          </ul>
        </details>`
      : nothing}
    ${read.remarks.length > 0
      ? html`<ul class="pasted-remarks">
          ${read.remarks.map((remark) => html`<li>${remark}</li>`)}
        </ul>`
      : nothing}`;
}

// A heading is shown where ingredients follow it.
function ingredientsWithHeadings(lines) {
  const shown = lines.filter((line) => ["heading", "ingredient"].includes(line.kind));
  return shown.filter(
    (line, at) => line.kind === "ingredient" || shown[at + 1]?.kind === "ingredient",
  );
}

function standing(read) {
  const all = read.lines.filter((line) => line.kind === "ingredient").length;
  const open = openLines(read).length;
  if (all === 0) {
    return "No ingredient yet. Write one on each line, with its amount in front.";
  }
  return open === 0
    ? `${count(all, "ingredient")}, all understood.`
    : `${count(all, "ingredient")}; ${open} ${open === 1 ? "needs" : "need"} a choice.`;
}

function heading(line) {
  return html`<li class="pasted-heading"><h3>${line.text.replace(/:\s*$/, "")}</h3></li>`;
}

const lineId = (line) => `pasted-${line.line}`;

function ingredient(line, acts) {
  const doubtful = line.doubts.length > 0;
  const open = doubtful || acts.state.opened.has(line.text);
  const food = line.foods.find((each) => each.certain) ?? null;
  const classes = `pasted-line ${doubtful ? "doubtful" : ""}`;
  return html`<li class=${classes} id=${lineId(line)} tabindex="-1">
    <p class="pasted-parts">
      <span class="amount">
        ${line.amount ?? html`<i>no amount</i>`}
        ${line.up_to && doubtful ? html`<span class="quiet">to ${line.up_to}</span>` : nothing}
      </span>
      <b class="food">${food ? food.name : line.food_words ?? line.text}</b>
      <span class="grams">
        ${food && line.amount ? `${line.approximate ? "≈ " : ""}${mass(line.grams)}` : nothing}
      </span>
    </p>
    ${line.note ? html`<p class="remark">${line.note}</p>` : nothing}
    ${line.remarks.map((remark) => html`<p class="remark">${remark}</p>`)}
    ${open ? panel(line, acts, doubtful) : changeButton(line, acts)}
  </li>`;
}

function changeButton(line, {state, redraw}) {
  return html`<button
    type="button"
    class="plain change"
    aria-label="Change how “${line.text}” is taken"
    @click=${() => {
      state.opened.add(line.text);
      redraw();
    }}
  >
    Change
  </button>`;
}

function panel(line, acts, doubtful) {
  const {state, settle, redraw} = acts;
  const about = new Set(line.doubts.map((doubt) => doubt.about));
  return html`<div class="settle">
    ${doubtful
      ? html`<p class="as-pasted">Line ${line.line}: <q>${line.text.trim()}</q></p>`
      : nothing}
    ${line.doubts.map(
      (doubt) => html`<p class="problem">
        ${doubt.message}${doubt.about === "food" && line.foods.length > 0
          ? nothing
          : html` ${doubt.hint}`}
      </p>`,
    )}
    ${line.food_words && (!doubtful || about.has("food")) ? foodChoice(line, acts) : nothing}
    ${!about.has("line") && (!doubtful || about.has("amount")) ? amountChoice(line, acts) : nothing}
    <p class="settle-end">
      <button
        type="button"
        class="plain"
        @click=${() => settle((choices) => choices.leftOut.push(line.text))}
      >
        Leave this line out
      </button>
      ${doubtful
        ? nothing
        : html`<button
            type="button"
            class="plain"
            @click=${() => {
              state.opened.delete(line.text);
              redraw();
            }}
          >
            Done
          </button>`}
    </p>
  </div>`;
}

function foodChoice(line, {state, settle, redraw}) {
  const choose = (slug) =>
    settle((choices) => {
      choices.foods[line.food_words] = slug;
      state.opened.delete(line.text);
    });
  const key = `${line.line} ${line.food_words}`;
  state.choosers[key] ??= foodChooser({
    id: `${lineId(line)}-food`,
    label: "Another food",
    chosen: ({slug}) => choose(slug),
    redraw,
  });
  return html`<div
    class="choices"
    role="group"
    aria-label="Which food “${line.food_words}” is"
    @keydown=${(event) => entered(event, () => {})}
  >
    ${line.foods.map(
      (food) => html`<button
        type="button"
        aria-pressed=${String(food.certain)}
        @click=${() => choose(food.food)}
      >
        ${food.name} ${food.in_pantry ? html`<span class="quiet">in the pantry</span>` : nothing}
      </button>`,
    )}
    ${foodField(state.choosers[key])}
  </div>`;
}

function amountChoice(line, {state, settle, redraw}) {
  const choose = (amount) => {
    if (amount.trim()) {
      settle((choices) => {
        choices.amounts[line.text] = amount.trim();
        state.opened.delete(line.text);
      });
    }
  };
  const typed = state.typed[line.text] ?? "";
  return html`<div class="choices" role="group" aria-label="How much “${line.text}” is">
    ${line.amounts.map(
      (amount) => html`<button
        type="button"
        aria-pressed=${String(amount === line.amount && line.doubts.length === 0)}
        @click=${() => choose(amount)}
      >
        ${amount}
      </button>`,
    )}
    <div class="own-amount" @keydown=${(event) => entered(event, () => choose(typed))}>
      ${textField({
        id: `${lineId(line)}-amount`,
        label: line.amounts.length > 0 ? "Another amount" : "Amount",
        value: typed,
        size: "short",
        typed: (text) => {
          state.typed[line.text] = text;
          redraw();
        },
      })}
      <button type="button" ?disabled=${!typed.trim()} @click=${() => choose(typed)}>
        Use it
      </button>
    </div>
  </div>`;
}

// Enter in one of these fields settles its line and does not send the page's form.
function entered(event, act) {
  if (event.key === "Enter" && event.target.matches("input")) {
    event.preventDefault();
    act();
  }
}

function leftOut(lines, {settle}) {
  return html`<section class="pasted-left">
    <h3>Left out</h3>
    <ul>
      ${lines.map(
        (line) => html`<li>
          <span>${line.text}</span>
          <button
            type="button"
            class="plain"
            @click=${() =>
              settle((choices) => {
                choices.leftOut = choices.leftOut.filter((text) => text !== line.text);
              })}
          >
            Take it in again
          </button>
        </li>`,
      )}
    </ul>
  </section>`;
}
