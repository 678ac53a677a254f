// The filter of a timeline: which of its revisions are shown. It stands in the page's address.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {searchPage} from "/address.js";
import {count} from "/format.js";
import {filterFields, statedParts} from "/parts/history-filter.js";
import {refused} from "/views/failure.js";

const PAUSE_MS = 250;

// What is being typed and does not stand in the address yet; drawing must not take it back.
let typing = null;
let pause = null;

/**
 * What a filter leaves of a timeline: {filter, filterAsked, addresses, narrow, filterFailure}.
 * Addresses are null when the filter states nothing, which leaves all.
 */
export async function filtered(line, filter, known, signal) {
  const asked = JSON.stringify([line, filter]);
  if (JSON.stringify(typing) === JSON.stringify(filter) || !known) {
    typing = null;
  }
  if (known?.filterAsked === asked) {
    const {filterAsked, addresses, narrow, filterFailure} = known;
    return {filter, filterAsked, addresses, narrow, filterFailure};
  }
  const nothingKnown = {filter, filterAsked: asked, addresses: null, narrow: known?.narrow ?? null};
  if (Object.keys(filter).length === 0) {
    return {...nothingKnown, filterFailure: null};
  }
  try {
    const found = await api.filtered(line, filter, signal);
    return {
      filter,
      filterAsked: asked,
      addresses: new Set(found.addresses),
      narrow: found.narrow,
      filterFailure: null,
    };
  } catch (thrown) {
    return {...nothingKnown, filterFailure: api.expected(thrown)};
  }
}

/** The entries that the filter leaves. */
export function shownOf({timeline, addresses}) {
  return addresses
    ? timeline.revisions.filter((entry) => addresses.has(entry.address))
    : timeline.revisions;
}

/**
 * The filter with how many revisions it leaves. To is called with what shall stand in the address.
 */
export function timelineFilter(data, page, to, redraw) {
  const {timeline, filter, narrow, filterFailure} = data;
  const stated = Object.keys(filter).length > 0;
  const change = (next, more) => {
    typing = next;
    clearTimeout(pause);
    pause = setTimeout(() => to({filter: next}, {replace: true}), more ? PAUSE_MS : 0);
    redraw();
  };
  return html`<div class="timeline-filter">
    <details ?open=${data.filterOpen} @toggle=${(event) => opened(event, data, redraw)}>
      <summary>Filter${stated ? "ed" : " by ingredient, finding, person, time"}</summary>
      ${data.filterOpen
        ? filterFields({id: "filter", filter: typing ?? filter, narrow, change, words: "Words"})
        : nothing}
    </details>
    <p class="filter-count" role="status">
      ${stated && !filterFailure
        ? html`${shownOf(data).length} of ${count(timeline.revisions.length, "revision")}`
        : nothing}
    </p>
    ${stated ? statedList(filter, narrow, page, timeline.formula) : nothing}
    ${filterFailure ? refused(filterFailure) : nothing}
  </div>`;
}

function statedList(filter, narrow, page, formula) {
  return html`<ul class="stated">
    ${statedParts(filter, narrow).map(
      ({name, value, without}) => html`<li>
        ${name ? `${name}: ` : ""}<b>${value}</b>
        <a href=${page({filter: without})} aria-label="Leave out ${name} ${value}">leave out</a>
      </li>`,
    )}
    <li><a href=${page({filter: {}})}>Show all revisions</a></li>
    <li><a href=${searchPage(filter, formula)}>Show where the words stand</a></li>
  </ul>`;
}

// What can be chosen is asked for when the filter is opened first.
async function opened(event, data, redraw) {
  data.filterOpen = event.target.open;
  if (data.filterOpen && !data.narrow) {
    try {
      data.narrow = (await api.filtered(data.line, {})).narrow;
    } catch (thrown) {
      data.filterFailure = api.expected(thrown);
    }
  }
  redraw();
}
