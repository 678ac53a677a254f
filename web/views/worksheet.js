// A revision worked out: what to weigh, what to do, what is in it. Prints on one page.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {bakePage, formulaPage, print as printed, revisionName, worksheetPage} from "/address.js";
import {capital, count, figure, fullDay, moment, number} from "/format.js";
import {onSheet, revisionActs} from "/parts/acts.js";
import {ruleList} from "/parts/goal.js";
import {tray} from "/parts/tray.js";

const MACROS = [
  ["energy_kcal", "Energy", "kcal"],
  ["fat_g", "Fat", "g"],
  ["saturated_fat_g", "of which saturated fat", "g"],
  ["carbohydrate_g", "Carbohydrate", "g"],
  ["sugars_g", "of which sugars", "g"],
  ["polyols_g", "of which polyols", "g"],
  ["allulose_g", "of which allulose", "g"],
  ["fibre_g", "of which fibre", "g"],
  ["net_carbohydrate_g", "Net carbohydrate", "g"],
  ["protein_g", "Protein", "g"],
  ["sodium_mg", "Sodium", "mg"],
  ["water_g", "Water", "g"],
];
const PARTS = /^of which /;
const BASES = [
  ["per_piece", "A piece"],
  ["per_100_g_dough", "100 g dough"],
  ["per_100_g_baked", "100 g baked"],
  ["per_batch", "Batch"],
];

export const worksheetView = {
  rereads: true,

  load: ({parts}, {signal}) => api.sheet(parts.address, signal),

  title: (sheet) => `${sheet.name} ${revisionName(sheet)}, worksheet`,

  draw: (sheet, place, tools) => html`<article class="page sheet-of-paper worksheet">
    ${head(sheet)} ${revisionActs(onSheet(sheet), tools)}
    <div class="columns">
      <div>${lines(sheet)} ${method(sheet)} ${oven(sheet)}</div>
      <div>${yieldAndRatios(sheet)} ${goal(sheet)} ${macros(sheet)} ${unknowns(sheet)}</div>
    </div>
    ${cautions(sheet)} ${bakes(sheet)}
  </article>`,
};

function head(sheet) {
  const own = numbered(sheet);
  const href = formulaPage(sheet.formula, {line: sheet.variant, to: own});
  return html`<header class="sheet-head">
    <h1>${sheet.name} <span class="revision-number">${revisionName(sheet)}</span></h1>
    <p class="sub">
      ${sheet.commit === null
        ? html`Edited by hand, not yet a revision; it would become
            ${sheet.variant ? sheet.variant + " " : ""}${sheet.revision}.`
        : html`<time datetime=${sheet.time}>${moment(sheet.time)}</time>, ${sheet.author}:
            <b>${sheet.note}</b>`}
      ${sheet.published ? html` · published: ${sheet.published}` : nothing}
    </p>
    ${sheet.foods_changed_since
      ? html`<p class="caution">
          Foods, goal or settings changed since this revision, and these figures are those of today.
          <a href=${worksheetPage(own)}>The figures as they were then</a>
        </p>`
      : nothing}
    ${sheet.details ? html`<p class="why">${sheet.details}</p>` : nothing}
    ${sheet.description ? html`<p class="description">${sheet.description}</p>` : nothing}
    <p class="actions">
      <a href=${href}>Timeline and comparison</a>
      <button type="button" @click=${() => print()}>Print</button>
    </p>
  </header>`;
}

function numbered({formula, variant, revision, commit}) {
  return printed({formula, variant, point: commit === null ? "edited" : revision});
}

function lines(sheet) {
  if (sheet.lines.length === 0) {
    return html`<section><h2>Ingredients</h2><p class="quiet">There are none yet.</p></section>`;
  }
  const batch = sheet.yield;
  return html`<section>
    <h2>Ingredients</h2>
    <table class="weigh">
      <thead>
        <tr>
          <th scope="col">Ingredient</th>
          <th scope="col" class="number">As entered</th>
          <th scope="col" class="number">Grams</th>
          <th scope="col" class="number">% of batch</th>
          <th scope="col" class="number">Baker’s %</th>
        </tr>
      </thead>
      <tbody>
        ${sheet.lines.map(line)}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">Batch</th>
          <td></td>
          <td class="number">${figure(batch, "batch_g")}</td>
          <td></td>
          <td></td>
        </tr>
      </tfoot>
    </table>
    ${sheet.lines.some((each) => each.approximate)
      ? html`<p class="quiet">≈ from a volume or a household measure. * counts as flour.</p>`
      : html`<p class="quiet">* counts as flour.</p>`}
  </section>`;
}

function line(each) {
  const grams =
    each.grams === null
      ? html`<b class="unknown">unknown</b>`
      : `${each.approximate ? "≈ " : ""}${number(each.grams)}`;
  return html`<tr>
    <th scope="row">
      ${each.name}${each.flour
        ? html`<span aria-hidden="true">*</span><span class="unseen"> (flour)</span>`
        : nothing}
      ${each.note ? html`<span class="remark">${each.note}</span>` : nothing}
      ${each.grams === null ? html`<span class="remark problem">${each.how}</span>` : nothing}
    </th>
    <td class="number" title=${each.how}>${each.entered}</td>
    <td class="number grams">${grams}</td>
    <td class="number">${share(each.percent_of_batch)}</td>
    <td class="number">${share(each.bakers_percent)}</td>
  </tr>`;
}

function share(value) {
  return value === null ? "–" : number(value);
}

