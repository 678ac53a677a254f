// Where two sides made different things of the same: both beside each other, one choice for each.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";
import {count} from "/format.js";

const SIDES = ["ours", "theirs"];
const CHOICES = [...SIDES, "base"];
const NAMES = {ours: "Yours", theirs: "The newest revision"};

/**
 * Draws every conflict with its two sides.
 *
 * conflicts: [{field, sentence, base, ours, theirs}]; a side that is null has nothing there.
 * choices: {field: "ours" | "theirs" | "base"}, those made so far; base takes neither side.
 * onChoose(field, choice) is called with each choice; draw again after it.
 * names: what the sides are called, {ours, theirs}; id sets two choosers of one page apart.
 */
export function conflictChooser(conflicts, choices, onChoose, options = {}) {
  const {names = NAMES, id = "conflict"} = options;
  const one = (each, at) => conflict(each, choices[each.field], names, `${id}-${at}`, onChoose);
  const open = openConflicts(conflicts, choices).length;
  return html`<div class="conflicts">
    <div class="conflict-head">
      <p role="status">${standing(conflicts.length, open)}</p>
      ${conflicts.length > 1
        ? html`<p class="conflict-all">
            ${SIDES.map(
              (side) => html`<button type="button" class="plain"
                @click=${() => conflicts.forEach((each) => onChoose(each.field, side))}>
                All: ${inSentence(names[side])}
              </button>`,
            )}
          </p>`
        : nothing}
    </div>
    ${conflicts.map(one)}
  </div>`;
}

/** The conflicts that nothing was chosen for yet. */
export function openConflicts(conflicts, choices) {
  return conflicts.filter((each) => !CHOICES.includes(choices[each.field]));
}

/** The choices that belong to these conflicts; those of conflicts that are gone are left out. */
export function choicesFor(conflicts, choices) {
  const fields = conflicts.map((each) => each.field).filter((field) => choices[field]);
  return Object.fromEntries(fields.map((field) => [field, choices[field]]));
}

function standing(all, open) {
  if (open === 0) {
    return all === 1 ? "The choice is made." : `All ${all} choices are made.`;
  }
  const both = `${count(all, "place")} where both sides changed the same`;
  const choose = all === 1 ? "Choose a side." : "Choose a side for each.";
  return open === all ? `${both}. ${choose}` : `${both}; ${open} still to choose.`;
}

function conflict(each, chosen, names, id, onChoose) {
  const radio = (choice) => html`<input
    type="radio"
    name=${id}
    value=${choice}
    .checked=${live(chosen === choice)}
    @change=${() => onChoose(each.field, choice)}
  />`;
  return html`<fieldset class="conflict">
    <legend>${each.sentence}</legend>
    <div class="conflict-sides">
      ${SIDES.map(
        (side) => html`<label class=${chosen === side ? "chosen" : ""}>
          ${radio(side)}
          <span class="conflict-side">
            <span class="quiet">${names[side]}</span> ${stands(each[side])}
          </span>
        </label>`,
      )}
    </div>
    <label class="conflict-base ${chosen === "base" ? "chosen" : ""}">
      ${radio("base")}
      <span><span class="quiet">Neither, as before both:</span> ${stands(each.base)}</span>
    </label>
  </fieldset>`;
}

function stands(text) {
  return text === null ? html`<i>nothing here</i>` : html`<b class="conflict-text">${text}</b>`;
}

function inSentence(name) {
  return name.charAt(0).toLowerCase() + name.slice(1);
}
