// Recording a bake: which revision, its pieces, their timers, what was measured, seen and tasted.

import {html, nothing, render} from "/lib/lit-html/lit-html.js";
import {ref} from "/lib/lit-html/directives/ref.js";
import * as api from "/api.js";
import {Failure, order} from "/api.js";
import {bakePage, formulaPage, short, worksheetPage} from "/address.js";
import {preferences} from "/preferences.js";
import {count, day, fullDay, mass} from "/format.js";
import {addPiece, formOf, isBlank, newDocument, settingTexts} from "/parts/bake-document.js";
import {bakeForm, keptConflicts, keptState} from "/parts/bake-form.js";
import {found, local, newSlot} from "/parts/bake-keeper.js";
import {Typing} from "/parts/bake-typing.js";
import {choiceField} from "/parts/fields.js";
import {gridField} from "/parts/grid-field.js";
import {notice} from "/parts/notices.js";
import {timers} from "/parts/timers.js";
import {timed, titleOf} from "/parts/timer-state.js";
import {leaveWatch, unwatch, watch} from "/parts/timer-watch.js";
import {unfinishedList} from "/parts/unfinished-bakes.js";

export const recordView = {
  async load({parts, query}, {before, signal}) {
    const id = query.get("draft");
    if (id && before?.typing.keeper.id === id && isOfItsRevision(before)) {
      return before;
    }
    const kept = id ? await found(id, signal) : null;
    const typed = kept ? JSON.parse(kept.document) : null;
    const start = await api.bakeStart(typed?.address ?? parts.address, signal);
    if (before) {
      leave(before);
    }
    return opened(start, kept, typed);
  },

  title: ({start, typing}) => {
    const clock = titleOf(typing.document, Date.now());
    return `${clock ? clock + " · " : ""}Record a bake of ${start.name} ${short(
      start.revision.address,
    )}`;
  },

  draw(data, place, tools) {
    const {start, typing} = data;
    const {document} = typing;
    typing.redraw = () => {
      tools.redraw();
      drawClock(data);
    };
    data.go = tools.go;
    queueMicrotask(() => drawClock(data));
    return html`<div class="page sheet-of-paper record-page">
      <header>
        <h1>Record a bake</h1>
        ${revision(data)}
      </header>
      ${drafts(start)}
      ${unfinished(data)}
      ${keptConflicts(typing)} ${pieces(data)}
      <section
        class="timers"
        aria-labelledby="timers-title"
        ?hidden=${document.form.pieces.length === 0}
        ${ref(data.clockRef)}
      ></section>
      ${bakeForm(typing, {
        hint:
          start.dough_per_piece_g === null
            ? nothing
            : html`The formula makes pieces of ${mass(start.dough_per_piece_g)} dough.`,
      })}
      ${recordBar(data)}
    </div>`;
  },

  left: leave,

  shortcuts: (data) => [
    {key: "r", does: "Record this bake", run: () => record(data)},
    {
      key: "s",
      does: "Start all timers",
      run: () => data.clock?.querySelector(".timer-head .main")?.click(),
    },
  ],
};

// What was typed is kept, and timers that run go on.
function leave({name, typing}) {
  const {id, ended} = typing.keeper;
  typing.left();
  leaveWatch(
    name,
    typing.document,
    id && !ended ? `/record/${typing.document.address}?draft=${id}` : null,
  );
}

function isOfItsRevision({start, typing}) {
  return start.revision.address === typing.document.address;
}

function opened(start, kept, typed) {
  const slot = newSlot(start.formula);
  const unsent = kept ? null : local(slot);
  const document = typed
    ?? (unsent ? JSON.parse(unsent.document) : newDocument(start, preferences()));
  if (!kept && unsent && document.address !== start.revision.address) {
    Object.assign(document, {address: start.revision.address, blob: start.revision.blob});
  }
  const typing = new Typing({
    document,
    words: start.words,
    kept,
    slot,
    setting: firstSteps(start, document.form.units),
    begun: (id) => begun(data, id),
  });
  const data = {
    start,
    typing,
    name: kept?.id ?? slot,
    clock: null,
    recording: false,
    clockRef: (element) => {
      data.clock = element ?? null;
    },
  };
  const planned = kept ? [] : plannedPieces();
  planned.forEach((each) => addPiece(document, settingTexts(each, document.form.units)));
  if (unsent || planned.length > 0) {
    typing.keeper.touch();
  }
  watch(data.name, document, (now) => ticked(data, now), "");
  return data;
}

