// Two people changed the same: both sides beside each other, with a choice for each.

import {html} from "/lib/lit-html/lit-html.js";

/** Draws the clashes of a form; what is picked stands in form.picks. */
export function bothSides(form, what) {
  return html`<section class="both-sides" id="both-sides" tabindex="-1" role="alert">
    <h2>Somebody changed ${what} meanwhile</h2>
    <p>Nothing is saved yet, and nothing that you typed is lost. Choose for each:</p>
    ${form.clash.clashes.map((each) => clash(form, each))}
  </section>`;
}

function clash(form, each) {
  const side = (name, words, text) => html`<label class="side-choice ${name}">
    <input
      type="radio"
      name="pick-${each.fact}"
      .checked=${form.picks[each.fact] === name}
      @change=${() => {
        form.picks[each.fact] = name;
        form.tools.redraw();
      }}
    />
    <span class="who">${words}</span>
    <span class="text">${text || "nothing"}</span>
  </label>`;
  return html`<fieldset class="clash-choice">
    <legend>${each.label} <span class="quiet">was ${each.base || "nothing"}</span></legend>
    <div class="side-choices">
      ${side("theirs", "Saved by somebody else", each.theirs)}
      ${side("mine", "Typed by you", each.mine)}
    </div>
  </fieldset>`;
}
