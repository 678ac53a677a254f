// Questions and orders to the server. The only place that fetches.

/** What the server refused, or that it did not answer. */
export class Failure extends Error {
  constructor({reason, sentence, where, hint, problems}) {
    super(sentence);
    this.reason = reason;
    this.where = where ?? "";
    this.hint = hint ?? "";
    this.problems = problems ?? [];
  }
}

/** What was thrown, when it is a failure to be shown; anything else is thrown on. */
export function expected(thrown) {
  if (thrown instanceof Failure) {
    return thrown;
  }
  throw thrown;
}

async function ask(question, parameters, signal) {
  const given = Object.entries(parameters).filter(([, value]) => value !== undefined && value !== null);
  const query = new URLSearchParams(given).toString();
  return answered(`/api/${question}${query ? "?" + query : ""}`, {signal});
}

/** Gives an order with what it carries; resolves with its outcome. */
export function order(name, carried = {}, signal) {
  return answered(`/api/${name}`, {
    method: "POST",
    headers: {"Content-Type": "application/json"},
    body: JSON.stringify(carried),
    signal,
  });
}

async function answered(address, options) {
  let response;
  let answer;
  try {
    response = await fetch(address, options);
    answer = await response.json();
  } catch (thrown) {
    if (options.signal?.aborted) {
      throw thrown;
    }
    throw new Failure({
      reason: "silent",
      sentence: "The viewer does not answer.",
      hint: "See whether “ovenmark view” is still running, start it again, and try again.",
    });
  }
  if (!response.ok) {
    throw new Failure(answer);
  }
  return answer;
}

export const formulas = (signal) => ask("formulas", {}, signal);
export const timeline = (line, signal) => ask("timeline", {line}, signal);
export const sheet = (address, signal) => ask("sheet", {address}, signal);
export const compare = (from, to, signal) => ask("compare", {from, to}, signal);
export const bake = (formula, id, signal) => ask("bake", {formula, id}, signal);
export const drafts = (signal) => ask("drafts", {}, signal);
export const draft = (id, signal) => ask("draft", {id}, signal);
export const draftState = (id, signal) => ask("draft/state", {id}, signal);
export const foods = (words, signal) => ask("foods", {words}, signal);
export const food = (slug, signal) => ask("food", {food: slug}, signal);
export const copyOf = (address, signal) => ask("copy", {address}, signal);
export const restoring = (address, signal) => ask("restore", {address}, signal);
export const publishing = (address, signal) => ask("publish", {address}, signal);
export const undoing = (line, signal) => ask("undo", {line}, signal);
export const goals = (signal) => ask("goals", {}, signal);
export const goal = (slug, signal) => ask("goal", {goal: slug}, signal);
export const task = (id, signal) => ask("task", {task: id}, signal);
