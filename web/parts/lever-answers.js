// The answers to a wish: single changes by how little they disturb, the combined one, or why not.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {expected, order} from "/api.js";
import {
  capital, count, flowing, isWeighed, mass, massNumber, massUnit, number, signed,
} from "/format.js";
import {withoutBlanks} from "/parts/asked.js";
import {unpriced} from "/parts/cost.js";
import {goalMark} from "/parts/goal.js";
import {impossible} from "/parts/lever-impossible.js";
import {leverMoves} from "/parts/lever-moves.js";
import {endOf, strip} from "/parts/lever-strip.js";

const FIRST_SHOWN = 6;
const SINGLE = "single";

// What a person looks at first, of all that moves; differences of percentages are points.
const COLUMNS = [
  ["liquid_ratio", "Liquid ratio", ""],
  ["dough_moisture_percent", "Moisture", "points"],
  ["batch_g", "Batch", "g"],
  ["dough_per_piece_g", "Dough a piece", "g"],
  ["net_carbohydrate_g", "Net carb.", "g"],
  ["protein_g", "Protein", "g"],
];

/** Everything that was found. */
export function leverAnswers(data, tools, changed) {
  const {sheet} = data;
  const singles = sheet.answers.filter((each) => each.kind === SINGLE);
  const others = sheet.answers.filter((each) => each.kind !== SINGLE);
  const context = {data, tools, open: (answer) => draft(data, answer, tools)};
  return html`
    <p class="say lever-summary" role="status">
      ${sheet.impossible ? "It cannot be done." : flowing(sheet.summary)}
    </p>
    ${sheet.ways ? html`<p class="lever-ways">${flowing(sheet.ways)}</p>` : nothing}
    ${sheet.remarks.map((words) => html`<p class="quiet">${flowing(words)}</p>`)}
    ${impossible(sheet, data.asked, changed)}
    ${singles.length > 0 ? singleTable(singles, context) : nothing}
    ${others.map((answer) => together(answer, context))}
  `;
}

async function draft(data, answer, tools) {
  try {
    const {id} = await order("lever/draft", {
      address: data.sheet.address,
      asked: withoutBlanks(data.asked),
      number: answer.number,
      note: answer.note,
    });
    tools.go(`/drafts/${id}`);
  } catch (thrown) {
    data.refused = expected(thrown);
    tools.redraw();
  }
}

/* one line */

function singleTable(singles, context) {
  const {ui, sheet} = context.data;
  const shown = ui.all ? singles : singles.slice(0, FIRST_SHOWN);
  const moves = shown.map((answer) => sides(lead(answer)));
  const columns = columnsOf(singles, sheet);
  const priced = singles.some((answer) => answer.cost.per_batch.length > 0);
  const judged = singles.some((answer) => answer.goal_met !== null);
  const view = {...context, columns, priced, judged, end: endOf(moves)};
  const hidden = singles.length - shown.length;
  return html`<section class="lever-singles">
    <h2>Change one line</h2>
    <p class="quiet">
      What disturbs the rest least comes first. ○ before, ● after.
      ${sheet.asked.batch === "fixed" ? "The other lines give or take in proportion." : nothing}
    </p>
    <table class="lever-table" role="table">
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col"><span class="unseen">Rank</span></th>
          <th role="columnheader" scope="col">Line</th>
          <th role="columnheader" scope="col"><span class="unseen">Chart</span></th>
          <th role="columnheader" scope="col" class="number">Weigh</th>
          <th role="columnheader" scope="col" class="number">Change</th>
          ${columns.map(
            ([key, name, unit]) =>
              html`<th role="columnheader" scope="col" class="number">
                ${heading(key, name, unit)}
              </th>`,
          )}
          ${priced
            ? html`<th role="columnheader" scope="col" class="number">${costName(sheet)}</th>`
            : nothing}
          ${judged ? html`<th role="columnheader" scope="col">Goal</th>` : nothing}
          <th role="columnheader" scope="col"><span class="unseen">Open</span></th>
        </tr>
      </thead>
      ${shown.map((answer) => single(answer, view))}
    </table>
    ${hidden > 0
      ? html`<button type="button" @click=${() => showAll(context)}>
          ${count(hidden, "more change", "more changes")}, which disturb more
        </button>`
      : nothing}
    ${priced ? unpriced(singles[0].cost) : nothing}
  </section>`;
}

function showAll({data, tools}) {
  data.ui.all = true;
  tools.redraw();
}

// Figures that some change moves and that nobody asked for, since those are the same in all.
function columnsOf(singles, sheet) {
  const asked = new Set(sheet.asked.wishes.filter((wish) => isFixed(wish)).map((w) => w.figure));
  const moved = (key) =>
    singles.some((answer) => answer.moves.some((move) => move.figure === key));
  const some = COLUMNS.filter(([key]) => !asked.has(key) && moved(key));
  return some.some(([key]) => key === "batch_g")
    ? some.filter(([key]) => key !== "dough_per_piece_g")
    : some;
}

function isFixed({limit}) {
  return limit.at_least !== null && limit.at_least === limit.at_most;
}

function costName(sheet) {
  const {cost} = sheet.answers[0];
  const money = cost.per_piece[0] ?? cost.per_batch[0];
  return `Cost ${cost.per_piece[0] ? "a piece" : "a batch"}, ${money?.currency ?? ""}`;
}

function heading(key, name, unit) {
  const shown = isWeighed(key) ? massUnit() : unit;
  return shown ? `${name}, ${shown}` : name;
}

function lead(answer) {
  return answer.lines.find((each) => each.line === answer.line);
}

function sides(line) {
  return {from: line.from_g, to: line.to_g};
}

