// The table of a label: declared amounts with the unrounded ones and the rule; what is not known.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {capital, flowing} from "/format.js";

const BASES = [
  ["per_piece", "A piece"],
  ["per_100_g_dough", "100 g dough"],
  ["per_100_g_baked", "100 g baked"],
];

/** A law, and how it is known unless it was read. */
export function sourceWords({law, standing}) {
  return standing === "read" ? law : `${law} (${standing})`;
}

/** Row by row: what would be declared, the amount behind it, the rule. */
export function amountTable(region) {
  return html`<table class="label-table" role="table">
    <thead role="rowgroup">
      <tr role="row">
        <th scope="col" role="columnheader"><span class="unseen">Figure</span></th>
        ${BASES.map(
          ([, words]) =>
            html`<th scope="col" role="columnheader" class="number">
              ${words} <span class="remark">declared, unrounded</span>
            </th>`,
        )}
        <th scope="col" role="columnheader">Rule of rounding</th>
      </tr>
    </thead>
    <tbody role="rowgroup">
      ${region.rows.map(
        (row) => html`<tr role="row" class=${row.part ? "part" : ""}>
          <th scope="row" role="rowheader">
            ${row.label} ${row.note ? html`<span class="remark">${row.note}</span>` : nothing}
          </th>
          ${BASES.map(
            ([basis, words]) =>
              html`<td role="cell" class="number" data-basis=${words}>
                ${amount(row.amounts[basis])}
              </td>`,
          )}
          <td role="cell" class="label-rule">
            ${flowing(row.rule)} <span class="remark">${sourceWords(row.source)}</span>
          </td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}

function amount(each) {
  return html`${each.declared
      ? html`<b>${flowing(each.declared)}</b>`
      : html`<span class="label-open">not declared</span>`}
    <span class="remark">
      ${flowing(each.text)}${each.daily_value_declared
        ? html` ·
            <span class="label-share">${flowing(each.daily_value_declared)} DV</span>`
        : nothing}
    </span>`;
}

/** Names beside each other, whichever way each of them is written. */
const together = (names) =>
  names.map((name, i) => html`${i > 0 ? "; " : nothing}<bdi>${name}</bdi>`);

/** The allergens that the region's law names, with the foods that bring them. */
export function allergens(region) {
  return html`<section class="label-allergens">
    <h3>Allergens</h3>
    <p class="quiet">${sourceWords(region.allergen_source)}. As stated by the foods.</p>
    ${region.allergens.length === 0
      ? html`<p>The foods state none of them.</p>`
      : html`<ul>
          ${region.allergens.map(
            (each) => html`<li><b>${capital(each.name)}</b>: ${together(each.foods)}</li>`,
          )}
        </ul>`}
    ${region.allergens_unknown_in.length > 0
      ? html`<p class="problem">
          Allergens are unknown in ${together(region.allergens_unknown_in)}.
        </p>`
      : nothing}
    ${region.allergen_notes.map((note) => html`<p class="quiet">${note}</p>`)}
  </section>`;
}

/** What stands in the way of a declared amount, each reason once. */
export function unknowns(region) {
  const reasons = [...new Set(region.rows.flatMap((row) => row.missing))];
  return reasons.length === 0
    ? nothing
    : html`<section class="label-unknowns">
        <h3>What is not known</h3>
        <ul>
          ${reasons.map((reason) => html`<li>${capital(reason)}</li>`)}
        </ul>
      </section>`;
}
