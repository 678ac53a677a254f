// The timeline as a spine: revisions newest first, variants indented along a dotted line. A row is
// made when it comes into view; what has to be worked out for it is asked for then.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {Failure} from "/api.js";
import * as api from "/api.js";
import {bakePage, photo, short, worksheetPage} from "/address.js";
import {count, day, flowing, fullDay, number} from "/format.js";
import {before, editedAddress} from "/parts/history.js";
import {pinButtons} from "/parts/pins.js";
import "/parts/revision-list.js";
import {tray} from "/parts/tray.js";

const CHANGES_SHOWN = 4;
const ROWS_AT_ONCE = 24;
const WAIT_MS = 40;
const THUMBNAIL = 200;

/**
 * What is known of the rows of a timeline beyond what its commits say: read in small groups, for
 * rows that somebody looks at.
 */
export class Rows {
  #known = new Map();
  #asked = new Set();
  #wanted = [];
  #timer = null;

  /** What is known of a row: an entry, {failure}, or null. */
  of(address) {
    return this.#known.get(address) ?? null;
  }

  /** Reads some rows now. */
  async read(addresses, signal) {
    const missing = addresses.filter((each) => !this.#known.has(each)).slice(0, ROWS_AT_ONCE);
    if (missing.length === 0) {
      return;
    }
    try {
      const {rows} = await api.rows(missing, signal);
      rows.forEach((row) => this.#known.set(row.address, row));
    } catch (thrown) {
      if (!(thrown instanceof Failure)) {
        throw thrown;
      }
      missing.forEach((each) => this.#known.set(each, {failure: thrown}));
    }
  }

  /** Reads those of some rows that are not known, and calls back with each group. */
  want(addresses, arrived) {
    this.#wanted = addresses.filter((each) => !this.#known.has(each) && !this.#asked.has(each));
    if (this.#wanted.length > 0) {
      this.#timer ??= setTimeout(() => this.#ask(arrived), WAIT_MS);
    }
  }

  async #ask(arrived) {
    this.#timer = null;
    const group = this.#wanted.splice(0, ROWS_AT_ONCE);
    group.forEach((each) => this.#asked.add(each));
    await this.read(group);
    group.forEach((each) => this.#asked.delete(each));
    arrived();
  }
}

/**
 * The spine of a timeline: {timeline, shown, rows, pins, move, page, redraw}. Shown are the entries
 * that the filter leaves, move is called when a pin was moved, page gives the address of this page
 * with other pins, redraw is called when more is known of rows.
 */
export function spine({timeline, shown, rows, pins, move, page, redraw}) {
  const threads = threadsOf(timeline);
  const edited = timeline.edited_by_hand && shown.length === timeline.revisions.length;
  const entries = new Map(shown.map((entry) => [entry.address, entry]));
  const keys = [...(edited ? [editedAddress(timeline)] : []), ...entries.keys()];
  const places = new Map(timeline.revisions.map((entry, at) => [entry.address, at]));
  const model = {
    keys,
    keep: [pins.from, pins.to],
    label: "Revisions, newest first",
    lanes: lanesOf(threads),
    inView: (seen) => rows.want(seen.filter((each) => entries.has(each)), redraw),
    draw: (key, at) => {
      const place = {at, of: keys.length};
      const entry = entries.get(key);
      return entry
        ? revision({timeline, entry, at: places.get(key), place, rows, threads, pins, move, page})
        : editedRow({timeline, pins, move, place, page});
    },
  };
  return html`<revision-list .model=${model}></revision-list>`;
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

function revision({timeline, entry, at, place, rows, threads, pins, move, page}) {
  const own = threads.find((thread) => thread.variant === entry.variant);
  const row = rows.of(entry.address);
  const classes = [
    "revision",
    own ? "branch" : "",
    pins.from === entry.address ? "pinned-from" : "",
    pins.to === entry.address ? "pinned-to" : "",
  ].join(" ");
  const words = `revision ${short(entry.address)}, ${entry.note}, ${day(entry.time)}`;
  return html`<li class=${classes} .rowKey=${entry.address}
    aria-posinset=${place.at + 1} aria-setsize=${place.of}>
    ${pinButtons(entry.address, words, pins, move, place)}
    ${threads
      .filter((thread) => at >= thread.start && at < thread.end)
      .map(
        (thread) =>
          html`<i class="thread column-${thread.column} ${thread === own ? "own" : ""}"></i>`,
      )}
    <div class="what">
      ${head(timeline, entry, page)}
      ${entry.details ? html`<p class="why">${entry.details}</p>` : nothing}
      ${marks(entry)} ${worked(row)}
    </div>
    <div class="trays">${row && !row.failure ? row.bakes.map(bake) : baked(entry)}</div>
  </li>`;
}

// What has to be worked out.
function worked(row) {
  if (!row) {
    return html`<p class="coming" aria-hidden="true">…</p>`;
  }
  if (row.failure) {
    return html`<p class="problem">${row.failure.message} ${row.failure.hint}</p>`;
  }
  return html`${changes(row)}
  ${row.problems.map(
    (problem) => html`<p class="problem">
      <code>${problem.where}</code> ${problem.message} ${problem.hint}
    </p>`,
  )}`;
}

function baked(entry) {
  return entry.bake_count > 0
    ? html`<span class="score">${count(entry.bake_count, "bake")}</span>`
    : nothing;
}

function head(timeline, entry, page) {
  const earlier = before(timeline, entry);
  const href = earlier
    ? page({from: earlier.address, to: entry.address})
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

function marks(entry) {
  const words = [
    entry.published === null ? null : `published: ${entry.published}`,
    entry.restores === null ? null : `takes ${short(entry.restores)} back`,
    entry.carries === null ? null : `carries ${short(entry.carries)} over from the main line`,
    entry.merge && entry.carries === null ? "joins two lines of history" : null,
  ].filter(Boolean);
  return words.length > 0 ? html`<p class="marks">${words.join(" · ")}</p>` : nothing;
}

function changes(row) {
  const all = row.changes.map((change) => html`<li>${flowing(change.sentence)}</li>`);
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
    ${each.photos.length > 0 ? thumbnail(each) : tray(each)}
    <span class="score">
      ${liking === null
        ? "not tasted"
        : `liking ${number(liking)}, n\u00a0${each.summary.tasters}`}
    </span>
  </a>`;
}

function thumbnail(each) {
  const [first] = each.photos;
  const words = first.caption ?? `Photo of the bake of ${fullDay(each.time)}`;
  return html`<img class="thumbnail" src=${photo(first.file, THUMBNAIL)} alt=${words}
    width="84" height="56" loading="lazy" decoding="async">`;
}

function editedRow({timeline, pins, move, place, page}) {
  const address = editedAddress(timeline);
  const newest = timeline.revisions.find((entry) => entry.variant === timeline.variant);
  const href = page({from: newest?.address, to: address});
  const classes = [
    "revision edited",
    pins.from === address ? "pinned-from" : "",
    pins.to === address ? "pinned-to" : "",
  ].join(" ");
  return html`<li class=${classes} .rowKey=${address}
    aria-posinset=${place.at + 1} aria-setsize=${place.of}>
    ${pinButtons(address, "the file edited by hand", pins, move, place)}
    <div class="what">
      <p class="head">
        <a class="number" href=${worksheetPage(address)} aria-label="Worksheet of the edited file"
          >edited</a>
        <a class="note" href=${href}>Edited by hand, not yet a revision</a>
      </p>
    </div>
  </li>`;
}
