// What is typed into a draft, kept in this browser at once: one copy for each tab, so that two tabs
// never write over each other's.

const PREFIX = "ovenmark.draft.";
const TAB = "ovenmark.tab";
const ANSWER_MS = 120;

const channel = "BroadcastChannel" in globalThis ? new BroadcastChannel("ovenmark.drafts") : null;
const instance = crypto.getRandomValues(new Uint32Array(2)).join("-");
let tab = null;
let open = null;

channel?.addEventListener("message", ({data}) => {
  if (data.ask && open && data.from !== instance) {
    channel.postMessage({held: open, tab, by: instance});
  }
});

/**
 * Takes hold of a draft in this tab. Resolves with {copy, found, left}: the copy that this tab
 * kept, or else the one found that a closed tab left behind; and the rest of what closed tabs left.
 */
export async function hold(id) {
  const held = await heldElsewhere();
  tab = sessionStorage.getItem(TAB);
  if (!tab || held.some((each) => each.tab === tab)) {
    tab = instance;
    sessionStorage.setItem(TAB, tab);
  }
  open = id;
  const alive = new Set(held.map((each) => each.tab));
  const names = copiesOf(id).filter((name) => !alive.has(tabOf(name)));
  const mine = names.find((name) => tabOf(name) === tab);
  const others = names.filter((name) => name !== mine).map(read);
  const left = others.filter((each) => each && isUnsent(each));
  left.sort((one, other) => other.at - one.at);
  const own = (mine && read(mine)) ?? null;
  const found = own ? null : (left.shift() ?? null);
  return {copy: own ?? found, found, left};
}

/** Lets go of a draft; the copy stays. */
export function letGo(id) {
  open = open === id ? null : open;
}

function heldElsewhere() {
  if (!channel) {
    return Promise.resolve([]);
  }
  const held = [];
  const listen = ({data}) => data.held && data.by !== instance && held.push(data);
  channel.addEventListener("message", listen);
  channel.postMessage({ask: true, from: instance});
  return new Promise((resolve) =>
    setTimeout(() => {
      channel.removeEventListener("message", listen);
      resolve(held);
    }, copiesOf("").length > 0 ? ANSWER_MS : 0),
  );
}

function copiesOf(id) {
  return Object.keys(localStorage).filter(
    (name) => name.startsWith(PREFIX + id) && name.endsWith(".typed"),
  );
}

const tabOf = (name) => name.split(".").at(-2);
const nameOf = (id, part) => `${PREFIX}${id}.${tab}.${part}`;

/** Whether a copy holds what the viewer has not been seen to have. */
export const isUnsent = (copy) => copy.typed !== copy.kept;

function read(name) {
  try {
    const past = localStorage.getItem(name.replace(/typed$/, "past"));
    return {
      ...JSON.parse(localStorage.getItem(name)),
      name,
      steps: past ? JSON.parse(past) : {past: [], future: []},
    };
  } catch {
    return null;
  }
}

/** Writes what is typed. False when this browser keeps nothing. */
export function keepCopy(id, copy) {
  return write(nameOf(id, "typed"), {...copy, at: Date.now()});
}

/** Writes the steps that can be taken back; drops old ones when there is no room. */
export function keepSteps(id, steps) {
  let {past} = steps;
  while (!write(nameOf(id, "past"), {past, future: steps.future}) && past.length > 0) {
    past = past.slice(Math.ceil(past.length / 2));
  }
}

function write(name, value) {
  try {
    localStorage.setItem(name, JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
}

/** Forgets this tab's copy. */
export function forgetCopy(id) {
  forgetLeft({name: nameOf(id, "typed")});
}

/** Forgets a copy that was left behind. */
export function forgetLeft({name}) {
  try {
    localStorage.removeItem(name);
    localStorage.removeItem(name.replace(/typed$/, "past"));
  } catch {
    // There is nothing to forget then.
  }
}
