// Two people changed the same thing of a photo: both sides, and a choice for each.

import {html} from "/lib/lit-html/lit-html.js";

const NAMES = {caption: "Caption", alternative: "Alternative text"};

/** What both changed, side by side. */
export function choices(edit, redraw, id) {
  return html`<div class="photo-conflicts" role="group" aria-labelledby="${id}-both">
    <p id="${id}-both" class="problem" role="alert">
      Somebody changed the same meanwhile. Nothing is saved yet; choose for each.
    </p>
    ${edit.conflicts.map((each, at) => {
      const side = (value, words, text) => html`<label class="tick">
        <input
          type="radio"
          name="${id}-choice-${at}"
          .checked=${each.choice === value}
          @change=${() => {
            each.choice = value;
            redraw();
          }}
        />
        <span><b>${words}</b> ${text ?? html`<i>${nothingOf(each)}</i>`}</span>
      </label>`;
      return html`<fieldset>
        <legend>${each.what === "marks" ? `Piece ${each.piece}` : NAMES[each.what]}</legend>
        ${side("mine", "Mine:", each.mine)} ${side("theirs", "Theirs:", each.theirs)}
      </fieldset>`;
    })}
  </div>`;
}

function nothingOf({what}) {
  return what === "marks" ? "not marked" : "nothing";
}

/** What shall be saved after the choice: mine, with theirs where that was chosen. */
export function chosenState({wanted, seen, conflicts}) {
  const state = {...wanted, marks: [...wanted.marks]};
  for (const {what, piece} of conflicts.filter((each) => each.choice === "theirs")) {
    if (what === "marks") {
      state.marks = [
        ...state.marks.filter((mark) => mark.piece !== piece),
        ...seen.marks.filter((mark) => mark.piece === piece),
      ];
    } else {
      state[what] = seen[what];
    }
  }
  return state;
}
