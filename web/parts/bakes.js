// Bakes: their photos with the pieces' letters, what was done with each piece, what was found.

import {html, nothing, svg} from "/lib/lit-html/lit-html.js";
import {bakePage, besidePage, photo, revisionName} from "/address.js";
import {
  capital,
  count,
  flowing,
  fullDay,
  heat,
  number,
  signed,
  temperatureDifference,
  temperatureNumber,
  temperatureUnit,
} from "/format.js";
import {tray} from "/parts/tray.js";

/** The bakes of both sides, and what came of them. */
export function bakesOfBothSides(comparison) {
  const {outcomes} = comparison;
  const from = revisionName(comparison.from);
  const to = revisionName(comparison.to);
  const none = outcomes.from.length + outcomes.to.length === 0;
  return html`<section class="bakes">
    <h2>Bakes</h2>
    ${besideLink(outcomes)}
    ${none
      ? html`<p class="quiet">Neither side was baked yet.</p>`
      : html`<div class="sides">
          ${side("from", from, outcomes.from)} ${side("to", to, outcomes.to)}
          <div class="outcome">
            ${notice(comparison)} ${outcomeTable(outcomes, `A ${from}`, `B ${to}`)}
            ${findingGroups(outcomes.findings)}
            ${outcomes.comparable_pieces.map((words) => html`<p class="comparable">${words}</p>`)}
          </div>
        </div>`}
  </section>`;
}

function side(which, name, bakes) {
  return html`<div class="side ${which}">
    <h3>${sideMark(which)} ${name}</h3>
    ${bakes.length === 0 ? html`<p class="quiet">not baked</p>` : bakes.map(figureOf)}
  </div>`;
}

/** The letter of a side in its shape: a hollow ring before, a filled dot after. */
export function sideMark(which) {
  return html`<span class="side-mark ${which}">${which === "from" ? "A" : "B"}</span>`;
}

function figureOf(bake) {
  return html`<figure class="bake">
    ${bake.photos.length > 0 ? picture(bake.photos[0], 600) : tray(bake)}
    <figcaption>
      <a href=${bakePage(bake)}>${fullDay(bake.time)}</a>${bake.baker ? `, ${bake.baker}` : ""}
      <ul class="pieces">
        ${bake.pieces.map((piece) => html`<li><b>${piece.id}</b> ${pieceWords(piece)}</li>`)}
      </ul>
      ${bake.findings.length > 0 ? html`<p>Tray: ${bake.findings.join(", ")}</p>` : nothing}
    </figcaption>
  </figure>`;
}

/** A photo with the letters of its pieces where they lie. */
export function picture(each, width) {
  return html`<a class="picture" href=${photo(each.file)}>
    <img src=${photo(each.file, width)} alt=${each.alternative ?? each.caption ?? "Photo of the bake"} loading="lazy">
    ${each.marks.length > 0
      ? html`<svg width="100%" height="100%" aria-hidden="true">
          ${each.marks.map((mark) => {
            const at = {x: `${100 * mark.x}%`, y: `${100 * mark.y}%`};
            return svg`<circle cx=${at.x} cy=${at.y} r="11"/>
              <text x=${at.x} y=${at.y} dy="4.5">${mark.piece}</text>`;
          })}
        </svg>`
      : nothing}
  </a>`;
}

function pieceWords(piece) {
  const settings = [
    heat(piece.temperature, piece.temperature_c),
    piece.minutes === null ? null : `${number(piece.minutes)} min`,
    piece.height_mm === null ? null : `${number(piece.height_mm)} mm high`,
  ].filter(Boolean);
  const found = piece.findings.map((each) => each.word);
  return flowing([settings.join(", "), found.join(", ")].filter(Boolean).join("; "));
}

// A photo of each side leads to the two of them side by side.
function besideLink({from, to}) {
  const [left, right] = [from, to].map((bakes) => bakes.flatMap((bake) => bake.photos)[0]);
  return left && right
    ? html`<p class="beside-link">
        <a href=${besidePage({left: left.file, right: right.file})}>Photos side by side</a>
      </p>`
    : nothing;
}

function outcomeTable(outcomes, from, to) {
  if (outcomes.figures.length === 0) {
    return nothing;
  }
  return html`<table class="outcomes">
    <thead>
      <tr>
        <th scope="col">Measured</th>
        <th scope="col" class="number">${from}</th>
        <th scope="col" class="number">${to}</th>
        <th scope="col" class="number">Change</th>
      </tr>
    </thead>
    <tbody>
      ${outcomes.figures.map(inReadersUnits).map(
        (each) => html`<tr>
          <th scope="row">${each.label}${each.unit ? `, ${each.unit}` : ""}</th>
          <td class="number">${outcome(each.from, each.from_count)}</td>
          <td class="number">${outcome(each.to, each.to_count)}</td>
          <td class="number">${each.delta === null ? "–" : signed(each.delta)}</td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}

function inReadersUnits(each) {
  return each.unit === "°C"
    ? {
        ...each,
        unit: temperatureUnit(),
        from: temperatureNumber(each.from),
        to: temperatureNumber(each.to),
        delta: temperatureDifference(each.delta),
      }
    : each;
}

function outcome(value, n) {
  return value === null ? "–" : html`${number(value)} <span class="n">n ${n}</span>`;
}

// Faults that went and merits that came are what one looks for: so by what became of them.
function findingGroups(findings) {
  const kinds = [...new Set(findings.map((each) => each.change))];
  return html`<dl class="finding-groups">
    ${kinds.map(
      (kind) => html`<div>
        <dt>${capital(kind)}</dt>
        ${findings
          .filter((each) => each.change === kind)
          .map(
            (each) => html`<dd>
              <b>${each.word}</b> <span>${sort(each.merit)}, ${pieceCounts(each)}</span>
            </dd>`,
          )}
      </div>`,
    )}
  </dl>`;
}

function pieceCounts({change, from_pieces: from, to_pieces: to}) {
  switch (change) {
    case "appeared":
      return count(to, "piece");
    case "gone":
      return `was on ${count(from, "piece")}`;
    default:
      return `${from} → ${count(to, "piece")}`;
  }
}

/** Whether a finding is a merit or a fault, in a word. */
export function sort(merit) {
  return merit === true ? "merit" : merit === false ? "fault" : "remark";
}

function notice({confounded, credit}) {
  if (!credit) {
    return nothing;
  }
  if (confounded.length < 2) {
    return html`<p class="credit">${credit}</p>`;
  }
  return html`<div class="caution" role="note" aria-label="Caution">
    <p><strong>${credit}</strong></p>
    <details>
      <summary>What differs between the bakes</summary>
      <ul>
        ${confounded.map((each) => html`<li>${capital(each)}</li>`)}
      </ul>
    </details>
  </div>`;
}
