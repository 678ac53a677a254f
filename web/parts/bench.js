// What was ticked at the bench: lines weighed, steps done. Kept in this browser for each content of
// a formula, so that it survives a reload and a locked phone; of no concern to the notebook.

const KEPT_AS = "ovenmark.bench";
const KEPT_SHEETS = 20;

/** What is ticked of a sheet, as names such as "line egg-whole" or "step 2". */
export function ticked(sheet) {
  return new Set(read().find((each) => each.sheet === nameOf(sheet))?.ticks ?? []);
}

/** Ticks one, or takes its tick away. */
export function tick(sheet, name, on) {
  const ticks = ticked(sheet);
  if (on) {
    ticks.add(name);
  } else {
    ticks.delete(name);
  }
  keep(sheet, [...ticks]);
}

/** Takes all ticks away; returns what brings them back. */
export function startAgain(sheet) {
  const before = [...ticked(sheet)];
  keep(sheet, []);
  return () => keep(sheet, before);
}

// The same content is weighed in the same way, whichever revision it is.
function nameOf({formula, blob}) {
  return `${formula} ${blob}`;
}

function keep(sheet, ticks) {
  const name = nameOf(sheet);
  const others = read().filter((each) => each.sheet !== name);
  const all = ticks.length > 0 ? [{sheet: name, ticks}, ...others] : others;
  try {
    localStorage.setItem(KEPT_AS, JSON.stringify(all.slice(0, KEPT_SHEETS)));
  } catch {
    // A browser that keeps nothing still shows the ticks until the page is left.
    unkept = all;
  }
}

let unkept = null;

function read() {
  if (unkept) {
    return unkept;
  }
  try {
    return JSON.parse(localStorage.getItem(KEPT_AS)) ?? [];
  } catch {
    return [];
  }
}
