// Keeps with the viewer what is typed into a draft, soon after it was typed, until it is there.

import * as api from "/api.js";
import {order} from "/api.js";
import {onReturn} from "/parts/answering.js";
import {remember, typedText} from "/parts/edit-state.js";

const SOON_MS = 400;
const FIRST_WAIT_MS = 1000;
const LONGEST_WAIT_MS = 15000;
const LOOK_EVERY_MS = 10000;

let current = null;
onReturn(() => current?.status === "away" && keepNow(current));

/** What is said of each status. */
export const statusWords = {
  kept: "Kept",
  keeping: "Keeping…",
  away: "Not kept yet: the viewer does not answer. Nothing is lost, go on typing.",
  refused: "Not kept by the viewer",
  conflict: "Changed elsewhere too",
  gone: "No longer with the viewer",
};

/**
 * Begins to keep. moved(theirs) is called when the draft was changed elsewhere and something typed
 * here is not kept; taken(theirs) when nothing was, and theirs can be taken over; redraw when the
 * status changed.
 */
export function beginKeeping(state, {moved, taken, redraw}) {
  Object.assign(state, {moved, taken, redraw, waits: FIRST_WAIT_MS});
  current = state;
  state.listeners.add(() => soon(state, SOON_MS));
  state.look = () => document.visibilityState === "visible" && look(state);
  state.hide = () => document.visibilityState === "hidden" && keepNow(state);
  state.looking = setInterval(state.look, LOOK_EVERY_MS);
  addEventListener("focus", state.look);
  document.addEventListener("visibilitychange", state.hide);
  if (state.kept !== typedText(state)) {
    soon(state, 0);
  }
}

/** Ends it, after keeping what is not kept. */
export function endKeeping(state) {
  clearInterval(state.looking);
  removeEventListener("focus", state.look);
  document.removeEventListener("visibilitychange", state.hide);
  state.redraw = () => {};
  state.ended = true;
  if (state.status !== "conflict" && state.status !== "gone") {
    keepNow(state);
  }
}

function soon(state, wait) {
  if (["conflict", "gone"].includes(state.status)) {
    return;
  }
  if (state.status === "kept" || state.status === "refused") {
    setStatus(state, "keeping");
  }
  clearTimeout(state.timer);
  state.timer = setTimeout(() => keepNow(state), wait);
}

function setStatus(state, status, failure = null) {
  if (state.status !== status || state.failure !== failure) {
    Object.assign(state, {status, failure});
    state.redraw();
  }
}

/** Keeps now; resolves with true when all that was typed is with the viewer. */
export async function keepNow(state) {
  clearTimeout(state.timer);
  if (state.underway) {
    await state.underway;
  }
  if (["conflict", "gone"].includes(state.status)) {
    return false;
  }
  if (state.kept === typedText(state)) {
    setStatus(state, "kept");
    return true;
  }
  state.underway = send(state).finally(() => (state.underway = null));
  return state.underway;
}

async function send(state) {
  const {id, version, document, shortName: short_name, note} = state;
  const sent = typedText(state);
  state.sent = sent;
  remember(state);
  try {
    const kept = await order("draft/keep", {id, version, document, short_name, note});
    return accepted(state, kept.version, sent);
  } catch (thrown) {
    if (!(thrown instanceof api.Failure)) {
      throw thrown;
    }
    if (thrown.reason === "silent") {
      setStatus(state, "away");
      later(state);
    } else if (thrown.reason === "conflict") {
      return reconcile(state);
    } else if (thrown.reason === "not_found") {
      setStatus(state, "gone");
    } else {
      setStatus(state, "refused", thrown);
      later(state);
    }
    return false;
  }
}

function accepted(state, version, sent) {
  Object.assign(state, {version, kept: sent, sent: null, waits: FIRST_WAIT_MS});
  remember(state);
  if (sent === typedText(state)) {
    setStatus(state, "kept");
    return true;
  }
  setStatus(state, "keeping");
  soon(state, SOON_MS);
  return false;
}

function later(state) {
  if (!state.ended) {
    state.timer = setTimeout(() => keepNow(state), state.waits);
    state.waits = Math.min(LONGEST_WAIT_MS, state.waits * 2);
  }
}

/** The viewer has another version: what was sent and its answer lost, or somebody else's. */
async function reconcile(state) {
  const theirs = await api.draft(state.id);
  const text = typedTextOf(theirs);
  if (text === typedText(state) || text === state.sent || text === state.kept) {
    return accepted(state, theirs.version, text);
  }
  setStatus(state, "conflict");
  state.moved(theirs);
  return false;
}

/** The text by which a draft as the viewer has it is compared. */
export function typedTextOf(draft) {
  return typedText({
    document: draft.document,
    shortName: draft.short_name,
    note: draft.note,
  });
}

/** Looks, now and then, what others did meanwhile. */
async function look(state) {
  if (["conflict", "gone"].includes(state.status)) {
    return;
  }
  if (state.status === "away") {
    keepNow(state);
    return;
  }
  try {
    const now = await api.draftState(state.id);
    const more = now.newer.length !== state.newer.length;
    state.newer = now.newer;
    if (now.version > state.version && !state.underway && state.kept === typedText(state)) {
      state.taken(await api.draft(state.id));
    } else if (more) {
      state.redraw();
    }
  } catch (thrown) {
    if (thrown.reason === "not_found" && state.kept === typedText(state)) {
      setStatus(state, "gone");
    }
  }
}
