// Questions to the server. The only place that fetches.

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

async function ask(question, parameters, signal) {
  const query = new URLSearchParams(parameters).toString();
  let response;
  let answer;
  try {
    response = await fetch(`/api/${question}${query ? "?" + query : ""}`, {signal});
    answer = await response.json();
  } catch (thrown) {
    if (signal?.aborted) {
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
