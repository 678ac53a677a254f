// The map of a bake window: oven temperature × time, the pieces, where limits hold and fail, and
// where to bake next. Shapes and words carry the meaning; crust browns only show the crust.

import {html, nothing, svg} from "/lib/lit-html/lit-html.js";
import {count, number, temperature, temperatureNumber, temperatureUnit} from "/format.js";

const DESK = {wide: 860, high: 520, left: 64, right: 14, top: 14, bottom: 46, mark: 8, text: 13};
const PHONE = {wide: 360, high: 400, left: 48, right: 8, top: 10, bottom: 44, mark: 8, text: 12};
const PATTERNS = 6;
const MOST_IN_A_ROW = 4;

/** Draws it; narrow for a phone. */
export function windowChart(whole, {narrow}) {
  const shown = whole.map.failing.filter((each) => each.spans.length > 1);
  const sheet = {...whole, map: {...whole.map, failing: shown}};
  const size = narrow ? PHONE : DESK;
  const axes = axesOf(sheet.map, size);
  const groups = groupsOf(sheet);
  const room = [];
  return html`<figure class="window-chart">
    <svg viewBox="0 0 ${size.wide} ${size.high}" role="img" aria-label=${describe(sheet, groups)}>
      ${patterns()} ${clip(size)}
      <rect class="window-ground" x=${size.left} y=${size.top}
        width=${size.wide - size.left - size.right} height=${size.high - size.top - size.bottom}/>
      <g clip-path="url(#window-frame)">
        ${area(sheet.map.possible, axes, "window-possible")}
        ${area(sheet.map.likely, axes, "window-likely")}
        ${sheet.map.failing.map((each, at) =>
          area(each.spans, axes, `window-failing window-way-${at % PATTERNS}`),
        )}
        ${sheet.map.failing.map((each) => area(each.spans, axes, "window-edge"))}
      </g>
      ${frame(sheet, axes, size)}
      ${failingWords(sheet, axes, size)}
      ${best(sheet, axes, size)}
      ${groups.map((group) => pieces(group, axes, {size, narrow, room}))}
      ${sheet.next.map((each, at) => next(each, at, axes, size))}
    </svg>
    ${legend(sheet)}
  </figure>`;
}

function describe(sheet, groups) {
  return `Map of oven temperature and ${along(sheet)}: ${count(
    groups.reduce((sum, group) => sum + group.length, 0),
    "piece",
  )}. ${sheet.summary} The same stands in the tables below.`;
}

function along(sheet) {
  return sheet.asked.along === "minutes" ? "time" : "thermal dose";
}

function axesOf(map, size) {
  const low = Math.log(map.from);
  const wide = Math.log(map.to) - low;
  const {left, right, top, bottom} = size;
  return {
    x: (value) => left + ((Math.log(value) - low) / wide) * (size.wide - left - right),
    y: (celsius) =>
      size.high - bottom
      - ((celsius - map.from_c) / (map.to_c - map.from_c)) * (size.high - top - bottom),
  };
}

function clip(size) {
  return svg`<clipPath id="window-frame"><rect x=${size.left} y=${size.top}
    width=${size.wide - size.left - size.right} height=${size.high - size.top - size.bottom}/>
  </clipPath>`;
}

// Where limits fail is told apart by hatching, not by colour.
function patterns() {
  return svg`<defs>
    <pattern id="window-way-0" width="9" height="9" patternUnits="userSpaceOnUse">
      <circle cx="3" cy="3" r="1.3" class="hatch-dot"/></pattern>
    <pattern id="window-way-1" width="8" height="8" patternUnits="userSpaceOnUse">
      <path d="M-2,2l4,-4M0,8l8,-8M6,10l4,-4" class="hatch"/></pattern>
    <pattern id="window-way-2" width="8" height="8" patternUnits="userSpaceOnUse">
      <path d="M-2,6l4,4M0,0l8,8M6,-2l4,4" class="hatch"/></pattern>
    <pattern id="window-way-3" width="8" height="8" patternUnits="userSpaceOnUse">
      <path d="M4,0v8" class="hatch"/></pattern>
    <pattern id="window-way-4" width="8" height="8" patternUnits="userSpaceOnUse">
      <path d="M0,4h8" class="hatch"/></pattern>
    <pattern id="window-way-5" width="12" height="12" patternUnits="userSpaceOnUse">
      <path d="M3,6h6M6,3v6" class="hatch"/></pattern>
  </defs>`;
}

function outline(spans, {x, y}) {
  const there = spans.map(
    (span) => `${x(span.from).toFixed(1)},${y(span.temperature_c).toFixed(1)}`,
  );
  const back = [...spans]
    .reverse()
    .map((span) => `${x(span.to).toFixed(1)},${y(span.temperature_c).toFixed(1)}`);
  return `M${[...there, ...back].join("L")}Z`;
}

function area(spans, axes, name) {
  return spans.length < 2 ? nothing : svg`<path class=${name} d=${outline(spans, axes)}/>`;
}

