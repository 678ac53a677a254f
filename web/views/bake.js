// A bake: its photos, its pieces, what was found and tasted.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {formulaPage, short, worksheetPage} from "/address.js";
import {capital, count, fullDay, moment, number, withUnit} from "/format.js";
import {picture, sort} from "/parts/bakes.js";
import {tray} from "/parts/tray.js";

export const bakeView = {
  load: ({parts}, {signal}) => api.bake(parts.formula, parts.bake, signal),

  title: (bake) => `Bake ${bake.id} of ${bake.formula}`,

  draw: (bake) => html`<article class="page bake-page">
    ${head(bake)}
    <div class="photos">
      ${bake.photos.map(
        (each) => html`<figure>
          ${picture(each, 1200)}
          <figcaption>
            ${each.caption ?? "No caption"}${each.taken ? `, ${moment(each.taken)}` : ""}
          </figcaption>
        </figure>`,
      )}
    </div>
    ${pieces(bake)} ${summary(bake)}
  </article>`,
};

function head(bake) {
  const facts = [
    bake.baker,
    bake.ambient,
    bake.findings.length > 0 ? `tray: ${bake.findings.join(", ")}` : null,
  ].filter(Boolean);
  return html`<header class="bake-head">
    <div>
      <h1>Bake of ${fullDay(bake.time)}</h1>
      <p class="sub">
        <time datetime=${bake.time}>${moment(bake.time)}</time>${facts.map((each) => `, ${each}`)}
      </p>
      <p>
        Baked as <a href=${worksheetPage(bake.address)}>${bake.address}</a>${same(bake)}.
        <a href=${formulaPage(bake.formula)}>Timeline of ${bake.formula}</a>
      </p>
      ${bake.note ? html`<p class="say">${bake.note}</p>` : nothing}
    </div>
    ${tray(bake)}
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

function pieces(bake) {
  if (bake.pieces.length === 0) {
    return html`<p class="quiet">No pieces were noted.</p>`;
  }
  return html`<section>
    <h2>Pieces</h2>
    <ul class="piece-list">
      ${bake.pieces.map(piece)}
    </ul>
  </section>`;
}

function piece(each) {
  const rows = [
    ["Oven", [each.temperature, minutes(each.minutes)].filter(Boolean).join(", ")],
    ["Rack", each.rack],
    ["Dough", mass(each.dough_g)],
    ["Baked", mass(each.baked_g)],
    ["Loss", each.loss_percent === null ? null : `${number(each.loss_percent)} %`],
    ["Width", length(each.width_mm)],
    ["Height", length(each.height_mm)],
    ["Width by height", each.spread_factor === null ? null : number(each.spread_factor)],
    ["Core", each.core],
    ["Crust", each.crust_shade === null ? null : `${number(each.crust_shade)} of 4`],
    ["Liking", liking(each)],
    ...each.attributes.map((attribute) => [capital(attribute.name), justRight(attribute.scores)]),
  ];
  return html`<li>
    <h3>${each.id}</h3>
    ${each.verdict ? html`<p class="verdict">${each.verdict}</p>` : nothing}
    ${each.findings.length > 0
      ? html`<ul class="findings">
          ${each.findings.map(
            (finding) => html`<li><b>${finding.word}</b> <span>${sort(finding.merit)}</span></li>`,
          )}
        </ul>`
      : html`<p class="quiet">no findings</p>`}
    <dl class="pairs">
      ${rows.map(
        ([name, value]) => html`<div>
          <dt>${name}</dt>
          <dd class=${value ? "" : "quiet"}>${value || "unknown"}</dd>
        </div>`,
      )}
    </dl>
    ${each.note ? html`<p>${each.note}</p>` : nothing}
  </li>`;
}

function minutes(value) {
  return value === null ? null : `${number(value)} min`;
}

function mass(value) {
  return value === null ? null : withUnit(value, "g");
}

function length(value) {
  return value === null ? null : withUnit(value, "mm");
}

function liking(each) {
  return each.mean_liking === null
    ? null
    : `${number(each.mean_liking)} of 9 (n ${each.liking.length})`;
}

function justRight(scores) {
  if (scores.length === 0) {
    return null;
  }
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
    ["Lowest core", all.lowest_core_c === null ? null : withUnit(all.lowest_core_c, "°C")],
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
