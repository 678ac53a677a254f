// The figures of both sides as a dot plot, and what moved one of them.

import {html, nothing, svg} from "/lib/lit-html/lit-html.js";
import {capital, flowing, isWeighed, massNumber, massUnit, signed} from "/format.js";

/** For what macros can be stated, by key. */
export const bases = {
  per_piece: "a piece",
  per_100_g_baked: "per 100 g baked",
  per_100_g_dough: "per 100 g dough",
  per_batch: "a batch",
};

const FIRST = [
  "net_carbohydrate_g",
  "protein_g",
  "fat_g",
  "fibre_g",
  "energy_kcal",
];

const HEAD_RATIOS = ["liquid_ratio", "dough_moisture_percent"];

function isFirst(key) {
  return FIRST.includes(key) || HEAD_RATIOS.includes(key);
}

function pick(figures, keys) {
  return Object.fromEntries(keys.filter((key) => figures[key]).map((key) => [key, figures[key]]));
}

/** All figures of a comparison for a basis, by key, those that matter most first. */
export function figuresOf(comparison, per) {
  const macros = Object.fromEntries(
    Object.entries(comparison.macros[per] ?? {}).map(([key, each]) => [key, plain(each, per)]),
  );
  const ratios = Object.fromEntries(
    Object.entries(comparison.ratios).map(([key, each]) => [key, inReadersUnit(key, each)]),
  );
  return {...pick(macros, FIRST), ...pick(ratios, HEAD_RATIOS), ...macros, ...ratios};
}

// The texts of a mass of the bench are in the reader's unit already, its numbers are in grams.
function inReadersUnit(key, each) {
  return isWeighed(key)
    ? {
        ...each,
        unit: massUnit(),
        from: massNumber(each.from),
        to: massNumber(each.to),
        delta: massNumber(each.delta),
        contributions: each.contributions.map((cause) => ({
          ...cause,
          delta: massNumber(cause.delta),
        })),
      }
    : each;
}

// The name of a macro without what it is stated for, which the heading says already.
function plain(each, per) {
  const ending = ` ${bases[per]}`;
  return each.label.endsWith(ending)
    ? {...each, label: each.label.slice(0, -ending.length)}
    : each;
}

/** Figure by figure: hollow before, filled after, the goal as a shaded zone. */
export function figureTable(comparison, per, from, to, choosePer) {
  const figures = Object.entries(figuresOf(comparison, per));
  const interesting = figures.filter(([key]) => isFirst(key));
  const rest = figures.filter(([key]) => !isFirst(key));
  const table = (some) => html`<table class="figure-table">
    <thead class="unseen">
      <tr>
        <th scope="col">Figure</th>
        <th scope="col">Chart</th>
        <th scope="col">${from} to ${to}</th>
        <th scope="col">Change</th>
      </tr>
    </thead>
    <tbody>
      ${some.map(([key, each]) => row(each, zoneOf(comparison, key, per)))}
    </tbody>
  </table>`;
  return html`<section class="figures">
    <div class="heading">
      <h2>Figures</h2>
      <label>
        <span class="unseen">Stated</span>
        <select @change=${(event) => choosePer(event.target.value)}>
          ${Object.entries(bases).map(
            ([key, words]) =>
              html`<option value=${key} .selected=${key === per}>${words}</option>`,
          )}
        </select>
      </label>
    </div>
    ${table(interesting)}
    <details class="more">
      <summary>${rest.length} more figures</summary>
      ${table(rest)}
    </details>
  </section>`;
}

function row(each, zone) {
  return html`<tr>
    <th scope="row">${each.label}${each.unit ? `, ${each.unit}` : ""}</th>
    <td class="plot">${plot(each, zone)}</td>
    <td class="values">${values(each)}</td>
    <td class="number change">${each.delta === 0 ? "0" : each.delta_text}</td>
  </tr>`;
}

function values(each) {
  const strip = (text) =>
    each.unit && text.endsWith(" " + each.unit) ? text.slice(0, -each.unit.length - 1) : text;
  const from = strip(each.from_text);
  const to = strip(each.to_text);
  return from === to ? to : `${from} → ${to}`;
}

function zoneOf(comparison, key, per) {
  const rules = comparison.goal?.rules ?? [];
  const limit = rules.find(
    (rule) =>
      rule.figure === key && rule.limit && rule.change !== "only before"
      && (rule.per === per || rule.per === null),
  )?.limit;
  return limit && isWeighed(key)
    ? {at_least: massNumber(limit.at_least), at_most: massNumber(limit.at_most)}
    : limit;
}

