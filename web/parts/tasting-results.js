// What the answers of a tasting tell: in words, drawn, and as the numbers behind.

import {html, nothing, svg} from "/lib/lit-html/lit-html.js";
import {MINUS, number} from "/format.js";

const WIDE = 360;

/** The results of a tasting. */
export function tastingResults({results, samples}) {
  const names = samples.map((each) => each.text);
  return html`<ul class="tasting-says">
      ${results.says.map((each) => html`<li>${each}</li>`)}
    </ul>
    ${results.triangle ? triangle(results.triangle) : nothing}
    ${results.preference ? preference(results.preference, names) : nothing}
    ${results.ranking ? ranking(results.ranking, names) : nothing}
    ${results.liking ? liking(results.liking, names) : nothing}
    ${results.attributes ? attributes(results.attributes, names) : nothing}
    ${results.cannot.length > 0
      ? html`<h3>What they cannot tell</h3>
          <ul class="tasting-cannot">
            ${results.cannot.map((each) => html`<li>${each}</li>`)}
          </ul>`
      : nothing}`;
}

const shown = (value) => (value === null ? "unknown" : number(value));
const share = (value) => (value === null ? "unknown" : `${Math.round(100 * value)} %`);
const chance = (p) => (p === null ? "unknown" : p < 0.001 ? "< 0.001" : p.toFixed(3));

function behind(rows) {
  return html`<details>
    <summary>Numbers behind</summary>
    <dl class="pairs">
      ${rows.map(([words, value]) => html`<div><dt>${words}</dt><dd>${value}</dd></div>`)}
    </dl>
  </details>`;
}

