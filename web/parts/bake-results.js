// What the measures of a bake come to while they are typed. The server works it out.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {capital, count, figure, number, withUnit} from "/format.js";

const ROWS = [
  ["energy_kcal", "energy", "kcal"],
  ["protein_g", "protein", "g"],
  ["fat_g", "fat", "g"],
  ["carbohydrate_g", "carbohydrate", "g"],
  ["fibre_g", "fibre", "g"],
  ["net_carbohydrate_g", "net carbohydrate", "g"],
  ["sodium_mg", "sodium", "mg"],
  ["water_g", "water", "g"],
];

/** Draws it; piece is the one that is looked at, or null. */
export function bakeResults(figures, piece) {
  if (!figures) {
    return html`<p class="quiet">No figures yet.</p>`;
  }
  const id = piece?.id.trim().toLowerCase();
  const at = figures.pieces.findIndex((each) => each.id === id);
  const chosen = at < 0 ? null : figures.pieces[at];
  return html`${remarks(figures)} ${tray(figures)}
    <table class="baked-composition">
      <caption>
        Composition as baked<span class="quiet">; ${restsOn(figures)}</span>
      </caption>
      <thead>
        <tr>
          <td></td>
          <th scope="col" class="number">A piece by the formula</th>
          ${chosen
            ? html`<th scope="col" class="number">
                Piece ${chosen.id},
                ${chosen.dough_g === null ? "not weighed" : "as weighed"}
              </th>`
            : nothing}
          <th scope="col" class="number">100 g baked</th>
        </tr>
      </thead>
      <tbody>
        ${ROWS.map(
          ([key, name, unit]) => html`<tr>
            <th scope="row">${name}, ${unit}</th>
            <td class="number">${figure(figures.per_piece, key)}</td>
            ${chosen
              ? html`<td class="number">${figure(figures.weighed_pieces[at], key)}</td>`
              : nothing}
            <td class="number">${figure(figures.per_100_g_baked, key)}</td>
          </tr>`,
        )}
      </tbody>
    </table>
    ${cautions(figures)}`;
}

function restsOn({weighed, baked_percent: percent, baked_unknown: unknown}) {
  return unknown
    ? `${unknown} What the oven took is unknown until then.`
    : `${number(percent)} % of the dough is left, from ${count(weighed, "weighed piece")}`;
}

/** What to mind about the measures, such as egg that stayed cool. */
export function remarks(figures) {
  return figures.remarks.length === 0
    ? nothing
    : html`<div class="caution" role="alert">
        ${figures.remarks.map((each) => html`<p>${each}</p>`)}
      </div>`;
}

function tray({summary}) {
  const rows = [
    ["mean loss on baking", withUnit(summary.mean_loss_percent, "%")],
    ["mean width by height", withUnit(summary.mean_spread_factor, "")],
    [
      "mean liking",
      summary.mean_liking === null
        ? "unknown"
        : `${number(summary.mean_liking)} of 9, ${count(summary.tasters, "score")}`,
    ],
  ];
  return html`<dl class="pairs tray-figures">
    ${rows.map(
      ([name, value]) => html`<div>
        <dt>${capital(name)}</dt>
        <dd class=${value === "unknown" ? "quiet" : ""}>${value}</dd>
      </div>`,
    )}
  </dl>`;
}

function cautions({cautions: all}) {
  return html`<details class="tray-cautions">
    <summary>To mind: ${count(all.length, "caution")} on this formula</summary>
    <ul>
      ${all.map((each) => html`<li>${each}</li>`)}
    </ul>
  </details>`;
}
