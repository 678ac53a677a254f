// A formula: its timeline as a spine with two pins, and the answer to what they compare.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {
  filterOf,
  formulaPage,
  fromPin,
  parse,
  revisionName,
  short,
  worksheetPage,
} from "/address.js";
import {figure, figureMass, flowing, fullDay} from "/format.js";
import {edit, onTimeline, revisionActs} from "/parts/acts.js";
import {bakesOfBothSides, sideMark} from "/parts/bakes.js";
import {costMoves} from "/parts/cost.js";
import {causes, figureTable} from "/parts/figures.js";
import {goalMark, ruleList} from "/parts/goal.js";
import {defaultPins, editedAddress, entryOf} from "/parts/history.js";
import {lineTable} from "/parts/lines.js";
import {nextChange} from "/parts/next-change.js";
import {Rows, spine} from "/parts/spine.js";
import {filtered, shownOf, timelineFilter} from "/parts/timeline-filter.js";
import {trendKeys, trendsOf, whenThere} from "/parts/trends-coming.js";
import {trendStrip} from "/parts/trends.js";
import {unfinishedOf} from "/parts/unfinished-bakes.js";
import {fieldTable, goalChanges, methodDiff} from "/parts/wording.js";
import {problemList, refused} from "/views/failure.js";

const DEFAULT_PER = "per_piece";
const FIRST_ROWS = 20;
const WIDE = matchMedia("(min-width: 62rem)");

export const formulaView = {
  rereads: true,

  async load({parts, query}, {before, signal}) {
    const line = query.get("line");
    const address = line ? `${parts.formula}/${line}` : parts.formula;
    const known = before?.line === address ? before : null;
    const timeline = known?.timeline ?? (await api.spine(address, signal));
    const rows = known?.rows ?? new Rows();
    const first = defaultPins(timeline);
    const pins = {
      from: pinned(query.get("a"), parts.formula) ?? first.from,
      to: pinned(query.get("b"), parts.formula) ?? first.to,
    };
    const filter = filterOf(query);
    const same = known?.pins.from === pins.from && known?.pins.to === pins.to;
    const drawnFirst = known ? [] : firstRows(timeline, pins);
    const [compared, found] = await Promise.all([
      same && known.comparison ? known : compare(pins, signal),
      filtered(address, filter, known, signal),
      rows.read(drawnFirst, signal),
    ]);
    const trends = trendsOf(timeline, pins, trendKeys(query.get("trends")), known, signal);
    return {
      line: address,
      timeline,
      rows,
      pins,
      comparison: compared.comparison,
      failure: compared.failure,
      trends,
      ...found,
      reading: known?.reading ?? {},
      filterOpen: known?.filterOpen ?? false,
    };
  },

  title: ({timeline, pins}) =>
    pins.from && pins.from !== pins.to
      ? `${timeline.name}: ${short(pins.from)} → ${short(pins.to)}`
      : timeline.name,

  draw: (data, {query}, tools) => {
    const {timeline, pins, comparison, failure, filter, trends, reading} = data;
    const {go, redraw} = tools;
    const shown = shownOf(data);
    const chosen = {
      line: timeline.variant,
      from: pins.from,
      to: pins.to,
      per: query.get("per"),
      figure: query.get("figure"),
      trends: query.get("trends"),
      filter,
    };
    const page = (changed) => formulaPage(timeline.formula, {...chosen, ...changed});
    const to = (changed, options) => go(page(changed), options);
    const move = (next, replace) => to(next, {replace});
    const exchange = (keys) => to({trends: keys.join(",")}, {replace: true});
    return html`<div class="formula-page">
      <section class="history">
        ${heading(timeline)}
        <a class="skip" href="#answer" @click=${toAnswer}>Skip the timeline</a>
        <details class="spine" ?open=${WIDE.matches} @toggle=${redraw}>
          <summary>
            <h2>Timeline</h2>
            <span class="chosen">${sideMark("from")} ${side(pins.from, timeline)} → ${sideMark(
              "to",
            )} ${side(pins.to, timeline)}</span>
          </summary>
          <p class="pins-say">
            Choose what to compare: ${sideMark("from")} before, ${sideMark("to")} after. Drag a pin,
            or move it with the arrow keys.
          </p>
          ${timelineFilter(data, page, to, redraw)} ${elsewhere(timeline, pins, shown)}
          ${spine({timeline, shown, rows: data.rows, pins, move, page, redraw})}
        </details>
      </section>
      <section class="answer" id="answer" tabindex="-1" aria-label="Comparison">
        ${revisionActs(onTimeline(timeline, pins.to), tools)} ${nextChange(pins.to)}
        ${unfinishedOf(timeline.formula)}
        ${trendStrip({trends: whenThere(trends, redraw), pins, reading, exchange, redraw})}
        ${comparison ? answer(comparison, pins, chosen, to) : nothing}
        ${failure ? html`<div class="comparison">${refused(failure)}</div>` : nothing}
        ${comparison || failure ? nothing : alone(timeline, pins)}
      </section>
    </div>`;
  },

  drawn: revealPins,

  shortcuts: ({timeline, pins, filter}, {query}, tools) => [
    {
      key: "x",
      does: "Swap A and B",
      run: () =>
        tools.go(
          formulaPage(timeline.formula, {
            line: timeline.variant,
            from: pins.to,
            to: pins.from,
            per: query.get("per"),
            figure: query.get("figure"),
            trends: query.get("trends"),
            filter,
          }),
        ),
    },
    {
      key: "w",
      does: "Open the worksheet of B",
      run: () => pins.to && tools.go(worksheetPage(pins.to)),
    },
    {
      key: "e",
      does: "Edit from B",
      run: () => {
        const subject = onTimeline(timeline, pins.to);
        return subject && edit(subject, tools);
      },
    },
    {key: "b", does: "Record a bake of B", run: () => pins.to && tools.go(`/record/${pins.to}`)},
    {key: "↑ ↓", does: "Move the pin that has the focus"},
    {key: "← →", does: "Read the chart that has the focus"},
  ],
};

