// The ingredients of both sides: outlined bars before, filled bars after, on one scale.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {count, massNumber, massUnit, number, signed} from "/format.js";

const FOLDED_FROM = 2;

/** The table of lines of a comparison. */
export function lineTable(comparison, from, to) {
  const most = Math.max(
    1e-9,
    ...comparison.lines.flatMap((line) => [line.from_g ?? 0, line.to_g ?? 0]),
  );
  const moved = comparison.lines.filter((line) => !isQuiet(line));
  const quiet = comparison.lines.filter(isQuiet);
  const fold = quiet.length >= FOLDED_FROM;
  const open = fold ? moved : comparison.lines;
  return html`<section class="lines">
    <h2>Ingredients</h2>
    ${comparison.lines.length === 0
      ? html`<p class="quiet">Neither side has ingredients yet.</p>`
      : nothing}
    ${open.length > 0 ? table(open, most, from, to) : nothing}
    ${fold
      ? html`<details class="unchanged">
          <summary>
            ${open.length > 0 ? `${quiet.length} more unchanged` : `All ${quiet.length} unchanged`}
          </summary>
          ${table(quiet, most, from, to)}
        </details>`
      : nothing}
    ${foodData(comparison)}
  </section>`;
}

function isQuiet(line) {
  return line.change === "same" && !line.moved && line.flour === null
    && line.from_note === null && line.to_note === null;
}

function table(lines, most, from, to) {
  return html`<table class="line-table" role="table">
    <thead role="rowgroup">
      <tr role="row">
        <th role="columnheader" scope="col" class="number">${from}, ${massUnit()}</th>
        <th role="columnheader" scope="col"><span class="unseen">Bar of ${from}</span></th>
        <th role="columnheader" scope="col" class="name">Ingredient</th>
        <th role="columnheader" scope="col"><span class="unseen">Bar of ${to}</span></th>
        <th role="columnheader" scope="col" class="number after">${to}, ${massUnit()}</th>
        <th role="columnheader" scope="col" class="number">Change, ${massUnit()}</th>
        <th role="columnheader" scope="col" class="number bakers">Baker’s %</th>
      </tr>
    </thead>
    <tbody role="rowgroup">
      ${lines.map((line) => row(line, most))}
    </tbody>
  </table>`;
}

function row(line, most) {
  return html`<tr role="row" class=${isQuiet(line) ? "same" : "differs"}>
    <td role="cell" class="number before">${grams(line.from_g, line.change === "added")}</td>
    <td role="cell" class="bar from">${bar("from", line.from_g, most)}</td>
    <th role="rowheader" scope="row" class="name">${line.name} ${remarks(line)}</th>
    <td role="cell" class="bar to">${bar("to", line.to_g, most)}</td>
    <td role="cell" class="number after">${grams(line.to_g, line.change === "removed")}</td>
    <td role="cell" class="number change">${change(line)}</td>
    <td role="cell" class="number bakers">${bakers(line)}</td>
  </tr>`;
}

function grams(value, absent) {
  if (absent) {
    return html`<span aria-hidden="true">·</span><span class="unseen">not there</span>`;
  }
  return value === null ? "unknown" : number(massNumber(value));
}

function bar(side, value, most) {
  const width = value === null ? 0 : (100 * value) / most;
  return html`<svg class="bar-line ${side}" width="100%" height="14" aria-hidden="true">
    <rect x="${side === "from" ? 100 - width : 0}%" width="${width}%" y="1" height="12"/>
  </svg>`;
}

function change(line) {
  const delta = line.delta_g === null ? "unknown" : signed(massNumber(line.delta_g));
  switch (line.change) {
    case "added":
      return html`<b>new, ${delta}</b>`;
    case "removed":
      return html`<b>left out, ${delta}</b>`;
    case "rewritten":
      return "weighs the same";
    case "same":
      return "0";
    case "changed":
    case "replaced":
      return html`<b>${delta}</b>`;
    default:
      return html`${line.change} <b>${delta}</b>`;
  }
}

function bakers(line) {
  const from = percent(line.from_bakers_percent);
  const to = percent(line.to_bakers_percent);
  return from === to ? to : `${from} → ${to}`;
}

function percent(value) {
  return value === null ? "–" : number(value);
}

function remarks(line) {
  const words = [];
  if (line.other_name) {
    words.push(`in place of ${line.other_name}`);
  }
  const written = line.from_entered !== line.to_entered
    && line.from_entered !== null && line.to_entered !== null;
  if (written && !(isMass(line.from_entered) && isMass(line.to_entered))) {
    words.push(`${line.from_entered} → ${line.to_entered}`);
  }
  if (line.moved) {
    words.push("moved to another place");
  }
  if (line.flour !== null) {
    words.push(line.flour ? "counts as flour now" : "no longer counts as flour");
  }
  if (line.from_note !== null || line.to_note !== null) {
    words.push(`note: ${line.from_note ?? "none"} → ${line.to_note ?? "none"}`);
  }
  return words.length > 0 ? html`<span class="remark">${words.join("; ")}</span>` : nothing;
}

// Written in the unit of the columns, so that it says nothing more than they do.
function isMass(entered) {
  return entered.endsWith(massUnit()) && /^[\d.,]+ ?(g|oz)$/.test(entered);
}

function foodData(comparison) {
  if (comparison.food_data.length === 0) {
    return nothing;
  }
  return html`<div class="food-data">
    <p>
      ${comparison.food_data.length === 1
        ? "One food has new data of its own"
        : `${comparison.food_data.length} foods have new data of their own`};
      that moves figures without a change of the formula:
    </p>
    ${comparison.food_data.map(
      (food) => html`<details>
        <summary>${food.name}, ${count(food.figures.length, "figure")}</summary>
        <ul>
          ${food.figures.map(
            (each) => html`<li>
              ${each.field}: ${each.from ?? "not stated"} → ${each.to ?? "not stated"}
            </li>`,
          )}
        </ul>
      </details>`,
    )}
  </div>`;
}
