// How this browser's reader wants units shown. It never changes what is stored in the notebook.

const KEPT_AS = "ovenmark.preferences";
const CHOICES = {temperature: ["C", "F"], mass: ["g", "oz"]};

let known = null;
const listeners = new Set();

/** The preferences: {temperature: "C" or "F", mass: "g" or "oz"}. */
export function preferences() {
  known ??= read();
  return known;
}

/** Changes some of them and tells all who listen. */
export function prefer(changed) {
  known = checked({...preferences(), ...changed});
  try {
    localStorage.setItem(KEPT_AS, JSON.stringify(known));
  } catch {
    // A browser that keeps nothing still shows this page as chosen.
  }
  listeners.forEach((listener) => listener(known));
}

/** Calls back after every change, also one made in another tab. */
export function onPreference(listener) {
  listeners.add(listener);
}

function read() {
  try {
    return checked(JSON.parse(localStorage.getItem(KEPT_AS)) ?? {});
  } catch {
    return checked({});
  }
}

function checked(wanted) {
  return Object.fromEntries(
    Object.entries(CHOICES).map(([name, choices]) => [
      name,
      choices.includes(wanted[name]) ? wanted[name] : choices[0],
    ]),
  );
}

addEventListener("storage", (event) => {
  if (event.key === KEPT_AS) {
    known = read();
    listeners.forEach((listener) => listener(known));
  }
});
