// What can be done with an open draft as a whole: undo, weigh, save, discard.

import * as api from "/api.js";
import {order} from "/api.js";
import {formulaPage, short, worksheetPage} from "/address.js";
import {count} from "/format.js";
import {confirmed} from "/parts/dialogs.js";
import {forgetCopy} from "/parts/edit-copies.js";
import {keepNow} from "/parts/edit-keeping.js";
import {figures} from "/parts/edit-live.js";
import {fieldId} from "/parts/edit-problems.js";
import {afterSave, askSave, savedWords} from "/parts/edit-save.js";
import {redo, undo} from "/parts/edit-state.js";
import {notice} from "/parts/notices.js";

export function say(data, words) {
  data.ui.said = words;
  data.state.redraw();
}

export function back({state}) {
  undo(state);
}

export function forth({state}) {
  redo(state);
}

export function press(data, event) {
  const {state} = data;
  if (!(event.ctrlKey || event.metaKey) || event.altKey || event.target.closest?.("dialog")) {
    return;
  }
  const key = event.key.toLowerCase();
  if (key === "z" || key === "y") {
    event.preventDefault();
    (key === "y" || event.shiftKey ? redo : undo)(state);
  } else if (key === "s") {
    event.preventDefault();
    save(data, false);
  }
}

export function toggleWeigh(data) {
  const weighing = new URL(location.href).searchParams.has("weigh");
  data.tools.go(`/drafts/${data.state.id}${weighing ? "" : "?weigh=1"}`);
}

export async function openAbout(ui, open, state) {
  ui.about = open;
  if (open && ui.formulas.length === 0) {
    try {
      ui.formulas = (await api.formulas()).formulas;
      state.redraw();
    } catch {
      // The choice shows the formula that is stated.
    }
  }
}

export function goTo(state, where) {
  document.getElementById(fieldId(state, where))?.focus();
}

export async function save(data, bake) {
  const {state, tools} = data;
  if (document.querySelector("dialog[open]")) {
    return;
  }
  await figures(state);
  const problem = state.sheet?.problems[0];
  if (problem) {
    state.sheet.problems.forEach(({where}) => state.visited.add(fieldId(state, where)));
    goTo(state, problem.where);
    notice({text: `${problem.message} ${problem.hint}`, warning: true});
    return;
  }
  const written = await askSave(state, {bake});
  if (!written) {
    return;
  }
  if (written.outcome === "unchanged") {
    const {address} = written.revision;
    notice({text: `There is nothing to save: ${short(address)} says the same already.`});
    return;
  }
  state.status = "gone";
  forgetCopy(state.id);
  const words = await savedWords(written);
  await tools.go(afterSave(written, bake), {replace: true});
  notice({text: words, link: [worksheetPage(written.revision.address), "Its worksheet"]});
}

export async function discard(data) {
  const {state} = data;
  const changes = state.sheet?.changes.length ?? 0;
  const what = state.base
    ? changes === 0
      ? "It changes nothing yet."
      : `${count(changes, "change")} would be thrown away.`
    : "What was typed would be thrown away.";
  if (await confirmed("Discard this draft?", what, "Discard it", "Keep it")) {
    await throwAway(data, false);
  }
}

export async function throwAway(data, saved) {
  const {state, tools} = data;
  try {
    await keepNow(state);
    const {document, base} = await order("draft/discard", {id: state.id, version: state.version});
    state.status = "gone";
    forgetCopy(state.id);
    await tools.go(base ? formulaPage(base.formula, {line: base.variant}) : "/", {replace: true});
    notice({
      text: "The draft is thrown away.",
      act: saved ? null : ["Bring it back", () => bringBack({document, base}, tools)],
    });
  } catch (thrown) {
    const failure = api.expected(thrown);
    notice({text: `${failure.message} ${failure.hint}`, warning: true});
  }
}

async function bringBack({document, base}, tools) {
  const {id} = await order("draft/begin", {document, base: base?.address ?? null});
  notice({text: "The draft is back."});
  await tools.go(`/drafts/${id}`);
}

export async function keepAsNew(data) {
  const {state, tools} = data;
  try {
    const {id} = await order("draft/begin", {
      document: state.document,
      base: state.base?.address ?? null,
    });
    forgetCopy(state.id);
    await tools.go(`/drafts/${id}`, {replace: true});
  } catch (thrown) {
    const failure = api.expected(thrown);
    notice({text: `${failure.message} ${failure.hint}`, warning: true});
  }
}

export async function forget({state, tools}) {
  forgetCopy(state.id);
  await tools.go("/", {replace: true});
}