// One circle for each answer: filled when it counts, hollow when not; a line where enough begin.
function circles(filled, all, needed, label) {
  const perRow = 24;
  const step = WIDE / perRow;
  const rows = Math.max(1, Math.ceil(all / perRow));
  const high = rows * step;
  const edge = needed === null ? null : needed - 1;
  return html`<svg class="tasting-chart" viewBox="0 0 ${WIDE} ${high}" role="img"
    aria-label=${label}>
    ${Array.from({length: all}, (_, at) => svg`<circle
      class=${at < filled ? "counted" : "open"}
      cx=${(at % perRow) * step + step / 2}
      cy=${Math.floor(at / perRow) * step + step / 2} r="5.5" />`)}
    ${edge !== null && edge < all
      ? svg`<path class="needed" d="M${(edge % perRow) * step} ${Math.floor(edge / perRow) * step}
          v${step}" />`
      : nothing}
  </svg>`;
}

function triangle(result) {
  if (result.answered === 0) {
    return nothing;
  }
  const {correct, answered, least_correct: needed} = result;
  return html`<figure class="tasting-figure">
    ${circles(correct, answered, needed, `${correct} of ${answered} right`)}
    <figcaption>Filled: found the odd sample. ${needed === null
      ? nothing
      : `The line: at least ${needed} of ${answered} are needed.`}</figcaption>
    ${behind([
      ["Right answers", `${correct} of ${answered}`],
      ["Needed at α 0.05", needed ?? "not possible"],
      ["p, exact binomial, one in three", chance(result.p)],
      ["Share that notices, most likely", share(result.noticing_share)],
      ["One-sided 95 % bounds of that share",
        `${share(result.noticing_share_least)} to ${share(result.noticing_share_most)}`],
      ["Share seen 4 times in 5 by so many", share(result.visible_share)],
    ])}
  </figure>`;
}

function preference(result, names) {
  const all = result.first + result.second;
  if (all + result.neither === 0) {
    return nothing;
  }
  return html`<figure class="tasting-figure">
    ${[result.first, result.second].map(
      (many, at) => html`<p class="tasting-bar-name">${names[at]}: ${many}</p>
        ${all > 0
          ? circles(many, all, result.least_majority, `${many} of ${all} prefer ${names[at]}`)
          : nothing}`,
    )}
    <figcaption>Filled: prefer this sample. ${result.neither} prefer neither.
      ${result.least_majority === null ? nothing : "The line: a majority that shows a preference."}
    </figcaption>
    ${behind([
      ["p, exact binomial, two-sided", chance(result.p)],
      ["Majority needed at α 0.05", result.least_majority ?? "not possible"],
      [`95 % interval of the share for ${names[0]}`,
        `${share(result.first_share_least)} to ${share(result.first_share_most)}`],
      ["Share seen 4 times in 5 by so many", share(result.visible_share)],
    ])}
  </figure>`;
}

function ranking(result, names) {
  if (result.answered === 0) {
    return nothing;
  }
  const mean = (sum) => sum / result.answered;
  const x = (rank) => 10 + ((rank - 1) / Math.max(1, names.length - 1)) * (WIDE - 20);
  const least = result.least_difference / result.answered;
  return html`<figure class="tasting-figure">
    ${names.map(
      (name, at) => html`<p class="tasting-bar-name">${name}: mean rank
          ${number(mean(result.rank_sums[at]))}</p>
        <svg class="tasting-chart" viewBox="0 0 ${WIDE} 16" role="img"
          aria-label="Mean rank ${number(mean(result.rank_sums[at]))} of ${name}">
          <path class="axis" d="M10 8H${WIDE - 10}" />
          <circle class="counted" cx=${x(mean(result.rank_sums[at]))} cy="8" r="5.5" />
        </svg>`,
    )}
    <figcaption>From rank 1, the best, at the left to rank ${names.length}. Means at least
      ${number(least)} apart differ, if all together do.</figcaption>
    ${behind([
      ["Rank sums", result.rank_sums.join(", ")],
      ["Friedman’s chi-squared", `${shown(result.friedman)} on ${result.degrees_of_freedom}`],
      ["p", `${chance(result.p)}, ${result.method.replace("_", " ")}`],
      ["Least significant difference of rank sums", shown(result.least_difference)],
      ["Agreement, Kendall’s W", shown(result.agreement)],
    ])}
  </figure>`;
}

function liking(result, names) {
  if (result.samples.every((each) => each.scored === 0)) {
    return nothing;
  }
  return html`<figure class="tasting-figure">
    ${result.samples.map((each) => liked(each, names[each.sample - 1]))}
    <figcaption>Liking from 1 to 9: a hollow circle for each taster, the filled one is the mean with
      its 95 % interval.</figcaption>
    <details>
      <summary>Every taster’s score, and the numbers behind</summary>
      <div class="tasting-wide" tabindex="0" role="region" aria-label="Scores">
        <table>
          <thead>
            <tr><th>Sample</th><th class="number">mean</th><th class="number">spread</th>
              <th>95 %</th><th>sheet: score</th></tr>
          </thead>
          <tbody>
            ${result.samples.map(
              (each) => html`<tr>
                <th scope="row">${names[each.sample - 1]}</th>
                <td class="number">${shown(each.mean)}</td>
                <td class="number">${shown(each.deviation)}</td>
                <td>${each.least === null
                  ? "unknown"
                  : `${number(each.least)} to ${number(each.most)}`}</td>
                <td>${each.scores
                  .map((one) => `${one.sheet}: ${number(one.liking)}`)
                  .join(", ")}</td>
              </tr>`,
            )}
          </tbody>
        </table>
      </div>
      ${result.blocks ? blocks(result.blocks, names) : nothing}
    </details>
  </figure>`;
}

function blocks(result, names) {
  return html`<dl class="pairs">
    <div><dt>Tasters who scored all samples</dt><dd>${result.tasters}</dd></div>
    <div><dt>F, randomised blocks</dt>
      <dd>${result.f === null ? "no error to compare with" : number(result.f)} on
        ${result.samples_freedom} and ${result.error_freedom}</dd></div>
    <div><dt>p</dt><dd>${chance(result.p)}</dd></div>
    <div><dt>Least significant difference</dt><dd>${number(result.least_difference)}</dd></div>
    <div><dt>Seen 4 times in 5, about</dt><dd>${number(result.visible_difference)}</dd></div>
    ${result.pairs.map(
      (pair) => html`<div><dt>${names[pair.better - 1]} above ${names[pair.other - 1]}</dt>
        <dd>${number(pair.difference)} (${number(pair.least)} to ${number(pair.most)})
          ${pair.apart ? "apart" : "not shown"}</dd></div>`,
    )}
  </dl>`;
}

function liked(each, name) {
  const x = (score) => 12 + ((score - 1) / 8) * (WIDE - 24);
  const stacked = {};
  const dots = each.scores.map(({liking: score}) => {
    stacked[score] = (stacked[score] ?? 0) + 1;
    return {score, up: stacked[score] - 1};
  });
  const high = 26 + 7 * Math.max(1, ...Object.values(stacked));
  const base = high - 22;
  return html`<p class="tasting-bar-name">${name}: ${each.mean === null
      ? "no score"
      : `mean ${number(each.mean)}`}</p>
    <svg class="tasting-chart" viewBox="0 0 ${WIDE} ${high}" role="img"
      aria-label="Scores of ${name}: ${each.scores.map((one) => one.liking).join(", ")}">
      <path class="axis" d="M12 ${base + 2}H${WIDE - 12}" />
      ${[1, 5, 9].map((mark) => svg`<text x=${x(mark)} y=${high - 1}>${mark}</text>`)}
      ${dots.map(({score, up}) => svg`<circle class="open" cx=${x(score)} cy=${base - 3 - 7 * up}
        r="3" />`)}
      ${each.least === null
        ? nothing
        : svg`<path class="interval" d="M${x(each.least)} ${base + 8}H${x(each.most)}" />`}
      ${each.mean === null
        ? nothing
        : svg`<circle class="counted" cx=${x(each.mean)} cy=${base + 8} r="4.5" />`}
    </svg>`;
}

const WORDS = ["much too little", "too little", "just right", "too much", "much too much"];
const CLASSES = ["edge", "side", "right", "side", "edge"];

function attributes(all, names) {
  return html`<figure class="tasting-figure">
    ${all.map(
      (each) => html`<p class="tasting-bar-name">${names[each.sample - 1]}, ${each.attribute}</p>
        ${bar(each)}`,
    )}
    <figcaption>From much too little at the left over just right (filled) to much too much, with how
      many said so. A side counts from 20 % of the tasters on: common practice, no
      source.</figcaption>
    <details>
      <summary>Penalty analysis</summary>
      <div class="tasting-wide" tabindex="0" role="region" aria-label="Penalties">
        <table>
          <thead>
            <tr><th>Sample, attribute</th><th>Side</th><th class="number">tasters</th>
              <th class="number">share</th><th class="number">mean drop</th><th>95 %</th>
              <th class="number">share × drop</th></tr>
          </thead>
          <tbody>
            ${all.flatMap((each) => [
              side(each, names, "too little", each.too_little),
              side(each, names, "too much", each.too_much),
            ])}
          </tbody>
        </table>
      </div>
    </details>
  </figure>`;
}

function side(each, names, words, found) {
  return html`<tr class=${found.counts ? "counts" : nothing}>
    <th scope="row">${names[each.sample - 1]}, ${each.attribute}</th>
    <td>${words}${found.counts ? ", counts" : ""}</td>
    <td class="number">${found.tasters}</td>
    <td class="number">${share(found.share)}</td>
    <td class="number">${shown(found.drop)}</td>
    <td>${found.drop_least === null
      ? "unknown"
      : `${number(found.drop_least)} to ${number(found.drop_most)}`}</td>
    <td class="number">${shown(found.weighted_drop)}</td>
  </tr>`;
}

function bar({counts, attribute}) {
  const all = counts.reduce((sum, many) => sum + many, 0);
  if (all === 0) {
    return html`<p class="quiet">No score</p>`;
  }
  let from = 0;
  const label = counts.map((many, at) => `${WORDS[at]} ${many}`).join(", ");
  return html`<svg class="tasting-chart" viewBox="0 0 ${WIDE} 22" role="img"
    aria-label="${attribute}: ${label}">
    ${counts.map((many, at) => {
      const wide = (many / all) * WIDE;
      const x = from;
      from += wide;
      return many === 0
        ? nothing
        : svg`<rect class=${CLASSES[at]} x=${x + 1} y="2"
              width=${Math.max(1, wide - 2)} height="18" />
            <text class=${CLASSES[at]} x=${x + wide / 2} y="15.5">${sign(at)}${many}</text>`;
    })}
  </svg>`;
}

function sign(at) {
  return [`${MINUS}${MINUS} `, `${MINUS} `, "", "+ ", "++ "][at];
}
