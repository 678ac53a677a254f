// Changing a bake that is recorded: the same form, joined with what others changed meanwhile.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {Failure, order} from "/api.js";
import {bakePage} from "/address.js";
import {preferences} from "/preferences.js";
import {addPiece, changeDocument, formOf} from "/parts/bake-document.js";
import {bakeForm, keptConflicts, keptState} from "/parts/bake-form.js";
import {found, local, newSlot} from "/parts/bake-keeper.js";
import {Typing} from "/parts/bake-typing.js";
import {choicesFor, conflictChooser, openConflicts} from "/parts/conflicts.js";
import {confirmed} from "/parts/dialogs.js";
import {notice} from "/parts/notices.js";

const edits = new Map();

/** Whether a bake is being changed on this page. */
export function isChanging(bake) {
  return Boolean(edits.get(nameOf(bake))?.typing);
}

/** A button to begin, or the form of what is being changed. */
export function bakeEdit(bake, place, tools) {
  const name = nameOf(bake);
  const edit = edits.get(name) ?? {typing: null, opening: false, conflicts: [], choices: {}};
  edits.set(name, edit);
  edit.tools = tools;
  const id = place.query.get("edit");
  const waits = id || local(newSlot(name));
  if (waits && !edit.typing && !edit.opening) {
    queueMicrotask(() => open(bake, edit, id));
  }
  if (!edit.typing) {
    return html`<p class="actions change-bake">
      <button type="button" ?disabled=${edit.opening} @click=${() => open(bake, edit, null)}>
        Change this bake
      </button>
    </p>`;
  }
  edit.typing.redraw = tools.redraw;
  return form(bake, edit);
}

/** The page is left; what was typed is kept. */
export function leaveEdit(bake) {
  const name = nameOf(bake);
  edits.get(name)?.typing?.left();
  edits.delete(name);
}

function nameOf(bake) {
  return `${bake.formula}/${bake.id}`;
}

async function open(bake, edit, id) {
  edit.opening = true;
  try {
    const {mass, temperature} = preferences();
    const filled = await api.bakeForm(bake.formula, bake.id, {mass, temperature});
    const slot = newSlot(nameOf(bake));
    const kept = id ? await found(id) : null;
    const unsent = kept ? null : local(slot);
    const typed = kept?.document ?? unsent?.document;
    const document = typed ? JSON.parse(typed) : changeDocument(bake, filled);
    edit.typing = new Typing({
      document,
      words: filled.words,
      kept,
      slot,
      fixedLetters: new Set(JSON.parse(document.base).pieces.map((piece) => piece.id)),
      begun: (draft) => name(bake, draft),
    });
    if (unsent) {
      edit.typing.keeper.touch();
    }
  } catch (thrown) {
    if (!(thrown instanceof Failure)) {
      throw thrown;
    }
    name(bake, null);
    notice({text: `${thrown.message} ${thrown.hint}`, warning: true});
  } finally {
    edit.opening = false;
    edit.tools.redraw();
    globalThis.document.getElementById("change-title")?.focus();
  }
}

// The address names the draft, so that a reload finds it.
function name(bake, draft) {
  if (location.pathname === bakePage(bake)) {
    const url = new URL(location.href);
    if (draft) {
      url.searchParams.set("edit", draft);
    } else {
      url.searchParams.delete("edit");
    }
    history.replaceState(history.state, "", url);
  }
}

function form(bake, edit) {
  const {typing} = edit;
  const {document} = typing;
  return html`<section class="change-form" aria-labelledby="change-title">
    <h2 id="change-title" tabindex="-1">Change this bake</h2>
    ${keptConflicts(typing)}
    ${bakeForm(typing)}
    <p class="actions piece-acts">
      <button type="button" @click=${() => addOne(typing, document)}>Add one piece</button>
    </p>
    ${conflicts(bake, edit)}
    <div class="record-bar">
      ${typing.failure
        ? html`<p class="problem" role="alert">
            ${typing.failure.message} ${typing.failure.hint}
          </p>`
        : nothing}
      <div class="record-acts">
        <button type="button" class="main" aria-disabled=${String(edit.saving ?? false)}
          @click=${() => save(bake, edit)}>Save the changes</button>
        <button type="button" class="plain" @click=${() => leaveAsItWas(bake, edit)}>
          Leave it as it was
        </button>
        ${keptState(typing)}
      </div>
    </div>
  </section>`;
}

function addOne(typing, document) {
  typing.chosen = addPiece(document);
  typing.touched();
}

function conflicts(bake, edit) {
  if (edit.conflicts.length === 0) {
    return nothing;
  }
  const open = openConflicts(edit.conflicts, edit.choices).length;
  return html`<section class="caution" aria-labelledby="both-title">
    <h2 id="both-title">Somebody changed this bake meanwhile</h2>
    <p>What does not touch is joined. Here both sides changed the same:</p>
    ${conflictChooser(
      edit.conflicts,
      edit.choices,
      (field, side) => {
        edit.choices[field] = side;
        edit.tools.redraw();
      },
      {names: {ours: "Yours", theirs: "Saved meanwhile"}, id: "both"},
    )}
    <p class="actions">
      <button type="button" class="main" ?disabled=${open > 0} @click=${() => save(bake, edit)}>
        Save with these choices
      </button>
    </p>
  </section>`;
}

async function save(bake, edit) {
  const {typing} = edit;
  if (edit.saving) {
    return;
  }
  edit.saving = true;
  typing.failure = null;
  edit.tools.redraw();
  try {
    const {document} = typing;
    const answer = await order("bake/change", {
      formula: bake.formula,
      bake: bake.id,
      base: document.base,
      form: formOf(document),
      choices: edit.choices,
      against: edit.against ?? null,
    });
    if (answer.outcome === "conflict") {
      edit.conflicts = answer.conflicts;
      edit.choices = choicesFor(answer.conflicts, edit.choices);
      edit.against = answer.against;
      edit.saving = false;
      edit.tools.redraw();
      globalThis.document.getElementById("both-title")?.scrollIntoView({block: "start"});
      return;
    }
    await done(bake, edit, answer);
  } catch (thrown) {
    if (!(thrown instanceof Failure)) {
      throw thrown;
    }
    typing.failure = thrown;
  } finally {
    edit.saving = false;
    edit.tools.redraw();
  }
}

async function done(bake, edit, answer) {
  await close(bake, edit);
  await edit.tools.again();
  const words = answer.outcome === "unchanged"
    ? "The bake says all of that already."
    : answer.merged
      ? "Saved, joined with what somebody else changed meanwhile."
      : "The changes are saved.";
  notice({text: [words, ...answer.remarks].join(" "), warning: answer.remarks.length > 0});
}

async function leaveAsItWas(bake, edit) {
  const sure = await confirmed(
    "Leave the bake as it was?",
    "What you changed in this form is thrown away.",
    "Throw the changes away",
    "Go on changing",
  );
  if (sure) {
    await close(bake, edit);
    edit.tools.redraw();
  }
}

// The draft of the changes is done with, here and on the server.
async function close(bake, edit) {
  const {keeper} = edit.typing;
  await keeper.sending;
  edit.typing.end();
  Object.assign(edit, {typing: null, conflicts: [], choices: {}, against: null});
  name(bake, null);
  if (keeper.id) {
    try {
      await order("bake/discard", {id: keeper.id, version: keeper.version});
    } catch (thrown) {
      if (!(thrown instanceof Failure)) {
        throw thrown;
      }
    }
  }
}
