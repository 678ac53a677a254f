// What a batch and a piece cost; a price that is not known is named, never taken for nothing.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {flowing} from "/format.js";

/** What one state costs; says how to begin when no food has a price. */
export function costSection(cost) {
  const rows = [
    ...cost.per_piece.map((money) => ["A piece", money]),
    ...cost.per_batch.map((money) => ["Batch", money]),
  ];
  return html`<section class="cost">
    <h2>Cost</h2>
    ${rows.length === 0
      ? html`<p class="quiet">No price is known yet; a food’s page in the
          <a href="/pantry">pantry</a> takes one.</p>`
      : html`<dl class="pairs">
          ${rows.map(
            ([name, money]) => html`<div>
              <dt>${name}</dt>
              <dd>${flowing(money.text)}</dd>
            </div>`,
          )}
        </dl>`}
    ${rows.length > 0 ? unpriced(cost) : nothing}
  </section>`;
}

/** What two states cost; nothing when no food of either has a price. */
export function costMoves(cost, from, to) {
  const rows = [
    ...cost.per_piece.map((money) => ["A piece", money]),
    ...cost.per_batch.map((money) => ["Batch", money]),
  ];
  if (rows.length === 0) {
    return nothing;
  }
  return html`<section class="cost">
    <h2>Cost</h2>
    <table class="cost-moves">
      <thead>
        <tr>
          <th scope="col"><span class="unseen">Of what</span></th>
          <th scope="col" class="number">${from}</th>
          <th scope="col" class="number">${to}</th>
          <th scope="col" class="number">Change</th>
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          ([name, money]) => html`<tr>
            <th scope="row">${name}</th>
            <td class="number">${flowing(money.from_text)}</td>
            <td class="number">${flowing(money.to_text)}</td>
            <td class="number">${flowing(money.delta_text)}</td>
          </tr>`,
        )}
      </tbody>
    </table>
    ${unpriced(cost)}
  </section>`;
}

/** The foods without a price, by name. */
export function unpriced(cost) {
  return cost.unpriced.length === 0
    ? nothing
    : html`<p class="quiet unpriced">The price is not known of ${cost.unpriced.join("; ")}.</p>`;
}
