// How figures went along the line of history of the later pin: a strip of charts whose figures can
// be exchanged, with the table behind them.

import {html, nothing, svg} from "/lib/lit-html/lit-html.js";
import {Failure} from "/api.js";
import {short, worksheetPage} from "/address.js";
import {capital, count} from "/format.js";
import {FIRST_TRENDS} from "/parts/trends-coming.js";
import {refused} from "/views/failure.js";

const HIGH = 56;
const MARGIN = 8;
const MANY = 60;
const KEYS = {
  ArrowLeft: -1,
  ArrowDown: -1,
  ArrowRight: 1,
  ArrowUp: 1,
  PageDown: -10,
  PageUp: 10,
  Home: -Infinity,
  End: Infinity,
};

/**
 * The strip: {trends, pins, reading, exchange, redraw}. Trends are as trendsOf has them. Reading holds where the keys
 * stand in a chart and whether the table is open; exchange is called with the keys to be shown.
 */
export function trendStrip({trends: {answer, coming, failure, commits}, ...rest}) {
  return html`<section class="trends" aria-label="Along the line of history"
    aria-busy=${coming ? "true" : nothing}>
    ${answer ? strip({trends: withPins(answer, commits), ...rest}) : nothing}
    ${answer || failure
      ? nothing
      : html`<p class="strip-coming">Working the figures out…</p>`}
    ${failure instanceof Failure
      ? html`<div class="strip-failed">
          ${refused(failure)}
          <button type="button" @click=${() => rest.exchange(FIRST_TRENDS)}>
            Show the usual figures
          </button>
        </div>`
      : nothing}
  </section>`;
}

function withPins(answer, commits) {
  const point = (side) =>
    answer.points.find((each) => each.commit === commits[side]) ?? answer[side];
  return {...answer, from: point("from"), to: point("to")};
}

function strip({trends, pins, reading, exchange, redraw}) {
  const keys = trends.figures.map((figure) => figure.key);
  const swap = (at, key) => exchange(keys.map((each, place) => (place === at ? key : each)));
  return html`<div class="strip">
      ${trends.figures.map(
        (figure, at) => html`<figure class="trend">
          ${caption(trends, figure, at, pins, swap)} ${chart(trends, figure, at, pins, reading, redraw)}
        </figure>`,
      )}
    </div>
    <details class="behind" ?open=${reading.table}
      @toggle=${(event) => {
        reading.table = event.target.open;
        redraw();
      }}>
      <summary>These figures as a table</summary>
      ${reading.table ? table(trends) : nothing}
    </details>`;
}

function caption(trends, figure, at, pins, swap) {
  const text = (point) => point?.values[at].text ?? "–";
  const {from, to} = trends;
  return html`<figcaption>
    <select aria-label="Figure of chart ${at + 1}" @change=${(event) => swap(at, event.target.value)}>
      ${groupsOf(trends.choices).map(
        ([group, choices]) => html`<optgroup label=${capital(group)}>
          ${choices.map(
            (choice) => html`<option value=${choice.key} ?selected=${choice.key === figure.key}>
              ${capital(choice.label)}
            </option>`,
          )}
        </optgroup>`,
      )}
    </select>
    <strong>${text(to)}</strong>
    <span class="was">${from && pins.from !== pins.to ? was(text(from)) : nothing}</span>
  </figcaption>`;
}

function groupsOf(choices) {
  const groups = new Map();
  for (const choice of choices) {
    groups.set(choice.group, [...(groups.get(choice.group) ?? []), choice]);
  }
  return [...groups];
}

function was(text) {
  return text.startsWith("not ") ? `before: ${text}` : `was ${text}`;
}

// A chart is read with the arrow keys, as a slider along the revisions.
function chart(trends, figure, at, pins, reading, redraw) {
  const {points} = trends;
  const pinned = [trends.from, trends.to].filter(Boolean);
  const drawn = [...points, ...pinned].map((point) => point.values[at]);
  if (drawn.every((value) => numbersOf(value).length === 0)) {
    return html`<p class="nothing-yet">nothing known yet</p>`;
  }
  const axes = axesOf(figure, points, pinned, drawn);
  const cursor = reading.chart === figure.key ? Math.min(reading.at, points.length - 1) : null;
  const here = cursor ?? points.length - 1;
  const press = (event) => {
    const steps = KEYS[event.key];
    if (steps) {
      event.preventDefault();
      const from = reading.chart === figure.key ? here : points.length - 1 - Math.sign(steps);
      reading.chart = figure.key;
      reading.at = Math.max(0, Math.min(points.length - 1, from + steps));
      redraw();
    }
  };
  const leave = () => {
    reading.chart = null;
    redraw();
  };
  return html`<div class="plot" tabindex="0" role="slider" aria-label=${describe(figure, points, at)}
    aria-valuemin="1" aria-valuemax=${points.length} aria-valuenow=${here + 1}
    aria-valuetext=${spoken(points[here], at)} @keydown=${press} @blur=${leave}>
    <svg class="trend-lines" width="100%" height=${HIGH} aria-hidden="true">
      ${zone(figure.limit, axes)}
      <svg viewBox="0 0 100 100" preserveAspectRatio="none">
        <path class="bounds" d=${bounds(points, at, axes)}/>
        <path class="run" d=${runs(figure, points, at, axes)}/>
        <path class="points ${points.length > MANY ? "many" : ""}" d=${dots(points, at, axes)}/>
      </svg>
      ${cursor === null ? nothing : mark(points[cursor], at, axes)}
      ${pinDot("from", trends.from, at, axes)} ${pinDot("to", trends.to, at, axes)}
    </svg>
    ${cursor === null
      ? nothing
      : html`<p class="reading" aria-hidden="true">${spoken(points[cursor], at)}</p>`}
  </div>`;
}

