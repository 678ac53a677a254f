// A long list of rows of which only those in view, and some that must stay, are in the page. Before
// and behind them are gaps as high as the rows that are not there.

import {html, render} from "/lib/lit-html/lit-html.js";
import {repeat} from "/lib/lit-html/directives/repeat.js";

const AHEAD_PX = 600;
const FIRST_GUESS_PX = 88;
const ROUNDS = 4;

/**
 * The list. Its model is
 * {keys, draw(key, at), keep, label, lanes, inView(keys)}: the rows by their keys, how a row is
 * drawn as an li whose rowKey is its key, keys of rows that always stay in the page, and what to
 * tell of the rows in view.
 */
class RevisionList extends HTMLElement {
  #model = null;
  #heights = new Map();
  #held = new Set();
  #tops = [0];
  #asked = null;
  #all = false;
  #sizes = new ResizeObserver(() => this.#soon());
  #soonAgain = () => this.#soon();
  #printing = () => this.#whole(true);
  #printed = () => this.#whole(false);

  set model(model) {
    this.#model = model;
    if (this.isConnected) {
      this.#draw();
    }
  }

  connectedCallback() {
    document.addEventListener("scroll", this.#soonAgain, {capture: true, passive: true});
    addEventListener("resize", this.#soonAgain);
    addEventListener("beforeprint", this.#printing);
    addEventListener("afterprint", this.#printed);
    this.#sizes.observe(this);
    this.#draw();
  }

  disconnectedCallback() {
    document.removeEventListener("scroll", this.#soonAgain, {capture: true});
    removeEventListener("resize", this.#soonAgain);
    removeEventListener("beforeprint", this.#printing);
    removeEventListener("afterprint", this.#printed);
    this.#sizes.disconnect();
    cancelAnimationFrame(this.#asked);
    this.#asked = null;
  }

  /** The key of the row at a height of the window, or the nearest. */
  keyAt(clientY) {
    const at = this.#rowAt(clientY - this.getBoundingClientRect().top);
    return this.#model.keys[at];
  }

  /** The key some rows on; around the end when it is a single step. */
  keyAfter(key, steps) {
    const {keys} = this.#model;
    const at = keys.indexOf(key) + steps;
    if (Math.abs(steps) === 1) {
      return keys.at(at % keys.length);
    }
    return keys[Math.max(0, Math.min(keys.length - 1, at))];
  }

  /** Keeps a row in the page, also out of view, until it is let go. */
  hold(key) {
    this.#held.add(key);
    this.#draw();
  }

  /** Lets go of all rows that were held. */
  letGo() {
    this.#held.clear();
    this.#soon();
  }

  /** The row of a key, brought into view; null when the list has none. */
  reveal(key) {
    if (!this.#model.keys.includes(key)) {
      return null;
    }
    this.hold(key);
    this.#row(key)?.scrollIntoView({block: "nearest"});
    this.#draw();
    this.#held.delete(key);
    return this.#row(key);
  }

  /** Scrolls what the list stands in by some pixels; for what is dragged to its edge. */
  scrollBy(pixels) {
    this.#scroller().scrollTop += pixels;
  }

  /** Upper and lower edge of what is seen of the list, in the window. */
  seen() {
    const scroller = this.#scroller();
    const whole = scroller === document.scrollingElement;
    const frame = whole ? null : scroller.getBoundingClientRect();
    return {
      top: Math.max(0, frame?.top ?? 0),
      bottom: Math.min(innerHeight, frame?.bottom ?? innerHeight),
    };
  }

  #scroller() {
    for (let each = this.parentElement; each; each = each.parentElement) {
      const {overflowY} = getComputedStyle(each);
      if (/auto|scroll/.test(overflowY) && each.scrollHeight > each.clientHeight) {
        return each;
      }
    }
    return document.scrollingElement;
  }

  #soon() {
    this.#asked ??= requestAnimationFrame(() => {
      this.#asked = null;
      this.#draw();
    });
  }

  #whole(all) {
    this.#all = all;
    this.#draw();
  }

  #row(key) {
    return [...this.querySelectorAll("li.revision")].find((row) => row.rowKey === key);
  }

  #rowAt(y) {
    let low = 0;
    let high = this.#model.keys.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.#tops[middle] <= y) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  // Rows are drawn, measured, and drawn again while their real heights bring others into view. The
  // first row in view stays where it is meanwhile.
  #draw() {
    if (!this.#model) {
      return;
    }
    for (let round = 0; round < ROUNDS; round++) {
      this.#layOut();
      const anchor = this.#anchor();
      const shown = this.#shown();
      render(this.#list(shown), this);
      const changed = this.#measure();
      this.#layOut();
      this.#fillGaps();
      this.#hold(anchor);
      if (!changed) {
        break;
      }
    }
    this.#model.inView?.(this.#inView());
  }

  #layOut() {
    const {keys} = this.#model;
    let sum = 0;
    let known = 0;
    for (const height of this.#heights.values()) {
      sum += height;
      known++;
    }
    const guess = known > 0 ? sum / known : FIRST_GUESS_PX;
    this.#tops = [0];
    keys.forEach((key, at) => {
      this.#tops.push(this.#tops[at] + (this.#heights.get(key) ?? guess));
    });
  }

  #anchor() {
    const {top} = this.seen();
    for (const row of this.querySelectorAll("li.revision")) {
      const box = row.getBoundingClientRect();
      if (box.bottom > top) {
        return box.height > 0 ? {key: row.rowKey, top: box.top} : null;
      }
    }
    return null;
  }

  #hold(anchor) {
    const {top} = this.seen();
    if (!anchor || this.getBoundingClientRect().top >= top) {
      return;
    }
    const row = this.#row(anchor.key);
    const moved = row ? row.getBoundingClientRect().top - anchor.top : 0;
    if (Math.abs(moved) >= 1) {
      this.scrollBy(moved);
    }
  }

