// How four figures went along the line of history of the later pin.

import {html, nothing, svg} from "/lib/lit-html/lit-html.js";
import {parse, short} from "/address.js";
import {count, figure, number, withUnit} from "/format.js";
import {entryOf, lineageOf} from "/parts/history.js";

const HIGH = 56;
const MARGIN = 8;

const trends = [
  {
    label: "Liquid ratio",
    unit: "",
    value: (entry) => entry.figures?.liquid_ratio ?? null,
    text: (entry) => entry.texts?.liquid_ratio ?? figure(entry.figures, "liquid_ratio"),
  },
  {
    label: "Net carbohydrate a piece",
    unit: "g",
    goal: "net_carbohydrate_g",
    value: (entry) => entry.figures?.net_carbohydrate_g ?? null,
    text: (entry) =>
      entry.texts?.net_carbohydrate_g ?? figure(entry.figures, "net_carbohydrate_g", "g"),
  },
  {
    label: "Best height",
    unit: "mm",
    measured: true,
    value: (entry) => most(entry.bakes.map((bake) => bake.summary.best_height_mm)),
    text: (entry) => measured(trends[2].value(entry), "mm", entry),
  },
  {
    label: "Liking, 1 to 9",
    unit: "",
    measured: true,
    value: (entry) => liking(entry).mean,
    text: (entry) => {
      const {mean, n} = liking(entry);
      return mean === null ? measured(null, "", entry) : `${number(mean)} (n ${n})`;
    },
  },
];

function most(values) {
  const known = values.filter((value) => value !== null);
  return known.length > 0 ? Math.max(...known) : null;
}

function liking(entry) {
  let sum = 0;
  let n = 0;
  for (const {summary} of entry.bakes) {
    if (summary.mean_liking !== null) {
      sum += summary.mean_liking * summary.tasters;
      n += summary.tasters;
    }
  }
  return {mean: n > 0 ? sum / n : null, n};
}

function measured(value, unit, entry) {
  if (value !== null) {
    return withUnit(value, unit);
  }
  return entry.bakes.length > 0 ? "not measured" : "not baked";
}

// A side of the comparison that is not on the spine, in the shape of an entry.
function awayFrom(comparison, side) {
  if (!comparison) {
    return null;
  }
  const {liquid_ratio} = comparison.ratios;
  const {net_carbohydrate_g} = comparison.macros.per_piece;
  return {
    figures: {},
    texts: {
      liquid_ratio: liquid_ratio[`${side}_text`],
      net_carbohydrate_g: net_carbohydrate_g[`${side}_text`],
    },
    bakes: comparison.outcomes[side],
  };
}

/** The strip of four charts, with the table behind them. */
export function trendStrip(timeline, pins, comparison) {
  const line = lineageOf(timeline, pins.to).filter(Boolean);
  const shown = line.length > 0 ? line : lineageOf(timeline, timeline.revisions[0].address);
  const from = entryOf(timeline, pins.from);
  const to = entryOf(timeline, pins.to);
  return html`<section class="trends" aria-label="Along the line of history">
    <div class="strip">
      ${trends.map(
        (trend) => html`<figure class="trend">
          ${caption(trend, from ?? awayFrom(comparison, "from"), to ?? awayFrom(comparison, "to"))}
          ${chart(trend, shown, from, to, timeline.goal)}
        </figure>`,
      )}
    </div>
    <details class="behind">
      <summary>These figures as a table</summary>
      ${table(shown)}
    </details>
  </section>`;
}