// Pieces that another page planned: ?plan=190 °C 22 min, 205 °C 18 min. They are taken over once.
function plannedPieces() {
  const url = new URL(location.href);
  const plan = url.searchParams.get("plan");
  if (!plan || !url.pathname.startsWith("/record/")) {
    return [];
  }
  url.searchParams.delete("plan");
  history.replaceState(history.state, "", url);
  return plan
    .split(",")
    .map((each) => /^\s*(\d+(?:\.\d+)? °[CF]) (\d+(?:\.\d+)?) min\s*$/.exec(each))
    .filter(Boolean)
    .map(([, temperature, minutes]) => ({temperature, minutes}));
}

// What the first press of a stepper puts into an empty field: the formula's own setting.
function firstSteps(start, units) {
  return start.setting ? settingTexts(start.setting, units) : null;
}

// From now on the address names the draft, so that a reload finds it.
function begun(data, id) {
  unwatch(data.name);
  data.name = id;
  watch(id, data.typing.document, (now) => ticked(data, now), "");
  const url = new URL(location.href);
  if (url.pathname.startsWith("/record/")) {
    url.searchParams.set("draft", id);
    history.replaceState(history.state, "", url);
  }
}

function ticked(data, now) {
  if (timed(data.typing.document).length > 0) {
    drawClock(data);
    document.title = `${recordView.title(data, now)} · Ovenmark`;
  }
}

function drawClock(data) {
  const {typing, clock} = data;
  if (!clock?.isConnected || typing.document.form.pieces.length === 0) {
    return;
  }
  render(
    timers({
      document: typing.document,
      fresh: () => typing.fresh(),
      minutesOf: (piece) => typing.minutesOf(piece),
      touched: () => {
        bakedSince(typing.document);
        typing.touched();
      },
    }),
    clock,
  );
}

// The first timer tells when it went into the oven, unless that was typed.
function bakedSince(document) {
  const first = timed(document)[0]?.timer.since;
  if (first && document.form.time === document.opened) {
    document.form.time = timeText(new Date(first));
    document.opened = null;
  }
}

function timeText(time) {
  const two = (value) => String(value).padStart(2, "0");
  const date = [time.getFullYear(), two(time.getMonth() + 1), two(time.getDate())].join("-");
  return `${date} ${two(time.getHours())}:${two(time.getMinutes())}`;
}

function revision(data) {
  const {start} = data;
  const {revision: chosen} = start;
  const names = start.revisions.map((each) => [
    each.address,
    `${short(each.address)}, ${day(each.time)}: ${firstLine(each.note)}`,
  ]);
  if (!names.some(([address]) => address === chosen.address)) {
    names.unshift([chosen.address, short(chosen.address)]);
  }
  return html`<p class="sub">
      of <a href=${worksheetPage(chosen.address)}>${start.name} ${short(chosen.address)}</a>,
      ${fullDay(chosen.time)}. <a href=${formulaPage(start.formula)}>Timeline</a>
    </p>
    <div class="revision-choice">
      ${choiceField({
        id: "revision",
        label: "Which revision was baked",
        value: chosen.address,
        options: names,
        chosen: (address) => chooseRevision(data, address),
      })}
    </div>`;
}

function firstLine(note) {
  const line = note.split("\n")[0];
  return line.length > 50 ? `${line.slice(0, 49)}…` : line;
}

async function chooseRevision(data, address) {
  const {typing, start} = data;
  const chosen = start.revisions.find((each) => each.address === address);
  Object.assign(typing.document, {address, blob: chosen.blob});
  if (isBlank(typing.document) && !typing.keeper.id) {
    await data.go(`/record/${address}`, {replace: true});
    return;
  }
  typing.keeper.touch();
  await typing.keeper.save();
  const {id} = typing.keeper;
  await data.go(`/record/${address}${id ? `?draft=${id}` : ""}`, {replace: true});
}

function drafts(start) {
  if (start.drafts.length === 0) {
    return nothing;
  }
  return html`<div class="formula-drafts">
    ${start.drafts.map(
      (each) => html`<p>
        ${each.base ? `${short(each.base)} is being edited` : "The formula is being edited"}, last
        ${day(each.time)} ${each.time.slice(11, 16)}. A bake belongs to a revision:
        <a href="/drafts/${each.id}">save the draft first</a> to bake that.
      </p>`,
    )}
  </div>`;
}

