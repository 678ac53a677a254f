// A dialog that looks ahead, asks for a note, writes, and looks anew when the notebook moved.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {expected} from "/api.js";
import {ask} from "/parts/dialogs.js";
import {textField} from "/parts/fields.js";
import {notice} from "/parts/notices.js";
import {refused} from "/views/failure.js";

const NOTE = ["Note", "What and why, in a line."];

/**
 * Opens it. Resolves with what write resolved with, or null when it was left.
 *
 * look(): what the server says would happen; asked again after a conflict.
 * start(look): what the form holds at first. draw(look): what is said. own(look, form, redraw): own
 * fields. fields(look): ["note"] or []. labels: {note: [label, hint]}. yes(look): the words of the
 * button, or null. write(look, form): the order.
 */
export async function actDialog(title, act) {
  const state = {busy: false, failure: null};
  try {
    state.look = await act.look();
  } catch (thrown) {
    const failure = expected(thrown);
    notice({text: `${failure.message} ${failure.hint}`.trim(), warning: true});
    return null;
  }
  state.form = act.start(state.look);
  return ask(title, (close, redraw) => content(act, state, close, redraw));
}

function content(act, state, close, redraw) {
  const {look, form, failure, busy} = state;
  const yes = act.yes(look);
  return html`<form
    novalidate
    @submit=${(event) => {
      event.preventDefault();
      if (yes && !state.busy) {
        write(act, state, close, redraw);
      }
    }}
  >
    ${failure ? html`<div class="refused" role="alert">${refused(failure)}</div>` : nothing}
    ${act.draw(look)} ${act.own?.(look, form, redraw) ?? nothing}
    ${act.fields(look).includes("note") ? noteField(act, form, redraw) : nothing}
    <p class="actions">
      ${yes
        ? html`<button type="submit" class="main" aria-disabled=${String(busy)}>${yes}</button>`
        : nothing}
      <button type="button" @click=${() => close(null)}>${yes ? "Cancel" : "Close"}</button>
    </p>
  </form>`;
}

function noteField(act, form, redraw) {
  const [label, hint] = act.labels?.note ?? NOTE;
  return textField({
    id: "act-note",
    label,
    hint,
    value: form.note,
    typed: (text) => {
      form.note = text;
      redraw();
    },
  });
}

async function write(act, state, close, redraw) {
  Object.assign(state, {busy: true, failure: null});
  redraw();
  try {
    close(await act.write(state.look, state.form));
    return;
  } catch (thrown) {
    state.failure = expected(thrown);
    if (state.failure.reason === "conflict") {
      state.look = await act.look().catch(() => state.look);
    }
  } finally {
    state.busy = false;
  }
  redraw();
}