function chart(trend, line, from, to, goal) {
  const limit = goal?.checks.find(
    (check) => check.figure === trend.goal && check.per === "per_piece" && check.limit,
  )?.limit;
  const values = [...line, from, to]
    .filter(Boolean)
    .map(trend.value)
    .filter((value) => value !== null);
  const scale = scaleOf(values, limit);
  const numbers = line.map((entry) => entry.revision);
  const first = Math.min(...numbers);
  const last = Math.max(...numbers, to?.revision ?? 0, from?.revision ?? 0);
  const x = (entry) =>
    last === first ? 50 : MARGIN + ((100 - 2 * MARGIN) * (entry.revision - first)) / (last - first);
  const y = (value) => 92 - 84 * ((value - scale.low) / (scale.high - scale.low));
  if (values.length === 0) {
    return html`<p class="nothing-yet">nothing known yet</p>`;
  }
  return html`<svg class="trend-lines" width="100%" height=${HIGH} role="img"
    aria-label=${describe(trend, line)}>
    ${zone(limit, scale, y)}
    <svg viewBox="0 0 100 100" preserveAspectRatio="none">
      ${runs(trend, line).map(
        (run) =>
          svg`<polyline points=${run
            .map((entry) => `${x(entry)},${y(trend.value(entry))}`)
            .join(" ")}/>`,
      )}
    </svg>
    ${line
      .filter((entry) => trend.value(entry) !== null)
      .map((entry) => dot("known", 2, x(entry), y(trend.value(entry))))}
    ${pinDot("from", 5, from, trend, x, y)} ${pinDot("to", 5, to, trend, x, y)}
  </svg>`;
}

function caption(trend, from, to) {
  return html`<figcaption>
    ${trend.label}
    <strong>${to ? trend.text(to) : "–"}</strong>
    <span class="was">${from && from !== to ? was(trend.text(from)) : nothing}</span>
  </figcaption>`;
}

function was(text) {
  return text.startsWith("not ") ? `before: ${text}` : `was ${text}`;
}

// Figures that are worked out break where one is unknown; measured ones run on to the next bake.
function runs(trend, line) {
  const result = [[]];
  for (const entry of line) {
    if (trend.value(entry) !== null) {
      result.at(-1).push(entry);
    } else if (!trend.measured) {
      result.push([]);
    }
  }
  return result.filter((run) => run.length > 1);
}

function scaleOf(values, limit) {
  const all = [...values, limit?.at_least, limit?.at_most].filter(
    (value) => value !== null && value !== undefined,
  );
  const low = Math.min(...all);
  const high = Math.max(...all);
  const room = (high - low) * 0.12 || Math.abs(high) * 0.1 || 1;
  return {low: low - room, high: high + room};
}

function zone(limit, scale, y) {
  if (!limit) {
    return nothing;
  }
  const top = y(limit.at_most ?? scale.high);
  const bottom = y(limit.at_least ?? scale.low);
  return svg`<rect class="goal-zone" x="0" width="100%" y="${top}%" height="${bottom - top}%"/>`;
}

function pinDot(side, radius, entry, trend, x, y) {
  const value = entry ? trend.value(entry) : null;
  return value === null ? nothing : dot(side, radius, x(entry), y(value));
}

function dot(kind, radius, x, y) {
  return svg`<circle class="dot ${kind}" cx="${x}%" cy="${y}%" r=${radius}/>`;
}

function describe(trend, line) {
  const known = line.filter((entry) => trend.value(entry) !== null);
  const ends = [known[0], known.at(-1)]
    .filter(Boolean)
    .map((entry) => `${trend.text(entry)} at ${short(entry.address)}`);
  return `${trend.label}, ${count(known.length, "revision")}: ${[...new Set(ends)].join(" to ")}`;
}

function table(line) {
  return html`<table>
    <thead>
      <tr>
        <th scope="col">Revision</th>
        ${trends.map((trend) => html`<th scope="col" class="number">${trend.label}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${[...line].reverse().map(
        (entry) => html`<tr>
          <th scope="row">
            ${parse(entry.address).variant ? short(entry.address) : entry.revision}
          </th>
          ${trends.map((trend) => html`<td class="number">${trend.text(entry)}</td>`)}
        </tr>`,
      )}
    </tbody>
  </table>`;
}
