// Effects of changes on one outcome, one below the other on one axis: a dot for what is expected
// and a line for the interval. A filled dot shows with everything else beside it, a hollow one does
// not; a diamond is the effect by itself, drawn where only that shows.

import {html, nothing, svg} from "/lib/lit-html/lit-html.js";
import {bakePage, formulaPage, parse, short} from "/address.js";
import {flowing, number, temperatureDifference, temperatureUnit} from "/format.js";

const HALF = 46;
const ROOM = 1.8;
const LINKS = 3;

export function effectLegend() {
  const sample = (standing) => html`<svg class="effect-plot sample" viewBox="0 0 40 16"
    width="40" height="16" aria-hidden="true">${mark(standing)}</svg>`;
  return html`<ul class="effect-legend">
    <li>${sample("clear")} shows with all other changes beside it</li>
    <li>${sample("along")} shows by itself only (◇), not apart from the others</li>
    <li>${sample("open")} cannot be told from chance</li>
    <li class="quiet">The line holds the effect with 90 % probability.</li>
  </ul>`;
}

function mark(standing) {
  return svg`<line class="interval ${standing}" x1="2" x2="30" y1="8" y2="8"/>
    <circle class="expected ${standing}" cx="16" cy="8" r="5"/>
    ${standing === "along" ? svg`<path class="by-itself" d="M35 3l5 5l-5 5l-5 -5z"/>` : nothing}`;
}

export function effectChart(outcome, effects, sheet) {
  const axis = axisOf(effects);
  return html`<figure class="effect-chart">
    <figcaption class="quiet">${axisWords(outcome)}</figcaption>
    <ol class="effect-rows">
      ${effects.map((effect) => row(outcome, effect, axis, sheet))}
    </ol>
    <div class="effect-row effect-ends" aria-hidden="true">
      <span></span>
      <span class="ends">
        <span>${end(outcome, -axis)}</span><span>0</span><span>${end(outcome, axis)}</span>
      </span>
      <span></span>
    </div>
  </figure>`;
}

function axisWords(outcome) {
  const less = outcome.finding ? "less often" : "less";
  const more = outcome.finding ? "more often" : "more";
  return html`← ${less} · ${unitWords(outcome)} · ${more} →`;
}

function unitWords(outcome) {
  if (outcome.outcome === "core_celsius") {
    return temperatureUnit();
  }
  return outcome.unit || outcome.label;
}

function end(outcome, value) {
  const shown = outcome.outcome === "core_celsius" ? temperatureDifference(value) : value;
  return (value > 0 ? "+" : "") + number(Number(shown.toPrecision(2)));
}

// As wide as the dots want it; an interval that goes beyond is cut and says so by an arrow.
function axisOf(effects) {
  const dots = effects.flatMap(({standing, together, by_itself: own}) => [
    Math.abs(together.value),
    ...(standing === "clear" ? [Math.abs(together.low), Math.abs(together.high)] : []),
    ...(standing === "along" ? [Math.abs(own.value)] : []),
  ]);
  const widest = Math.max(...effects.flatMap(({together: {low, high}}) => [-low, high]));
  return Math.min(Math.max(...dots) * ROOM, Math.max(widest, Math.max(...dots)) * 1.05) || 1;
}

function row(outcome, effect, axis, sheet) {
  const {standing, together} = effect;
  return html`<li class="effect-row ${standing}">
    <span class="effect-name">
      <b>${effect.words}</b>
      ${effect.with.length > 0
        ? html`<span class="quiet">with ${named(effect.with)}, inseparable</span>`
        : nothing}
      ${effect.per ? html`<span class="quiet">for each ${flowing(effect.per)}</span>` : nothing}
    </span>
    <svg class="effect-plot" width="100%" height="36" aria-hidden="true">
      <line class="zero" x1="50%" x2="50%" y1="0" y2="100%"/>
      ${interval(together, axis, standing)}
      <circle class="expected ${standing}" cx="${x(together.value, axis)}%" cy="50%" r="6"/>
      ${standing === "along" ? diamond(effect.by_itself.value, axis) : nothing}
    </svg>
    <span class="effect-value">
      <b>${flowing(together.text)}</b>
      <span class="quiet">${together.low_text} to ${together.high_text}</span>
    </span>
    <span class="effect-alone quiet">
      ${standing === "along"
        ? html`by itself ${flowing(effect.by_itself.text)}
            (${effect.by_itself.low_text} to ${effect.by_itself.high_text}) · `
        : nothing}${effect.alone_words}${alone(effect, sheet)}
    </span>
  </li>`;
}

function named(labels) {
  return labels.length > 2 ? `${labels[0]} and ${labels.length - 1} more` : labels.join(" and ");
}

function x(value, axis) {
  return 50 + HALF * Math.max(-1, Math.min(1, value / axis));
}

function interval({low, high}, axis, standing) {
  const [from, to] = [x(low, axis), x(high, axis)];
  return svg`<line class="interval ${standing}" x1="${from}%" x2="${to}%" y1="50%" y2="50%"/>
    ${low < -axis ? beyond(from, -1) : cap(from, standing)}
    ${high > axis ? beyond(to, 1) : cap(to, standing)}`;
}

function cap(at, standing) {
  return svg`<svg x="${at}%" y="50%" overflow="visible">
    <line class="interval ${standing}" x1="0" x2="0" y1="-4" y2="4"/></svg>`;
}

function beyond(at, side) {
  return svg`<svg x="${at}%" y="50%" overflow="visible">
    <path class="beyond" d="M${-5 * side} -5L0 0L${-5 * side} 5"/></svg>`;
}

function diamond(value, axis) {
  return svg`<svg x="${x(value, axis)}%" y="50%" overflow="visible">
    <path class="by-itself" d="M0 -6l6 6l-6 6l-6 -6z"/></svg>`;
}

function alone(effect, sheet) {
  const steps = effect.steps.filter((step) => step.alone);
  if (steps.length === 0) {
    return nothing;
  }
  const newest = steps.slice(0, LINKS);
  return html`: ${newest.map(
    (step, at) => html`${at > 0 ? ", " : ""}${stepLink(step, sheet)}`,
  )}${effect.alone > newest.length ? " …" : ""}`;
}

/** A link to the comparison of two revisions, or to what was baked of the one. */
export function stepLink(step, {formula}) {
  if (step.from === step.to) {
    const words = step.one_tray ? "tray" : "two trays";
    return html`<a href=${bakePage({formula, id: step.to_bake})}>${words} of ${short(step.to)}</a>`;
  }
  const line = parse(step.to).variant;
  return html`<a href=${formulaPage(formula, {line, from: step.from, to: step.to})}
    >${short(step.from)} → ${short(step.to)}</a>`;
}
