// A small drawing of a tray from the measures of its pieces: width and crust colour.

import {html, svg} from "/lib/lit-html/lit-html.js";
import {number} from "/format.js";

const WIDTH = 84;
const HEIGHT = 50;
const USUAL_WIDTH_MM = 80;
const MOST_IN_A_ROW = 4;

/** The drawing; what was not measured is dashed or grey. */
export function tray(bake) {
  const pieces = bake.pieces;
  const rows = Math.max(1, Math.ceil(pieces.length / MOST_IN_A_ROW));
  const columns = Math.max(1, Math.ceil(pieces.length / rows));
  const cell = {x: WIDTH / columns, y: HEIGHT / rows};
  const widest = Math.max(...pieces.map((piece) => piece.width_mm ?? USUAL_WIDTH_MM), 1);
  const most = Math.min(cell.x, cell.y) / 2 - 2;
  return html`<svg class="tray" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img"
    aria-label=${describe(bake)}>
    <rect class="sheet" width=${WIDTH} height=${HEIGHT} rx="2"/>
    ${pieces.map((piece, at) => {
      const x = cell.x * ((at % columns) + 0.5);
      const y = cell.y * (Math.floor(at / columns) + 0.5);
      const radius = (most * (piece.width_mm ?? USUAL_WIDTH_MM)) / widest;
      return svg`<circle class=${crustClass(piece)} cx=${x} cy=${y} r=${radius}/>`;
    })}
  </svg>`;
}

/** The class that colours a piece by its crust, and dashes it when its width is unknown. */
export function crustClass(piece) {
  const colour =
    piece.crust_shade === null ? "crust-unknown" : `crust-${Math.round(piece.crust_shade)}`;
  return piece.width_mm === null ? `${colour} width-unknown` : colour;
}

function describe(bake) {
  const pieces = bake.pieces.map((piece) => {
    const width = piece.width_mm === null ? "width unknown" : `${number(piece.width_mm)} mm wide`;
    const crust =
      piece.crust_shade === null ? "crust unknown" : `crust ${number(piece.crust_shade)} of 4`;
    return `${piece.id} ${width}, ${crust}`;
  });
  return `Tray of ${bake.id}: ${pieces.join("; ") || "no pieces"}`;
}
