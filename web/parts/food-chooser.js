// A field for a food: type some words, choose one of what the pantry and the built-in table have.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";
import {foods} from "/api.js";

const SHOWN = 12;
const WAIT_MS = 120;

/**
 * The state of one chooser; keep it with the data of the view.
 * chosen({slug, name}) is called when a food was taken; redraw draws the view.
 */
export function foodChooser({id, label, slug = "", name = "", chosen, redraw, unseen = false}) {
  return {id, label, unseen, slug, text: name, found: [], active: -1, open: false, chosen, redraw};
}

/** Draws it: a combobox with a list, after the ARIA Authoring Practices. */
export function foodField(state, problem) {
  const option = (at) => `${state.id}-option-${at}`;
  return html`<div class="field food-field ${problem ? "wrong" : ""}">
    <label for=${state.id} class=${state.unseen ? "unseen" : nothing}>${state.label}</label>
    <div class="control">
      <input
        id=${state.id}
        type="text"
        role="combobox"
        autocomplete="off"
        autocapitalize="none"
        spellcheck="false"
        aria-autocomplete="list"
        aria-expanded=${String(state.open)}
        aria-controls="${state.id}-list"
        aria-activedescendant=${state.open && state.active >= 0 ? option(state.active) : nothing}
        aria-invalid=${problem ? "true" : nothing}
        aria-describedby=${problem ? `${state.id}-problem` : nothing}
        .value=${live(state.text)}
        @input=${(event) => search(state, event.target.value)}
        @keydown=${(event) => press(state, event)}
        @blur=${() => leave(state)}
      />
      <ul
        id="${state.id}-list"
        role="listbox"
        aria-label="Foods"
        class="options"
        ?hidden=${!state.open}
      >
        ${state.found.map(
          (food, at) => html`<li
            id=${option(at)}
            role="option"
            aria-selected=${String(at === state.active)}
            class=${at === state.active ? "active" : ""}
            @pointerdown=${(event) => event.preventDefault()}
            @click=${() => take(state, food)}
          >
            ${food.name} <span class="quiet">${food.in_pantry ? "in the pantry" : ""}</span>
          </li>`,
        )}
        ${state.open && state.found.length === 0
          ? html`<li class="none" role="option" aria-disabled="true" aria-selected="false">
              No food of that name
            </li>`
          : nothing}
      </ul>
    </div>
    <p class="problem" id="${state.id}-problem" ?hidden=${!problem}>${problem ?? ""}</p>
  </div>`;
}

function search(state, text) {
  state.text = text;
  clearTimeout(state.timer);
  state.asking?.abort();
  if (!text.trim()) {
    Object.assign(state, {found: [], open: false, active: -1});
    state.redraw();
    return;
  }
  state.timer = setTimeout(async () => {
    const mine = new AbortController();
    state.asking = mine;
    try {
      const list = await foods(text, mine.signal);
      state.found = list.foods.filter((food) => food.problems.length === 0).slice(0, SHOWN);
      state.open = true;
      state.active = state.found.length > 0 ? 0 : -1;
      state.redraw();
    } catch {
      // Typing goes on; the next letter asks again.
    }
  }, WAIT_MS);
}

function press(state, event) {
  const last = state.found.length - 1;
  if (event.key === "ArrowDown" && state.open) {
    state.active = Math.min(last, state.active + 1);
  } else if (event.key === "ArrowUp" && state.open) {
    state.active = Math.max(0, state.active - 1);
  } else if (event.key === "Enter" && state.open && state.active >= 0) {
    take(state, state.found[state.active]);
  } else if (event.key === "Escape" && state.open) {
    state.open = false;
  } else {
    return;
  }
  event.preventDefault();
  state.redraw();
}

function take(state, food) {
  Object.assign(state, {slug: food.food, text: food.name, open: false, found: [], active: -1});
  state.chosen({slug: food.food, name: food.name});
  state.redraw();
}

function leave(state) {
  clearTimeout(state.timer);
  state.asking?.abort();
  if (state.open) {
    state.open = false;
    state.redraw();
  }
}
