// The same draft was typed into at two places: both are shown, and nothing of either is lost.

import {html} from "/lib/lit-html/lit-html.js";
import {Failure, order} from "/api.js";
import {moment} from "/format.js";
import {changeList} from "/parts/acts.js";
import {ask} from "/parts/dialogs.js";
import {baseAddress} from "/parts/edit-state.js";
import {refused} from "/views/failure.js";

/**
 * Asks which of two versions goes on; the other becomes a draft of its own. theirs is the draft as
 * the viewer has it, ours {document, shortName, note}. Resolves with {take: "ours" | "theirs",
 * other: id of the other's draft}, or null when it was left open.
 */
export async function askBoth(state, theirs, ours) {
  const asked = {from: theirs.document, to: ours.document, base: lineOf(state)};
  const {changes} = await order("draft/differences", asked).catch(() => ({changes: null}));
  const form = {busy: false, failure: null};
  return ask("This draft was changed at two places", (close, redraw) => {
    const take = async (side) => {
      if (form.busy) {
        return;
      }
      Object.assign(form, {busy: true, failure: null});
      redraw();
      try {
        const other = side === "ours" ? {...theirs} : ours;
        const {id} = await order("draft/begin", {
          document: other.document,
          base: baseAddress(state),
        });
        close({take: side, other: id});
        return;
      } catch (thrown) {
        if (!(thrown instanceof Failure)) {
          throw thrown;
        }
        Object.assign(form, {busy: false, failure: thrown});
      }
      redraw();
    };
    return html`<p>
        One is what you typed here. The other was kept by ${theirs.author},
        ${moment(theirs.time)}. Choose which of them you go on with; the other stays as a draft of
        its own.
      </p>
      <h3>Yours against the other</h3>
      ${changes === null
        ? html`<p class="quiet">What differs cannot be told now.</p>`
        : changeList(changes, "They differ in what cannot be read yet, or in the note.")}
      ${form.failure ? refused(form.failure) : ""}
      <p class="actions">
        <button type="button" class="main" aria-disabled=${String(form.busy)} @click=${() => take("ours")}>
          Go on with yours
        </button>
        <button type="button" aria-disabled=${String(form.busy)} @click=${() => take("theirs")}>
          Go on with the other
        </button>
        <button type="button" class="plain" @click=${() => close(null)}>Decide later</button>
      </p>`;
  });
}

function lineOf({base}) {
  return base ? base.address : null;
}
