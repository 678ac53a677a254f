// The figures of a draft as they move: hollow what stood before, filled what stands now.

import {html, nothing, svg} from "/lib/lit-html/lit-html.js";
import {capital, figure, flowing, massNumber, massUnit, number, signed} from "/format.js";
import {goalMark, goalWords} from "/parts/goal.js";

const WHOLE = [
  ["batch_g", "Batch", "mass"],
  ["dough_per_piece_g", "Dough a piece", "mass"],
  ["liquid_ratio", "Liquid ratio", ""],
  ["dough_moisture_percent", "Dough moisture", "%"],
];

const MACROS = [
  ["net_carbohydrate_g", "Net carbohydrate", "g"],
  ["protein_g", "Protein", "g"],
  ["fat_g", "Fat", "g"],
  ["fibre_g", "Fibre", "g"],
  ["energy_kcal", "Energy", "kcal"],
  ["carbohydrate_g", "Carbohydrate", "g"],
  ["sugars_g", "Sugars", "g"],
  ["saturated_fat_g", "Saturated fat", "g"],
  ["polyols_g", "Polyols", "g"],
  ["allulose_g", "Allulose", "g"],
  ["sodium_mg", "Sodium", "mg"],
  ["water_g", "Water", "g"],
];
const FIRST = 5;

const BASES = [
  ["per_piece", "a piece"],
  ["per_100_g_dough", "per 100 g dough"],
  ["per_batch", "a batch"],
];

/** All figures. ui.per is what macros are stated for. */
export function figurePanel(state, ui) {
  const {sheet} = state;
  if (!sheet) {
    return html`<p class="quiet">${state.lost ? lostWords(state) : "Working it out…"}</p>`;
  }
  if (sheet.sheet.lines.length === 0) {
    return html`<p class="quiet">Add a line, and its figures follow here.</p>`;
  }
  return html`${state.lost ? html`<p class="stale" role="status">${lostWords(state)}</p>` : nothing}
    ${goalPart(sheet)}
    <section aria-label="The whole">
      ${table("The whole", WHOLE.map((each) => whole(sheet, each)))}
    </section>
    <section class="macro-part">
      <div class="heading">
        <h2>Macros</h2>
        <label>
          <span class="unseen">Stated</span>
          <select id="figures-per" @change=${(event) => ui.state(event.target.value)}>
            ${BASES.map(
              ([key, words]) =>
                html`<option value=${key} .selected=${key === ui.per}>${words}</option>`,
            )}
          </select>
        </label>
      </div>
      ${table("Macros", MACROS.slice(0, FIRST).map((each) => macro(sheet, ui.per, each)))}
      <details>
        <summary>${MACROS.length - FIRST} more figures</summary>
        ${table("More macros", MACROS.slice(FIRST).map((each) => macro(sheet, ui.per, each)))}
      </details>
    </section>`;
}

function lostWords(state) {
  return state.lost.reason === "silent"
    ? "The viewer does not answer; these figures are of an earlier moment."
    : `${state.lost.message} ${state.lost.hint}`;
}

/** The few figures that go along on a phone. */
export function glance(state) {
  const {sheet} = state;
  if (!sheet) {
    return html`<span>Working it out…</span>`;
  }
  if (sheet.sheet.lines.length === 0) {
    return html`<span>Figures follow the first line</span>`;
  }
  const shown = [
    {...macro(sheet, "per_piece", MACROS[0]), label: "Net carb a piece"},
    whole(sheet, WHOLE[2]),
    whole(sheet, WHOLE[0]),
  ];
  const {goal} = sheet.sheet;
  return html`${shown.map(
    (each) => html`<span class="glance-figure">
      <span class="glance-label">${each.label}</span>
      <b>${each.now}</b>
      ${each.moved && each.value !== null
        ? html`<span class="delta">${each.delta}</span>`
        : nothing}
    </span>`,
  )}
  ${goal
    ? html`<span class="glance-figure">
        <span class="glance-label">Goal</span> <b>${goalMark(goal.met)}</b>
      </span>`
    : nothing}`;
}

/* one figure: what it is called, before, now, the difference */

function whole(sheet, [key, label, unit]) {
  const difference = sheet.comparison?.ratios[key];
  const set = key in sheet.sheet.ratios ? sheet.sheet.ratios : sheet.sheet.yield;
  return unit === "mass"
    ? shown({key, label, unit: massUnit(), set, difference, turned: massNumber})
    : shown({key, label, unit, set, difference});
}