/** Before hollow, after filled, on one axis; the zone of a goal is shaded. */
export function plot(each, zone) {
  const known = [each.from, each.to, zone?.at_least, zone?.at_most].filter(
    (value) => value !== null && value !== undefined,
  );
  const high = Math.max(...known, 0) * 1.12 || 1;
  const low = Math.min(...known, 0) * 1.12;
  const x = (value) => 3 + (94 * (value - low)) / (high - low);
  const both = each.from !== null && each.to !== null;
  return html`<svg class="dot-line" width="100%" height="22" aria-hidden="true">
    ${zone ? goalZone(zone, x, low, high) : nothing}
    <line class="axis" x1="0" x2="100%" y1="11" y2="11"/>
    ${both
      ? svg`<line class="span" x1="${x(each.from)}%" x2="${x(each.to)}%" y1="11" y2="11"/>`
      : nothing}
    ${each.from === null
      ? nothing
      : svg`<circle class="dot from" cx="${x(each.from)}%" cy="11" r="5.5"/>`}
    ${each.to === null
      ? nothing
      : svg`<circle class="dot to" cx="${x(each.to)}%" cy="11"
          r=${both && Math.abs(x(each.from) - x(each.to)) < 1 ? 3 : 5.5}/>`}
  </svg>`;
}

function goalZone(zone, x, low, high) {
  const left = x(zone.at_least ?? low);
  const right = x(zone.at_most ?? high);
  return svg`<rect class="goal-zone" x="${left}%" width="${right - left}%" y="0" height="22"/>`;
}

/**
 * What moved one figure, cause by cause; the causes add up to the change. Without a wanted figure
 * it is the first that moved, those that matter most before others.
 */
export function causes(comparison, per, wanted, choose) {
  const figures = figuresOf(comparison, per);
  const moved = Object.entries(figures).filter(([, each]) => each.contributions.length > 0);
  if (moved.length === 0) {
    return html`<section class="causes">
      <h2>What moved the figures</h2>
      <p class="quiet">
        No figure that is exactly known on both sides moved ${bases[per]}.
      </p>
    </section>`;
  }
  const [key, shown] = moved.find(([each]) => each === wanted) ?? moved[0];
  return html`<section class="causes">
    <div class="heading">
      <h2>What moved ${shown.label}</h2>
      <label>
        <span class="unseen">Figure</span>
        <select @change=${(event) => choose(event.target.value)}>
          ${moved.map(
            ([each, value]) =>
              html`<option value=${each} .selected=${each === key}>
                ${value.label}</option>`,
          )}
        </select>
      </label>
    </div>
    ${wanted && wanted !== key && figures[wanted]
      ? html`<p class="quiet">${capital(figures[wanted].label)} did not move, or is not
          exactly known on both sides.</p>`
      : nothing}
    ${causeTable(shown)}
  </section>`;
}

function causeTable(shown) {
  const most = Math.max(...shown.contributions.map((each) => Math.abs(each.delta)), 1e-12);
  const unit = shown.unit ? ` ${shown.unit}` : "";
  return html`<table class="cause-table">
    <thead class="unseen">
      <tr>
        <th scope="col">Cause</th>
        <th scope="col">Chart</th>
        <th scope="col">Share</th>
      </tr>
    </thead>
    <tbody>
      ${shown.contributions.map(
        (each) => html`<tr>
          <th scope="row">${flowing(each.cause)}</th>
          <td class="plot">${causeBar(each.delta / most)}</td>
          <td class="number">${signed(each.delta)}</td>
        </tr>`,
      )}
    </tbody>
    <tfoot>
      <tr>
        <th scope="row">together</th>
        <td></td>
        <td class="number"><b>${signed(shown.delta)}${unit}</b></td>
      </tr>
    </tfoot>
  </table>`;
}

function causeBar(share) {
  const width = Math.abs(share) * 48;
  return html`<svg class="cause-bar" width="100%" height="18" aria-hidden="true">
    <rect x="${share < 0 ? 50 - width : 50}%" width="${width}%" y="3" height="12"/>
    <line x1="50%" x2="50%" y1="0" y2="18"/>
  </svg>`;
}

