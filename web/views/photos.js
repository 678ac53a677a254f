// Two photos beside each other, zoomed and moved together, or one over the other with a slider.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {ref} from "/lib/lit-html/directives/ref.js";
import * as api from "/api.js";
import {bakePage, besidePage, photo as photoAddress, short, worksheetPage} from "/address.js";
import {flowing, fullDay, moment} from "/format.js";
import {sideMark} from "/parts/bakes.js";
import {LinkedView} from "/parts/linked-view.js";
import {choosePhoto} from "/parts/photo-chooser.js";
import {settingsOf} from "/parts/photo-marks.js";

const SHARP_FROM = 1.6;
const SIDES = [
  {side: "left", which: "from", letter: "A"},
  {side: "right", which: "to", letter: "B"},
];

export const besideView = {
  async load({query}, {before, signal}) {
    const asked = {left: fileOf(query.get("left")), right: fileOf(query.get("right"))};
    const formulas = [asked.left, asked.right, query.get("formula") && `x/${query.get("formula")}`]
      .filter(Boolean)
      .map((file) => file.split("/")[1]);
    const shelves = new Map();
    await Promise.all(
      [...new Set(formulas)].map(async (formula) => {
        shelves.set(formula, await api.photos(formula, signal));
      }),
    );
    const files = completed(asked, [...shelves.values()]);
    const same = before && before.files.left === files.left && before.files.right === files.right;
    return {
      files,
      shelves,
      as: query.get("as") === "slider" ? "slider" : "sides",
      view: same ? before.view : null,
      share: before?.share ?? 0.5,
      letters: before?.letters ?? true,
    };
  },

  title: () => "Two photos beside each other",

  draw(data, place, tools) {
    data.view ??= new LinkedView(() => tools.redraw());
    data.view.changed = tools.redraw;
    const shown = Object.fromEntries(
      SIDES.map(({side}) => [side, found(data, data.files[side])]),
    );
    return html`<article class="page beside-page">
      <header>
        <h1>Photos beside each other</h1>
        <p class="sub">A is before, B is after. Both are zoomed and moved together.</p>
      </header>
      ${controls(data, tools)}
      ${data.as === "slider" && shown.left && shown.right
        ? slider(data, shown, tools)
        : sides(data, shown)}
      ${hint()}
      <div class="beside-facts">
        ${SIDES.map((each) => facts(data, each, shown[each.side], tools))}
      </div>
    </article>`;
  },

  left: (data) => data.view?.attach(null),
};

function fileOf(text) {
  return text ? `photos/${text}` : null;
}

// What was not asked for: a photo of the nearest other bake, before on the left, after on the
// right; of its photos the one at the same place, as people take them in the same order.
function completed({left, right}, shelves) {
  if (left && right) {
    return {left, right};
  }
  const bakes = shelves.flatMap((shelf) =>
    shelf.bakes.map((bake) => bake.photos.map((each) => each.file)),
  );
  const given = left ?? right ?? bakes.at(-1)?.[0] ?? null;
  const at = bakes.findIndex((files) => files.includes(given));
  const place = Math.max(0, bakes[at]?.indexOf(given) ?? 0);
  const near = left ? [bakes[at + 1], bakes[at - 1]] : [bakes[at - 1], bakes[at + 1]];
  const other = near.find((files) => files)
    ?? bakes[at]?.filter((file) => file !== given)
    ?? [];
  const file = other[Math.min(place, other.length - 1)] ?? null;
  return left ? {left, right: file} : {left: file, right: given};
}

/** The photo of a file with its bake; null when it is not there. */
function found({shelves}, file) {
  for (const shelf of shelves.values()) {
    for (const bake of shelf.bakes) {
      const photo = bake.photos.find((each) => each.file === file);
      if (photo) {
        return {photo, bake, shelf};
      }
    }
  }
  return null;
}

function controls(data, tools) {
  const {view, files, as} = data;
  const other = (to) => besidePage({...files, as: to === "slider" ? "slider" : null});
  return html`<div class="beside-controls">
    <p class="ways" role="group" aria-label="How they are shown">
      <a class="button" href=${other("sides")} aria-current=${as === "sides" ? "true" : nothing}
        >Side by side</a
      >
      <a class="button" href=${other("slider")} aria-current=${as === "slider" ? "true" : nothing}
        >With a slider</a
      >
    </p>
    <p class="zooms" role="group" aria-label="Zoom">
      <button type="button" @click=${() => view.zoomOut()} ?disabled=${view.scale <= 1}>
        Zoom out
      </button>
      <output>${Math.round(view.scale * 100)} %</output>
      <button type="button" @click=${() => view.zoomIn()}>Zoom in</button>
      <button type="button" @click=${() => view.whole()} ?disabled=${view.scale <= 1}>
        Whole photos
      </button>
    </p>
    <label class="tick">
      <input
        type="checkbox"
        .checked=${data.letters}
        @change=${(event) => {
          data.letters = event.target.checked;
          tools.redraw();
        }}
      />
      <span>Letters of the pieces</span>
    </label>
    <button
      type="button"
      @click=${() =>
        tools.go(besidePage({left: files.right, right: files.left, as: asked(as)}), {
          replace: true,
        })}
    >
      Swap A and B
    </button>
  </div>`;
}

function asked(as) {
  return as === "slider" ? "slider" : null;
}

