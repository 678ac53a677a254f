// Looks at the clock for all bakes that are being typed, on whatever page the reader is.

import {Failure} from "/api.js";
import {notice} from "/parts/notices.js";
import {allLocal, found} from "/parts/bake-keeper.js";
import {allow, isAllowed, isWanted, ring} from "/parts/sounds.js";
import {dueSentence, isLoud, isRunning, timed} from "/parts/timer-state.js";

const TICK_MS = 500;
const RING_EVERY_MS = 6000;

const watched = new Map();
let ticking = null;
let lastRing = 0;
let said = "";
let lock = null;

/**
 * Watches a document under a name. shown is called with every tick while its page is shown; a null
 * lets the timers go on when the page is left, with notices on the other pages.
 */
export function watch(name, document, shown, address) {
  watched.set(name, {document, shown, address});
  ticking ??= setInterval(tick, TICK_MS);
  hold();
}

/**
 * The page of a document is left: its timers go on where there are any, and lead back to the
 * address. Another document that took its name meanwhile is left alone.
 */
export function leaveWatch(name, document, address) {
  if (watched.get(name)?.document !== document) {
    return;
  }
  if (address && timed(document).some(isRunningPiece)) {
    watch(name, document, null, address);
  } else {
    unwatch(name);
  }
}

/** Watches it no more. */
export function unwatch(name) {
  watched.delete(name);
  if (watched.size === 0) {
    clearInterval(ticking);
    ticking = null;
  }
  hold();
}

/** Takes up the timers that this browser knows of, after a reload of any page. */
export function watchKept() {
  for (const {id, document} of allLocal()) {
    const kept = parsed(document);
    if (id && kept?.timers && !watched.has(id) && timed(kept).some(isRunningPiece)) {
      watch(id, kept, null, `/record/${kept.address}?draft=${id}`);
      endIfGone(id, kept);
    }
  }
}

// It may have been recorded on another device meanwhile.
async function endIfGone(id, kept) {
  try {
    await found(id);
  } catch (thrown) {
    if (!(thrown instanceof Failure)) {
      throw thrown;
    }
    if (thrown.reason === "not_found" && watched.get(id)?.document === kept) {
      unwatch(id);
    }
  }
}

const isRunningPiece = (each) => isRunning(each.timer);

function parsed(text) {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

function tick() {
  const now = Date.now();
  const loud = [];
  let away = "";
  let leads = "";
  for (const {document, shown, address} of watched.values()) {
    loud.push(...timed(document).filter((each) => isLoud(each.timer, now)));
    if (shown) {
      shown(now);
    } else if (dueSentence(document, now)) {
      away = dueSentence(document, now);
      leads = address;
    }
  }
  if (away !== said) {
    said = away;
    if (away) {
      notice({text: `${away}.`, link: [leads, "To the timers"], warning: true});
    }
  }
  if (loud.length > 0 && now - lastRing >= RING_EVERY_MS) {
    lastRing = now;
    loud.forEach((each, at) => setTimeout(() => ring(each.place), at * 1500));
  }
}

/** Looks at the clock at once. */
export function lookNow() {
  tick();
}

/** What stands in the way of sound: "off", "untouched", or empty. */
export function silence() {
  if (!isWanted()) {
    return "off";
  }
  return isAllowed() ? "" : "untouched";
}

/** Lets the page sound, and sounds once so that one knows. */
export async function wakeSound() {
  await allow();
  await ring(0);
}

// A locked phone cannot ring, so the screen is kept on while something is in the oven.
async function hold() {
  const running = [...watched.values()].some((each) => timed(each.document).some(isRunningPiece));
  if (!running) {
    await lock?.release();
    lock = null;
  } else if (!lock && document.visibilityState === "visible") {
    try {
      lock = (await navigator.wakeLock?.request("screen")) ?? null;
      lock?.addEventListener("release", () => {
        lock = null;
      });
    } catch {
      // The battery is low, or the browser does not do it.
    }
  }
}

/** The timers changed: keeps the screen on, or lets it go. */
export function changed() {
  hold();
  tick();
}

document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "visible" && watched.size > 0) {
    hold();
    tick();
  }
});