// Open while nothing is typed yet; folded once somebody has decided on a new bake.
function unfinished({start, typing}) {
  const others = start.unfinished.filter((each) => each.id !== typing.keeper.id);
  const list = unfinishedList(others, (gone) => {
    start.unfinished = start.unfinished.filter((each) => each.id !== gone);
    typing.redraw();
  });
  return others.length === 0 || isBlank(typing.document)
    ? list
    : html`<details class="others">
        <summary>${count(others.length, "other bake")} not recorded yet</summary>
        ${list}
      </details>`;
}

function pieces(data) {
  const {start, typing} = data;
  const {document} = typing;
  const add = (settings) => {
    const {units} = document.form;
    settings.forEach((each) => addPiece(document, {id: each.id, ...settingTexts(each, units)}));
    typing.touched();
    globalThis.document.getElementById("pieces-title").focus();
  };
  const last = start.last_bake;
  return html`<section class="pieces-section" aria-labelledby="pieces-title">
    <h2 id="pieces-title" tabindex="-1">
      Pieces${document.form.pieces.length > 0 ? `: ${document.form.pieces.length}` : ""}
    </h2>
    ${gridField(document, {
      add,
      touched: () => typing.keeper.touch(),
      redraw: () => typing.redraw(),
    })}
    <p class="actions piece-acts">
      <button type="button" @click=${() => {
        typing.chosen = addPiece(document);
        typing.touched();
      }}>Add one piece</button>
      ${last && document.form.pieces.length === 0
        ? html`<button type="button" @click=${() =>
            add(last.pieces.map(({id, setting}) => ({id, ...setting})))}>
            As in the last bake (${count(last.pieces.length, "piece")}, ${day(last.time)})
          </button>`
        : nothing}
    </p>
  </section>`;
}

function recordBar(data) {
  const {typing} = data;
  const wrong = typing.figures?.problems.length ?? 0;
  return html`<div class="record-bar">
    ${typing.failure
      ? html`<p class="problem" role="alert">
          ${typing.failure.message} ${typing.failure.hint}
        </p>`
      : nothing}
    <div class="record-acts">
      <button type="button" id="record" class="main" aria-disabled=${String(data.recording ?? false)}
        @click=${() => record(data)}>Record this bake</button>
      ${wrong > 0
        ? html`<p class="problem">${count(wrong, "field is", "fields are")} not understood yet.</p>`
        : nothing}
      ${keptState(typing)}
    </div>
  </div>`;
}

async function record(data) {
  const {typing} = data;
  if (data.recording) {
    return;
  }
  data.recording = true;
  typing.failure = null;
  typing.redraw();
  try {
    if (isBlank(typing.document)) {
      throw new Failure({
        reason: "invalid",
        sentence: "There is nothing to record about this bake.",
        hint: "Add at least a piece, a finding or a note.",
      });
    }
    const {keeper, document} = typing;
    if (!(await keeper.save())) {
      throw new Failure(notKept(keeper));
    }
    const written = await order("bake/record", {
      address: document.address,
      blob: document.blob,
      form: formOf(document),
      draft: keeper.id,
      version: keeper.version,
    });
    typing.end();
    unwatch(data.name);
    await data.go(bakePage(written.bake));
    notice({
      text: [`Recorded as ${written.bake.id} of ${written.bake.address}.`, ...written.remarks]
        .join(" "),
      warning: written.remarks.length > 0,
    });
  } catch (thrown) {
    if (!(thrown instanceof Failure)) {
      throw thrown;
    }
    await refused(typing, thrown);
  } finally {
    data.recording = false;
    typing.redraw();
  }
}

function notKept(keeper) {
  return keeper.state === "conflict"
    ? {
        reason: "conflict",
        sentence: "The same field was typed in two places.",
        hint: "Choose what shall stand, then record it.",
      }
    : {
        reason: keeper.state,
        sentence: "This bake is not recorded yet.",
        hint: keeper.state === "gone"
          ? "It was recorded or thrown away elsewhere; keep it as a new one to record it again."
          : "The viewer does not answer; what you typed is kept in this browser.",
      };
}

// A field that is not understood gets the focus; what was typed elsewhere is fetched.
async function refused(typing, failure) {
  typing.failure = failure;
  if (failure.reason === "conflict") {
    await typing.keeper.look();
  }
  const field = /^pieces\.(\d+)\.(\w+)$/.exec(failure.where);
  const key = field && typing.document.form.pieces[Number(field[1])]?.key;
  const id = key ? `piece-${key}-${field[2]}` : failure.where;
  document.getElementById(id)?.focus();
}
