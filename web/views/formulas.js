// All formulas of the notebook, with their variants.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {formulaPage, worksheetPage} from "/address.js";
import {count, figure, fullDay} from "/format.js";
import {draftList} from "/parts/drafts.js";
import {goalMark} from "/parts/goal.js";
import {problemList} from "/views/failure.js";

export const formulasView = {
  rereads: true,

  async load(place, {signal}) {
    const [list, {drafts}] = await Promise.all([api.formulas(signal), api.drafts(signal)]);
    return {list, drafts};
  },

  title: ({list}) => list.title,

  draw: ({list, drafts}, place, tools) => html`<div class="page formulas">
    <h1>${list.title}</h1>
    ${list.formulas.length === 0
      ? html`${empty()} ${draftList(drafts, tools)}`
      : html`${ways()} ${draftList(drafts, tools)} ${table(list)}`}
  </div>`,
};

function ways() {
  return html`<p class="actions">
    <a class="button main" href="/begin">Write a formula</a>
    <a class="button" href="/begin?way=paste">Paste a recipe</a>
  </p>`;
}

function empty() {
  return html`<p class="say">There is no formula in this notebook yet.</p>
    <dl class="words">
      <div>
        <dt>A formula</dt>
        <dd>is what to weigh and what to do: ingredients, method, oven, pieces.</dd>
      </div>
      <div>
        <dt>A revision</dt>
        <dd>
          is one saved state of it, with a note that says why. Every revision stays, so any two can
          be compared and an earlier one taken back.
        </dd>
      </div>
      <div>
        <dt>A bake</dt>
        <dd>
          is one tray of one revision: what each piece weighed, measured and tasted like. So you see
          what a change did.
        </dd>
      </div>
    </dl>
    <p class="actions">
      <a class="button main" href="/begin">Write the first formula</a>
      <a class="button" href="/begin?way=paste">Paste a recipe</a>
    </p>`;
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