function frame(sheet, {x, y}, size) {
  const {map} = sheet;
  const bottom = size.high - size.bottom;
  const times = ticks(map.from, map.to, size === PHONE ? 5 : 9);
  const heats = ticks(temperatureNumber(map.from_c), temperatureNumber(map.to_c), 6);
  const celsius = (shown) => (temperatureUnit() === "°C" ? shown : ((shown - 32) * 5) / 9);
  return svg`<g class="window-frame">
    ${times.map(
      (time) => svg`<line x1=${x(time)} x2=${x(time)} y1=${size.top} y2=${bottom}/>
        <text x=${x(time)} y=${bottom + 18} text-anchor="middle">${number(time)}</text>`,
    )}
    ${heats.map(
      (heat) => svg`<line x1=${size.left} x2=${size.wide - size.right} y1=${y(celsius(heat))}
          y2=${y(celsius(heat))}/>
        <text x=${size.left - 6} y=${y(celsius(heat)) + 4} text-anchor="end">${number(heat)}</text>`,
    )}
    <text class="window-axis" x=${size.wide - size.right} y=${size.high - 8} text-anchor="end">
      ${sheet.asked.along === "minutes" ? "min in the oven" : "thermal dose of the core, min"}
    </text>
    <text class="window-axis" x="2" y=${size.high - 8}>↑ oven, ${temperatureUnit()}</text>
  </g>`;
}

function ticks(low, high, most) {
  const steps = [0.5, 1, 2, 5, 10, 20, 50, 100, 200];
  const step = steps.find((each) => (high - low) / each <= most) ?? 500;
  const found = [];
  for (let tick = Math.ceil(low / step) * step; tick <= high + 1e-9; tick += step) {
    found.push(tick);
  }
  return found;
}

// The words of a failing area stand where it is widest, apart from each other.
function failingWords(sheet, {x, y}, size) {
  const taken = [];
  return sheet.map.failing.map((each) => {
    const spots = each.spans
      .map((span) => ({
        x: (x(span.from) + x(span.to)) / 2,
        y: y(span.temperature_c) + 4,
        room: x(span.to) - x(span.from),
      }))
      .filter((spot) => spot.y > size.top + 16 && spot.y < size.high - size.bottom - 6);
    const half = each.words.length * size.text * 0.29;
    const fits = spots
      .filter((spot) => !taken.some((other) =>
        Math.abs(other.y - spot.y) < size.text * 1.5
          && Math.abs(other.x - spot.x) < other.half + half + 6))
      .sort((one, other) => other.room - one.room);
    const spot = fits[0];
    if (!spot || spot.room < 24) {
      return nothing;
    }
    const middle = Math.min(
      size.wide - size.right - half - 2,
      Math.max(size.left + half + 2, spot.x),
    );
    taken.push({x: middle, y: spot.y, half});
    return svg`<text class="window-words" x=${middle} y=${spot.y}
      text-anchor="middle">${each.words}</text>`;
  });
}

function best({map}, {x, y}, size) {
  if (map.best.chance < 0.02) {
    return nothing;
  }
  const [left, top] = [x(map.best.along), y(map.best.temperature_c)];
  return svg`<g class="window-best">
    <path d="M${left - 15},${top}h30M${left},${top - 15}v30"/>
    <text x=${left + 12} y=${top - 12}>best</text>
  </g>`;
}

function groupsOf(sheet) {
  const groups = new Map();
  for (const piece of sheet.pieces.filter((each) => each.on_map)) {
    const place = sheet.asked.along === "minutes" ? piece.minutes : piece.dose;
    const key = `${piece.temperature_c} ${place}`;
    groups.set(key, [...(groups.get(key) ?? []), {...piece, place}]);
  }
  return [...groups.values()];
}

// Pieces of one setting stand side by side, as they lay on the tray.
function pieces(group, {x, y}, {size, narrow, room}) {
  const step = size.mark * 2 + 3;
  const rows = Math.ceil(group.length / MOST_IN_A_ROW);
  const left = x(group[0].place);
  const top = y(group[0].temperature_c);
  const cores = group.map((each) => each.core_c).filter((core) => core !== null);
  const faults = [
    ...new Set(
      group.flatMap((each) =>
        each.findings.filter((finding) => finding.merit === false).map((finding) => finding.word),
      ),
    ),
  ];
  const below = top + (rows * step) / 2 + size.text - 1;
  return svg`<g class="window-pieces">
    ${group.map((piece, at) => {
      const row = Math.floor(at / MOST_IN_A_ROW);
      const inRow = Math.min(MOST_IN_A_ROW, group.length - row * MOST_IN_A_ROW);
      return mark(
        piece,
        left + ((at % MOST_IN_A_ROW) - (inRow - 1) / 2) * step,
        top + (row - (rows - 1) / 2) * step,
        size.mark,
      );
    })}
    ${cores.length > 0 && fits(room, coreText(cores), left, below, size)
      ? svg`<text x=${left} y=${below} text-anchor="middle">${coreText(cores)}</text>`
      : nothing}
    ${!narrow && faults.length > 0 && fits(room, faultText(faults), left, below + size.text, size)
      ? svg`<text class="window-faults" x=${left} y=${below + size.text} text-anchor="middle">
          ${faultText(faults)}</text>`
      : nothing}
  </g>`;
}

