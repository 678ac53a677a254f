// A form that is tried out while it is typed, kept over a reload, and saved only on what it saw.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {order} from "/api.js";
import {count, moment} from "/format.js";
import {bothSides} from "/parts/both-sides.js";
import {movesInShort} from "/parts/figure-moves.js";
import {drop, forget, keep, kept, keptElsewhere} from "/parts/kept.js";
import {notice} from "/parts/notices.js";
import {refused} from "/views/failure.js";

const WAIT_MS = 150;

// What appears by itself must not move a button away from under a pressed finger.
let pressed = false;
const waiting = new Set();
addEventListener("pointerdown", () => (pressed = true), {capture: true});
["pointerup", "pointercancel"].forEach((name) => addEventListener(name, released, {capture: true}));

function released() {
  pressed = false;
  setTimeout(() => {
    waiting.forEach((form) => form.tools.redraw());
    waiting.clear();
  });
}

/** Draws again what was found or left, as soon as nothing is pressed. */
export function drawAgain(form) {
  if (pressed) {
    waiting.add(form);
  } else {
    form.tools.redraw();
  }
}

/**
 * The state of one form: {folder, name, fresh, carried, orders: [try, save], saved, tools}. fresh
 * is what it shows before anything is typed, {seen, …}; carried makes an order of its state;
 * saved(outcome) is called when it was saved.
 */
export function triedForm(given) {
  const found = kept(given.folder, given.name);
  const form = {
    ...given,
    state: found ?? structuredClone(given.fresh),
    restored: found !== null,
    moved: found !== null && found.seen !== given.fresh.seen,
    elsewhere: found === null ? keptElsewhere(given.folder, given.name) : [],
    tried: null,
    touched: new Set(),
    asked: new Set(),
    attempted: false,
    clash: null,
    picks: {},
    failure: null,
    saving: false,
  };
  look(form);
  return form;
}

/** Notes a change: keeps it, draws it, tries it out. */
export function typed(form, field) {
  form.touched.add(field);
  form.asked.add(field);
  keep(form.folder, form.name, form.state);
  form.tools.redraw();
  clearTimeout(form.timer);
  form.timer = setTimeout(() => look(form), WAIT_MS);
}

/** Begins again with what is saved. */
export function startOver(form) {
  forget(form.folder, form.name);
  Object.assign(form, {
    state: structuredClone(form.fresh),
    restored: false,
    moved: false,
    clash: null,
    picks: {},
    failure: null,
    attempted: false,
  });
  form.touched.clear();
  look(form);
  form.tools.redraw();
}

// Goes on with what another window left behind.
function takeUp(form, left) {
  drop(left.id);
  Object.assign(form, {
    state: left.state,
    restored: true,
    moved: left.state.seen !== form.fresh.seen,
    elsewhere: [],
  });
  keep(form.folder, form.name, form.state);
  look(form);
  form.tools.redraw();
}

function throwAway(form, left) {
  drop(left.id);
  form.elsewhere = form.elsewhere.filter((each) => each !== left);
  form.tools.redraw();
}

function leftElsewhere(form, left) {
  return html`<p class="restored">
    Something was typed here on ${when(left.at)} in another window and is not saved.
    <button type="button" @click=${() => takeUp(form, left)}>Go on with it</button>
    <button type="button" class="plain" @click=${() => throwAway(form, left)}>
      Throw it away
    </button>
  </p>`;
}

// In this browser's own time.
function when(milliseconds) {
  const at = new Date(milliseconds);
  return moment(new Date(milliseconds - at.getTimezoneOffset() * 60_000).toISOString());
}

/** Stops what is under way, when the page is left. */
export function leaveForm(form) {
  clearTimeout(form.timer);
  form.asking?.abort();
  waiting.delete(form);
}

/** What is wrong with a field, once it was typed into and left. */
export function problemOf(form, field, id) {
  const found = form.tried?.problems.find((each) => each.field === field);
  const shown =
    form.attempted || (form.touched.has(field) && document.activeElement?.id !== id);
  if (form.asked.has(field)) {
    return undefined;
  }
  return found && shown ? `${found.message} ${found.hint}`.trim() : undefined;
}

