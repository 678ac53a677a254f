// The figures of the charts: asked for without anything waiting for them.

import * as api from "/api.js";
import {parse} from "/address.js";
import {entryOf, lineageOf} from "/parts/history.js";

/** The figures that are shown at first. */
export const FIRST_TRENDS = [
  "liquid_ratio",
  "net_carbohydrate_g.per_piece",
  "best_height_mm",
  "mean_liking",
];

/** The figures that a page's address asks for, four of them. */
export function trendKeys(text) {
  const asked = (text ?? "").split(",").filter(Boolean).slice(0, FIRST_TRENDS.length);
  return FIRST_TRENDS.map((key, at) => asked[at] ?? key);
}

/**
 * The figures along the line of history of the later pin; without it, along the one that is shown:
 * {answer, coming, failure, commits}. The answer may be an earlier one while the next is coming.
 * Commits are those on which the pins stand, as far as they are on that line; of others the answer
 * has the figures by itself.
 */
export function trendsOf(timeline, pins, keys, known, signal) {
  const parts = parse(pins.to ?? timeline.formula);
  const own = parts.formula === timeline.formula;
  const variant = own ? parts.variant : timeline.variant;
  const line = timeline.formula + (variant ? `/${variant}` : "");
  const lineage = new Set(lineageOf(timeline, line).map((entry) => entry.commit));
  const commits = {};
  const away = {};
  for (const side of ["from", "to"]) {
    const commit = pins[side] && entryOf(timeline, pins[side])?.commit;
    if (lineage.has(commit)) {
      commits[side] = commit;
    } else if (pins[side]) {
      away[side] = pins[side];
    }
  }
  const asked = JSON.stringify([line, keys, away]);
  const before = known?.trends;
  if (before?.asked === asked && !before.coming && !before.failure) {
    return {...before, commits};
  }
  const trends = {asked, commits, answer: before?.answer ?? null, failure: null, coming: null};
  trends.coming = api.trends(line, keys, away, signal).then(
    (answer) => Object.assign(trends, {answer, coming: null}),
    (failure) => Object.assign(trends, {failure, coming: null}),
  );
  return trends;
}

/** The same, drawn again when what is coming has come. */
export function whenThere(trends, redraw) {
  if (trends.coming && !trends.watched) {
    trends.watched = true;
    trends.coming.then(redraw);
  }
  return trends;
}
