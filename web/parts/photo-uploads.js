// Photos on their way into a bake: chosen, dropped or taken, sent with progress, added together.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {repeat} from "/lib/lit-html/directives/repeat.js";
import * as api from "/api.js";
import {bakePage} from "/address.js";
import {capital, count, fullDay} from "/format.js";
import {notice} from "/parts/notices.js";

const AT_ONCE = 2;
const PATIENCE_MS = 1500;
const TRIES = 20;
const ON_THE_WAY = ["waiting", "sending", "sent"];
const NAMED_BY = 30;

// What is on its way, by bake. It goes on when another page is opened.
const desks = new Map();

/** The uploads of a bake; added is called with the bake as it is then. */
export function uploadsOf(bake) {
  const key = `${bake.formula}/${bake.id}`;
  if (!desks.has(key)) {
    desks.set(key, new Uploads(bake));
  }
  return desks.get(key);
}

addEventListener("beforeunload", (event) => {
  if ([...desks.values()].some((each) => each.isBusy())) {
    event.preventDefault();
  }
});

/** The photos of one bake that are on their way. */
class Uploads {
  constructor({formula, id, time}) {
    this.place = {formula, bake: id};
    this.time = time;
    this.items = [];
    this.waiting = null;
    this.mostBytes = Infinity;
    this.said = "";
    this.changed = () => {};
    this.added = () => {};
  }

  isBusy() {
    return this.items.some((each) => ON_THE_WAY.includes(each.state));
  }

  /** Asks once what was sent earlier and never added. */
  async look() {
    if (this.waiting !== null) {
      return;
    }
    this.waiting = [];
    try {
      const answer = await api.waitingPhotos(this.place.formula, this.place.bake);
      this.mostBytes = answer.most_bytes;
      this.waiting = this.isBusy() ? [] : answer.photos;
      this.changed();
    } catch {
      this.waiting = null;
    }
  }

  /** Takes files in: those that were chosen together are added together. */
  take(files) {
    const together = [...files].map((file) => ({
      file,
      name: file.name || "photo",
      state: "waiting",
      share: 0,
      stop: new AbortController(),
    }));
    if (together.length === 0) {
      return;
    }
    this.items = [...this.items.filter((each) => each.state !== "added"), ...together];
    this.said = `${count(together.length, "photo")} chosen.`;
    this.changed();
    this.sendAll(together);
  }

  async sendAll(together) {
    const single = together.length === 1;
    const queue = [...together];
    const work = async () => {
      for (let item = queue.shift(); item; item = queue.shift()) {
        await this.send(item, single);
      }
    };
    await Promise.all(Array.from({length: AT_ONCE}, work));
    if (!single) {
      await this.keep(together.filter((each) => each.state === "sent"));
    }
    this.tell(together);
  }

  async send(item, single) {
    if (item.state !== "waiting") {
      return;
    }
    if (item.file.size > this.mostBytes) {
      this.fail(item, {
        message: `“${item.name}” is larger than the ${this.mostBytes >> 20} MB that are taken.`,
        hint: "Save a smaller copy, then add that.",
      });
      return;
    }
    const parameters = {...this.place, name: item.name.slice(0, 200)};
    if (!single) {
      parameters.with_others = "true";
    }
    this.set(item, {state: "sending"});
    for (let tries = 1; ; tries++) {
      try {
        const answer = await api.upload("photo/add", parameters, item.file, {
          progressed: (share) => this.set(item, {share}),
          signal: item.stop.signal,
        });
        if (single) {
          this.settle([item], answer);
        } else {
          this.set(item, {state: "sent", picture: answer.picture});
        }
        return;
      } catch (failure) {
        if (item.stop.signal.aborted) {
          this.set(item, {state: "cancelled"});
          return;
        }
        if (failure.reason !== "busy" || tries >= TRIES) {
          this.fail(item, failure);
          return;
        }
        await new Promise((resolve) => setTimeout(resolve, PATIENCE_MS));
      }
    }
  }

  /** One commit for all that came through. */
  async keep(sent) {
    if (sent.length === 0) {
      return;
    }
    try {
      const pictures = sent.map((each) => each.picture);
      this.settle(
        sent,
        await api.order("photo/keep", {
          formula: this.place.formula,
          bake: this.place.bake,
          pictures,
        }),
      );
    } catch (failure) {
      sent.forEach((each) => this.fail(each, failure));
      this.waiting = null;
      this.look();
    }
  }

  settle(items, {bake, repeated, missing}) {
    items.forEach((each) => {
      const lost = missing.includes(each.picture);
      each.state = lost ? "failed" : "added";
      each.known = items.length === 1 ? repeated.length > 0 : repeated.includes(each.picture);
      each.problem = lost
        ? {message: "was thrown away on another page", hint: "Add it again if you want it."}
        : null;
    });
    this.added(bake);
    this.changed();
  }

  fail(item, {message, hint}) {
    this.set(item, {state: "failed", problem: {message, hint}});
  }

  /** Stops one; what was sent of it is thrown away. */
  cancel(item) {
    if (item.state === "sent") {
      item.state = "cancelled";
      this.discard([item.picture]);
    } else if (item.state === "waiting") {
      item.state = "cancelled";
    }
    item.stop.abort();
    this.changed();
  }

  forget(item) {
    this.items = this.items.filter((each) => each !== item);
    this.changed();
  }

  retry(item) {
    item.stop = new AbortController();
    Object.assign(item, {state: "waiting", share: 0, problem: null});
    this.changed();
    this.sendAll([item]);
  }

