// Whether a goal is met: in words, with a shape that says the same.

import {html, nothing, svg} from "/lib/lit-html/lit-html.js";
import {flowing} from "/format.js";

const SHAPES = {
  met: svg`<circle cx="8" cy="8" r="7"/><path d="M4.5 8.4l2.4 2.4 4.6-5"/>`,
  missed: svg`<path class="outline" d="M8 1.5l7 13H1z"/><path d="M8 6.2v4M8 12.2v.6"/>`,
  open: svg`<circle class="outline" cx="8" cy="8" r="6.5" stroke-dasharray="3 2.4"/>`,
};

/** The shape of an outcome: true, false or null for not known. */
export function goalShape(met) {
  const name = met === true ? "met" : met === false ? "missed" : "open";
  return html`<svg class="goal-shape ${name}" viewBox="0 0 16 16" width="16" height="16"
    aria-hidden="true">${SHAPES[name]}</svg>`;
}

/** The shape with its words. */
export function goalMark(met, words = goalWords(met)) {
  return html`<span class="goal-mark">${goalShape(met)} ${words}</span>`;
}

/** The words alone. */
export function goalWords(met) {
  return met === true ? "met" : met === false ? "missed" : "not known";
}

/** Rule by rule how a goal stands. */
export function ruleList(checks) {
  return html`<ul class="rules">
    ${checks.map(
      (check) => html`<li>
        ${goalMark(check.met, html`<b>${goalWords(check.met)}</b>`)}
        ${flowing(check.rule + (check.value_text ? `: ${check.value_text}` : ""))}
        ${check.because.length > 0
          ? html`<span class="remark">${check.because.join(", ")}</span>`
          : nothing}
      </li>`,
    )}
  </ul>`;
}
