// How figures, differences and times are written. The only place that turns numbers into text.

import {preferences} from "/preferences.js";

// The international avoirdupois ounce (NIST SP 811, appendix B.8).
const GRAMS_PER_OUNCE = 28.349523125;
const FIGURES = 3;
const SMALLEST = 1e-9;
const MONTHS = [
  "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec",
];

/** The minus sign. */
export const MINUS = "−";

const NEAREST = "nearest";
const DOWN = "down";
const UP = "up";

/** Three significant figures: 0.923, 46, −1234. */
export function number(value) {
  return rounded(value, NEAREST);
}

/** A difference with its sign: +14, −22, 0. */
export function signed(value) {
  const text = number(value);
  return text === "0" || text.startsWith(MINUS) ? text : "+" + text;
}

/** A number with its unit, or "unknown". */
export function withUnit(value, unit) {
  if (value === null || value === undefined) {
    return "unknown";
  }
  return unit ? `${number(value)} ${unit}` : number(value);
}

/**
 * A figure of a set: exact, bounded in words, or "unknown". Bounds are rounded outwards, so that
 * what is written is never more than is known.
 */
export function figure(set, key, unit = "") {
  const value = set?.[key] ?? null;
  if (value !== null) {
    return withUnit(value, unit);
  }
  const bounds = set?.bounds?.[key];
  if (!bounds) {
    return "unknown";
  }
  const words = inWords(bounds.at_least ?? null, bounds.at_most ?? null);
  return unit ? `${words} ${unit}` : words;
}

function inWords(low, high) {
  if (high === null) {
    return `at least ${rounded(low, DOWN)}`;
  }
  return low === null || low === 0
    ? `at most ${rounded(high, UP)}`
    : `between ${rounded(low, DOWN)} and ${rounded(high, UP)}`;
}

/** A mass in the unit that the reader prefers: 94.6 g, 3.34 oz; or "unknown". */
export function mass(grams) {
  return withUnit(massNumber(grams), massUnit());
}

/** Grams as a number of the unit that the reader prefers; null stays null. */
export function massNumber(grams) {
  return grams === null || grams === undefined || preferences().mass === "g"
    ? grams
    : grams / GRAMS_PER_OUNCE;
}

/** The unit that masses are shown in. */
export function massUnit() {
  return preferences().mass;
}

/** A mass of a set, which may be known in part, in the unit that the reader prefers. */
export function figureMass(set, key, {unit = true} = {}) {
  const bounds = set?.bounds?.[key];
  const inUnit = {
    [key]: massNumber(set?.[key] ?? null),
    bounds: bounds
      ? {
          [key]: {
            at_least: massNumber(bounds.at_least ?? null),
            at_most: massNumber(bounds.at_most ?? null),
          },
        }
      : undefined,
  };
  return figure(inUnit, key, unit ? massUnit() : "");
}

/** Whether a figure is a mass that is weighed at the bench, not one of a nutrient. */
export function isWeighed(key) {
  return ["batch_g", "dough_g", "dough_per_piece_g", "baked_per_piece_g"].includes(key);
}

/**
 * A temperature that somebody wrote down, with its value: as written where that is in the degrees
 * that the reader prefers; null stays null.
 */
export function heat(written, celsius) {
  if (written === null || written === undefined) {
    return null;
  }
  return written.endsWith(temperatureUnit())
    ? written.replace("-", MINUS)
    : temperature(celsius);
}

/** A temperature in the degrees that the reader prefers: 190 °C, 374 °F; or "unknown". */
export function temperature(celsius) {
  return withUnit(temperatureNumber(celsius), temperatureUnit());
}

/** Degrees Celsius as a number of the degrees that the reader prefers; null stays null. */
export function temperatureNumber(celsius) {
  return celsius === null || celsius === undefined || preferences().temperature === "C"
    ? celsius
    : (celsius * 9) / 5 + 32;
}

/** A difference of degrees Celsius as one of the degrees that the reader prefers. */
export function temperatureDifference(celsius) {
  return celsius === null || preferences().temperature === "C" ? celsius : (celsius * 9) / 5;
}

/** The unit that temperatures are shown in. */
export function temperatureUnit() {
  return preferences().temperature === "C" ? "°C" : "°F";
}

/** A count with its noun: 1 piece, 2 pieces. */
export function count(many, one, more = one + "s") {
  return many === 1 ? `1 ${one}` : `${many} ${more}`;
}

/** 14 Sep, as noted where it happened, whatever this browser's time zone is. */
export function day(time) {
  const [, month, date] = time.slice(0, 10).split("-").map(Number);
  return `${date} ${MONTHS[month - 1]}`;
}

/** 14 Sep 2026. */
export function fullDay(time) {
  return `${day(time)} ${time.slice(0, 4)}`;
}

/** 14 Sep 2026, 10:30. */
export function moment(time) {
  return `${fullDay(time)}, ${time.slice(11, 16)}`;
}

/** A sentence whose arrows and units do not begin a line. */
export function flowing(text) {
  return text
    .replaceAll(" → ", "\u00a0→ ")
    .replace(/(\d) (g|mg|kg|oz|lb|kcal|%|°C|°F|min|mm|tsp|tbsp)(?![\p{L}\d])/gu, "$1\u00a0$2");
}

/** A text with its first letter as a capital. */
export function capital(text) {
  return text ? text[0].toUpperCase() + text.slice(1) : text;
}

// Works on the decimal digits, not on the binary number, so that 2.345 becomes 2.35.
function rounded(value, direction) {
  if (Math.abs(value) < SMALLEST) {
    return "0";
  }
  const [digits, exponent] = Math.abs(value).toExponential(11).split("e");
  const all = digits.replace(".", "");
  const point = Number(exponent) + 1;
  const kept = Math.max(FIGURES, point);
  if (kept >= all.length) {
    return sign(value, plain(all, point));
  }
  const rest = all.slice(kept);
  const away = direction === UP ? value > 0 : value < 0;
  const grow = direction === NEAREST ? rest[0] >= "5" : away && /[1-9]/.test(rest);
  const whole = BigInt(all.slice(0, kept)) + (grow ? 1n : 0n);
  const text = whole.toString().padStart(kept, "0");
  return sign(value, plain(text, point + text.length - kept));
}

function sign(value, text) {
  return value < 0 && text !== "0" ? MINUS + text : text;
}

function plain(digits, point) {
  let whole = point > 0 ? digits.slice(0, point).padEnd(point, "0") : "0";
  let rest = point > 0 ? digits.slice(point) : "0".repeat(-point) + digits;
  rest = rest.replace(/0+$/, "");
  whole = whole.replace(/^0+(?=\d)/, "");
  return rest ? `${whole}.${rest}` : whole;
}
