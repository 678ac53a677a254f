// Saves a draft as a revision: the note, what changes, what others changed meanwhile, and choices.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {order} from "/api.js";
import {formulaPage, revisionName, short} from "/address.js";
import {count} from "/format.js";
import {changeList} from "/parts/acts.js";
import {choicesFor, conflictChooser, openConflicts} from "/parts/conflicts.js";
import {ask} from "/parts/dialogs.js";
import {keepNow} from "/parts/edit-keeping.js";
import {changeWords} from "/parts/edit-state.js";
import {textArea, textField} from "/parts/fields.js";
import {refused} from "/views/failure.js";

/** Asks for the note and saves. Resolves with what was written, or null when it was left. */
export function askSave(state, {bake}) {
  const form = {
    note: state.note || state.sheet.proposed_note,
    proposed: state.sheet.proposed_note,
    shortName: state.shortName,
    busy: false,
    failure: null,
    conflict: null,
    choices: {},
  };
  const {revision} = state.sheet.sheet;
  const title = state.base
    ? `Save as ${revisionName({commit: "", variant: state.base.variant, revision})}`
    : "Save as a new formula";
  return ask(title, (close, redraw) => content(state, form, {bake, close, redraw}), {wide: true});
}

function content(state, form, tools) {
  const choosing = form.conflict !== null;
  return html`<form
    class="save-form"
    novalidate
    @submit=${(event) => {
      event.preventDefault();
      save(state, form, tools);
    }}
  >
    ${form.failure
      ? html`<div class="refused" role="alert">${refused(form.failure)}</div>`
      : nothing}
    ${choosing ? conflictPart(state, form, tools) : notePart(state, form, tools)}
    <p class="actions">
      <button type="submit" class="main" ?disabled=${!ready(form)}
        aria-disabled=${String(form.busy)}>
        ${choosing ? "Save with these choices" : tools.bake ? "Save, then record a bake" : "Save"}
      </button>
      <button type="button" @click=${() => tools.close(null)}>Back to the draft</button>
    </p>
  </form>`;
}

function ready({conflict, choices}) {
  return !conflict || openConflicts(conflict.conflicts, choices).length === 0;
}

function notePart(state, form, {redraw}) {
  const {sheet} = state;
  const type = (values) => {
    Object.assign(form, values, {failure: null});
    changeWords(state, {
      note: form.note === form.proposed ? "" : form.note,
      shortName: form.shortName,
    });
    redraw();
  };
  return html`${textArea({
      id: "save-note",
      label: "Note",
      hint: "What and why. The first line stands in the timeline.",
      rows: 2,
      value: form.note,
      typed: (note) => type({note}),
    })}
    ${state.base
      ? nothing
      : textField({
          id: "save-short-name",
          label: "Short name",
          hint: `It is filed under this name, in small letters and hyphens. Left empty: ${
            sheet.proposed_name || "a number"
          }.`,
          size: "medium",
          value: form.shortName,
          typed: (shortName) => type({shortName}),
        })}
    ${state.base
      ? html`<h3>What changes against ${short(state.base.address)}</h3>
          ${changeList(sheet.changes, "Nothing yet.")}`
      : nothing}
    ${state.newer.length > 0
      ? html`<p class="meanwhile">
          ${count(state.newer.length, "revision")} came in meanwhile; saving merges with
          ${state.newer.length === 1 ? "it" : "them"}, or asks where both sides changed the same.
        </p>`
      : nothing}
    ${standing(sheet)}
    <details>
      <summary>Allergens and cautions</summary>
      <ul class="note-cautions">
        ${sheet.sheet.cautions.map((words) => html`<li>${words}</li>`)}
      </ul>
      <p class="quiet">Local food codes and licensed practice decide.</p>
    </details>`;
}

function standing({sheet}) {
  const missed = (sheet.goal?.checks ?? []).filter((check) => check.met === false);
  return missed.length === 0
    ? nothing
    : html`<p class="quiet">
        Goal missed: ${missed.map((check) => check.rule).join("; ")}. It can be saved all the same.
      </p>`;
}

function conflictPart(state, form, {redraw}) {
  const {revision, conflicts, remarks} = form.conflict;
  return html`<p>
      ${revision.author} saved ${short(revision.address)} meanwhile:
      <b>${revision.note}</b>. What does not touch is merged; here both sides changed the same.
    </p>
    ${conflictChooser(
      conflicts,
      form.choices,
      (field, choice) => {
        form.choices = {...form.choices, [field]: choice};
        redraw();
      },
      {names: {ours: "Yours", theirs: `${short(revision.address)}, ${revision.author}`}},
    )}
    ${remarks.map((words) => html`<p class="quiet">${words}</p>`)}`;
}

async function save(state, form, {close, redraw}) {
  if (form.busy || !ready(form)) {
    return;
  }
  Object.assign(form, {busy: true, failure: null});
  redraw();
  try {
    if (!(await keptAll(state))) {
      throw new api.Failure({
        reason: state.status,
        sentence: "The draft is not kept yet, so it cannot be saved.",
        hint: "What you typed is safe in this browser. Try again in a moment.",
      });
    }
    const written = await order("draft/save", {
      id: state.id,
      version: state.version,
      note: form.note,
      short_name: form.shortName,
      choices: form.conflict ? choicesFor(form.conflict.conflicts, form.choices) : {},
    });
    if (written.outcome !== "conflict") {
      close(written);
      return;
    }
    form.conflict = written;
    form.choices = choicesFor(written.conflicts, form.choices);
    await catchUp(state);
  } catch (thrown) {
    form.failure = api.expected(thrown);
    await catchUp(state);
  } finally {
    form.busy = false;
  }
  redraw();
}

async function keptAll(state) {
  return (await keepNow(state)) || keepNow(state);
}

// Saving marks the draft, which makes another version of it.
async function catchUp(state) {
  try {
    const {version, newer} = await api.draftState(state.id);
    Object.assign(state, {version, newer});
  } catch {
    // The next keeping finds out.
  }
}

/** What is said after saving: what was committed, and what came from others. */
export async function savedWords(written) {
  const {revision, base, merged_with: merged} = written;
  const said = `Saved as ${revision.address}: ${revision.note}`;
  const first = /[.!?]$/.test(said) ? said : `${said}.`;
  if (merged.length === 0) {
    return first;
  }
  const last = merged.at(-1);
  const who = [...new Set(merged.map((each) => each.author))].join(" and ");
  const what = await api.compare(base.address, last.address).then(
    (comparison) => ` From ${who} came: ${comparison.summary}`,
    () => "",
  );
  const names = merged.map((each) => short(each.address)).join(" and ");
  return `${first} Merged with ${names} by ${who}.${what}`;
}

/** Where to go after saving. */
export function afterSave(written, bake) {
  const {revision, base} = written;
  return bake
    ? `/record/${revision.address}`
    : formulaPage(revision.formula, {
        line: revision.variant,
        from: base?.address,
        to: base ? revision.address : undefined,
      });
}