  set(item, changes) {
    Object.assign(item, changes);
    this.changed();
  }

  tell(together) {
    const added = together.filter((each) => each.state === "added" && !each.known).length;
    const failed = together.filter((each) => each.state === "failed").length;
    const words = [
      added > 0 ? `${count(added, "photo")} added` : null,
      failed > 0 ? `${failed} not added` : null,
    ].filter(Boolean);
    this.said = words.length > 0 ? capital(words.join(", ")) + "." : "";
    this.items = this.items.filter((each) => each.state !== "added" || each.known);
    if (location.pathname !== bakePage({formula: this.place.formula, id: this.place.bake})) {
      const link = [`/bakes/${this.place.formula}/${this.place.bake}`, "See the bake"];
      notice({
        text: `Bake of ${fullDay(this.time)}: ${this.said}`,
        link,
        warning: failed > 0,
      });
    }
    this.changed();
  }

  async discard(pictures) {
    try {
      const {formula, bake} = this.place;
      const answer = await api.order("photo/discard", {formula, bake, pictures});
      this.waiting = this.isBusy() ? this.waiting : answer.photos;
    } catch (failure) {
      notice({text: failure.message, warning: true});
    }
    this.changed();
  }

  async keepWaiting() {
    const {formula, bake} = this.place;
    const pictures = this.waiting.map((each) => each.picture);
    try {
      const answer = await api.order("photo/keep", {formula, bake, pictures});
      this.waiting = [];
      this.said = `${count(answer.photos_added.length, "photo")} added.`;
      this.added(answer.bake);
    } catch (failure) {
      notice({text: failure.message, warning: true});
      this.waiting = null;
      this.look();
    }
    this.changed();
  }
}

/** The buttons to choose and to take photos. */
export function chooseButtons(uploads) {
  const chosen = (event) => {
    uploads.take(event.target.files);
    event.target.value = "";
  };
  return html`<div class="choose-photos">
    <label class="file-button">
      <input type="file" accept="image/*" multiple @change=${chosen} />
      <span>Choose photos…</span>
    </label>
    <label class="file-button camera">
      <input type="file" accept="image/*" capture="environment" @change=${chosen} />
      <span>Take a photo</span>
    </label>
    <p class="hint drop-hint">or drop them here. JPEG, PNG and WebP.</p>
  </div>`;
}

/** How far each is. */
export function uploadList(uploads) {
  const {items, waiting, said} = uploads;
  return html`<p class="unseen" role="status">${said}</p>
    ${waiting?.length > 0 ? leftover(uploads) : nothing}
    ${items.length > 0
      ? html`<ul class="uploads" aria-label="Photos on their way">
          ${repeat(items, (each) => each, (each) => row(uploads, each))}
        </ul>`
      : nothing}`;
}

function leftover(uploads) {
  const {waiting} = uploads;
  return html`<div class="caution leftover" role="note">
    <p>
      ${count(waiting.length, "photo was", "photos were")} sent earlier but not added to this bake:
      ${waiting.map((each) => each.name).join(", ")}.
    </p>
    <p class="actions">
      <button type="button" class="main" @click=${() => uploads.keepWaiting()}>
        ${waiting.length === 1 ? "Add it" : "Add them"}
      </button>
      <button
        type="button"
        @click=${() => uploads.discard(waiting.map((each) => each.picture))}
      >
        Throw ${waiting.length === 1 ? "it" : "them"} away
      </button>
    </p>
  </div>`;
}

function row(uploads, item) {
  return html`<li class=${item.state}>
    ${ON_THE_WAY.includes(item.state) ? moving(uploads, item) : ended(uploads, item)}
  </li>`;
}

function moving(uploads, item) {
  return html`<div class="upload-what">
      <span class="upload-name">${item.name}</span> <span class="quiet">${step(item)}</span>
      <progress
        aria-label=${item.name}
        max="1"
        .value=${item.state === "sent" ? 1 : item.share}
      ></progress>
    </div>
    <div class="upload-acts">
      <button
        type="button"
        aria-label=${`Cancel ${item.name}`}
        @click=${() => uploads.cancel(item)}
      >
        Cancel
      </button>
    </div>`;
}

function ended(uploads, item) {
  const words = outcome(item);
  const failed = item.state === "failed";
  // Most sentences name the file themselves.
  const named = words.includes(item.name.slice(0, NAMED_BY));
  return html`<div class="upload-what">
      ${named ? nothing : html`<span class="upload-name">${item.name}</span>`}
      <span class=${failed ? "problem" : "quiet"}>${words}</span>
      ${failed ? html`<span class="quiet">${item.problem.hint}</span>` : nothing}
    </div>
    <div class="upload-acts">
      ${item.state === "added"
        ? nothing
        : html`<button
            type="button"
            aria-label=${`Try ${item.name} again`}
            @click=${() => uploads.retry(item)}
          >
            Try again
          </button>`}
      <button
        type="button"
        class="plain"
        aria-label=${`Dismiss ${item.name}`}
        @click=${() => uploads.forget(item)}
      >
        Dismiss
      </button>
    </div>`;
}

function step({state, share}) {
  if (state === "waiting") {
    return "waiting";
  }
  if (state === "sent") {
    return "ready, waiting for the others";
  }
  return share < 1 ? `${Math.floor(share * 100)} % sent` : "being made ready";
}

function outcome(item) {
  switch (item.state) {
    case "failed":
      return item.problem.message;
    case "cancelled":
      return "cancelled";
    default:
      return item.known ? "is among the photos already" : "added";
  }
}
