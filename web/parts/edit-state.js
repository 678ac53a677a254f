// The state of one open draft: what is typed, the steps that can be taken back, and who is told.

import {keepCopy, keepSteps} from "/parts/edit-copies.js";

const BURST_MS = 1200;
const MOST_STEPS = 80;

/** A draft as the viewer has it → the state of its page. */
export function opened(draft) {
  const state = {
    id: draft.id,
    version: draft.version,
    base: draft.base,
    saved: draft.saved,
    newer: draft.newer,
    document: draft.document,
    keys: null,
    nextKey: 1,
    shortName: draft.short_name,
    note: draft.note,
    weighed: [],
    past: [],
    future: [],
    burst: null,
    kept: null,
    sent: null,
    status: "kept",
    listeners: new Set(),
  };
  state.keys = keysFor(state, state.document);
  state.kept = typedText(state);
  return state;
}

/** All that is kept of a draft, as one text that tells whether two are the same. */
export function typedText({document, shortName, note}) {
  return JSON.stringify([document, shortName, note]);
}

/** What such a text holds. */
export function fromTypedText(text) {
  const [document, shortName, note] = JSON.parse(text);
  return {document, shortName, note};
}

/** Names for lines, steps and stages, by which the page knows them when they move. */
function keysFor(state, document) {
  const keys = (list) => (Array.isArray(list) ? list : []).map(() => newKey(state));
  return {lines: keys(document.lines), method: keys(document.method), bake: keys(document.bake)};
}

function newKey(state) {
  return `k${state.nextKey++}`;
}

/** The address whose formula is what stood there before, by its commit. */
export function baseAddress({base}) {
  return base
    ? `${base.formula}${base.variant ? "/" + base.variant : ""}@${base.commit}`
    : null;
}

/**
 * Changes the document by make(document, keys, newKey). Changes of one field in quick succession
 * are one step; without field each is a step of its own.
 */
export function change(state, field, make) {
  const now = Date.now();
  const same = field !== null && state.burst?.field === field && now - state.burst.at < BURST_MS;
  if (!same) {
    state.past.push(snapshot(state));
    state.past = state.past.slice(-MOST_STEPS);
  }
  const steps = !same || state.future.length > 0;
  state.burst = field === null ? null : {field, at: now};
  state.future = [];
  make(state.document, state.keys, () => newKey(state));
  changed(state, steps);
}

/** Puts another document in the place of this one, as a step that can be taken back. */
export function replaceDocument(state, document) {
  state.past.push(snapshot(state));
  state.future = [];
  state.burst = null;
  state.document = document;
  state.keys = keysFor(state, document);
  changed(state, true);
}

/** Types the note or the short name, which are no steps. */
export function changeWords(state, words) {
  Object.assign(state, words);
  changed(state, false);
}

/** Ticks a line off, or not. */
export function tick(state, key, on) {
  state.weighed = state.weighed.filter((each) => each !== key).concat(on ? [key] : []);
  changed(state, false);
}

/** Takes the last step back; false when there is none. */
export const undo = (state) => step(state, state.past, state.future);

/** Does again what was taken back last; false when there is nothing. */
export const redo = (state) => step(state, state.future, state.past);

function step(state, from, to) {
  if (from.length === 0) {
    return false;
  }
  to.push(snapshot(state));
  const {document, keys} = JSON.parse(from.pop());
  Object.assign(state, {document, keys, burst: null});
  changed(state, true);
  return true;
}

function snapshot({document, keys}) {
  return JSON.stringify({document, keys});
}

function changed(state, steps) {
  remember(state);
  if (steps) {
    keepSteps(state.id, state);
  }
  state.listeners.forEach((listener) => listener());
}

/** Writes the copy of this browser. */
export function remember(state) {
  const {id, version, base, kept, sent, keys, nextKey, weighed} = state;
  const typed = typedText(state);
  keepCopy(id, {version, base, kept, sent, keys, nextKey, weighed, typed});
}

/** Writes the copy of this browser with the steps that can be taken back. */
export function rememberAll(state) {
  remember(state);
  keepSteps(state.id, state);
}

/** Takes up a copy of this browser. */
export function takeUp(state, copy) {
  Object.assign(state, fromTypedText(copy.typed), {
    keys: copy.keys,
    nextKey: copy.nextKey,
    weighed: copy.weighed,
    past: copy.steps.past,
    future: copy.steps.future,
  });
}
