// The two pins, A and B, that choose what is compared. Each is a group of radio buttons along the
// spine, so that arrow keys move it; it can also be dragged, over rows that are not in view too.

import {html} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";

const SAYS = {from: "Compare from", to: "Compare to"};
const LETTERS = {from: "A", to: "B"};
const STEPS = {
  ArrowDown: 1,
  ArrowRight: 1,
  ArrowUp: -1,
  ArrowLeft: -1,
  PageDown: 10,
  PageUp: -10,
  End: Infinity,
  Home: -Infinity,
};
const EDGE_PX = 40;
const FASTEST_PX = 24;

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
 * @param place which of how many rows it is: {at, of}
 */
export function pinButtons(address, words, pins, move, place) {
  const button = (side) => html`<label class="pin ${side}"
    @pointerdown=${(event) => drag(event, side, pins, move)}>
    <input type="radio" name="pin-${side}" value=${address}
      aria-label="${SAYS[side]} ${words}"
      aria-posinset=${place.at + 1} aria-setsize=${place.of}
      .checked=${live(pins[side] === address)}
      @change=${() => step(side, {...pins, [side]: address}, move)}
      @keydown=${(event) => press(event, side, pins, move)}
      @blur=${leave}>
    <span aria-hidden="true">${LETTERS[side]}</span>
  </label>`;
  return html`<span class="pins">${button("from")}${button("to")}</span>`;
}

// The browser's own arrow keys know only the buttons that are in the page.
function press(event, side, pins, move) {
  const steps = STEPS[event.key];
  if (!steps || event.altKey || event.ctrlKey || event.metaKey) {
    return;
  }
  event.preventDefault();
  const list = event.target.closest("revision-list");
  const next = list.keyAfter(event.target.value, steps);
  const button = list.reveal(next)?.querySelector(`input[name="pin-${side}"]`);
  if (button) {
    button.checked = true;
    button.focus({preventScroll: true});
  }
  step(side, {...pins, [side]: next}, move);
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
// Near an edge of what is seen, the list scrolls under it.
function drag(event, side, pins, move) {
  const handle = event.currentTarget;
  const button = handle.querySelector("input");
  if (!button.checked || event.button !== 0) {
    return;
  }
  const list = handle.closest("revision-list");
  let last = pins[side];
  let dragged = false;
  let pointerY = event.clientY;
  let frame = null;
  handle.setPointerCapture(event.pointerId);
  list.classList.add("dragging");
  list.hold(button.value);

  const choose = () => {
    const nearest = list.keyAt(pointerY);
    if (nearest !== last) {
      last = nearest;
      move({...pins, [side]: last}, dragged);
      dragged = true;
    }
  };
  const glide = () => {
    const {top, bottom} = list.seen();
    const above = Math.max(0, top + EDGE_PX - pointerY);
    const below = Math.max(0, pointerY - bottom + EDGE_PX);
    const speed = Math.min(FASTEST_PX, (below - above) / 2);
    frame = null;
    if (Math.abs(speed) >= 1) {
      list.scrollBy(Math.max(-FASTEST_PX, speed));
      choose();
      frame = requestAnimationFrame(glide);
    }
  };
  const follow = (moved) => {
    pointerY = moved.clientY;
    choose();
    frame ??= requestAnimationFrame(glide);
  };
  const drop = () => {
    if (dragged) {
      ignoreClick(handle);
    }
    cancelAnimationFrame(frame);
    list.classList.remove("dragging");
    list.letGo();
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
