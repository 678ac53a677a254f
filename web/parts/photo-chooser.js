// Chooses one of the photos of a formula, bake by bake.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {photo as photoAddress, short} from "/address.js";
import {fullDay} from "/format.js";
import {ask} from "/parts/dialogs.js";
import {choiceField} from "/parts/fields.js";
import {notice} from "/parts/notices.js";

/** Opens the choice; resolves with the photo's file, or null. shelf is what is shown first. */
export async function choosePhoto(title, shelf, chosen) {
  let shown = shelf;
  let formulas = [];
  return ask(
    title,
    (close, redraw) => {
      if (formulas.length === 0) {
        formulas = [{formula: shelf.formula, name: shelf.name}];
        api.formulas().then(
          (list) => {
            formulas = list.formulas;
            redraw();
          },
          () => {},
        );
      }
      const turnTo = async (formula) => {
        try {
          shown = await api.photos(formula);
          redraw();
        } catch (failure) {
          notice({text: failure.message, warning: true});
        }
      };
      return html`${formulas.length > 1
          ? choiceField({
              id: "photo-formula",
              label: "Formula",
              value: shown.formula,
              options: formulas.map((each) => [each.formula, each.name]),
              chosen: turnTo,
            })
          : nothing}
        ${shown.bakes.length === 0
          ? html`<p class="quiet">No bake of ${shown.name} has a photo yet.</p>`
          : html`<ul class="shelf">
              ${[...shown.bakes].reverse().flatMap((bake) => bakeOf(bake, chosen, close))}
            </ul>`}
        <p class="actions"><button type="button" @click=${() => close()}>Cancel</button></p>`;
    },
    {wide: true},
  );
}

function bakeOf(bake, chosen, close) {
  return bake.photos.map(
    (each) => html`<li>
      <button
        type="button"
        aria-pressed=${each.file === chosen ? "true" : "false"}
        @click=${() => close(each.file)}
      >
        <img src=${photoAddress(each.file, 320)} alt="" loading="lazy" />
        <b>${fullDay(bake.time)}, ${short(bake.address)}</b>
        <span>${each.caption ?? each.alternative ?? `Photo of ${bake.id}`}</span>
      </button>
    </li>`,
  );
}