function toAnswer(event) {
  event.preventDefault();
  document.getElementById("answer").focus();
}

// What is in view first, with what the pins stand on.
function firstRows(timeline, pins) {
  const newest = timeline.revisions.slice(0, FIRST_ROWS).map((entry) => entry.address);
  const pinned = [pins.from, pins.to].filter((address) => entryOf(timeline, address));
  return [...new Set([...pinned, ...newest])];
}

function pinned(pin, formula) {
  return pin ? fromPin(pin, formula) : null;
}

// A revision that cannot be read must not hide the spine, where another can be chosen.
async function compare(pins, signal) {
  if (!pins.from || pins.from === pins.to) {
    return {comparison: null, failure: null};
  }
  try {
    return {comparison: await api.compare(pins.from, pins.to, signal), failure: null};
  } catch (thrown) {
    if (thrown instanceof api.Failure) {
      return {comparison: null, failure: thrown};
    }
    throw thrown;
  }
}

// The spine scrolls on its own where there is room for it beside the answer.
function revealPins(content) {
  const history = content.querySelector(".history");
  const rows = [...content.querySelectorAll(".pinned-from, .pinned-to")];
  if (rows.length === 0 || history.scrollHeight <= history.clientHeight) {
    return;
  }
  const frame = history.getBoundingClientRect();
  const top = Math.min(...rows.map((row) => row.getBoundingClientRect().top)) - frame.top;
  const bottom = Math.max(...rows.map((row) => row.getBoundingClientRect().bottom)) - frame.top;
  if (top < 0 || bottom > frame.height) {
    history.scrollTop += Math.min(top - 16, Math.max(top - 16, bottom - frame.height));
  }
}

function heading(timeline) {
  const {figures} = timeline;
  return html`<h1>${timeline.name}</h1>
    ${timeline.goal
      ? html`<details class="goal-of">
          <summary>${timeline.goal.name}: ${goalMark(timeline.goal.met)}</summary>
          ${ruleList(timeline.goal.checks)}
          ${timeline.goal.note ? html`<p class="quiet">${timeline.goal.note}</p>` : nothing}
        </details>`
      : html`<p class="sub">no goal</p>`}
    ${figures
      ? html`<p class="sub">
          ${figure(figures, "pieces")} pieces of ${figureMass(figures, "dough_per_piece_g")} dough
        </p>`
      : nothing}
    ${timeline.problems.length > 0 ? problemList(timeline.problems) : nothing}
    ${timeline.variants.length > 0 ? lines(timeline) : nothing}`;
}

