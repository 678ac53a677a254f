// The bake window of a formula: where it is done, where limits fail, and what to bake next.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {bakePage, formulaPage, revisionName, short, worksheetPage} from "/address.js";
import {capital, count, flowing, number, temperature} from "/format.js";
import {windowChart} from "/parts/window-chart.js";
import {askedOf, windowChoices, windowLimits, windowPage} from "/parts/window-form.js";
import {refused} from "/views/failure.js";

const narrow = matchMedia("(max-width: 46rem)");

export const windowView = {
  rereads: true,

  async load({parts, query}, {before, signal}) {
    const asked = askedOf(query);
    const same = before?.address === parts.address;
    const rest = {address: parts.address, asked, typed: {limit: ""}, fine: before?.fine ?? false};
    try {
      return {...rest, sheet: await api.bakeWindow(parts.address, asked, signal), failure: null};
    } catch (thrown) {
      const failure = api.expected(thrown);
      if (!same || !before.sheet) {
        throw failure;
      }
      return {...rest, typed: before.typed, sheet: before.sheet, failure};
    }
  },

  title: ({sheet}) => `Bake window of ${sheet.name} ${nameOf(sheet)}`,

  draw(data, place, tools) {
    const {sheet, failure} = data;
    const change = (asked) => tools.go(windowPage(data.address, asked), {replace: true});
    return html`<article class="page sheet-of-paper window-page">
      <header>
        <h1>Bake window of ${sheet.name} ${nameOf(sheet)}</h1>
        <p class="sub">
          <a href=${worksheetPage(sheet.address)}>Worksheet</a>
          <a href=${formulaPage(sheet.formula, {line: sheet.variant})}>Timeline</a>
        </p>
      </header>
      ${failure ? html`<div class="window-failed" role="alert">${refused(failure)}</div>` : nothing}
      <p class="say" aria-live="polite">${flowing(sheet.summary)}</p>
      <div class="window-columns">
        <div class="window-answer">
          ${sheet.map ? windowChart(sheet, {narrow: narrow.matches}) : missing(sheet)}
          ${sheet.remarks.map((words) => html`<p class="remark">${flowing(words)}</p>`)}
        </div>
        <div class="window-side">${next(sheet)} ${windowLimits(data, change)}</div>
        ${windowChoices(data, change)}
      </div>
      ${behind(sheet)} ${cautions(sheet)}
    </article>`;
  },

  drawn(content, data, tools) {
    data.turned = () => tools.redraw();
    narrow.addEventListener("change", data.turned);
  },

  left(data) {
    narrow.removeEventListener("change", data.turned);
  },
};

function nameOf(sheet) {
  return revisionName({...sheet, commit: sheet.address.endsWith("@edited") ? null : ""});
}

function missing(sheet) {
  return html`<section class="window-missing" aria-labelledby="window-missing-title">
    <h2 id="window-missing-title">What is missing for a map</h2>
    <ul>
      ${sheet.missing.map(
        (each) => html`<li><b>${flowing(each.sentence)}</b> ${flowing(each.remedy)}</li>`,
      )}
    </ul>
  </section>`;
}

function next(sheet) {
  if (sheet.next.length === 0) {
    return nothing;
  }
  const plan = new URLSearchParams({plan: sheet.plan});
  return html`<section class="window-next-bakes" aria-labelledby="window-next-title">
    <h2 id="window-next-title">To bake next</h2>
    <ol>
      ${sheet.next.map(
        (each) => html`<li>
          <b>${each.temperature}, ${number(each.minutes)} min</b>
          <p>${flowing(each.sentence)}</p>
        </li>`,
      )}
    </ol>
    ${sheet.address.endsWith("@edited")
      ? html`<p class="quiet">Save the formula as a revision to bake it.</p>`
      : html`<a class="button main" href="/record/${sheet.address}?${plan}">
          Plan ${sheet.next.length === 1 ? "this piece" : `these ${count(sheet.next.length, "piece")}`}
        </a>`}
  </section>`;
}

function behind(sheet) {
  return html`<div class="window-behind">
    ${sheet.map ? chances(sheet) : nothing} ${effects(sheet)} ${pieces(sheet)} ${model(sheet)}
  </div>`;
}

