// A formula that is being edited: its lines and fields on one side, the figures that follow on the
// other. What is typed is kept in this browser at once and with the viewer soon after.

import * as api from "/api.js";
import {order} from "/api.js";
import {press, toggleWeigh} from "/parts/edit-acts.js";
import {askBoth} from "/parts/edit-both.js";
import {forgetLeft, hold, isUnsent, letGo} from "/parts/edit-copies.js";
import {beginKeeping, endKeeping, keepNow, typedTextOf} from "/parts/edit-keeping.js";
import {figures} from "/parts/edit-live.js";
import {editPage} from "/parts/edit-page.js";
import {
  baseAddress, fromTypedText, opened, remember, rememberAll, replaceDocument, takeUp, typedText,
} from "/parts/edit-state.js";
import {notice} from "/parts/notices.js";

export const editView = {
  async load({parts}, {before, signal}) {
    if (before?.state?.id === parts.draft && before.state.status !== "gone") {
      return before;
    }
    const {copy, found, left} = await hold(parts.draft);
    let draft = null;
    let failure = null;
    try {
      draft = await api.draft(parts.draft, signal);
    } catch (thrown) {
      failure = api.expected(thrown);
      if (!copy || !isUnsent(copy)) {
        if (copy && failure.reason === "not_found") {
          forgetLeft(copy);
        }
        throw failure;
      }
      draft = asLeft(parts.draft, copy);
    }
    const data = {state: opened(draft), ui: newUi(), draft, left, both: null, failure};
    takeCopy(data, copy);
    if (found) {
      rememberAll(data.state);
      forgetLeft(found);
    }
    await figures(Object.assign(data.state, {redraw: () => {}}));
    return data;
  },

  title: ({state}) => `Editing ${state.document.name || "a new formula"}`,

  draw(data, place, tools) {
    data.tools = tools;
    return editPage(data, place.query.has("weigh"));
  },

  drawn(content, data, tools) {
    const {state, ui} = data;
    data.tools = tools;
    if (data.both) {
      state.status = "conflict";
    }
    beginKeeping(state, {
      moved: (theirs) => chooseBoth(data, theirs, state),
      taken: (theirs) => takeOver(data, theirs),
      redraw: () => data.gone || data.tools.redraw(),
    });
    state.listeners.add(() => {
      state.redraw();
      figures(state);
    });
    data.keys = (event) => press(data, event);
    state.visited = new Set();
    data.focus = (event) => {
      state.visited.add(event.target.id);
      setTimeout(() => state.redraw());
    };
    document.addEventListener("keydown", data.keys);
    content.addEventListener("focusout", data.focus);
    data.content = content;
    if (data.failure) {
      state.status = data.failure.reason === "not_found" ? "gone" : "away";
      state.redraw();
    }
    if (data.both) {
      chooseBoth(data, data.draft, state);
    }
    data.left.forEach((copy) => keepLeft(data, copy));
    readGoals(ui, state);
  },

  left(data) {
    data.gone = true;
    document.removeEventListener("keydown", data.keys);
    data.content?.removeEventListener("focusout", data.focus);
    endKeeping(data.state);
    letGo(data.state.id);
  },

  shortcuts: (data) => [
    {key: "w", does: "At the scale, and back", run: () => toggleWeigh(data)},
    {key: "Ctrl+Z", does: "Undo"},
    {key: "Ctrl+Shift+Z", does: "Redo"},
    {key: "Ctrl+S", does: "Save as a revision"},
    {key: "Alt+↑ or Alt+↓", does: "Move the line or step up or down"},
  ],
};

function newUi() {
  return {
    openLine: null,
    choosers: new Map(),
    names: new Map(),
    goals: [],
    formulas: [],
    about: false,
    per: "per_piece",
    dragged: null,
    over: null,
    cell: null,
    refused: null,
    form: {to: "pieces", value: "", failure: null},
    strip: false,
    said: "",
  };
}

// A draft that the viewer does not give, as this browser last saw it.
function asLeft(id, copy) {
  const {document, shortName, note} = fromTypedText(copy.kept);
  return {
    id,
    version: copy.version,
    base: copy.base,
    saved: null,
    newer: [],
    document,
    short_name: shortName,
    note,
    author: "",
    time: "",
  };
}

/* what this browser kept, against what the viewer has */

function takeCopy(data, copy) {
  const {state, draft} = data;
  if (!copy) {
    return;
  }
  const theirs = typedTextOf(draft);
  if (copy.typed === theirs) {
    takeUp(state, copy);
  } else if (copy.version === draft.version || [copy.sent, copy.kept].includes(theirs)) {
    takeUp(state, copy);
    state.kept = theirs;
  } else if (isUnsent(copy)) {
    takeUp(state, copy);
    Object.assign(state, {version: copy.version, kept: copy.kept});
    data.both = true;
  }
}

async function chooseBoth(data, theirs, ours) {
  const {state} = data;
  const mine = {document: ours.document, shortName: ours.shortName, note: ours.note};
  state.status = "conflict";
  state.redraw();
  const answer = await askBoth(state, theirs, mine);
  if (!answer) {
    data.undecided = () => api.draft(state.id).then((now) => chooseBoth(data, now, mine));
    state.redraw();
    return;
  }
  data.undecided = null;
  Object.assign(state, {version: theirs.version, kept: typedTextOf(theirs), sent: null});
  state.status = "keeping";
  const taken = answer.take === "ours" ? mine : {...theirs, shortName: theirs.short_name};
  Object.assign(state, {shortName: taken.shortName, note: taken.note});
  if (typedText(state) === typedText(taken)) {
    remember(state);
    keepNow(state);
  } else {
    replaceDocument(state, taken.document);
  }
  notice({
    text: "The other version is kept as a draft of its own.",
    link: [`/drafts/${answer.other}`, "Open it"],
  });
  state.redraw();
}

function takeOver(data, theirs) {
  const {state} = data;
  Object.assign(state, {version: theirs.version, shortName: theirs.short_name, note: theirs.note});
  state.kept = typedTextOf(theirs);
  replaceDocument(state, theirs.document);
  notice({text: `${theirs.author} typed into this draft elsewhere; it is shown here now.`});
}

// What a closed tab typed and the viewer never had becomes a draft of its own.
async function keepLeft(data, copy) {
  const {document} = fromTypedText(copy.typed);
  try {
    const {id} = await order("draft/begin", {document, base: baseAddress(copy)});
    forgetLeft(copy);
    notice({
      text: "Another tab had typed into this draft, and was closed before that was kept.",
      link: [`/drafts/${id}`, "Open what it typed"],
    });
  } catch {
    // It stays where it is, for the next time.
  }
}

async function readGoals(ui, state) {
  try {
    ui.goals = (await api.goals()).goals;
    state.redraw();
  } catch {
    // The choice shows the goal that is stated.
  }
}