function lines(timeline) {
  const link = (variant, words) => html`<li>
    <a href=${formulaPage(timeline.formula, {line: variant})}
      aria-current=${timeline.variant === variant ? "true" : nothing}>${words}</a>
  </li>`;
  return html`<nav class="lines-of-history" aria-label="Lines of history">
    <ul>
      ${link(null, "all")} ${timeline.variants.map((each) => link(each.variant, each.variant))}
    </ul>
  </nav>`;
}

function side(address, timeline) {
  if (!address) {
    return "nothing";
  }
  const parts = parse(address);
  const name = parts.formula === timeline.formula ? "" : `${parts.formula} `;
  return name + short(address);
}

// A pin may stand on a state that the spine does not show: another formula, or a commit.
function elsewhere(timeline, pins, shown) {
  const known = (address) =>
    entryOf(timeline, address)
    || (timeline.edited_by_hand && address === editedAddress(timeline));
  const hidden = (address) =>
    shown.length < timeline.revisions.length && !shown.some((entry) => entry.address === address);
  const away = ["from", "to"].filter(
    (which) => pins[which] && (!known(pins[which]) || hidden(pins[which])),
  );
  return away.map(
    (which) => html`<p class="elsewhere">
      ${sideMark(which)} stands on
      <a href=${worksheetPage(pins[which])}>${side(pins[which], timeline)}</a>, which
      ${known(pins[which]) ? "the filter leaves out." : "is not on this spine."}
    </p>`,
  );
}

function alone(timeline, pins) {
  const only = timeline.revisions.length <= 1;
  return html`<div class="comparison">
    <p class="say">
      ${only
        ? "There is one revision so far; nothing to compare it with yet."
        : "Both pins stand on the same revision. Move one of them to compare."}
    </p>
    ${pins.to
      ? html`<p><a href=${worksheetPage(pins.to)}>Worksheet of ${side(pins.to, timeline)}</a></p>`
      : nothing}
  </div>`;
}

function answer(comparison, pins, chosen, to) {
  const from = `A ${revisionName(comparison.from)}`;
  const after = `B ${revisionName(comparison.to)}`;
  const per = chosen.per ?? DEFAULT_PER;
  return html`<div class="comparison">
    <div class="between">
      ${head("from", comparison.from, comparison.to)}
      <span class="arrow" aria-hidden="true">→</span>
      ${head("to", comparison.to, comparison.from)}
      <button type="button" class="swap" @click=${() => to({from: pins.to, to: pins.from})}>
        Swap A and B
      </button>
    </div>
    <p class="say" role="status">${flowing(comparison.summary)}</p>
    ${lineTable(comparison, from, after)}
    <div class="columns">
      <div>
        ${figureTable(comparison, per, from, after, (next) => to({per: next}))}
        ${causes(comparison, per, chosen.figure, (next) => to({figure: next}))}
      </div>
      <div>
        ${goalChanges(comparison.goal)}
        ${fieldTable("Oven", comparison.process, from, after)}
        ${fieldTable("Yield", comparison.yield, from, after)}
        ${costMoves(comparison.cost, from, after)}
      </div>
    </div>
    ${bakesOfBothSides(comparison)}
    ${methodDiff(comparison.method)}
    ${fieldTable("Name, goal and other texts", comparison.texts, from, after)}
  </div>`;
}

function nameOf(side, other) {
  const today = side.commit === null || side.address.includes("@") ? "" : ", foods of today";
  const revision = revisionName(side) + today;
  return side.formula === other.formula ? revision : `${side.name} ${revision}`;
}

function head(which, side, other) {
  return html`<p class="head ${which}">
    ${sideMark(which)} <a href=${worksheetPage(side.address)}>${nameOf(side, other)}</a>
    <span class="quiet">${side.time ? `${fullDay(side.time)}, ${side.author}` : "on disk"}</span>
    ${side.note ? html`<span class="note">${side.note}</span>` : nothing}
  </p>`;
}
