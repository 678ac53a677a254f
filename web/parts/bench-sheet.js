// What is needed at the bench: lines to weigh, steps to do, the oven; each with a box to tick, on
// the screen as on paper. On paper also what is filled in by hand.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {figure, figureMass, heat, mass, massUnit, number, temperatureUnit} from "/format.js";
import {startAgain, tick, ticked} from "/parts/bench.js";
import {notice} from "/parts/notices.js";

const MOST_PIECES = 6;

/** All of it for a sheet; redraw is called when something was ticked. */
export function benchSheet(sheet, redraw) {
  const ticks = ticked(sheet);
  const box = (name, words) => tickBox(sheet, ticks, name, words, redraw);
  const left = notesGoLeft(sheet);
  return html`<div class="to-weigh">
      ${weighing(sheet, ticks, box)} ${left ? notes() : nothing}
    </div>
    <div class="to-do">
      ${method(sheet, ticks, box)} ${oven(sheet, ticks, box)} ${left ? nothing : notes()}
    </div>
    ${progress(sheet, ticks, redraw)}`;
}

// On paper the notes go below the shorter of the two columns.
function notesGoLeft(sheet) {
  const weighed = sheet.lines.reduce((sum, each) => sum + (each.name.length > 24 ? 2 : 1.3), 1);
  const done = sheet.method.reduce((sum, step) => sum + Math.ceil(step.length / 36), 0);
  return weighed < done + 2 * sheet.bake.length + 1;
}

function notes() {
  return html`<section class="by-hand">
    <h2>Notes</h2>
    <div class="ruled"><i></i><i></i><i></i></div>
  </section>`;
}

function tickBox(sheet, ticks, name, words, redraw) {
  return html`<label class="box">
    <input type="checkbox" .checked=${ticks.has(name)} aria-label=${words}
      @change=${(event) => {
        tick(sheet, name, event.target.checked);
        redraw();
      }}>
  </label>`;
}

const lineName = (line) => `line ${line.id}`;
const stepName = (at) => `step ${at + 1}`;
const stageName = (stage) => `oven ${stage.id}`;

function weighing(sheet, ticks, box) {
  if (sheet.lines.length === 0) {
    return html`<section><h2>Ingredients</h2><p class="quiet">There are none yet.</p></section>`;
  }
  const ounces = massUnit() !== "g";
  return html`<section>
    <h2>Ingredients</h2>
    <table class="weigh ${ounces ? "both" : ""}">
      <thead>
        <tr>
          <th scope="col"><span class="unseen">Weighed</span></th>
          <th scope="col">Ingredient</th>
          <th scope="col" class="number entered">As entered</th>
          ${ounces ? html`<th scope="col" class="number">Ounces</th>` : nothing}
          <th scope="col" class="number">Grams</th>
          <th scope="col" class="number share">% of batch</th>
          <th scope="col" class="number share">Baker’s %</th>
        </tr>
      </thead>
      <tbody>
        ${sheet.lines.map((each) => line(each, ounces, ticks, box))}
      </tbody>
      <tfoot>
        <tr>
          <td></td>
          <th scope="row">Batch</th>
          <td class="entered"></td>
          ${ounces
            ? html`<td class="number grams">
                ${figureMass(sheet.yield, "batch_g", {unit: false})}
              </td>`
            : nothing}
          <td class="number grams">${figure(sheet.yield, "batch_g")}</td>
          <td class="share"></td>
          <td class="share"></td>
        </tr>
      </tfoot>
    </table>
    <p class="quiet">
      ${sheet.lines.some((each) => each.approximate)
        ? "≈ from a volume or a household measure. "
        : nothing}* counts as flour.${ounces ? " Rounded ounces need not add up." : nothing}
    </p>
  </section>`;
}

function line(each, ounces, ticks, box) {
  const about = each.approximate ? "≈ " : "";
  return html`<tr class=${ticks.has(lineName(each)) ? "done" : ""}>
    <td class="tick-cell">${box(lineName(each), `Weighed: ${each.name}`)}</td>
    <th scope="row">
      ${each.name}${each.flour
        ? html`<span aria-hidden="true">*</span><span class="unseen"> (flour)</span>`
        : nothing}
      ${isMass(each.entered)
        ? nothing
        : html`<span class="remark narrow-entered">${each.entered}</span>`}
      ${each.note ? html`<span class="remark">${each.note}</span>` : nothing}
      ${each.grams === null ? html`<span class="remark problem">${each.how}</span>` : nothing}
    </th>
    <td class="number entered" title=${each.how}>${each.entered}</td>
    ${ounces
      ? html`<td class="number grams">${each.grams === null
          ? html`<b class="unknown">unknown</b>`
          : about + mass(each.grams).replace(/ oz$/, "")}</td>`
      : nothing}
    <td class="number grams">
      ${each.grams === null
        ? html`<b class="unknown">unknown</b>`
        : `${about}${number(each.grams)}`}
    </td>
    <td class="number share">${share(each.percent_of_batch)}</td>
    <td class="number share">${share(each.bakers_percent)}</td>
  </tr>`;
}