function single(answer, view) {
  const line = lead(answer);
  const {data, tools} = view;
  const open = data.ui.open.has(answer.line);
  const toggle = () => {
    data.ui.open[open ? "delete" : "add"](answer.line);
    tools.redraw();
  };
  const width = 6 + view.columns.length + (view.priced ? 1 : 0) + (view.judged ? 1 : 0);
  return html`<tbody role="rowgroup" class=${open ? "open" : ""}>
    <tr role="row">
      <td role="cell" class="rank">${answer.number}</td>
      <th role="rowheader" scope="row" class="line-name">
        <button type="button" class="plain" aria-expanded=${open ? "true" : "false"}
          @click=${toggle}>${capital(line.name)}</button>
      </th>
      <td role="cell" class="plot">${strip(sides(line), view.end)}</td>
      <td role="cell" class="number weigh-to">
        ${weighed(line)}
      </td>
      <td role="cell" class="number change">${percent(line.percent)}</td>
      ${view.columns.map(
        ([key, name, unit]) => html`<td role="cell" class="number moved">
          <span class="cell-name">${heading(key, name, unit)}</span> ${moved(answer, key)}
        </td>`,
      )}
      ${view.priced
        ? html`<td role="cell" class="number moved">
            <span class="cell-name">${costName(data.sheet)}</span> ${costDelta(answer)}
          </td>`
        : nothing}
      ${view.judged
        ? html`<td role="cell" class="moved goal-cell">
            <span class="cell-name">Goal</span> ${goalMark(answer.goal_met)}
          </td>`
        : nothing}
      <td role="cell" class="opens">${openButton(answer, view)}</td>
    </tr>
    ${open
      ? html`<tr role="row" class="lever-detail">
          <td role="cell" colspan=${width}>${detail(answer, view)}</td>
        </tr>`
      : nothing}
  </tbody>`;
}

// What is weighed becomes the formula's amount, so it stays in grams beside a reader's ounces.
function weighed(line) {
  const grams = massUnit() === "g";
  return html`<span class="lever-was">${flowing(mass(line.from_g))} →</span>
    <b>${flowing(grams ? line.weigh : mass(line.to_g))}</b>
    ${grams ? nothing : html`<span class="lever-grams">${flowing(line.weigh)}</span>`}`;
}

function percent(value) {
  return value === null ? "–" : flowing(`${signed(value)} %`);
}

function moved(answer, key) {
  const move = answer.moves.find((each) => each.figure === key);
  if (!move) {
    return html`<span class="quiet">same</span>`;
  }
  return move.delta === null
    ? html`<span class="unknown">not known</span>`
    : signed(isWeighed(key) ? massNumber(move.delta) : move.delta);
}

function costDelta(answer) {
  const money = answer.cost.per_piece[0] ?? answer.cost.per_batch[0];
  return !money || money.delta === null
    ? html`<span class="unknown">not known</span>`
    : money.delta_text.split(" ")[0];
}

function openButton(answer, {open}) {
  return html`<button type="button" class=${answer.number === 1 ? "main" : nothing}
    @click=${() => open(answer)}
    aria-label="Open answer ${answer.number} as a draft">Open as a draft</button>`;
}

function detail(answer, {data}) {
  const others = answer.lines.filter((line) => line.line !== answer.line);
  return html`
    ${others.length > 0 ? lineTable(others, "The other lines") : nothing}
    ${leverMoves(answer)}
    ${off(answer, data.sheet)}
    ${answer.cautions.map((words) => html`<p class="problem">${words}</p>`)}
    <p class="quiet">The note of the draft would be: “${answer.note}”</p>
  `;
}

// Weighed to what the scale shows, a wish may be granted only nearly.
function off(answer, sheet) {
  return answer.wishes
    .filter((wish) => !wish.granted && number(wish.value ?? 0) !== number(wish.weighed ?? 0))
    .map(
      (wish) => html`<p class="quiet">
        Weighed to ${number(sheet.asked.readable_g)} g it comes to ${flowing(wish.weighed_text)}:
        ${flowing(wish.wish)} is met but for the rounding.
      </p>`,
    );
}

/* all lines, or the division alone */

function together(answer, context) {
  return html`<section class="lever-together">
    <h2>${answer.kind === "combined" ? "All lines together, each a little" : "Divide differently"}
    </h2>
    ${answer.lines.length > 0
      ? html`<p class="quiet">The least change of all lines, each measured by what it weighs.</p>
          ${lineTable(answer.lines, "What to weigh")}`
      : html`<p>${flowing(answer.sentence)}</p>`}
    ${answer.goal_met === null
      ? nothing
      : html`<p>Goal: ${goalMark(answer.goal_met)}</p>`}
    <p class="actions">${openButton(answer, context)}</p>
    <details>
      <summary>What else it moves</summary>
      ${detail({...answer, lines: []}, context)}
    </details>
  </section>`;
}

function lineTable(lines, words) {
  const end = endOf(lines.map(sides));
  return html`<table class="lever-lines-moved">
    <caption class="unseen">${words}</caption>
    <thead>
      <tr>
        <th scope="col">Line</th>
        <th scope="col"><span class="unseen">Chart</span></th>
        <th scope="col" class="number">Weigh</th>
        <th scope="col" class="number">Change</th>
      </tr>
    </thead>
    <tbody>
      ${lines.map(
        (line) => html`<tr>
          <th scope="row">${capital(line.name)}</th>
          <td class="plot">${strip(sides(line), end)}</td>
          <td class="number">
            ${weighed(line)}
          </td>
          <td class="number">${percent(line.percent)}</td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}
