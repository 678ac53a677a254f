// The timeline as a spine: revisions newest first, variants indented along a dotted line.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {bakePage, formulaPage, short, worksheetPage} from "/address.js";
import {count, day, flowing, fullDay, number} from "/format.js";
import {before, editedAddress} from "/parts/history.js";
import {pinButtons} from "/parts/pins.js";
import {tray} from "/parts/tray.js";

const CHANGES_SHOWN = 4;

/** The spine of a timeline; move is called when a pin was moved. */
export function spine(timeline, pins, move) {
  const threads = threadsOf(timeline);
  const rows = timeline.revisions.map((entry, at) =>
    revision(timeline, entry, at, threads, pins, move),
  );
  return html`<ol class="revisions lanes-${lanesOf(threads)}" reversed
    aria-label="Revisions, newest first">
    ${timeline.edited_by_hand ? edited(timeline, pins, move) : nothing} ${rows}
  </ol>`;
}

// For each variant the rows along which its dotted line runs, and how far it is indented.
function threadsOf(timeline) {
  if (timeline.variant) {
    return [];
  }
  const rows = timeline.revisions;
  return timeline.variants
    .map((variant) => {
      const start = rows.findIndex((entry) => entry.variant === variant.variant);
      const fork = rows.findIndex((entry) => !entry.variant && entry.revision === variant.fork);
      return {variant: variant.variant, start, end: fork < 0 ? rows.length : fork};
    })
    .filter((thread) => thread.start >= 0)
    .map((thread, at) => ({...thread, column: Math.min(at, 3)}));
}

function lanesOf(threads) {
  return Math.max(0, ...threads.map((thread) => thread.column + 1));
}

function revision(timeline, entry, at, threads, pins, move) {
  const own = threads.find((thread) => thread.variant === entry.variant);
  const classes = [
    "revision",
    own ? "branch" : "",
    pins.from === entry.address ? "pinned-from" : "",
    pins.to === entry.address ? "pinned-to" : "",
  ].join(" ");
  const words = `revision ${short(entry.address)}, ${entry.note}, ${day(entry.time)}`;
  return html`<li class=${classes}>
    ${pinButtons(entry.address, words, pins, move)}
    ${threads
      .filter((thread) => at >= thread.start && at < thread.end)
      .map(
        (thread) =>
          html`<i class="thread column-${thread.column} ${thread === own ? "own" : ""}"></i>`,
      )}
    <div class="what">
      ${head(timeline, entry)}
      ${entry.details ? html`<p class="why">${entry.details}</p>` : nothing}
      ${marks(timeline, entry)} ${changes(entry)}
      ${entry.problems.map(
        (problem) => html`<p class="problem">
          <code>${problem.where}</code> ${problem.message} ${problem.hint}
        </p>`,
      )}
    </div>
    <div class="trays">${entry.bakes.map(bake)}</div>
  </li>`;
}

function head(timeline, entry) {
  const earlier = before(timeline, entry);
  const href = earlier
    ? formulaPage(timeline.formula, {
        line: timeline.variant,
        from: earlier.address,
        to: entry.address,
      })
    : worksheetPage(entry.address);
  return html`<p class="head">
    <a class="number" href=${worksheetPage(entry.address)}
      aria-label="Worksheet of ${short(entry.address)}">${label(timeline, entry)}</a>
    <time datetime=${entry.time} title=${fullDay(entry.time)}>${day(entry.time)}</time>
    <a class="note" href=${href}>${entry.note}</a>
  </p>`;
}

function label(timeline, entry) {
  return timeline.variant || !entry.variant ? entry.revision : short(entry.address);
}

function marks(timeline, entry) {
  const words = [
    entry.published === null ? null : `published: ${entry.published}`,
    entry.restores === null ? null : `takes ${short(entry.restores)} back`,
    entry.carries === null ? null : `carries ${short(entry.carries)} over from the main line`,
    entry.merge && entry.carries === null ? "joins two lines of history" : null,
  ].filter(Boolean);
  return words.length > 0 ? html`<p class="marks">${words.join(" · ")}</p>` : nothing;
}

function changes(entry) {
  const all = entry.changes.map((change) => html`<li>${flowing(change.sentence)}</li>`);
  if (all.length === 0) {
    return nothing;
  }
  const more = all.slice(CHANGES_SHOWN);
  return html`<ul class="changes">
      ${all.slice(0, CHANGES_SHOWN)}
    </ul>
    ${more.length > 0
      ? html`<details class="more">
          <summary>${count(more.length, "more change")}</summary>
          <ul class="changes">${more}</ul>
        </details>`
      : nothing}`;
}

function bake(each) {
  const liking = each.summary.mean_liking;
  return html`<a class="tray-link" href=${bakePage(each)}>
    ${tray(each)}
    <span class="score">
      ${liking === null
        ? "not tasted"
        : `liking ${number(liking)}, n\u00a0${each.summary.tasters}`}
    </span>
  </a>`;
}

function edited(timeline, pins, move) {
  const address = editedAddress(timeline);
  const newest = timeline.revisions.find((entry) => entry.variant === timeline.variant);
  const href = formulaPage(timeline.formula, {
    line: timeline.variant,
    from: newest?.address,
    to: address,
  });
  const classes = [
    "revision edited",
    pins.from === address ? "pinned-from" : "",
    pins.to === address ? "pinned-to" : "",
  ].join(" ");
  return html`<li class=${classes}>
    ${pinButtons(address, "the file edited by hand", pins, move)}
    <div class="what">
      <p class="head">
        <a class="number" href=${worksheetPage(address)} aria-label="Worksheet of the edited file"
          >edited</a>
        <a class="note" href=${href}>Edited by hand, not yet a revision</a>
      </p>
    </div>
  </li>`;
}
