// Short sentences about what was just done, read out and seen until the next one or the next page.

import {html, nothing, render} from "/lib/lit-html/lit-html.js";

const place = document.getElementById("notices");

/**
 * Says something: {text, link: [address, words], act: [words, run]}. Stays until dismissed,
 * replaced or left behind, so that nobody has to hurry.
 */
export function notice({text, link, act, warning = false}) {
  render(
    html`<div class="notice ${warning ? "warning" : ""}">
      <p>${text} ${link ? html`<a href=${link[0]}>${link[1]}</a>` : nothing}</p>
      ${act ? html`<button type="button" @click=${act[1]}>${act[0]}</button>` : nothing}
      <button type="button" class="plain" @click=${clearNotice}>Dismiss</button>
    </div>`,
    place,
  );
}

/** Takes it away. */
export function clearNotice() {
  render(nothing, place);
}
