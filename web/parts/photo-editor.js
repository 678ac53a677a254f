// What is said of one photo: which piece lies where, the caption and the alternative text.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {capital} from "/format.js";
import {textArea, textField} from "/parts/fields.js";
import {notice} from "/parts/notices.js";
import {choices, chosenState} from "/parts/photo-conflict.js";
import {markList, markStage, pieceChoice, unmarked} from "/parts/photo-marks.js";

const KEPT_AS = "ovenmark.photo.";

// What is being changed, by the photo's file.
const edits = new Map();

/** What a photo says, as orders carry it. */
export function said({caption, alternative, marks}) {
  return {caption, alternative, marks: marks.map(({piece, x, y}) => ({piece, x, y}))};
}

/** Whether a photo is being changed; one that was left unsaved is taken up again. */
export function editing({file}) {
  if (!edits.has(file)) {
    const left = read(file);
    if (left) {
      edits.set(file, {...left, problem: null, conflicts: [], live: ""});
    }
  }
  return edits.has(file);
}

/** Begins to change a photo. */
export function beginEdit(photo, redraw) {
  edits.set(photo.file, {
    base: said(photo),
    seen: null,
    wanted: said(photo),
    piece: null,
    problem: null,
    conflicts: [],
    live: "",
  });
  redraw();
  find(photo.file, "h2")?.focus();
}

function find(file, selector) {
  return document.querySelector(`[data-file="${CSS.escape(file)}"] ${selector}`);
}

/** The form; tools: show(photos) after a change was saved, redraw. */
export function photoEditor(bake, photo, {show, redraw}) {
  const edit = edits.get(photo.file);
  edit.piece ??= unmarked(bake, edit)[0]?.id ?? bake.pieces[0]?.id ?? null;
  const changed = (spoken = "") => {
    edit.live = spoken;
    keep(photo.file, edit);
    redraw();
  };
  const close = () => {
    edits.delete(photo.file);
    forget(photo.file);
    redraw();
    find(photo.file, ".edit-photo")?.focus();
  };
  const save = () => saved(bake, photo, edit, {show, redraw, close});
  const id = photo.file.replace(/[^\w]+/g, "-");
  return html`<section class="photo-editor" data-file=${photo.file} aria-labelledby="${id}-head">
    <h2 id="${id}-head" tabindex="-1">Marks and words</h2>
    ${bake.pieces.length > 0
      ? pieceChoice(bake, edit, changed, id)
      : html`<p class="quiet">
          The bake has no pieces yet. Note its pieces first, then mark where each lies.
        </p>`}
    ${markStage(bake, photo, edit, changed, id)}
    <p class="unseen" role="status">${edit.live}</p>
    ${markList(edit, changed, id)}
    <div class="photo-words">
      ${textField({
        id: `${id}-caption`,
        label: "Caption",
        value: edit.wanted.caption,
        typed: (text) => typed(edit, "caption", text, changed),
        problem: problemOf(edit, "caption"),
      })}
      ${textArea({
        id: `${id}-alternative`,
        label: "Alternative text",
        rows: 2,
        value: edit.wanted.alternative,
        typed: (text) => typed(edit, "alternative", text, changed),
        hint: "What the photo shows, for whoever does not see it. Empty: the caption is read.",
        problem: problemOf(edit, "alternative"),
      })}
    </div>
    ${edit.conflicts.length > 0 ? choices(edit, redraw, id) : nothing}
    ${edit.problem && !["caption", "alternative"].includes(edit.problem.where)
      ? html`<p class="problem" role="alert">${edit.problem.message} ${edit.problem.hint}</p>`
      : nothing}
    <p class="actions">
      <button type="button" class="main" aria-disabled=${String(edit.saving ?? false)} @click=${save}>
        ${edit.conflicts.length > 0 ? "Save what I chose" : "Save"}
      </button>
      <button type="button" @click=${close}>
        ${isSame(edit.wanted, edit.base) ? "Close" : "Throw my changes away"}
      </button>
    </p>
  </section>`;
}

function typed(edit, field, text, changed) {
  edit.wanted[field] = text === "" ? null : text;
  changed();
}

function problemOf(edit, field) {
  return edit.problem?.where === field ? `${edit.problem.message} ${edit.problem.hint}` : null;
}

function isSame(one, other) {
  return JSON.stringify(one) === JSON.stringify(other);
}

async function saved(bake, photo, edit, {show, redraw, close}) {
  if (edit.saving) {
    return;
  }
  if (edit.conflicts.length > 0) {
    edit.wanted = chosenState(edit);
  }
  edit.saving = true;
  edit.problem = null;
  redraw();
  try {
    const answer = await api.order("photo/change", {
      formula: bake.formula,
      bake: bake.id,
      photo: photo.file,
      base: edit.base,
      seen: edit.seen,
      wanted: edit.wanted,
    });
    edit.conflicts = answer.conflicts.map((each) => ({...each, choice: "mine"}));
    if (answer.outcome === "conflict") {
      edit.seen = said(answer.photo);
      keep(photo.file, edit);
    } else {
      close();
      show(answer.bake.photos);
      notice({text: outcome(answer)});
    }
  } catch (failure) {
    edit.problem = failure;
  } finally {
    edit.saving = false;
    redraw();
  }
}

function outcome({outcome: what, merged}) {
  const words = what === "unchanged" ? "nothing was changed" : "the photo is saved";
  return capital(words) + (merged ? ", with what somebody else changed meanwhile." : ".");
}

function keep(file, {base, seen, wanted}) {
  try {
    sessionStorage.setItem(KEPT_AS + file, JSON.stringify({base, seen, wanted}));
  } catch {
    // A browser that keeps nothing still lets one save.
  }
}

function forget(file) {
  try {
    sessionStorage.removeItem(KEPT_AS + file);
  } catch {
    // nothing was kept
  }
}

function read(file) {
  try {
    return JSON.parse(sessionStorage.getItem(KEPT_AS + file));
  } catch {
    return null;
  }
}