function faultText(faults) {
  return faults.slice(0, 2).join(", ") + (faults.length > 2 ? " …" : "");
}

// Where words would lie on others they are left to the table.
function fits(room, words, middle, base, size) {
  const half = (words.length * size.text) / 4 + 2;
  const free = !room.some(
    (other) =>
      Math.abs(other.base - base) < size.text * 0.9
      && Math.abs(other.middle - middle) < other.half + half,
  );
  if (free) {
    room.push({middle, base, half});
  }
  return free;
}

function coreText(cores) {
  const [low, high] = [Math.min(...cores), Math.max(...cores)];
  const low0 = number(temperatureNumber(low));
  const high0 = number(temperatureNumber(high));
  return low0 === high0 ? `${low0}°` : `${low0}–${high0}°`;
}

/** A piece: a disc keeps all limits, a crossed square breaks one, a dashed disc is open. */
function mark(piece, left, top, radius) {
  const shade = piece.crust_shade === null ? "unknown" : Math.round(piece.crust_shade);
  const title = svg`<title>${spoken(piece)}</title>`;
  if (piece.keeps === false) {
    const half = radius * 0.9;
    return svg`<g class="window-piece broken">
      <rect class="crust-${shade}" x=${left - half} y=${top - half} width=${half * 2}
        height=${half * 2}/>
      <path class="cross-under" d=${cross(left, top, half)}/>
      <path class="cross" d=${cross(left, top, half)}/>${title}</g>`;
  }
  return svg`<g class="window-piece ${piece.keeps === null ? "open" : "kept"}">
    <circle class="crust-${shade}" cx=${left} cy=${top} r=${radius}/>${title}</g>`;
}

function cross(left, top, half) {
  return `M${left - half},${top - half}l${2 * half},${2 * half}`
    + `M${left - half},${top + half}l${2 * half},${-2 * half}`;
}

function spoken(piece) {
  return [
    `${piece.piece} of ${piece.bake}`,
    temperature(piece.temperature_c),
    piece.minutes === null ? null : `${number(piece.minutes)} min`,
    piece.core_c === null ? "core unknown" : `core ${temperature(piece.core_c)}`,
    piece.crust_shade === null ? "crust unknown" : `crust ${number(piece.crust_shade)} of 4`,
    ...piece.findings.map((each) => each.word),
    piece.breaks.length > 0 ? `breaks ${piece.breaks.join(", ")}` : null,
  ]
    .filter(Boolean)
    .join(", ");
}

function next(each, at, {x, y}, size) {
  const left = x(each.minutes);
  const top = y(each.temperature_c);
  return svg`<g class="window-next">
    <path d=${`M${left},${top - 13}l13,13l-13,13l-13,-13z`}/>
    <text x=${left} y=${top + size.text * 0.36} text-anchor="middle">${at + 1}</text>
    <title>To bake next: ${temperature(each.temperature_c)}, ${number(each.minutes)} min</title>
  </g>`;
}

function legend(sheet) {
  const any = (keeps) => sheet.pieces.some((piece) => piece.on_map && piece.keeps === keeps);
  const swatch = (drawing) => svg`<svg width="26" height="22" viewBox="0 0 26 22"
    aria-hidden="true">${drawing}</svg>`;
  const piece = (keeps) => mark({keeps, crust_shade: 2, findings: [], breaks: []}, 13, 11, 8);
  return html`<figcaption class="window-legend">
    ${any(true) ? html`<span>${swatch(piece(true))} piece that keeps every limit</span>` : nothing}
    ${any(false) ? html`<span>${swatch(piece(false))} breaks one</span>` : nothing}
    ${any(null) ? html`<span>${swatch(piece(null))} not known</span>` : nothing}
    ${sheet.map.likely.length > 1
      ? html`<span>${swatch(box("window-likely"))} at least 8 pieces in 10 keep all</span>`
      : nothing}
    ${sheet.map.possible.length > 1
      ? html`<span>${swatch(box("window-possible"))} at least 5 in 10</span>`
      : nothing}
    ${sheet.map.failing.map(
      (each, at) => html`<span>${swatch(box(`window-failing window-way-${at % PATTERNS}`))} more
        likely than not: ${each.words}</span>`,
    )}
    ${sheet.next.length > 0
      ? html`<span>${swatch(svg`<g class="window-next"><path d="M13,1l10,10l-10,10l-10,-10z"/></g>`)}
          to bake next</span>`
      : nothing}
    <span>number below a piece: its core, ${temperatureUnit()}; fill: its crust</span>
  </figcaption>`;
}

function box(name) {
  return svg`<rect class=${name} x="2" y="3" width="22" height="16"/>`;
}