// Whether the weights beside it say the same, so that there is no need for it where room is scarce.
function isMass(entered) {
  return /^[\d.,]+ ?(g|kg|oz|lb)$/.test(entered);
}

function share(value) {
  return value === null ? "–" : number(value);
}

function method(sheet, ticks, box) {
  return sheet.method.length === 0
    ? nothing
    : html`<section>
        <h2>Method</h2>
        <ol class="method-steps">
          ${sheet.method.map(
            (step, at) => html`<li class=${ticks.has(stepName(at)) ? "done" : ""}>
              ${box(stepName(at), `Done: step ${at + 1}`)}
              <span class="nth" aria-hidden="true">${at + 1}</span>
              <span>${step}</span>
            </li>`,
          )}
        </ol>
        ${sheet.named_unweighed.map(({text}) => html`<p class="problem">${text}</p>`)}
      </section>`;
}

function oven(sheet, ticks, box) {
  return sheet.bake.length === 0
    ? nothing
    : html`<section>
        <h2>Oven</h2>
        <ol class="stages">
          ${sheet.bake.map(
            (stage) => html`<li class=${ticks.has(stageName(stage)) ? "done" : ""}>
              ${box(stageName(stage), `Done: oven, ${stageText(stage)}`)}
              <span>${stageWords(stage)}</span>
            </li>`,
          )}
        </ol>
      </section>`;
}

function stageText(stage) {
  const hot = [
    heat(stage.temperature, stage.temperature_c),
    stage.minutes === null ? null : `${number(stage.minutes)} min`,
  ].filter(Boolean);
  return hot.join(", ") || "not stated";
}

function stageWords(stage) {
  const rest = [
    stage.rack ? `rack ${stage.rack}` : null,
    stage.steam ? `steam ${stage.steam}` : null,
    stage.vessel,
    stage.note,
  ].filter(Boolean);
  return html`<b>${stageText(stage)}</b>${rest.length > 0 ? `; ${rest.join("; ")}` : ""}`;
}

function progress(sheet, ticks, redraw) {
  const names = [
    ...sheet.lines.map(lineName),
    ...sheet.method.map((step, at) => stepName(at)),
    ...sheet.bake.map(stageName),
  ];
  const done = names.filter((name) => ticks.has(name)).length;
  return html`<p class="ticked" role="status">
    ${done === 0
      ? nothing
      : html`<span>${done} of ${names.length} ticked on this device</span>
          <button type="button" @click=${() => again(sheet, redraw)}>Start again</button>`}
  </p>`;
}

function again(sheet, redraw) {
  const undo = startAgain(sheet);
  redraw();
  notice({
    text: "All ticks are taken away.",
    act: [
      "Bring them back",
      () => {
        undo();
        redraw();
        notice({text: "The ticks are back."});
      },
    ],
  });
}

/** What is filled in by hand: the pieces of the tray. Seen on paper only. */
export function paperForm(sheet) {
  const pieces = Math.min(MOST_PIECES, sheet.yield.pieces || MOST_PIECES);
  const columns = [
    "Piece",
    `Oven, ${temperatureUnit()}`,
    "Time, min",
    `Dough, ${massUnit()}`,
    `Baked, ${massUnit()}`,
    "Width, mm",
    "Height, mm",
    `Core, ${temperatureUnit()}`,
    "Seen, tasted",
  ];
  return html`<section class="by-hand">
    <h2>Tray</h2>
    <p class="blanks">
      <span>Date</span><span>Baker</span><span>Room</span><span>Verdict</span>
    </p>
    <table>
      <thead>
        <tr>${columns.map((name) => html`<th scope="col">${name}</th>`)}</tr>
      </thead>
      <tbody>
        ${Array.from(
          {length: pieces},
          (none, at) => html`<tr>
            <th scope="row">${String.fromCharCode(97 + at)}</th>
            ${columns.slice(1).map(() => html`<td></td>`)}
          </tr>`,
        )}
      </tbody>
    </table>
  </section>`;
}
