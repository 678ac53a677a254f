// All figures behind the chart of an outcome.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {stepLink} from "/parts/effect-chart.js";
import {flowing, number} from "/format.js";

const STANDING = {
  clear: "shows with all others",
  along: "shows by itself only",
  open: "cannot be told from chance",
};

export function effectTable(outcome, sheet) {
  return html`<div class="table-frame" tabindex="0" role="group" aria-label="Effects on the outcome">
      <table class="effect-table">
        <thead>
          <tr>
            <th scope="col">Change</th>
            <th scope="col">Tried</th>
            <th scope="col">For each</th>
            <th scope="col" class="number">Effect</th>
            <th scope="col" class="number">Interval 90 %</th>
            <th scope="col" class="number">Sure of its sign</th>
            <th scope="col" class="number">By itself</th>
            <th scope="col">Standing</th>
            <th scope="col">Where it changed</th>
          </tr>
        </thead>
        <tbody>
          ${outcome.effects.map((effect) => row(effect, sheet))}
        </tbody>
      </table>
    </div>
    <p class="quiet">
      Pieces of one tray differ by chance by about ${number(round(outcome.piece_deviation))}
      ${outcome.unit}, bakes by about ${number(round(outcome.bake_deviation))} ${outcome.unit}
      (standard deviations).
    </p>`;
}

function round(value) {
  return Number(value.toPrecision(2));
}

function row(effect, sheet) {
  const {together, by_itself: own} = effect;
  return html`<tr>
    <th scope="row">
      ${effect.words}
      ${effect.with.length > 0
        ? html`<span class="remark">always with ${effect.with.join(", ")}</span>`
        : nothing}
      ${effect.companions.length > 0
        ? html`<span class="remark">moved along:
            ${effect.companions.map(({label, times}) => `${label} (${times})`).join(", ")}</span>`
        : nothing}
    </th>
    <td>${flowing(effect.tried)}</td>
    <td>${flowing(effect.per)}</td>
    <td class="number">${flowing(together.text)}</td>
    <td class="number">${together.low_text} to ${together.high_text}</td>
    <td class="number">${Math.min(99, Math.round(100 * together.sure_of_sign))} %</td>
    <td class="number">${flowing(own.text)}
      <span class="remark">${own.low_text} to ${own.high_text}</span></td>
    <td>${STANDING[effect.standing]}</td>
    <td>
      ${effect.steps.map(
        (step, at) => html`${at > 0 ? ", " : ""}<span class="effect-step"
            >${stepLink(step, sheet)}${step.alone ? html` <b>alone</b>` : nothing}</span>`,
      )}${effect.changed > effect.steps.length
        ? html` and ${effect.changed - effect.steps.length} more`
        : nothing}
    </td>
  </tr>`;
}
