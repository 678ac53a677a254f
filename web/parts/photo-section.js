// The photos of a bake: seen, added, marked, taken away and brought back.

import {html} from "/lib/lit-html/lit-html.js";
import {repeat} from "/lib/lit-html/directives/repeat.js";
import * as api from "/api.js";
import {besidePage} from "/address.js";
import {moment} from "/format.js";
import {picture} from "/parts/bakes.js";
import {notice} from "/parts/notices.js";
import {beginEdit, editing, photoEditor, said} from "/parts/photo-editor.js";
import {chooseButtons, uploadList, uploadsOf} from "/parts/photo-uploads.js";
import {tray} from "/parts/tray.js";

/** The photos of a bake, and all that can be done with them. Changes bake.photos as they change. */
export function photoSection(bake, {redraw}) {
  const uploads = uploadsOf(bake);
  const show = (photos) => {
    bake.photos = photos;
    redraw();
  };
  uploads.changed = redraw;
  uploads.added = (changed) => show(changed.photos);
  uploads.look();
  return html`<div
    class="photo-section"
    @dragover=${draggedOver}
    @dragleave=${draggedOut}
    @drop=${(event) => dropped(event, uploads)}
  >
    <div class="photos">
      ${bake.photos.length === 0
        ? tray(bake)
        : repeat(
            bake.photos,
            (each) => each.file,
            (each) => photograph(bake, each, {show, redraw}),
          )}
    </div>
    ${uploadList(uploads)} ${chooseButtons(uploads)}
  </div>`;
}

function photograph(bake, each, tools) {
  if (editing(each)) {
    return photoEditor(bake, each, tools);
  }
  const words = each.caption ?? "No caption";
  return html`<figure class="photo" data-file=${each.file}>
    ${picture(each, 1200)}
    <figcaption>${words}${each.taken ? `, ${moment(each.taken)}` : ""}</figcaption>
    <p class="photo-acts">
      <button type="button" class="edit-photo" @click=${() => beginEdit(each, tools.redraw)}>
        Marks and words
      </button>
      <a class="button" href=${besidePage({right: each.file})}>Compare</a>
      <button type="button" class="plain" @click=${() => remove(bake, each, tools)}>
        Remove
      </button>
    </p>
  </figure>`;
}

async function remove(bake, each, {show}) {
  const order = {formula: bake.formula, bake: bake.id, photo: each.file, base: said(each)};
  try {
    const answer = await api.order("photo/remove", order);
    show(answer.bake.photos);
    notice({
      text: "The photo was removed.",
      act: ["Put it back", () => bringBack(bake, each, answer.commit, show)],
    });
  } catch (failure) {
    notice({text: `${failure.message} ${failure.hint}`, warning: true});
    if (failure.reason === "conflict" || failure.reason === "not_found") {
      show((await api.bake(bake.formula, bake.id)).photos);
    }
  }
}

async function bringBack(bake, each, commit, show) {
  const order = {formula: bake.formula, bake: bake.id, photo: each.file, commit};
  try {
    const answer = await api.order("photo/bring-back", order);
    show(answer.bake.photos);
    notice({text: "The photo is back."});
  } catch (failure) {
    notice({text: `${failure.message} ${failure.hint}`, warning: true});
  }
}

function carriesFiles(event) {
  return [...(event.dataTransfer?.types ?? [])].includes("Files");
}

function draggedOver(event) {
  if (carriesFiles(event)) {
    event.preventDefault();
    event.currentTarget.classList.add("dropping");
  }
}

function draggedOut(event) {
  if (!event.currentTarget.contains(event.relatedTarget)) {
    event.currentTarget.classList.remove("dropping");
  }
}

function dropped(event, uploads) {
  event.currentTarget.classList.remove("dropping");
  if (carriesFiles(event)) {
    event.preventDefault();
    uploads.take(event.dataTransfer.files);
  }
}