  #inView(ahead = AHEAD_PX) {
    const {keys} = this.#model;
    const box = this.getBoundingClientRect();
    const {top, bottom} = this.seen();
    if (keys.length === 0 || !this.checkVisibility?.()) {
      return [];
    }
    const from = this.#rowAt(top - ahead - box.top);
    const to = this.#rowAt(bottom + ahead - box.top);
    return keys.slice(from, to + 1);
  }

  #shown() {
    const {keys, keep} = this.#model;
    if (this.#all) {
      return keys.map((key, at) => at);
    }
    const focused = this.contains(document.activeElement)
      ? document.activeElement.closest("li.revision")?.rowKey
      : null;
    const wanted = new Set([...this.#inView(), ...keep, ...this.#held, focused]);
    return keys.map((key, at) => at).filter((at) => wanted.has(keys[at]));
  }

  #list(shown) {
    const {keys, draw, label, lanes} = this.#model;
    const items = [];
    let next = 0;
    for (const at of shown) {
      if (at > next) {
        items.push({gap: [next, at]});
      }
      items.push({at});
      next = at + 1;
    }
    if (next < keys.length) {
      items.push({gap: [next, keys.length]});
    }
    const name = (item) => (item.gap ? `gap before ${keys[item.gap[1]] ?? "the end"}` : keys[item.at]);
    return html`<ol class="revisions lanes-${lanes}" reversed aria-label=${label}>
      ${repeat(items, name, (item) =>
        item.gap
          ? html`<li class="gap" aria-hidden="true" .range=${item.gap}></li>`
          : draw(keys[item.at], item.at),
      )}
    </ol>`;
  }

  #measure() {
    let changed = false;
    for (const row of this.querySelectorAll("li.revision")) {
      const {height} = row.getBoundingClientRect();
      const known = this.#heights.get(row.rowKey);
      if (height > 0 && (known === undefined || Math.abs(known - height) > 0.5)) {
        this.#heights.set(row.rowKey, height);
        changed = true;
      }
    }
    return changed;
  }

  #fillGaps() {
    for (const gap of this.querySelectorAll("li.gap")) {
      const [from, to] = gap.range;
      gap.style.height = `${this.#tops[to] - this.#tops[from]}px`;
    }
  }
}

customElements.define("revision-list", RevisionList);