function method(sheet) {
  return sheet.method.length === 0
    ? nothing
    : html`<section>
        <h2>Method</h2>
        <ol class="method-steps">
          ${sheet.method.map((step) => html`<li>${step}</li>`)}
        </ol>
      </section>`;
}

function oven(sheet) {
  return sheet.bake.length === 0
    ? nothing
    : html`<section>
        <h2>Oven</h2>
        <ol class="stages">
          ${sheet.bake.map((stage) => html`<li>${stageWords(stage)}</li>`)}
        </ol>
      </section>`;
}

function stageWords(stage) {
  const hot = [
    stage.temperature,
    stage.minutes === null ? null : `${number(stage.minutes)} min`,
  ].filter(Boolean);
  const rest = [
    stage.rack ? `rack ${stage.rack}` : null,
    stage.steam ? `steam ${stage.steam}` : null,
    stage.vessel,
    stage.note,
  ].filter(Boolean);
  return html`<b>${hot.join(", ") || "not stated"}</b>${rest.length > 0
    ? `; ${rest.join("; ")}`
    : ""}`;
}

function yieldAndRatios(sheet) {
  const loss = sheet.handling_loss_percent;
  const rows = [
    ["Pieces", figure(sheet.yield, "pieces")],
    [
      loss === null ? "Dough" : `Dough, less ${number(loss)} % handling loss`,
      figure(sheet.yield, "dough_g", "g"),
    ],
    ["Dough a piece", figure(sheet.yield, "dough_per_piece_g", "g")],
    [
      sheet.baked_pieces > 0
        ? `Baked a piece, from ${count(sheet.baked_pieces, "weighed piece")}`
        : "Baked a piece, not weighed yet",
      figure(sheet.yield, "baked_per_piece_g", "g"),
    ],
    ["Liquid ratio", figure(sheet.ratios, "liquid_ratio")],
    ["Dough moisture", figure(sheet.ratios, "dough_moisture_percent", "%")],
  ];
  return html`<section>
    <h2>Yield and ratios</h2>
    <dl class="pairs">
      ${rows.map(
        ([name, value]) => html`<div>
          <dt>${name}</dt>
          <dd>${value}</dd>
        </div>`,
      )}
    </dl>
  </section>`;
}

function goal(sheet) {
  if (!sheet.goal) {
    return nothing;
  }
  return html`<section>
    <h2>Goal: ${sheet.goal.name}</h2>
    ${ruleList(sheet.goal.checks)}
  </section>`;
}

function macros(sheet) {
  const bases = BASES.filter(([basis]) => basis !== "per_100_g_baked" || sheet.baked_pieces > 0);
  const shown = MACROS.filter(([key]) => !(["polyols_g", "allulose_g"].includes(key)
    && sheet.macros.per_batch[key] === 0));
  return html`<section>
    <h2>What is in it</h2>
    <table class="macros">
      <thead>
        <tr>
          <th scope="col"><span class="unseen">Figure</span></th>
          ${bases.map(([, name]) => html`<th scope="col" class="number">${name}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${shown.map(
          ([key, name, unit]) => html`<tr class=${PARTS.test(name) ? "part" : ""}>
            <th scope="row">${name}, ${unit}</th>
            ${bases.map(
              ([basis]) => html`<td class="number">${figure(sheet.macros[basis], key)}</td>`,
            )}
          </tr>`,
        )}
      </tbody>
    </table>
    <p class="quiet">
      Energy by ${sheet.energy_rule === "foods" ? "the foods’ own values" : sheet.energy_rule}. Net
      carbohydrate = ${sheet.net_carbohydrate_rule}.
      ${sheet.baked_pieces === 0
        ? "What 100 g baked hold is unknown until pieces were weighed before and after the oven."
        : nothing}
    </p>
  </section>`;
}

// Food by food, since it is a food's label that answers.
function unknowns(sheet) {
  const lines = sheet.lines
    .map((line) => ({
      name: line.name,
      gaps: sheet.unknowns.filter((each) => each.line === line.id),
    }))
    .filter((line) => line.gaps.length > 0);
  return lines.length === 0
    ? nothing
    : html`<section class="unknowns">
        <h2>What is not known</h2>
        <ul>
          ${lines.map(
            ({name, gaps}) =>
              html`<li>${capital(name)}: ${[...new Set(gaps.map(gapWords))].join(", ")}</li>`,
          )}
        </ul>
      </section>`;
}

function gapWords({nutrient, why}) {
  const known = MACROS.find(([key]) => key === nutrient);
  return known ? known[1].replace(PARTS, "").toLowerCase() : why;
}

function cautions(sheet) {
  return html`<section class="caution">
    <h2>Allergens and cautions</h2>
    <ul>
      ${sheet.cautions.map((words) => html`<li>${words}</li>`)}
    </ul>
    <p>Local food codes and licensed practice decide.</p>
  </section>`;
}

function bakes(sheet) {
  return html`<section class="sheet-bakes">
    <h2>Bakes of this revision</h2>
    ${sheet.bakes.length === 0
      ? html`<p class="quiet">Not baked yet.</p>`
      : html`<ul>
          ${sheet.bakes.map(
            (bake) => html`<li>
              <a href=${bakePage(bake)}>${tray(bake)} ${fullDay(bake.time)}</a>
              ${count(bake.pieces.length, "piece")}${bake.note ? `; ${bake.note}` : ""}
            </li>`,
          )}
        </ul>`}
  </section>`;
}
