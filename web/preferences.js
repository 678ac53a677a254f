// How this browser's reader wants things shown and heard. Kept in this browser alone; it never
// changes what is stored in the notebook.

const KEPT_AS = "ovenmark.preferences";
const NOTEBOOKS = "ovenmark.notebook-units";
const CHOICES = {
  temperature: ["C", "F"],
  mass: ["g", "oz"],
  colours: ["system", "light", "dark"],
  sound: ["on", "off"],
  keys: ["on", "off"],
};

let known = null;
const listeners = new Set();

/**
 * The preferences: {temperature: "C" or "F", mass: "g" or "oz", colours: "system", "light" or
 * "dark", sound and keys: "on" or "off"}. Units that were never chosen here are the notebook's.
 */
export function preferences() {
  known ??= read();
  return known;
}

/** Changes some of them and tells all who listen. */
export function prefer(changed) {
  write(KEPT_AS, checked({...kept(KEPT_AS), ...changed}));
  known = checked({...preferences(), ...changed});
  dispatchEvent(new Event("ovenmark-preferences"));
  listeners.forEach((listener) => listener(known));
}

/** Takes the units of the notebook for those that were never chosen here. */
export function notebookPrefers({temperature_unit: temperature, mass_unit: mass}) {
  const before = preferences();
  write(NOTEBOOKS, checked({temperature: temperature.replace("°", ""), mass}));
  known = null;
  const now = preferences();
  if (now.temperature !== before.temperature || now.mass !== before.mass) {
    listeners.forEach((listener) => listener(now));
  }
}

/** Calls back after every change, also one made in another tab. */
export function onPreference(listener) {
  listeners.add(listener);
}

function read() {
  const first = Object.fromEntries(Object.entries(CHOICES).map(([name, [usual]]) => [name, usual]));
  return {...first, ...checked(kept(NOTEBOOKS)), ...checked(kept(KEPT_AS))};
}

function kept(name) {
  try {
    return JSON.parse(localStorage.getItem(name)) ?? {};
  } catch {
    return {};
  }
}

function write(name, preferred) {
  try {
    localStorage.setItem(name, JSON.stringify(preferred));
  } catch {
    // A browser that keeps nothing still shows this page as chosen.
  }
}

function checked(wanted) {
  return Object.fromEntries(
    Object.entries(CHOICES)
      .filter(([name, choices]) => choices.includes(wanted[name]))
      .map(([name]) => [name, wanted[name]]),
  );
}

addEventListener("storage", (event) => {
  if (event.key === KEPT_AS) {
    known = null;
    listeners.forEach((listener) => listener(preferences()));
  }
});
