// What was typed and not saved yet, kept in this browser over a reload. Every window keeps its own,
// so that two of them do not mix; what a closed window left behind can be taken up in another.

const PREFIX = "ovenmark.typed";
const WINDOW = "ovenmark.window";

/** Keeps a form's state; folder tells notebooks apart. */
export function keep(folder, name, state) {
  try {
    localStorage.setItem(key(folder, name) + windowId(), JSON.stringify({at: Date.now(), state}));
  } catch {
    // A browser that keeps nothing still has the page as it stands.
  }
}

/** The state that this window kept, or null. */
export function kept(folder, name) {
  return read(key(folder, name) + windowId())?.state ?? null;
}

/** What other windows kept, the newest first: {at, state, id}. */
export function keptElsewhere(folder, name) {
  const prefix = key(folder, name);
  const own = prefix + windowId();
  try {
    return Object.keys(localStorage)
      .filter((each) => each.startsWith(prefix) && each !== own)
      .map((id) => ({...read(id), id}))
      .filter((each) => each.state)
      .sort((one, other) => other.at - one.at);
  } catch {
    return [];
  }
}

/** Forgets what this window kept, when it was saved or thrown away. */
export function forget(folder, name) {
  drop(key(folder, name) + windowId());
}

/** Forgets what another window kept, when it was taken up or thrown away. */
export function drop(id) {
  try {
    localStorage.removeItem(id);
  } catch {
    // There was nothing.
  }
}

function read(id) {
  try {
    return JSON.parse(localStorage.getItem(id));
  } catch {
    return null;
  }
}

function key(folder, name) {
  return `${PREFIX} ${folder} ${name} `;
}

// A reload keeps it, another window has another.
function windowId() {
  let id = sessionStorage.getItem(WINDOW);
  if (!id) {
    id = `${Date.now().toString(36)}${Math.floor(Math.random() * 1e9).toString(36)}`;
    sessionStorage.setItem(WINDOW, id);
  }
  return id;
}