function stage(data, words, content) {
  const {view} = data;
  const wheel = {handleEvent: (event) => view.wheeled(event), passive: false};
  return html`<div
      class="beside-stage ${data.as}"
      role="group"
      tabindex="0"
      aria-label=${words}
      aria-describedby="stage-keys"
      ${ref((element) => element && view.attach(element))}
      @keydown=${(event) => view.keyed(event)}
      @wheel=${wheel}
      @pointerdown=${(event) => view.pressed(event)}
      @pointermove=${(event) => view.dragged(event)}
      @pointerup=${(event) => view.released(event)}
      @pointercancel=${(event) => view.released(event)}
    >
      ${content}
    </div>`;
}

function hint() {
  return html`<p class="hint" id="stage-keys">
    Drag to move, tap a place to bring it into the middle, pinch to zoom. The wheel zooms after a
    click on the photos. Keys: arrows, +, − and 0.
  </p>`;
}

function sides(data, shown) {
  return stage(
    data,
    "Photos A and B side by side",
    SIDES.map(
      ({side, which}) => html`<div class="frame">
        ${shown[side]
          ? layer(data, side, shown[side])
          : html`<p class="nothing">${
              data.files[side] ? "This photo is not there any more." : "No photo is chosen."
            }</p>`}
        <span class="corner">${sideMark(which)}</span>
      </div>`,
    ),
  );
}

function layer(data, side, {photo, bake}) {
  const sharp = data.view.scale >= SHARP_FROM;
  return html`<div class="layer" data-side=${side}>
    <img
      src=${photoAddress(photo.file, sharp ? null : 1200)}
      alt=${photo.alternative ?? photo.caption ?? `Photo of the bake of ${fullDay(bake.time)}`}
      draggable="false"
      @load=${() => data.view.apply()}
    />
    ${data.letters
      ? photo.marks.map(
          (mark) => html`<span
            class="piece-letter"
            aria-hidden="true"
            data-x=${mark.x}
            data-y=${mark.y}
            >${mark.piece}</span
          >`,
        )
      : nothing}
  </div>`;
}

function slider(data, shown, tools) {
  const percent = Math.round(data.share * 100);
  const moved = (share) => {
    data.share = Math.min(1, Math.max(0, share));
    tools.redraw();
  };
  return html`${stage(
      data,
      "Photo B over photo A",
      html`<div class="frame">
        ${layer(data, "left", shown.left)}
        <div
          class="over"
          ${ref((element) =>
            element?.style.setProperty("clip-path", `inset(0 0 0 ${100 * data.share}%)`),
          )}
        >
          ${layer(data, "right", shown.right)}
        </div>
        <span class="corner">${sideMark("from")}</span>
        <span class="corner right">${sideMark("to")}</span>
        <div
          class="divider"
          ${ref((element) => element?.style.setProperty("left", `${100 * data.share}%`))}
          @pointerdown=${(event) => divide(event, moved)}
        ></div>
      </div>`,
    )}
    <div class="divide">
      <label for="divide">${sideMark("from")} Before <span class="unseen">to</span></label>
      <input
        id="divide"
        type="range"
        min="0"
        max="100"
        step="1"
        aria-label="Where photo B begins"
        aria-valuetext=${`A ${percent} %, B ${100 - percent} %`}
        .value=${String(percent)}
        @input=${(event) => moved(event.target.valueAsNumber / 100)}
      />
      <span>After ${sideMark("to")}</span>
    </div>`;
}

function divide(event, moved) {
  const element = event.currentTarget;
  const box = element.parentElement.getBoundingClientRect();
  const move = (next) => moved((next.clientX - box.left) / box.width);
  const end = () => element.removeEventListener("pointermove", move);
  element.setPointerCapture(event.pointerId);
  element.addEventListener("pointermove", move);
  element.addEventListener("pointerup", end, {once: true});
  element.addEventListener("pointercancel", end, {once: true});
}

function facts(data, {side, which, letter}, shown, tools) {
  const choose = async () => {
    const shelf = shown?.shelf ?? [...data.shelves.values()][0];
    const file = await choosePhoto(`Choose photo ${letter}`, shelf, data.files[side]);
    if (file) {
      const files = {...data.files, [side]: file};
      tools.go(besidePage({...files, as: asked(data.as)}), {replace: true});
    }
  };
  return html`<section aria-label="Photo ${letter}">
    <h2>
      ${sideMark(which)} ${shown ? shown.photo.caption ?? fullDay(shown.bake.time) : "No photo"}
    </h2>
    ${shown ? ofBake(data, side, shown) : nothing}
    <p class="actions">
      <button type="button" @click=${choose} ?disabled=${data.shelves.size === 0}>
        Choose another photo…
      </button>
    </p>
  </section>`;
}

function ofBake({view}, side, {photo, bake, shelf}) {
  const page = bakePage({formula: shelf.formula, id: bake.id});
  return html`<p>
      <a href=${page}>Bake of ${fullDay(bake.time)}</a> of ${shelf.name},
      <a href=${worksheetPage(bake.address)}>${short(bake.address)}</a>${bake.baker
        ? `, ${bake.baker}`
        : ""}${photo.taken ? `; taken ${moment(photo.taken)}` : ""}
    </p>
    <ul class="beside-pieces">
      ${bake.pieces.map((piece) => {
        const mark = photo.marks.find((each) => each.piece === piece.id);
        const words = [settingsOf(piece), piece.findings.map((each) => each.word).join(", ")]
          .filter(Boolean)
          .join("; ");
        return html`<li>
          ${mark
            ? html`<button
                type="button"
                aria-label=${`Look at piece ${piece.id} on photo ${side === "left" ? "A" : "B"}`}
                @click=${() => view.lookAt(side, mark)}
              >
                ${piece.id}
              </button>`
            : html`<b>${piece.id}</b>`}
          <span>${words ? flowing(words) : html`<span class="quiet">unknown</span>`}</span>
        </li>`;
      })}
    </ul>`;
}
