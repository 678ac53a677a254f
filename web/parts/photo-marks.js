// Marks on a photo: which piece lies where. By tapping, by dragging, by keys and by numbers.

import {html} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";
import {ref} from "/lib/lit-html/directives/ref.js";
import {photo as photoAddress} from "/address.js";
import {number, temperature} from "/format.js";

const STEP = 0.01;
const LONG_STEP = 0.05;
const MOVES = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1]};
const A_TAP_PX = 4;

/** The pieces without a mark. */
export function unmarked(bake, {wanted}) {
  return bake.pieces.filter((piece) => !wanted.marks.some((mark) => mark.piece === piece.id));
}

/** A piece in a few words: 190 °C, 24 min. */
export function settingsOf(piece) {
  return [
    piece.temperature_c === null ? null : temperature(piece.temperature_c),
    piece.minutes === null ? null : `${number(piece.minutes)} min`,
  ]
    .filter(Boolean)
    .join(", ");
}

/** Which piece the next tap marks. */
export function pieceChoice(bake, edit, changed, id) {
  const free = new Set(unmarked(bake, edit).map((piece) => piece.id));
  return html`<fieldset class="photo-piece-choice">
    <legend>Choose a piece, then tap its place on the photo</legend>
    <div class="piece-options">
      ${bake.pieces.map(
        (piece) => html`<label class=${edit.piece === piece.id ? "chosen" : ""}>
          <input
            type="radio"
            name="${id}-piece"
            value=${piece.id}
            .checked=${live(edit.piece === piece.id)}
            @change=${() => {
              edit.piece = piece.id;
              changed();
            }}
          />
          <b>${piece.id}</b> ${settingsOf(piece)}
          <span class="quiet">${free.has(piece.id) ? "no mark" : "marked"}</span>
        </label>`,
      )}
    </div>
    <button
      type="button"
      class="in-the-middle"
      @click=${(event) => {
        const stage = event.target.closest(".photo-editor");
        const piece = edit.piece;
        put(bake, edit, 0.5, 0.5, changed);
        stage.querySelector(`.mark[data-piece="${CSS.escape(piece)}"]`)?.focus();
      }}
    >
      Put ${edit.piece} in the middle
    </button>
  </fieldset>`;
}

function put(bake, edit, x, y, changed) {
  const place = {piece: edit.piece, x: within(x), y: within(y)};
  const at = edit.wanted.marks.findIndex((mark) => mark.piece === edit.piece);
  if (at >= 0) {
    edit.wanted.marks[at] = place;
  } else {
    edit.wanted.marks.push(place);
    edit.piece = unmarked(bake, edit)[0]?.id ?? edit.piece;
  }
  changed(spoken(place));
}

function within(share) {
  return Math.round(Math.min(1, Math.max(0, share)) * 10000) / 10000;
}

function percent(share) {
  return Math.round(share * 1000) / 10;
}

function spoken({piece, x, y}) {
  return `Piece ${piece}: ${percent(x)} % from the left, ${percent(y)} % from above.`;
}

/** The photo with its marks, to be tapped and dragged upon. */
export function markStage(bake, photo, edit, changed, id) {
  const tapped = (event) => {
    if (edit.piece === null || event.target.closest(".mark")) {
      return;
    }
    const box = event.currentTarget.getBoundingClientRect();
    put(
      bake,
      edit,
      (event.clientX - box.left) / box.width,
      (event.clientY - box.top) / box.height,
      changed,
    );
  };
  return html`<p class="hint" id="${id}-keys">
      Drag a mark to move it. With the keyboard: arrow keys move it, with Shift in longer steps,
      Delete removes it.
    </p>
    <div class="mark-stage" @click=${tapped}>
      <img
        src=${photoAddress(photo.file, 1200)}
        alt=${photo.alternative ?? photo.caption ?? "Photo of the bake"}
        draggable="false"
      />
      ${edit.wanted.marks.map((mark, at) => markButton(mark, at, edit, changed, id))}
    </div>`;
}

