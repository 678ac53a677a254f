// The lines of a formula and of its reference, side by side, by the part that they play.

import {html, nothing, svg} from "/lib/lit-html/lit-html.js";
import {capital, figure, figureMass, massUnit} from "/format.js";

/** What each line brings to a piece, and its mass: [key, words, heading]. */
export const SHARES = [
  ["net_carbohydrate_g", "net carbohydrate in a piece", "Net carb., g"],
  ["protein_g", "protein in a piece", "Protein, g"],
  ["fat_g", "fat in a piece", "Fat, g"],
  ["energy_kcal", "energy in a piece", "kcal"],
  ["percent_of_batch", "share of the batch", "% of batch"],
];
const OF_A_PIECE = SHARES.slice(0, 4);

/** The table; shown says which share the bars draw, and which stands on a narrow page. */
export function partsTable(sheet, shown) {
  const all = sheet.parts.flatMap((part) => [part.from, part.to]);
  const most = Math.max(...all.map((share) => share.figures[shown] ?? 0), 0);
  const tell = {shown, most};
  return html`<table class="rebuild-lines">
    <caption class="unseen">
      Lines of ${sheet.reference.name} and of ${sheet.rebuild.name}
    </caption>
    <thead>
      <tr>
        <th scope="col">Line</th>
        <th scope="col" class="rebuild-bar-cell">
          ${capital(SHARES.find(([key]) => key === shown)[1])}
        </th>
        <th scope="col" class="number">${massUnit()}</th>
        <th scope="col" class="number ${wide("percent_of_batch", shown)}">% of batch</th>
        ${OF_A_PIECE.map(
          ([key, , heading]) =>
            html`<th scope="col" class="number ${wide(key, shown)}">${heading}</th>`,
        )}
      </tr>
    </thead>
    ${sheet.parts.map(
      (part) => html`<tbody class="rebuild-part">
          <tr>
            <th scope="rowgroup" colspan=${OF_A_PIECE.length + 4}>${capital(part.part)}</th>
          </tr>
          ${part.lines.length > 1
            ? [
                share("from", part.from, "together", tell),
                share("to", part.to, "together", tell),
              ]
            : nothing}
        </tbody>
        ${part.lines.map(
          (line) => html`<tbody>
            ${line.from ? share("from", line.from, line.from.name, tell) : nothing}
            ${line.to ? share("to", line.to, line.to.name, tell) : nothing}
          </tbody>`,
        )}`,
    )}
  </table>`;
}

function wide(key, shown) {
  return key === shown ? "rebuild-figure rebuild-shown" : "rebuild-figure";
}

function share(side, {figures, entered}, name, {shown, most}) {
  const words = side === "to" ? "rebuild" : "reference";
  return html`<tr class="rebuild-${side}">
    <th scope="row">
      <span class="side-mark ${side}" aria-hidden="true"></span>
      <span class="unseen">${words}: </span>${name}
      ${entered && !/ g$/.test(entered) ? html`<span class="quiet">${entered}</span>` : nothing}
    </th>
    <td class="rebuild-bar-cell">${bar(side, figures[shown], most)}</td>
    <td class="number">${figureMass(figures, "grams", {unit: false})}</td>
    <td class="number ${wide("percent_of_batch", shown)}">${figure(figures, "percent_of_batch")}</td>
    ${OF_A_PIECE.map(
      ([key]) => html`<td class="number ${wide(key, shown)}">${figure(figures, key)}</td>`,
    )}
  </tr>`;
}

function bar(side, value, most) {
  if (value === null || value === undefined || most === 0) {
    return nothing;
  }
  const width = Math.max(0, (98 * value) / most);
  return html`<svg class="rebuild-bar" width="100%" height="14" aria-hidden="true">
    ${svg`<rect class=${side} x="1" y="2" width="${width}%" height="10"/>`}
  </svg>`;
}
