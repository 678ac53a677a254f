// Keeps a bake while it is typed: in this browser at once, on the server a moment later, so that a
// reload, a crash and the change from phone to desk lose nothing.

import * as api from "/api.js";
import {Failure, order} from "/api.js";
import {onReturn} from "/parts/answering.js";

const PREFIX = "ovenmark.bake.";
const PAUSE_MS = 400;

/** Where unsent work of a page is kept before the server knows of it. */
export function newSlot(name) {
  return `${PREFIX}new.${name}`;
}

/** What this browser keeps under a slot, {id, version, base, document}; null for nothing. */
export function local(slot) {
  try {
    return JSON.parse(localStorage.getItem(slot));
  } catch {
    return null;
  }
}

/** Where a draft that the server knows is kept. */
export function slotOf(id) {
  return PREFIX + id;
}

/** All that this browser keeps, by draft. */
export function allLocal() {
  try {
    return Object.keys(localStorage)
      .filter((slot) => slot.startsWith(PREFIX))
      .map((slot) => local(slot))
      .filter(Boolean);
  } catch {
    return [];
  }
}

/**
 * Loads a draft by its id. What this browser typed and the server does not know yet comes first.
 * Throws when there is none on either side.
 */
export async function found(id, signal) {
  const mine = local(slotOf(id));
  const unsent = mine && mine.document !== mine.base;
  try {
    const draft = await api.bakeDraft(id, signal);
    return unsent
      ? mine
      : {id, version: draft.version, base: draft.document, document: draft.document};
  } catch (thrown) {
    if (thrown instanceof Failure && unsent) {
      return {...mine, gone: thrown.reason === "not_found"};
    }
    if (mine && thrown instanceof Failure && thrown.reason === "not_found") {
      localStorage.removeItem(slotOf(id));
    }
    throw thrown;
  }
}

/** One document that is being typed. changed is called when there is something new to show. */
export class Keeper {
  /** kept is {id, version, base, document} or null; slot is where new work goes before that. */
  constructor({slot, kept, document, changed, begun}) {
    this.slot = slot;
    this.id = kept?.id ?? null;
    this.version = kept?.version ?? 0;
    this.base = kept?.base ?? null;
    this.document = document;
    this.changed = changed;
    this.begun = begun;
    this.state = kept?.gone ? "gone" : "kept";
    this.time = null;
    this.conflicts = [];
    this.choices = {};
    this.against = null;
    this.ended = false;
    if (kept && kept.document !== kept.base && !kept.gone) {
      this.touch();
    }
  }

  /** The document was changed: keeps it here at once and on the server soon. */
  touch() {
    if (this.ended) {
      return;
    }
    this.write();
    if (this.state === "gone" || this.state === "conflict") {
      return;
    }
    this.state = "waiting";
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.save(), PAUSE_MS);
  }

  write() {
    const {id, version, base} = this;
    const kept = JSON.stringify({id, version, base, document: JSON.stringify(this.document)});
    try {
      localStorage.setItem(id ? slotOf(id) : this.slot, kept);
      if (id) {
        localStorage.removeItem(this.slot);
      }
    } catch {
      // A browser that keeps nothing still has the server's copy.
    }
  }

  /** Sends what is not sent yet. Resolves with whether all is kept on the server. */
  async save() {
    clearTimeout(this.timer);
    if (this.sending) {
      await this.sending;
      return this.state === "kept" || (this.state === "waiting" && this.save());
    }
    if (this.ended || this.state === "gone") {
      return false;
    }
    const sent = JSON.stringify(this.document);
    if (this.id && sent === this.base && this.state !== "conflict") {
      this.state = "kept";
      return true;
    }
    this.sending = this.send(sent).finally(() => {
      this.sending = null;
    });
    await this.sending;
    this.changed();
    return this.state === "kept";
  }

  async send(sent) {
    try {
      const answer = this.id
        ? await order("bake/keep", {
            id: this.id,
            version: this.version,
            base: this.base,
            document: sent,
            choices: this.choices,
            against: this.against,
          })
        : await order("bake/begin", {document: sent});
      this.take(answer, sent);
    } catch (thrown) {
      if (!(thrown instanceof Failure)) {
        throw thrown;
      }
      this.state = thrown.reason === "not_found" ? "gone" : "silent";
    }
  }

  take(answer, sent) {
    const first = this.id === null;
    this.time = answer.time;
    if (answer.outcome === "conflict") {
      this.state = "conflict";
      this.conflicts = answer.conflicts;
      this.against = answer.version;
      return;
    }
    const typedOn = JSON.stringify(this.document) !== sent;
    this.id = answer.id;
    this.conflicts = [];
    this.choices = {};
    this.against = null;
    if (answer.outcome === "merged" && typedOn) {
      // What came from elsewhere is not in what was typed since: it is joined with the next save.
      this.base = sent;
      this.version = answer.version - 1;
    } else {
      this.version = answer.version;
      if (answer.outcome === "merged") {
        replace(this.document, JSON.parse(answer.document));
      }
      this.base = typedOn ? sent : JSON.stringify(this.document);
    }
    this.state = typedOn ? "waiting" : "kept";
    this.write();
    if (first) {
      this.begun?.(this.id);
    }
    if (typedOn) {
      this.timer = setTimeout(() => this.save(), PAUSE_MS);
    }
  }

  /** Takes one side of a conflict; saves when all are chosen. */
  choose(field, side) {
    this.choices[field] = side;
    if (this.conflicts.every((each) => this.choices[each.field])) {
      this.save();
    }
    this.changed();
  }

  /** Takes up what was typed elsewhere meanwhile, when nothing here waits to be sent. */
  async look() {
    if (!this.id || this.state !== "kept" || this.sending || this.ended) {
      return;
    }
    try {
      const draft = await api.bakeDraft(this.id);
      if (draft.version !== this.version && this.state === "kept" && !this.sending) {
        replace(this.document, JSON.parse(draft.document));
        this.base = JSON.stringify(this.document);
        this.version = draft.version;
        this.time = draft.time;
        this.write();
        this.changed(true);
      }
    } catch (thrown) {
      if (!(thrown instanceof Failure)) {
        throw thrown;
      }
      if (thrown.reason === "not_found" && !this.ended) {
        this.state = "gone";
        this.changed();
      }
    }
  }

  /** Keeps what was typed as a draft of its own, when the one it belonged to is gone. */
  async anew() {
    this.forget();
    this.ended = false;
    this.id = null;
    this.base = null;
    this.version = 0;
    this.state = "waiting";
    this.write();
    await this.save();
  }

  /** It was recorded, changed or thrown away: nothing is left to keep. */
  forget() {
    clearTimeout(this.timer);
    this.ended = true;
    try {
      localStorage.removeItem(this.slot);
      if (this.id) {
        localStorage.removeItem(slotOf(this.id));
      }
    } catch {
      // Nothing was kept there.
    }
  }
}

// The objects that the page already holds stay the same ones.
function replace(document, next) {
  Object.keys(document).forEach((name) => delete document[name]);
  Object.assign(document, next);
}

const keepers = new Set();

/** Sends what waits when the viewer is back, and looks around when the page is looked at again. */
export function attend(keeper) {
  keepers.add(keeper);
}

/** No longer. */
export function leave(keeper) {
  keepers.delete(keeper);
}

onReturn(() => keepers.forEach((keeper) => keeper.state === "silent" && keeper.save()));
addEventListener("focus", () => keepers.forEach((keeper) => keeper.look()));