function markButton(mark, at, edit, changed, id) {
  const moved = (x, y) => {
    edit.wanted.marks[at] = {...mark, x: within(x), y: within(y)};
    changed(spoken(edit.wanted.marks[at]));
  };
  return html`<button
    type="button"
    class="mark ${edit.piece === mark.piece ? "chosen" : ""}"
    data-piece=${mark.piece}
    aria-label=${spoken(mark)}
    aria-describedby="${id}-keys"
    ${ref((element) => {
      element?.style.setProperty("left", `${100 * mark.x}%`);
      element?.style.setProperty("top", `${100 * mark.y}%`);
    })}
    @click=${() => {
      edit.piece = mark.piece;
      changed();
    }}
    @keydown=${(event) => keyed(event, mark, at, edit, moved, changed)}
    @pointerdown=${(event) => dragged(event, mark, moved)}
  >
    <span aria-hidden="true">${mark.piece}</span>
  </button>`;
}

function keyed(event, mark, at, edit, moved, changed) {
  const direction = MOVES[event.key];
  if (direction) {
    const step = event.shiftKey ? LONG_STEP : STEP;
    moved(mark.x + direction[0] * step, mark.y + direction[1] * step);
    event.preventDefault();
  } else if (event.key === "Delete" || event.key === "Backspace") {
    const stage = event.currentTarget.parentElement;
    remove(at, edit, changed);
    (stage.querySelector(".mark") ?? stage.parentElement.querySelector("input")).focus();
    event.preventDefault();
  }
}

function remove(at, edit, changed) {
  const [mark] = edit.wanted.marks.splice(at, 1);
  edit.piece = mark.piece;
  changed(`The mark of piece ${mark.piece} is removed.`);
}

// A pointer that goes down on a mark takes it along; the handlers stay on the element, which the
// page keeps while it draws the mark anew.
function dragged(event, mark, moved) {
  if (event.button !== 0) {
    return;
  }
  const element = event.currentTarget;
  const box = element.parentElement.getBoundingClientRect();
  const from = {x: event.clientX, y: event.clientY};
  let far = false;
  const move = (next) => {
    far ||= Math.hypot(next.clientX - from.x, next.clientY - from.y) > A_TAP_PX;
    if (far) {
      moved(
        mark.x + (next.clientX - from.x) / box.width,
        mark.y + (next.clientY - from.y) / box.height,
      );
    }
  };
  const end = () => {
    element.removeEventListener("pointermove", move);
    element.removeEventListener("pointerup", end);
    element.removeEventListener("pointercancel", end);
  };
  element.setPointerCapture(event.pointerId);
  element.addEventListener("pointermove", move);
  element.addEventListener("pointerup", end);
  element.addEventListener("pointercancel", end);
}

/** The marks as numbers. */
export function markList(edit, changed, id) {
  if (edit.wanted.marks.length === 0) {
    return html`<p class="quiet">No piece is marked yet.</p>`;
  }
  return html`<details class="mark-list">
    <summary>Marks as numbers</summary>
    <ul>
      ${edit.wanted.marks.map(
        (mark, at) => html`<li>
          <b>${mark.piece}</b>
          ${share(mark, at, "x", "from the left", edit, changed, id)}
          ${share(mark, at, "y", "from above", edit, changed, id)}
          <button
            type="button"
            aria-label=${`Remove the mark of piece ${mark.piece}`}
            @click=${() => remove(at, edit, changed)}
          >
            Remove
          </button>
        </li>`,
      )}
    </ul>
  </details>`;
}

function share(mark, at, side, words, edit, changed, id) {
  return html`<label for="${id}-${at}-${side}">
      <span class="unseen">Piece ${mark.piece},</span> ${words}, %
    </label>
    <input
      id="${id}-${at}-${side}"
      type="number"
      min="0"
      max="100"
      step="0.1"
      .value=${live(String(percent(mark[side])))}
      @change=${(event) => {
        if (event.target.value !== "") {
          edit.wanted.marks[at] = {...mark, [side]: within(event.target.valueAsNumber / 100)};
        }
        changed(spoken(edit.wanted.marks[at]));
      }}
    />`;
}
