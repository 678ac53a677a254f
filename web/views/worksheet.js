// A revision worked out: what to weigh, what to do, what is in it.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {bakePage, formulaPage, print as printed, revisionName, worksheetPage} from "/address.js";
import {capital, count, figure, figureMass, fullDay, moment, number} from "/format.js";
import {onSheet, revisionActs} from "/parts/acts.js";
import {benchSheet, paperForm} from "/parts/bench-sheet.js";
import {costSection} from "/parts/cost.js";
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
      <div class="at-the-bench">${benchSheet(sheet, tools.redraw)}</div>
      <div class="figures-of">
        ${yieldAndRatios(sheet)} ${costSection(sheet.cost)} ${goal(sheet)} ${macros(sheet)}
        ${unknowns(sheet)}
      </div>
    </div>
    ${paperForm(sheet)} ${storage(sheet)} ${cautions(sheet)} ${bakes(sheet)}
  </article>`,
};

// On paper either what is needed at the bench, which is also what the browser's own command
// prints, or the figures.
function printFor(reader) {
  const root = document.documentElement;
  root.dataset.print = reader;
  addEventListener("afterprint", () => delete root.dataset.print, {once: true});
  print();
}

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
      <button type="button" @click=${() => printFor("bench")}>Print for the bench</button>
      <button type="button" class="plain" @click=${() => printFor("figures")}>
        Print with figures
      </button>
    </p>
  </header>`;
}

function numbered({formula, variant, revision, commit}) {
  return printed({formula, variant, point: commit === null ? "edited" : revision});
}

function yieldAndRatios(sheet) {
  const loss = sheet.handling_loss_percent;
  const rows = [
    ["Pieces", figure(sheet.yield, "pieces")],
    [
      loss === null ? "Dough" : `Dough, less ${number(loss)} % handling loss`,
      figureMass(sheet.yield, "dough_g"),
    ],
    ["Dough a piece", figureMass(sheet.yield, "dough_per_piece_g")],
    [
      sheet.baked_pieces > 0
        ? `Baked a piece, from ${count(sheet.baked_pieces, "weighed piece")}`
        : "Baked a piece, not weighed yet",
      figureMass(sheet.yield, "baked_per_piece_g"),
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
function storage(sheet) {
  return sheet.storage
    ? html`<section class="sheet-storage">
        <h2>Storage</h2>
        <p dir="auto">${sheet.storage}</p>
      </section>`
    : nothing;
}

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
