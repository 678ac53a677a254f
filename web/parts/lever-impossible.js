// Why a wish cannot be granted, and how near one can come.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {capital, flowing} from "/format.js";

/** Nothing when it can. */
export function impossible(sheet, asked, changed) {
  const {impossible: why} = sheet;
  if (!why) {
    return nothing;
  }
  return html`<section class="lever-impossible">
    <h2>Why not</h2>
    ${why.because.length > 1
      ? html`<p>These contradict each other; without any one of them the others could be kept.</p>
          <ul class="lever-because">${why.because.map(condition)}</ul>`
      : html`<p>No masses give ${flowing(why.because[0])}.</p>`}
    <h2>How near one can come</h2>
    <ul class="lever-nearest">
      ${why.nearest.map(
        (near, index) => html`<li>
          <span>${capital(flowing(near.sentence))}</span>
          ${near.instead
            ? html`<button type="button"
                @click=${() => changed({want: instead(sheet, asked, index, near)})}>
                Ask for ${flowing(near.instead)}
              </button>`
            : nothing}
        </li>`,
      )}
    </ul>
  </section>`;
}

function condition(words) {
  return html`<li>${capital(flowing(words))}</li>`;
}

// The wishes as they were typed, unless one of them stands for several.
function instead(sheet, asked, index, near) {
  const typed = asked.want.filter((text) => text.trim() !== "");
  const all = sheet.asked.wishes;
  return (typed.length === all.length ? typed : all.map((wish) => wish.typed)).with(
    index,
    near.instead,
  );
}
