// Questions about a timeline: which revision came before another, which belong to one line.

import {parse, print} from "/address.js";

/** The entry of an address, or null. */
export function entryOf(timeline, address) {
  return timeline.revisions.find((entry) => entry.address === address) ?? null;
}

/** The entry before another on its line of history, or null for the first. */
export function before(timeline, entry) {
  const line = lineageOf(timeline, entry.address);
  return line[line.indexOf(entry) - 1] ?? null;
}

/** The entries of the line of history on which an address stands, oldest first. */
export function lineageOf(timeline, address) {
  const variant = parse(address).variant || null;
  const own = timeline.revisions.filter((entry) => entry.variant === variant);
  const fork = timeline.variants.find((each) => each.variant === variant)?.fork ?? 0;
  const main =
    variant && !timeline.variant
      ? timeline.revisions.filter((entry) => !entry.variant && entry.revision <= fork)
      : [];
  return [...own, ...main].reverse();
}

/** The address of the file edited by hand, for a timeline. */
export function editedAddress(timeline) {
  return print({formula: timeline.formula, variant: "", point: "edited"});
}

/**
 * Where the pins stand at first: the two newest revisions of the main line, or of the variant that
 * is shown; twice the same when there is only one.
 */
export function defaultPins(timeline) {
  const own = timeline.revisions.filter((entry) => entry.variant === timeline.variant);
  const to = own[0] ?? timeline.revisions[0] ?? null;
  const from = own[1] ?? to;
  return {from: from?.address ?? null, to: to?.address ?? null};
}
