// What was typed and not saved yet, kept in this browser over a reload.

const PREFIX = "ovenmark.typed";

/** Keeps a form's state; folder tells notebooks apart. */
export function keep(folder, name, state) {
  try {
    localStorage.setItem(key(folder, name), JSON.stringify(state));
  } catch {
    // A browser that keeps nothing still has the page as it stands.
  }
}

/** The kept state, or null. */
export function kept(folder, name) {
  try {
    return JSON.parse(localStorage.getItem(key(folder, name)));
  } catch {
    return null;
  }
}

/** Forgets it, when it was saved or thrown away. */
export function forget(folder, name) {
  try {
    localStorage.removeItem(key(folder, name));
  } catch {
    // There was nothing.
  }
}

function key(folder, name) {
  return `${PREFIX} ${folder} ${name}`;
}