function spoken(point, at) {
  return `${short(point.address)}: ${point.values[at].text}`;
}

function numbersOf(value) {
  return [value.value, value.at_least, value.at_most].filter((each) => each !== null);
}

function axesOf(figure, points, pinned, drawn) {
  const limits = [figure.limit?.at_least, figure.limit?.at_most];
  const all = [...drawn.flatMap(numbersOf), ...limits].filter(
    (value) => value !== null && value !== undefined,
  );
  const lowest = Math.min(...all);
  const highest = Math.max(...all);
  const room = (highest - lowest) * 0.12 || Math.abs(highest) * 0.1 || 1;
  const [low, high] = [lowest - room, highest + room];
  const numbers = [...points, ...pinned].map((point) => point.revision).filter(Boolean);
  const [first, last] = [Math.min(...numbers), Math.max(...numbers)];
  return {
    low,
    high,
    x: (point) =>
      last === first
        ? 50
        : MARGIN + ((100 - 2 * MARGIN) * ((point.revision ?? last) - first)) / (last - first),
    y: (value) => 92 - 84 * ((value - low) / (high - low)),
  };
}

function place(point, value, {x, y}) {
  return `${x(point).toFixed(2)},${y(value).toFixed(2)}`;
}

// Figures that are worked out break where one is unknown; measured ones run on to the next bake.
function runs(figure, points, at, axes) {
  let path = "";
  let open = false;
  for (const point of points) {
    const {value} = point.values[at];
    if (value !== null) {
      path += `${open ? "L" : "M"}${place(point, value, axes)}`;
      open = true;
    } else if (!figure.measured) {
      open = false;
    }
  }
  return path;
}

// Points are lines of no length with round ends, so that all of them are one element.
function dots(points, at, axes) {
  return points
    .filter((point) => point.values[at].value !== null)
    .map((point) => `M${place(point, point.values[at].value, axes)}h0.001`)
    .join("");
}

// What is known of a figure only within bounds is a bar, open to the side that is not known.
function bounds(points, at, axes) {
  return points
    .map((point) => ({point, value: point.values[at]}))
    .filter(({value}) => value.value === null && numbersOf(value).length > 0)
    .map(({point, value}) => {
      const from = place(point, value.at_least ?? axes.low, axes);
      return `M${from}V${axes.y(value.at_most ?? axes.high).toFixed(2)}`;
    })
    .join("");
}

function zone(limit, {low, high, y}) {
  if (!limit) {
    return nothing;
  }
  const top = y(limit.at_most ?? high);
  const bottom = y(limit.at_least ?? low);
  return svg`<rect class="goal-zone" x="0" width="100%" y="${top}%" height="${bottom - top}%"/>`;
}

function mark(point, at, {x, y}) {
  const {value} = point.values[at];
  const place = `${x(point)}%`;
  return svg`<line class="cursor" x1=${place} x2=${place} y1="0" y2="100%"/>
    ${value === null ? nothing : svg`<circle class="cursor" cx=${place} cy="${y(value)}%" r="4"/>`}`;
}

// The side before is a ring, the side after a dot; a value within bounds is a bar of either kind.
function pinDot(side, point, at, {x, y, low, high}) {
  const value = point?.values[at];
  if (!value || numbersOf(value).length === 0) {
    return nothing;
  }
  if (value.value !== null) {
    return svg`<circle class="dot ${side}" cx="${x(point)}%" cy="${y(value.value)}%" r="5"/>`;
  }
  const top = y(value.at_most ?? high);
  const bottom = y(value.at_least ?? low);
  return svg`<svg x="${x(point)}%" overflow="visible">
    <rect class="dot ${side}" x="-3" width="6" y="${top}%" height="${Math.max(3, bottom - top)}%"/>
  </svg>`;
}

function describe(figure, points, at) {
  const known = points.filter((point) => point.values[at].value !== null);
  return `${capital(figure.label)} along ${count(points.length, "revision")}, known of ${known.length}`;
}

function table({figures, points}) {
  return html`<div class="table-frame" tabindex="0" role="group" aria-label="Figures along the line">
    <table>
      <thead>
        <tr>
          <th scope="col">Revision</th>
          ${figures.map((figure) => html`<th scope="col" class="number">${capital(figure.label)}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${[...points].reverse().map(
          (point) => html`<tr>
            <th scope="row"><a href=${worksheetPage(point.address)}>${short(point.address)}</a></th>
            ${point.values.map((value) => html`<td class="number">${value.text}</td>`)}
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
