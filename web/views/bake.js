// A bake: its photos, its pieces, what was found and tasted.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {causesPage, formulaPage, short, worksheetPage} from "/address.js";
import {
  count,
  fullDay,
  heat,
  massNumber,
  massUnit,
  moment,
  number,
  temperature,
  withUnit,
} from "/format.js";
import {bakeEdit, isChanging, leaveEdit} from "/parts/bake-edit.js";
import {sort} from "/parts/bakes.js";
import {photoSection} from "/parts/photo-section.js";

export const bakeView = {
  rereads: true,

  load: ({parts}, {signal}) => api.bake(parts.formula, parts.bake, signal),

  title: (bake) => `Bake ${bake.id} of ${bake.formula}`,

  draw: (bake, place, tools) => html`<article class="page sheet-of-paper bake-page">
    ${head(bake)}
    <div class="seen">
      ${photoSection(bake, tools)}
      ${summary(bake)}
    </div>
    ${isChanging(bake) ? nothing : [pieces(bake), causesOf(bake)]} ${bakeEdit(bake, place, tools)}
  </article>`,

  left: leaveEdit,
};

function head(bake) {
  const facts = [
    bake.baker,
    bake.ambient,
    bake.findings.length > 0 ? `tray: ${bake.findings.join(", ")}` : null,
  ].filter(Boolean);
  return html`<header>
    <h1>Bake of ${fullDay(bake.time)}</h1>
    <p class="sub">
      <time datetime=${bake.time}>${moment(bake.time)}</time>${facts.map((each) => `, ${each}`)}
    </p>
    <p>
      Baked as <a href=${worksheetPage(bake.address)}>${bake.address}</a>${same(bake)}.
      <a href=${formulaPage(bake.formula)}>Timeline of ${bake.formula}</a>
    </p>
    ${bake.note ? html`<p class="say">${bake.note}</p>` : nothing}
  </header>`;
}

function same(bake) {
  const others = bake.revisions.filter((address) => address !== bake.address);
  if (others.length === 0) {
    return nothing;
  }
  const links = others.map(
    (address, at) => html`${at > 0 ? ", " : ""}<a href=${worksheetPage(address)}
        >${short(address)}</a>`,
  );
  return html`; the same content as ${links}`;
}

const columns = () => [
  ["Piece", (piece) => piece.id],
  [
    "Oven",
    (piece) => [heat(piece.temperature, piece.temperature_c), minutes(piece.minutes)]
        .filter(Boolean)
        .join(", "),
    "brief",
  ],
  ["Rack", (piece) => piece.rack],
  [`Dough, ${massUnit()}`, (piece) => known(massNumber(piece.dough_g)), "number"],
  [`Baked, ${massUnit()}`, (piece) => known(massNumber(piece.baked_g)), "number"],
  ["Loss, %", (piece) => known(piece.loss_percent), "number"],
  ["Width, mm", (piece) => known(piece.width_mm), "number"],
  ["Height, mm", (piece) => known(piece.height_mm), "number"],
  ["Width by height", (piece) => known(piece.spread_factor), "number"],
  ["Core", (piece) => heat(piece.core, piece.core_c), "number brief"],
  ["Crust, 0 to 4", (piece) => known(piece.crust_shade), "number"],
  ["Liking, 1 to 9", liking, "number"],
  ["Findings", findings, "wide"],
];

function pieces(bake) {
  if (bake.pieces.length === 0) {
    return html`<p class="quiet">No pieces were noted.</p>`;
  }
  return html`<section>
    <h2>Pieces</h2>
    <table class="piece-table" role="table">
      <thead role="rowgroup">
        <tr role="row">
          ${columns().map(
            ([name, , sort]) =>
              html`<th role="columnheader" scope="col" class=${sort ?? ""}>${name}</th>`,
          )}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${bake.pieces.map(
          (piece) => html`<tr role="row">
            ${columns().map((column, at) => cell(column, piece, at === 0))}
          </tr>`,
        )}
      </tbody>
    </table>
  </section>`;
}

// Leads from each fault to what may be behind it, as the revision stood.
function causesOf(bake) {
  const found = [
    ...bake.findings.map((word) => ({word, merit: null})),
    ...bake.pieces.flatMap((piece) => piece.findings),
  ].filter((each) => each.merit !== true);
  const words = [...new Set(found.map((each) => each.word))];
  const address = bake.revisions.includes(bake.address) ? bake.address : bake.formula;
  return words.length === 0
    ? nothing
    : html`<nav class="cause-links" aria-label="Causes of what was found">
        <span>What may be behind it:</span>
        ${words.map(
          (finding) => html`<a href=${causesPage(address, {finding})}>${finding}</a>`,
        )}
      </nav>`;
}

function cell([name, value, sort = ""], piece, first) {
  if (first) {
    return html`<th role="rowheader" scope="row" class="letter">${value(piece)}</th>`;
  }
  return html`<td role="cell" class=${sort}>
    <span class="label">${name}</span>
    ${value(piece) || html`<span class="quiet">unknown</span>`}
  </td>`;
}

function known(value) {
  return value === null ? null : number(value);
}

function findings(piece) {
  const words = [
    ...piece.findings.map(
      (each) => html`<li><b>${each.word}</b> <span>${sort(each.merit)}</span></li>`,
    ),
    ...piece.attributes
      .filter((each) => each.scores.length > 0)
      .map((each) => html`<li>${each.name}: ${justRight(each.scores)}</li>`),
    ...(piece.core_log.length > 0 ? [html`<li>core ${coreLog(piece.core_log)}</li>`] : []),
    ...[piece.verdict, piece.note].filter(Boolean).map((words) => html`<li>${words}</li>`),
  ];
  return words.length > 0 ? html`<ul class="findings">${words}</ul>` : "none";
}

function coreLog(points) {
  return points
    .map((each) => `${number(each.minutes)} min ${heat(each.temperature, each.temperature_c)}`)
    .join(", ");
}

function minutes(value) {
  return value === null ? null : `${number(value)} min`;
}

function length(value) {
  return value === null ? null : withUnit(value, "mm");
}

function liking(each) {
  return each.mean_liking === null
    ? null
    : html`${number(each.mean_liking)} <span class="n">n ${each.liking.length}</span>`;
}

function justRight(scores) {
  const few = scores.filter((score) => score < 0).length;
  const many = scores.filter((score) => score > 0).length;
  return `${scores.length - few - many} just right, ${few} too little, ${many} too much`;
}

function summary(bake) {
  const {summary: all} = bake;
  const rows = [
    ["Best height", length(all.best_height_mm)],
    [
      "Mean liking",
      all.mean_liking === null
        ? null
        : `${number(all.mean_liking)} of 9, ${count(all.tasters, "score")}`,
    ],
    ["Mean loss", all.mean_loss_percent === null ? null : `${number(all.mean_loss_percent)} %`],
    [
      "Mean width by height",
      all.mean_spread_factor === null ? null : number(all.mean_spread_factor),
    ],
    ["Lowest core", all.lowest_core_c === null ? null : temperature(all.lowest_core_c)],
  ];
  return html`<section class="tray-summary">
    <h2>The tray in figures</h2>
    <dl class="pairs">
      ${rows.map(
        ([name, value]) => html`<div>
          <dt>${name}</dt>
          <dd class=${value ? "" : "quiet"}>${value ?? "unknown"}</dd>
        </div>`,
      )}
    </dl>
  </section>`;
}
