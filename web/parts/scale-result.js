// A formula scaled: what to measure, how far that is off, and what it moves.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {expected, order} from "/api.js";
import {capital, figureMass, flowing, mass, number, signed} from "/format.js";
import {costSection} from "/parts/cost.js";
import {plot} from "/parts/figures.js";

const SMALLEST_ERROR_PERCENT = 0.05;
const WORTH_TELLING = 0.001;

/** Everything about it. */
export function scaleResult(data, tools) {
  const {sheet} = data;
  return html`
    <p class="say" role="status">${flowing(sheet.summary)}</p>
    <p class="actions">
      <button type="button" class="main" @click=${() => draft(data, tools)}>Open as a draft</button>
      <button type="button" @click=${() => print()}>Print for the bench</button>
    </p>
    ${facts(sheet)} ${measure(sheet)} ${rounding(sheet)}
    ${sheet.cost.per_batch.length > 0 ? costSection(sheet.cost) : nothing}
    ${sheet.remarks.length > 0
      ? html`<section class="scale-remarks">
          <h2>To mind when scaling</h2>
          <ul>
            ${sheet.remarks.map((words) => html`<li>${flowing(words)}</li>`)}
          </ul>
        </section>`
      : nothing}
  `;
}

async function draft(data, tools) {
  try {
    const {id} = await order("scale/draft", {address: data.sheet.address, asked: data.asked});
    tools.go(`/drafts/${id}`);
  } catch (thrown) {
    data.refused = expected(thrown);
    tools.redraw();
  }
}

function facts(sheet) {
  const baked = sheet.yield.baked_per_piece_g;
  const {tin} = sheet;
  return html`<ul class="scale-facts">
    ${sheet.handling_loss_percent === null
      ? nothing
      : html`<li>${flowing(`${number(sheet.handling_loss_percent)} % lost on handling:`)}
          ${figureMass(sheet.yield, "dough_g")} of dough of a batch of
          ${figureMass(sheet.yield, "batch_g")}.</li>`}
    ${baked === null || baked === undefined
      ? nothing
      : html`<li>A piece weighs ${flowing(mass(baked))} when baked, at a loss of
          ${flowing(`${number(sheet.baking_loss_percent)} %`)}.</li>`}
    ${tin
      ? html`<li>The ${tin.tin} holds ${flowing(`${number(tin.volume_ml)} ml`)}, ${tin.because}:
          ${flowing(mass(tin.dough_g))} of dough.</li>`
      : nothing}
    ${sheet.at_hand.map(
      (hand) => html`<li>Of ${flowing(mass(hand.have_g))} ${hand.food} it takes
        ${flowing(mass(hand.used_g))}${hand.scarcest ? ", the scarcest" : ""};
        ${flowing(mass(Math.max(0, hand.left_g)))} are left.</li>`,
    )}
  </ul>`;
}

function measure(sheet) {
  return html`<section>
    <h2>What to measure</h2>
    <table class="scaled-lines">
      <thead>
        <tr>
          <th scope="col">Line</th>
          <th scope="col" class="number scale-stated">Formula</th>
          <th scope="col" class="number">Measure</th>
          <th scope="col" class="number scale-exact">Exactly</th>
          <th scope="col" class="number">Error</th>
        </tr>
      </thead>
      <tbody>
        ${sheet.lines.map(
          (line) => html`<tr>
            <th scope="row">
              <span class="scale-tick-box" aria-hidden="true"></span>${capital(line.name)}
            </th>
            <td class="number scale-stated">${flowing(line.entered)}</td>
            <td class="number scale-measure">${flowing(line.measure)}</td>
            <td class="number scale-exact">${line.exact_g === null
              ? html`<b class="unknown">not known</b>`
              : flowing(mass(line.exact_g))}</td>
            <td class="number scale-error">${error(line)}</td>
          </tr>`,
        )}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">Batch, exactly</th>
          <td class="scale-stated"></td>
          <td class="number">${figureMass(sheet.yield, "batch_g")}</td>
          <td class="scale-exact"></td>
          <td></td>
        </tr>
      </tfoot>
    </table>
  </section>`;
}

function error({error_percent: percent}) {
  return percent === null || Math.abs(percent) < SMALLEST_ERROR_PERCENT
    ? ""
    : flowing(`${signed(percent)} %`);
}

function rounding(sheet) {
  const told = sheet.rounding.filter(
    (move) =>
      move.from === null || move.delta === null
      || Math.abs(move.delta) >= WORTH_TELLING * Math.abs(move.from),
  );
  if (sheet.readable_g === 0) {
    return nothing;
  }
  const scale = number(sheet.readable_g);
  return html`<section class="scale-rounding">
    <h2>What measuring to ${flowing(`${scale} g`)} and spoons moves</h2>
    ${told.length === 0
      ? html`<p class="quiet">No ratio and no macro by a thousandth or more.</p>`
      : html`<table class="figure-table">
          <caption class="unseen">Exactly, and as measured</caption>
          <thead class="unseen">
            <tr>
              <th scope="col">Figure</th>
              <th scope="col">Chart</th>
              <th scope="col">Exactly, then as measured</th>
              <th scope="col">Error</th>
            </tr>
          </thead>
          <tbody>
            ${told.map(
              (move) => html`<tr>
                <th scope="row">${capital(move.label)}</th>
                <td class="plot">${plot(move)}</td>
                <td class="values">${flowing(move.change_text)}</td>
                <td class="number change">
                  ${move.delta === null ? "not known" : flowing(move.delta_text)}
                </td>
              </tr>`,
            )}
          </tbody>
        </table>
        <p class="quiet">○ exactly, ● as measured; anything else moves by less than a thousandth.
        </p>`}
  </section>`;
}
