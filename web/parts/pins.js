// The two pins, A and B, that choose what is compared. Each is a group of radio buttons along the
// spine, so that arrow keys move it; it can also be dragged.

import {html} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";

const SAYS = {from: "Compare from", to: "Compare to"};
const LETTERS = {from: "A", to: "B"};

// Moving a pin several steps in one go makes one entry in the browser's history: the first step
// adds it, the others replace it.
let moving = null;

/**
 * The buttons of one revision.
 *
 * @param address of the revision
 * @param words for those who listen, such as "revision 7, Drier dough"
 * @param pins where they stand: {from, to}
 * @param move called with the pins as they shall stand and whether to replace the present step
 */
export function pinButtons(address, words, pins, move) {
  const button = (side) => html`<label class="pin ${side}"
    @pointerdown=${(event) => drag(event, side, pins, move)}>
    <input type="radio" name="pin-${side}" value=${address}
      aria-label="${SAYS[side]} ${words}"
      .checked=${live(pins[side] === address)}
      @change=${() => step(side, {...pins, [side]: address}, move)}
      @blur=${leave}>
    <span aria-hidden="true">${LETTERS[side]}</span>
  </label>`;
  return html`<span class="pins">${button("from")}${button("to")}</span>`;
}

// Arrow keys take the focus to the next button of the group; only what lies outside ends the move.
function leave(event) {
  if (event.relatedTarget?.name !== event.target.name) {
    moving = null;
  }
}

function step(side, pins, move) {
  move(pins, moving === side);
  moving = side;
}

// The pin follows the pointer from revision to revision; whoever lets go elsewhere keeps the last.
function drag(event, side, pins, move) {
  const handle = event.currentTarget;
  if (!handle.querySelector("input").checked || event.button !== 0) {
    return;
  }
  const track = handle.closest("ol");
  let last = pins[side];
  let dragged = false;
  handle.setPointerCapture(event.pointerId);
  track.classList.add("dragging");

  const follow = (moved) => {
    const inputs = [...track.querySelectorAll(`input[name="pin-${side}"]`)];
    const nearest = inputs.reduce((best, input) =>
      distance(input, moved.clientY) < distance(best, moved.clientY) ? input : best,
    );
    if (nearest.value !== last) {
      last = nearest.value;
      move({...pins, [side]: last}, dragged);
      dragged = true;
    }
  };
  const drop = () => {
    if (dragged) {
      ignoreClick(handle);
    }
    track.classList.remove("dragging");
    handle.removeEventListener("pointermove", follow);
    handle.removeEventListener("pointerup", drop);
    handle.removeEventListener("pointercancel", drop);
  };
  handle.addEventListener("pointermove", follow);
  handle.addEventListener("pointerup", drop);
  handle.addEventListener("pointercancel", drop);
}

// Letting go is also a click on the button where the drag began, which would take the pin back.
function ignoreClick(handle) {
  const ignore = (event) => event.preventDefault();
  handle.addEventListener("click", ignore);
  setTimeout(() => handle.removeEventListener("click", ignore));
}

function distance(input, y) {
  const box = input.closest("li").getBoundingClientRect();
  return Math.abs((box.top + box.bottom) / 2 - y);
}
