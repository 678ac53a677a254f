// What is asked on a page, kept in its address and answered while it is typed.

import {expected} from "/api.js";

const PATIENCE_MS = 700;

/** What a query asks, by the names of lists and of single texts; only what is stated. */
export function askedOf(query, lists, texts) {
  const stated = [
    ...lists.map((name) => [name, query.getAll(name)]),
    ...texts.map((name) => [name, query.get(name)]),
  ];
  return Object.fromEntries(stated.filter(([, value]) => value !== null && value.length > 0));
}

/** The same without what is blank, as an order carries it. */
export function withoutBlanks(asked) {
  const filled = ([, value]) => value.length > 0;
  return Object.fromEntries(
    Object.entries(asked)
      .map(([name, value]) =>
        [name, Array.isArray(value) ? value.filter((each) => each.trim() !== "") : value])
      .filter(filled),
  );
}

/** The same as the query of an address; empty texts are left out. */
export function queryOf(asked) {
  const pairs = Object.entries(asked)
    .flatMap(([name, value]) => [value].flat().map((each) => [name, each]))
    .filter(([, value]) => value !== undefined && value !== null && value !== "");
  const text = new URLSearchParams(pairs).toString();
  return text ? `?${text}` : "";
}

/** Puts the answer to what is asked into data: sheet, or failure with the last sheet kept. */
export async function answer(data, ask, signal) {
  try {
    const sheet = await ask(signal);
    Object.assign(data, {sheet, failure: null, refused: null, typing: false});
  } catch (thrown) {
    if (signal?.aborted) {
      throw thrown;
    }
    Object.assign(data, {failure: expected(thrown), typing: true});
    clearTimeout(data.patience);
  }
}

/**
 * Asks anew after data.asked was changed. What is wrong is said after a while only, since a wish
 * that is being typed is wrong at most keystrokes.
 */
export async function askAgain(data, ask, redraw) {
  history.replaceState(history.state, "", location.pathname + queryOf(data.asked));
  data.asking?.abort();
  const mine = new AbortController();
  data.asking = mine;
  clearTimeout(data.patience);
  redraw();
  try {
    await answer(data, ask, mine.signal);
  } catch (thrown) {
    if (mine.signal.aborted) {
      return;
    }
    throw thrown;
  }
  if (data.failure) {
    data.patience = setTimeout(() => {
      data.typing = false;
      redraw();
    }, PATIENCE_MS);
  }
  redraw();
}

/** What is wrong, once it is time to say so. */
export function wrong(data) {
  return data.failure && !data.typing ? data.failure : null;
}
