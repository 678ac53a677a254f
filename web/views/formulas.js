// All formulas of the notebook, with their variants.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {formulaPage, worksheetPage} from "/address.js";
import {count, figure, fullDay} from "/format.js";
import {goalMark} from "/parts/goal.js";
import {problemList} from "/views/failure.js";

export const formulasView = {
  rereads: true,

  load: (place, {signal}) => api.formulas(signal),

  title: (list) => list.title,

  draw: (list) => html`<div class="page formulas">
    <h1>${list.title}</h1>
    ${list.formulas.length === 0 ? empty(list) : table(list)}
  </div>`,
};

function empty(list) {
  return html`<p class="say">There is no formula in this notebook yet.</p>
    <p>Write the first one down in a terminal, then reload this page:</p>
    <pre tabindex="0"><code>ovenmark new seeded-bun --notebook ${list.folder}</code></pre>
    <p>Or look around in a notebook that is already full:</p>
    <pre tabindex="0"><code>ovenmark demo bench
ovenmark view --notebook bench</code></pre>`;
}

// Rows and cells are named as such: on a phone they are laid out as blocks, and stay a table for
// those who listen.
function table(list) {
  return html`<table class="formula-list" role="table">
    <thead role="rowgroup">
      <tr role="row">
        ${["Formula", "Goal", "Newest revision"].map(
          (text) => html`<th role="columnheader" scope="col">${text}</th>`,
        )}
        ${["Liquid ratio", "Net carbohydrate a piece, g", "Protein a piece, g", "Bakes"].map(
          (text) => html`<th role="columnheader" scope="col" class="number">${text}</th>`,
        )}
      </tr>
    </thead>
    ${list.formulas.map((entry) => group(entry, list.formulas))}
  </table>`;
}

function group(entry, all) {
  return html`<tbody role="rowgroup">
    ${entry.per_piece === null ? damaged(entry) : row(entry, all)}
    ${entry.per_piece !== null && entry.problems.length > 0
      ? html`<tr role="row">
          <td role="cell" colspan="7">${problemList(entry.problems)}</td>
        </tr>`
      : nothing}
    ${entry.variants.map((variant) => variantRow(entry, variant))}
  </tbody>`;
}

function row(entry, all) {
  return html`<tr role="row" class="formula">
    <th role="rowheader" scope="row">
      <a class="title" href=${formulaPage(entry.formula)}>${entry.name}</a>
      ${referenceLink(entry, all)}
      ${entry.edited_by_hand ? editedMark(entry) : nothing}
    </th>
    <td role="cell" class="goal">${goal(entry)}</td>
    <td role="cell" class="newest">${newest(entry)}</td>
    ${number("Liquid ratio", figure(entry.ratios, "liquid_ratio"))}
    ${number("Net carbohydrate a piece, g", figure(entry.per_piece, "net_carbohydrate_g"))}
    ${number("Protein a piece, g", figure(entry.per_piece, "protein_g"))}
    ${number("Bakes", entry.bakes)}
  </tr>`;
}

function number(label, text) {
  return html`<td role="cell" class="number" data-label=${label}>
    <span class="label">${label}</span> ${text}
  </td>`;
}

function goal(entry) {
  return entry.goal_name
    ? html`${entry.goal_name}: ${goalMark(entry.goal_met)}`
    : html`<span class="quiet">no goal</span>`;
}

// The link leads to the figures that the list shows: those with the foods of today.
function newest({formula, revisions, time, note}) {
  return html`<a href=${worksheetPage(formula)}>${revisions}</a>
    <time datetime=${time}>${fullDay(time)}</time> <span class="note">${note}</span>`;
}

function referenceLink(entry, all) {
  if (!entry.reference) {
    return nothing;
  }
  const known = all.find((each) => each.formula === entry.reference);
  if (!known || known.problems.length > 0) {
    return nothing;
  }
  const href = formulaPage(entry.formula, {from: known.latest, to: entry.latest});
  return html`<a class="beside" href=${href}>compare with ${known.name}</a>`;
}

function editedMark(entry) {
  const href = formulaPage(entry.formula, {
    from: entry.latest,
    to: `${entry.formula}@edited`,
  });
  return html`<a class="beside edited" href=${href}>edited by hand, not yet a revision</a>`;
}

function damaged(entry) {
  return html`<tr role="row" class="formula damaged">
    <th role="rowheader" scope="row">
      <a class="title" href=${formulaPage(entry.formula)}>${entry.name}</a>
    </th>
    <td role="cell" colspan="6">
      <p>
        The newest revision (${newest(entry)}) cannot be worked out.
        ${count(entry.problems.length, "problem")}:
      </p>
      ${problemList(entry.problems)}
      ${entry.edited_by_hand ? editedMark(entry) : nothing}
    </td>
  </tr>`;
}

function variantRow(entry, variant) {
  return html`<tr role="row" class="variant">
    <th role="rowheader" scope="row">
      <a class="title" href=${formulaPage(entry.formula, {line: variant.variant})}>
        ${variant.variant}</a>
      <span class="beside">from revision ${variant.fork || "none"}</span>
    </th>
    <td role="cell" class="goal">${goal(variant)}</td>
    <td role="cell" class="newest" colspan="5">
      ${newest({...variant, formula: `${entry.formula}/${variant.variant}`})}
    </td>
  </tr>`;
}
