// The timers of a bake: one for each piece, in figures that can be read from the oven.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {repeat} from "/lib/lit-html/directives/repeat.js";
import {minutesText, setting} from "/parts/bake-document.js";
import {keepFocus} from "/parts/focus.js";
import {allow, isWanted} from "/parts/sounds.js";
import {
  clock,
  dueAt,
  dueSentence,
  elapsed,
  isDue,
  left,
  overdue,
  pausedOrNot,
  started,
  takenOut,
  timed,
  withMinute,
} from "/parts/timer-state.js";
import {changed, silence, wakeSound} from "/parts/timer-watch.js";

/**
 * Draws them. fresh resolves when minutesOf knows what was typed last; minutesOf gives the time of
 * a piece as the server understood it, or null; touched is called after every change.
 */
export function timers({document, fresh, minutesOf, touched}) {
  const now = Date.now();
  const {pieces} = document.form;
  const act = (piece, next) => {
    document.timers[piece.key] = next;
    touched();
    changed();
    stayAt(piece);
  };
  const start = async (wanted) => {
    const begun = Date.now();
    if (isWanted()) {
      // This press lets the page ring later.
      allow();
    }
    await fresh();
    wanted.forEach((piece) => {
      document.timers[piece.key] = started(minutesOf(piece), begun);
    });
    touched();
    changed();
    stayAt(...(wanted.length === 1 ? wanted : []));
  };
  const waiting = pieces.filter((piece) => !document.timers[piece.key]);
  const due = dueSentence(document, now);
  return html`<div class="timer-head">
      <h2 id="timers-title" tabindex="-1">Timers</h2>
      ${waiting.length > 1
        ? html`<button type="button" class="main" @click=${() => start(waiting)}>
            ${waiting.length === pieces.length ? "Start all" : `Start the other ${waiting.length}`}
          </button>`
        : nothing}
    </div>
    <p class="timer-due ${due ? "now" : ""}" role="alert">${due}</p>
    ${soundState(timed(document).length > 0, touched)}
    <ul class="timer-list">
      ${repeat(
        pieces,
        (piece) => piece.key,
        (piece) => row(piece, document, {now, act, start, touched}),
      )}
    </ul>`;
}

// A button that was pressed may be replaced by the next ones.
function stayAt(piece) {
  keepFocus(
    () => piece && document.querySelector(`#timer-${CSS.escape(piece.key)} button`),
    () => document.getElementById("timers-title"),
  );
}

function soundState(any, touched) {
  const why = any ? silence() : "";
  if (why === "off") {
    return html`<p class="quiet">
      Sound is off in the <a href="/preferences">preferences</a>; due pieces are shown only.
    </p>`;
  }
  if (why === "untouched") {
    return html`<p class="timer-sound">
      This browser lets the page ring only after a tap.
      <button type="button" @click=${() => wakeSound().then(touched)}>Turn the sound on</button>
    </p>`;
  }
  return any
    ? html`<p class="quiet">Keep this page open and the screen on: a locked phone cannot ring.</p>`
    : nothing;
}

function row(piece, document, tools) {
  const timer = document.timers[piece.key] ?? null;
  const {now} = tools;
  const state = !timer
    ? "idle"
    : timer.out
      ? "out"
      : isDue(timer, now)
        ? "due"
        : timer.since === null
          ? "paused"
          : "running";
  return html`<li class="timer ${state}" id="timer-${piece.key}">
    <p class="timer-piece">
      <b>${piece.id || "?"}</b> <span>${setting(piece, document.form.units)}</span>
    </p>
    <p class="timer-left" role="timer">${figures(timer, state, now)}</p>
    <p class="timer-says">${says(timer, state, now, piece)}</p>
    <p class="timer-acts">${acts(piece, timer, state, tools)}</p>
  </li>`;
}

function figures(timer, state, now) {
  if (!timer) {
    return "–";
  }
  const remaining = left(timer, now);
  return state === "out" || remaining === null ? clock(elapsed(timer, now)) : clock(remaining);
}

function says(timer, state, now, piece) {
  switch (state) {
    case "idle":
      return "not started";
    case "due":
      return html`<strong>${piece.id}: take out</strong>, ${overdue(timer, now)}`;
    case "paused":
      return timer.planned === null ? "paused" : "paused, time left";
    case "out":
      return `out after ${minutesText(elapsed(timer, now))} min`;
    default:
      return dueAt(timer) === null ? "in the oven" : `out at ${timeOfDay(dueAt(timer))}`;
  }
}

function timeOfDay(at) {
  const time = new Date(at);
  const two = (value) => String(value).padStart(2, "0");
  return `${two(time.getHours())}:${two(time.getMinutes())}`;
}

function acts(piece, timer, state, {act, start, touched}) {
  const named = (words) => `${words}, ${piece.id}`;
  const button = (words, run, main = false) =>
    html`<button type="button" class=${main ? "main" : ""} aria-label=${named(words)}
      @click=${run}>${words}</button>`;
  const now = () => Date.now();
  if (state === "idle") {
    return button("Start", () => start([piece]));
  }
  if (state === "out") {
    const minutes = minutesText(elapsed(timer, now()));
    return html`${piece.minutes === minutes
      ? html`<span class="quiet">${minutes} min noted as its time</span>`
      : button(`Note ${minutes} min`, () => {
          piece.minutes = minutes;
          touched(true);
        })}
    ${button("Back into the oven", () => act(piece, pausedOrNot(timer, now())))}`;
  }
  return html`${button("Take out", () => act(piece, takenOut(timer, now())), state === "due")}
    ${button("+1 min", () => act(piece, withMinute(timer, now())))}
    ${button(state === "paused" ? "Go on" : "Pause", () => act(piece, pausedOrNot(timer, now())))}`;
}