/** What is wrong and belongs to none of the fields that are drawn. */
export function otherProblems(form, fields) {
  const rest = form.tried?.problems.filter((each) => !fields.has(each.field)) ?? [];
  return form.attempted && rest.length > 0
    ? html`<ul class="form-problems">
        ${rest.map((each) => html`<li class="problem">${each.message} ${each.hint}</li>`)}
      </ul>`
    : nothing;
}

async function look(form) {
  form.asking?.abort();
  const mine = new AbortController();
  form.asking = mine;
  try {
    form.tried = await order(form.orders[0], form.carried(form.state), mine.signal);
    form.failure = null;
    form.asked.clear();
  } catch (thrown) {
    if (mine.signal.aborted) {
      return;
    }
    form.failure = thrown;
  }
  drawAgain(form);
}

/** Saves it, with the choices where somebody else changed the same. */
export async function save(form, content) {
  if (form.saving) {
    return;
  }
  form.saving = true;
  form.failure = null;
  form.tools.redraw();
  const choices = form.clash ? {picks: form.picks, answered: form.clash.answered} : {};
  try {
    const outcome = await order(form.orders[1], {...form.carried(form.state), ...choices});
    form.saving = false;
    if (outcome.outcome === "invalid") {
      form.attempted = true;
      form.tried = {...form.tried, problems: outcome.problems};
      form.tools.redraw();
      content?.querySelector("[aria-invalid=true], .form-problems")?.focus?.();
    } else if (outcome.outcome === "conflict") {
      form.clash = outcome;
      form.picks = {};
      form.tools.redraw();
      document.getElementById("both-sides")?.focus();
    } else {
      forget(form.folder, form.name);
      notice(savedWords(outcome));
      form.saved(outcome);
    }
  } catch (thrown) {
    form.saving = false;
    form.failure = thrown;
    form.tools.redraw();
  }
}

function savedWords(outcome) {
  const parts = [
    outcome.outcome === "unchanged" ? "Nothing had changed." : "Saved.",
    outcome.taken.length > 0
      ? `Somebody else’s changes are kept: ${outcome.taken.join("; ")}.`
      : "",
    outcome.also_in.length > 0 ? `Also changed in ${outcome.also_in.join(", ")}.` : "",
    ...outcome.remarks,
  ];
  return {text: parts.filter(Boolean).join(" "), warning: outcome.remarks.length > 0};
}

/** What stands above the fields: typed earlier, moved meanwhile, both sides, what went wrong. */
export function formState(form, what) {
  return html`${form.restored
      ? html`<p class="restored" role="status">
          What you typed here earlier is back; it is not saved yet.
          ${form.moved
            ? html`Somebody may have changed ${what} since. Nothing is overwritten: on saving, their
              changes and yours are put together.`
            : nothing}
          <button type="button" class="plain" @click=${() => startOver(form)}>
            Throw it away
          </button>
        </p>`
      : nothing}
    ${form.touched.size === 0
      ? form.elsewhere.slice(0, 1).map((left) => leftElsewhere(form, left))
      : nothing}
    ${form.clash ? bothSides(form, what) : nothing}
    ${form.failure ? html`<div class="caution">${refused(form.failure)}</div>` : nothing}`;
}

/** The button that saves, and the one that leaves. */
export function formActions(form, words, back) {
  const open = form.clash?.clashes.filter((each) => !form.picks[each.fact]).length ?? 0;
  return html`<div class="form-actions">
    <button
      type="button"
      class="main"
      ?disabled=${open > 0}
      aria-disabled=${String(form.saving ?? false)}
      @click=${(event) => save(form, event.target.closest("main"))}
    >
      ${form.saving ? "Saving…" : form.clash ? "Save with these choices" : words}
    </button>
    ${back} ${movesInShort(form.tried?.moves, form.words)}
    ${open > 0 ? html`<span class="quiet">${count(open, "choice")} to make above</span>` : nothing}
  </div>`;
}
