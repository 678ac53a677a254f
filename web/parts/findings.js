// Findings to tick: the trade's words in two groups, and one's own words.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";

const filters = new Map();

/**
 * Draws a chooser of findings. chosen is the list of words, changed in place; touched is called
 * after every change, redraw when only the chooser looks different.
 */
export function findingsField({id, legend, chosen, vocabulary, touched, redraw}) {
  const filter = filters.get(id) ?? "";
  const wanted = filter.trim().toLowerCase();
  const known = new Set(vocabulary.map((each) => each.word));
  const own = chosen.filter((word) => !known.has(word));
  const matching = (each) => each.word.includes(wanted) || chosen.includes(each.word);
  const group = (merit) => vocabulary.filter((each) => each.merit === merit && matching(each));
  const tick = (word, ticked) => {
    const at = chosen.indexOf(word);
    if (ticked && at < 0) {
      chosen.push(word);
    } else if (!ticked && at >= 0) {
      chosen.splice(at, 1);
    }
    touched();
  };
  const add = () => {
    const word = filter.trim();
    if (word) {
      filters.delete(id);
      const same = vocabulary.find((each) => each.word === wanted);
      tick(same ? same.word : word, true);
    }
  };
  const isNew = wanted && !known.has(wanted) && !chosen.includes(filter.trim());
  return html`<fieldset class="findings-field">
    <legend>${legend}</legend>
    <div class="field finding-filter">
      <label for="${id}-filter">Find a word, or add your own</label>
      <div class="control">
        <input
          id="${id}-filter"
          type="text"
          autocomplete="off"
          .value=${live(filter)}
          @input=${(event) => {
            filters.set(id, event.target.value);
            redraw();
          }}
          @keydown=${(event) => {
            if (event.key === "Enter") {
              event.preventDefault();
              add();
            }
          }}
        />
        ${isNew
          ? html`<button type="button" @click=${add}>Add “${filter.trim()}”</button>`
          : nothing}
      </div>
    </div>
    ${chips(id, "Faults", group(false).map((each) => each.word), chosen, tick)}
    ${chips(id, "Merits", group(true).map((each) => each.word), chosen, tick)}
    ${chips(id, "Own words", own, chosen, tick)}
  </fieldset>`;
}

function chips(id, name, words, chosen, tick) {
  if (words.length === 0) {
    return nothing;
  }
  return html`<div class="chips" role="group" aria-label=${name}>
    <span class="chips-name">${name}</span>
    ${words.map(
      (word) => html`<label class="chip">
        <input
          type="checkbox"
          name="${id}-findings"
          .checked=${live(chosen.includes(word))}
          @change=${(event) => tick(word, event.target.checked)}
        />
        <span>${word}</span>
      </label>`,
    )}
  </div>`;
}
