// Every figure that an answer moves: hollow before, filled after.

import {html} from "/lib/lit-html/lit-html.js";
import {capital, flowing} from "/format.js";
import {costMoves} from "/parts/cost.js";
import {plot} from "/parts/figures.js";

/** The figures, then the cost. */
export function leverMoves(answer) {
  if (answer.moves.length === 0) {
    return html`<p class="quiet">Nothing else moves.</p>`;
  }
  return html`<table class="figure-table lever-moves">
    <caption class="unseen">What it moves</caption>
    <thead class="unseen">
      <tr>
        <th scope="col">Figure</th>
        <th scope="col">Chart</th>
        <th scope="col">Before and after</th>
        <th scope="col">Change</th>
      </tr>
    </thead>
    <tbody>
      ${answer.moves.map(
        (move) => html`<tr>
          <th scope="row">${capital(move.label)}</th>
          <td class="plot">${plot(move)}</td>
          <td class="values">${flowing(move.change_text)}</td>
          <td class="number change">${move.delta === null ? "not known" : move.delta_text}</td>
        </tr>`,
      )}
    </tbody>
  </table>
    ${costMoves(answer.cost, "○ Before", "● After")}`;
}