function chances({map, asked}) {
  const time = asked.along === "minutes" ? "min" : "dose, min";
  return html`<details>
    <summary>The map as a table</summary>
    <div class="table-frame" tabindex="0" role="group" aria-label="The map as a table">
      <table>
        <caption class="quiet">Pieces in 100 that keep every limit</caption>
        <thead>
          <tr>
            <th scope="col">Oven</th>
            ${map.along.map((each) => html`<th scope="col" class="number">${number(each)} ${time}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${[...map.temperatures_c.keys()].reverse().map(
            (row) => html`<tr>
              <th scope="row">${temperature(map.temperatures_c[row])}</th>
              ${map.chances[row].map(
                (chance) => html`<td class="number ${level(chance)}">${Math.round(chance * 100)}</td>`,
              )}
            </tr>`,
          )}
        </tbody>
      </table>
    </div>
  </details>`;
}

function level(chance) {
  return chance >= 0.8 ? "likely" : chance >= 0.5 ? "possible" : "";
}

function effects(sheet) {
  return html`<details ?open=${Boolean(sheet.map)}>
    <summary>What time and heat do to each limit</summary>
    <dl class="window-effects">
      ${sheet.limits.map(
        (each) => html`<div>
          <dt>${each.limit}</dt>
          <dd>
            Kept by ${each.kept} of ${count(each.known, "piece")} known.
            ${each.sentence ? flowing(each.sentence) : nothing}
          </dd>
        </div>`,
      )}
    </dl>
  </details>`;
}

function pieces(sheet) {
  if (sheet.pieces.length === 0) {
    return nothing;
  }
  const dose = sheet.pieces.some((piece) => piece.dose !== null);
  return html`<details>
    <summary>The ${count(sheet.pieces.length, "piece")} as a table</summary>
    <div class="table-frame" tabindex="0" role="group" aria-label="The pieces as a table">
      <table class="window-table">
        <thead>
          <tr>
            <th scope="col">Piece</th>
            <th scope="col" class="number">Oven</th>
            <th scope="col" class="number">Time</th>
            <th scope="col" class="number">Core</th>
            <th scope="col" class="number">Crust, 0 to 4</th>
            ${dose ? html`<th scope="col" class="number">Dose, min</th>` : nothing}
            <th scope="col">Limits</th>
            <th scope="col">Findings</th>
          </tr>
        </thead>
        <tbody>
          ${sheet.pieces.map(
            (piece) => html`<tr>
              <th scope="row">
                <a href=${bakePage({formula: sheet.formula, id: piece.bake})}>${piece.piece} of
                  ${piece.bake}</a> <span class="quiet">${short(piece.address)}</span>
              </th>
              <td class="number">${temperature(piece.temperature_c)}</td>
              <td class="number">${known(piece.minutes, " min")}</td>
              <td class="number">${temperature(piece.core_c)}</td>
              <td class="number">${known(piece.crust_shade)}</td>
              ${dose ? html`<td class="number">${known(piece.dose)}</td>` : nothing}
              <td>${verdict(piece)}</td>
              <td>${piece.looked_at ? piece.findings.map((each) => each.word).join(", ") : "not noted"}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    </div>
  </details>`;
}

function known(value, unit = "") {
  return value === null ? "unknown" : `${number(value)}${unit}`;
}

function verdict(piece) {
  if (piece.keeps === null) {
    return `not known: ${piece.open.join(", ")}`;
  }
  return piece.keeps ? "keeps all" : `breaks: ${piece.breaks.join(", ")}`;
}

function model(sheet) {
  return sheet.model.length === 0
    ? nothing
    : html`<details>
        <summary>How it was worked out</summary>
        ${sheet.model.map((words) => html`<p class="why">${flowing(capital(words))}</p>`)}
      </details>`;
}

function cautions(sheet) {
  return html`<section class="caution">
    <h2>Cautions</h2>
    <ul>
      ${sheet.cautions.map((words) => html`<li>${flowing(words)}</li>`)}
    </ul>
    <p>Local food codes and licensed practice decide.</p>
  </section>`;
}