function macro(sheet, per, [key, label, unit]) {
  const difference = sheet.comparison?.macros[per][key];
  return {
    ...shown({key, label, unit, set: sheet.sheet.macros[per], difference}),
    zone: limitOf(sheet, key, per),
  };
}

function shown({key, label, unit, set, difference, turned = (value) => value}) {
  const value = turned(set[key] ?? null);
  const from = difference ? turned(difference.from) : undefined;
  const delta = difference ? turned(difference.delta) : null;
  const strip = (words) =>
    unit && words.endsWith(` ${unit}`) ? words.slice(0, -unit.length - 1) : words;
  const now = value === null ? figure(set, key) : number(value);
  const was = !difference ? null : from === null ? strip(difference.from_text) : number(from);
  return {
    label: unit ? `${label}, ${unit}` : label,
    value,
    from,
    now,
    was,
    moved: difference !== undefined && was !== now,
    delta: delta === null ? "unknown" : signed(delta),
  };
}

function limitOf(sheet, key, per) {
  const check = sheet.sheet.goal?.checks.find(
    (each) => each.figure === key && each.limit && (each.per === per || each.per === null),
  );
  return check?.limit;
}

function table(title, rows) {
  return html`<table class="edit-figures">
    <caption class="unseen">${title}</caption>
    <thead class="unseen">
      <tr>
        <th scope="col">Figure</th>
        <th scope="col">Chart</th>
        <th scope="col">Before</th>
        <th scope="col">Now</th>
        <th scope="col">Difference</th>
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        (each) => html`<tr class=${each.moved ? "moved" : ""}>
          <th scope="row">${each.label}</th>
          <td class="plot">${plot(each)}</td>
          <td class="number before">${each.moved ? each.was : nothing}</td>
          <td class="number now" colspan=${each.value === null ? 2 : 1}>${each.now}</td>
          ${each.value === null
            ? nothing
            : html`<td class="number change">${each.moved ? each.delta : nothing}</td>`}
        </tr>`,
      )}
    </tbody>
  </table>`;
}

function plot({value, from, zone}) {
  const known = [value, from, zone?.at_least, zone?.at_most].filter(
    (each) => each !== null && each !== undefined,
  );
  const high = Math.max(...known, 0) * 1.12 || 1;
  const low = Math.min(...known, 0) * 1.12;
  const x = (each) => 4 + (92 * (each - low)) / (high - low);
  const has = (each) => each !== null && each !== undefined;
  return html`<svg class="dot-line" width="100%" height="20" aria-hidden="true">
    ${zone ? zoneShape(zone, x, low, high) : nothing}
    <line class="axis" x1="0" x2="100%" y1="10" y2="10"/>
    ${has(from) && has(value)
      ? svg`<line class="span" x1="${x(from)}%" x2="${x(value)}%" y1="10" y2="10"/>`
      : nothing}
    ${has(from) ? svg`<circle class="dot from" cx="${x(from)}%" cy="10" r="5.5"/>` : nothing}
    ${has(value)
      ? svg`<circle class="dot to" cx="${x(value)}%" cy="10"
          r=${has(from) && Math.abs(x(from) - x(value)) < 1 ? 3 : 5.5}/>`
      : nothing}
  </svg>`;
}

function zoneShape(zone, x, low, high) {
  const left = x(zone.at_least ?? low);
  const right = x(zone.at_most ?? high);
  return svg`<rect class="goal-zone" x="${left}%" width="${Math.max(0, right - left)}%" y="0"
    height="20"/>`;
}

function goalPart({sheet, comparison}) {
  if (!sheet.goal) {
    return nothing;
  }
  const before = new Map((comparison?.goal?.rules ?? []).map((rule) => [rule.rule, rule]));
  return html`<section class="edit-goal">
    <h2>Goal: ${sheet.goal.name}</h2>
    <ul class="rules">
      ${sheet.goal.checks.map((check) => {
        const was = before.get(check.rule);
        const turned = was && was.change !== "only now" && was.from_met !== check.met;
        return html`<li class=${turned ? "moved" : ""}>
          ${goalMark(check.met, html`<b>${goalWords(check.met)}</b>`)}
          <span>
            ${flowing(capital(check.rule))}${check.value_text
              ? html`: <b>${flowing(check.value_text)}</b>`
              : nothing}
            ${turned ? html`<span class="was">before: ${goalWords(was.from_met)}</span>` : nothing}
            ${check.because.length > 0
              ? html`<span class="remark">${check.because.join(", ")}</span>`
              : nothing}
          </span>
        </li>`;
      })}
    </ul>
  </section>`;
}
