// Before hollow, after filled, on an axis from nothing that all strips of a list share.

import {html, nothing, svg} from "/lib/lit-html/lit-html.js";

/** The end of an axis that holds all masses of some moves. */
export function endOf(moves) {
  return Math.max(1e-9, ...moves.flatMap(({from, to}) => [from ?? 0, to ?? 0])) * 1.04;
}

/** One strip; a side that is not known is left out. */
export function strip({from, to}, end) {
  const x = (value) => 2 + (96 * value) / end;
  const both = from !== null && to !== null;
  return html`<svg class="dot-line" width="100%" height="22" aria-hidden="true">
    <line class="axis" x1="2%" x2="98%" y1="11" y2="11"/>
    <line class="axis" x1="2%" x2="2%" y1="6" y2="16"/>
    ${both
      ? svg`<line class="span" x1="${x(from)}%" x2="${x(to)}%" y1="11" y2="11"/>`
      : nothing}
    ${from === null ? nothing : svg`<circle class="dot from" cx="${x(from)}%" cy="11" r="5.5"/>`}
    ${to === null
      ? nothing
      : svg`<circle class="dot to" cx="${x(to)}%" cy="11"
          r=${both && Math.abs(x(from) - x(to)) < 1 ? 3 : 5.5}/>`}
  </svg>`;
}
