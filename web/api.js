// Questions and orders to the server. The only place that fetches.

import {preferences} from "/preferences.js";

const UNPAIRED = "unpaired";
const listeners = new Set();

/**
 * Calls back after each question or order with "answered", with "unpaired" when this device has no
 * right to an answer any more, and with "silent" when there was none.
 */
export function onAnswer(listener) {
  listeners.add(listener);
}

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

const SILENT = {
  reason: "silent",
  sentence: "The viewer does not answer.",
  hint: "See whether “ovenmark view” is still running, start it again, and try again.",
};

async function ask(question, parameters, signal) {
  const given = Object.entries(parameters)
    .flatMap(([name, value]) => [value].flat().map((each) => [name, each]))
    .filter(([, value]) => value !== undefined && value !== null);
  return answered(address(question, given), {signal});
}

// What is said in sentences shall be in the reader's units, whatever is asked or ordered.
function address(name, parameters = []) {
  const {mass, temperature} = preferences();
  const units = [["masses_in", mass], ["temperatures_in", temperature]];
  return `/api/${name}?${new URLSearchParams([...parameters, ...units])}`;
}

/** Whether the viewer is there; says nothing about what it would answer. */
export async function isThere() {
  try {
    await fetch("/favicon.svg", {method: "HEAD", cache: "no-store"});
    return true;
  } catch {
    return false;
  }
}

/** Gives an order with what it carries; resolves with its outcome. */
export function order(name, carried = {}, signal) {
  return answered(address(name), {
    method: "POST",
    headers: {"Content-Type": "application/json"},
    body: JSON.stringify(carried),
    signal,
  });
}

/** That the viewer does not answer, told to all who listen. */
export function silence() {
  tell(SILENT.reason);
  return new Failure(SILENT);
}

function tell(outcome) {
  listeners.forEach((listener) => listener(outcome));
}

async function answered(where, options) {
  let response;
  let answer;
  try {
    response = await fetch(where, options);
    answer = await response.json();
  } catch (thrown) {
    if (options.signal?.aborted) {
      throw thrown;
    }
    throw silence();
  }
  tell(answer.reason === UNPAIRED && !response.ok ? UNPAIRED : "answered");
  if (!response.ok) {
    throw new Failure(answer);
  }
  return answer;
}

/**
 * Sends a file with an order; progressed is called with the share of it that was sent, 0 to 1.
 * Resolves with the order's outcome.
 */
export function upload(name, parameters, file, {progressed, signal}) {
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest();
    const silent = () => reject(silence());
    request.open("POST", `/api/${name}?${new URLSearchParams(parameters)}`);
    request.responseType = "json";
    const known = /^image\/[\w.+-]+$/.test(file.type);
    request.setRequestHeader("Content-Type", known ? file.type : "application/octet-stream");
    request.upload.addEventListener("progress", (event) =>
      progressed(event.total > 0 ? event.loaded / event.total : 1),
    );
    request.addEventListener("load", () => {
      const {status, response} = request;
      if (status >= 200 && status < 300 && response) {
        resolve(response);
      } else {
        tell(response?.reason === UNPAIRED ? UNPAIRED : "answered");
        reject(new Failure(response ?? SILENT));
      }
    });
    request.addEventListener("error", silent);
    request.addEventListener("abort", () => reject(new DOMException("cancelled", "AbortError")));
    signal.addEventListener("abort", () => request.abort(), {once: true});
    request.send(file);
  });
}

export const notebookLine = (signal) => ask("notebook/line", {}, signal);
export const formulas = (signal) => ask("formulas", {}, signal);
export const timeline = (line, signal) => ask("timeline", {line}, signal);
export const sheet = (address, signal) => ask("sheet", {address}, signal);
export const card = (address, choices, signal) => ask("card", {address, ...choices}, signal);
export const story = (address, signal) => ask("story", {address}, signal);
export const compare = (from, to, signal) => ask("compare", {from, to}, signal);
/** Where every limit holds; asked holds pieces, limits ("a; b"), along, oven, time, reference, z. */
export const bakeWindow = (address, asked, signal) => ask("window", {address, ...asked}, signal);
export const mattered = (address, variants, signal) =>
  ask("mattered", {address, variants: variants ? "yes" : null}, signal);
export const bake = (formula, id, signal) => ask("bake", {formula, id}, signal);
export const photos = (formula, signal) => ask("photos", {formula}, signal);
export const waitingPhotos = (formula, bake, signal) =>
  ask("photo/waiting", {formula, bake}, signal);
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
export const allFoods = (signal) => ask("foods", {all: true}, signal);
export const foodPage = (food, line, signal) => ask("food/page", {food, line}, signal);
export const goalPage = (goal, signal) => ask("goal/page", {goal}, signal);
export const goalOthers = (goal, signal) => ask("goal/others", {goal}, signal);
export const goalStandings = (signal) => ask("goals/standing", {}, signal);
export const notebook = (signal) => ask("notebook", {}, signal);
export const kitchen = (signal) => ask("kitchen", {}, signal);
export const phone = (signal) => ask("phone", {}, signal);
export const share = (formula, chosen, signal) => ask("share", {formula, ...chosen}, signal);
export const takeInLimits = (signal) => ask("take-in/limits", {}, signal);
export const task = (id, signal) => ask("task", {task: id}, signal);
export const spine = (line, signal) => ask("timeline/spine", {line}, signal);
export const rows = (of, signal) => ask("timeline/rows", {of: of.join(",")}, signal);
export const filtered = (line, filter, signal) =>
  ask("timeline/filter", {line, ...filter}, signal);
export const trends = (line, figures, pins, signal) =>
  ask("trends", {line, figures: figures.join(","), ...pins}, signal);
export const label = (address, chosen, signal) => ask("label", {address, ...chosen}, signal);
export const search = (filter, formula, signal) => ask("search", {...filter, formula}, signal);
export const bakeStart = (address, signal) => ask("bake/start", {address}, signal);
export const bakeForm = (formula, id, units, signal) =>
  ask("bake/form", {formula, id, ...units}, signal);
export const bakeDraft = (id, signal) => ask("bake/draft", {id}, signal);
export const unfinishedBakes = (formula, signal) => ask("bake/unfinished", {formula}, signal);
export const leverStart = (address, signal) => ask("lever/start", {address}, signal);
export const lever = (address, asked, signal) => ask("lever", {address, ...asked}, signal);
export const scale = (address, asked, signal) => ask("scale", {address, ...asked}, signal);
export const replaceChoices = (address, signal) => ask("replace/choices", {address}, signal);
export const replacing = (address, asked, signal) => ask("replace", {address, ...asked}, signal);
export const rebuild = (address, reference, signal) =>
  ask("rebuild", {address, reference}, signal);
export const causes = (address, asked, signal) => ask("causes", {address, ...asked}, signal);
export const tastings = (address, signal) => ask("tastings", {address}, signal);
export const tasting = (formula, id, signal) => ask("tasting", {formula, id}, signal);
export const tastingKey = (formula, id, signal) => ask("tasting/key", {formula, id}, signal);
export const tastingSheet = (formula, id, sheet, signal) =>
  ask("tasting/sheet", {formula, id, sheet}, signal);
export const tastingSheets = (formula, id, signal) => ask("tasting/sheets", {formula, id}, signal);
