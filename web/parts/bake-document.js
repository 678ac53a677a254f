// What is typed about a bake: a document of texts, kept while it is typed and sent to be worked
// out. Nothing is calculated here.

import {number} from "/format.js";

const LETTERS = 26;
const TEXTS = [
  "temperature", "minutes", "rack", "dough", "baked", "width", "height", "core", "core_log",
  "crust", "verdict", "note",
];

/** A document for a new bake. */
export function newDocument(start, {mass, temperature}) {
  return {
    formula: start.formula,
    address: start.revision.address,
    blob: start.revision.blob,
    opened: start.time,
    grid: "",
    form: {
      units: {mass, temperature},
      time: start.time,
      baker: start.baker,
      ambient: "",
      note: "",
      findings: [],
      pieces: [],
    },
    timers: {},
  };
}

/** A document for changes of a recorded bake, from its form. */
export function changeDocument(bake, filled) {
  const pieces = filled.form.pieces.map((piece) => ({...piece, key: piece.id}));
  return {
    formula: bake.formula,
    address: bake.address,
    bake: bake.id,
    base: filled.base,
    form: {...filled.form, pieces},
  };
}

/** The form of a document as the server reads it. */
export function formOf(document) {
  const pieces = document.form.pieces.map(({key, ...piece}) => piece);
  return {...document.form, pieces};
}

/** Adds a piece; set holds texts to begin with. */
export function addPiece(document, set = {}) {
  const {pieces} = document.form;
  const texts = Object.fromEntries(TEXTS.map((name) => [name, ""]));
  const id = set.id && !taken(pieces, set.id) ? set.id : freeLetter(pieces);
  const keys = new Set(pieces.map((piece) => piece.key));
  let key = id;
  for (let n = 2; keys.has(key); n += 1) {
    key = `${id}-${n}`;
  }
  pieces.push({...texts, findings: [], tasters: [], ...set, id, key});
  return key;
}

/** Takes a piece away; resolves what puts it back. */
export function removePiece(document, key) {
  const {pieces} = document.form;
  const at = pieces.findIndex((piece) => piece.key === key);
  const [piece] = pieces.splice(at, 1);
  const timer = document.timers?.[key];
  if (timer) {
    delete document.timers[key];
  }
  return () => {
    pieces.splice(at, 0, piece);
    if (timer) {
      document.timers[key] = timer;
    }
  };
}

/** The settings of a piece as texts: what the grid or the last bake says. */
export function settingTexts({temperature, minutes, rack}, units) {
  return {
    temperature: bare(temperature ?? "", units.temperature),
    minutes: minutes === null || minutes === undefined ? "" : String(minutes),
    rack: rack ?? "",
  };
}

// Beside a field that has the same unit, a number stands without it.
function bare(temperature, unit) {
  return temperature.replace(new RegExp(` °${unit}$`), "");
}

/** Whether nothing was typed that is worth keeping. */
export function isBlank(document) {
  const {form} = document;
  return (
    form.pieces.length === 0
    && form.findings.length === 0
    && !form.note
    && !form.ambient
    && !document.grid
  );
}

/** A piece in a few words: 190 °C, 14 min. */
export function setting(piece, units) {
  const heat = piece.temperature && withUnit(piece.temperature, `°${units.temperature}`);
  return [heat, piece.minutes && withUnit(piece.minutes, "min")].filter(Boolean).join(", ");
}

function withUnit(text, unit) {
  return /^[-−+]?[\d.,]+$/.test(text.trim()) ? `${text.trim()} ${unit}` : text;
}

/**
 * Changes units of the fields. What was typed keeps its meaning: a bare number gets the unit that
 * it had.
 */
export function changeUnits(document, changed) {
  const {units} = document.form;
  const mass = changed.mass ?? units.mass;
  const temperature = changed.temperature ?? units.temperature;
  for (const piece of document.form.pieces) {
    if (mass !== units.mass) {
      stateUnit(piece, ["dough", "baked"], units.mass, mass);
    }
    if (temperature !== units.temperature) {
      stateUnit(piece, ["temperature", "core"], `°${units.temperature}`, `°${temperature}`);
    }
  }
  document.form.units = {mass, temperature};
}

function stateUnit(piece, fields, was, will) {
  for (const field of fields) {
    const text = withUnit(piece[field], was);
    piece[field] = text.endsWith(` ${will}`) ? text.slice(0, -will.length - 1) : text;
  }
}

/** A text one step up or down: its number changes, its unit stays. Without a number, null. */
export function stepped(text, step) {
  const found = /^\s*(\d+(?:[.,]\d+)?)(.*)$/.exec(text);
  if (!found) {
    return null;
  }
  const value = Number(found[1].replace(",", ".")) + step;
  return value < 0 ? null : `${plain(value)}${found[2]}`;
}

function plain(value) {
  return String(Math.round(value * 1000) / 1000);
}

/** A measured time in minutes as a text for a field, to the tenth. */
export function minutesText(milliseconds) {
  return number(Math.round(milliseconds / 6000) / 10);
}

function taken(pieces, id) {
  return pieces.some((piece) => piece.id.trim().toLowerCase() === id);
}

function freeLetter(pieces) {
  let place = 0;
  while (taken(pieces, letter(place))) {
    place += 1;
  }
  return letter(place);
}

function letter(place) {
  const last = String.fromCharCode(97 + (place % LETTERS));
  return place < LETTERS ? last : letter(Math.floor(place / LETTERS) - 1) + last;
}
