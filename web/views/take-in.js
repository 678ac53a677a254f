// A formula from somebody else: choose the bundle, see what is in it, decide, take it in.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {order} from "/api.js";
import {formulaPage} from "/address.js";
import {count} from "/format.js";
import {choiceField, textField, tickField} from "/parts/fields.js";
import {notice} from "/parts/notices.js";
import {row} from "/views/share.js";
import {refused} from "/views/failure.js";

const PAUSE_MS = 300;

export const takeInView = {
  async load(place, {before, signal}) {
    return before ?? fresh((await api.takeInLimits(signal)).most_bytes);
  },

  title: () => "Take in a formula",

  draw: (data, place, tools) => html`<div class="page bundle-page bundle-taking">
    <h1>Take in a formula</h1>
    <p class="say">
      From a bundle that somebody shared: with its history, variants, bakes and photos. Nothing of
      yours is overwritten. Undo takes it back, with the variants and publications that came along.
    </p>
    ${data.failure
      ? html`<div class="refused" role="alert">${refused(data.failure)}</div>`
      : nothing}
    ${choose(data, tools)} ${data.offer ? offer(data, tools) : nothing}
  </div>`,

  left: (data) => {
    clearTimeout(data.timer);
    data.stop?.abort();
  },
};

function fresh(mostBytes) {
  return {
    mostBytes,
    failure: null,
    sending: null,
    name: null,
    bundle: null,
    offer: null,
    busy: false,
    form: {formula: null, as: "", differing: null, reference: true},
  };
}

function choose(data, tools) {
  const most = data.mostBytes / 2 ** 20;
  return html`<div class="bundle-file">
    <label class="file-button">
      <input
        id="bundle"
        type="file"
        aria-describedby="bundle-hint"
        @change=${(event) => {
          send(data, tools, event.target.files[0]);
          event.target.value = "";
        }}
      />
      <span>${data.bundle ? "Choose another bundle…" : "Choose a bundle…"}</span>
    </label>
    <p class="hint" id="bundle-hint">
      A file whose name ends in .bundle, at most ${most} MB. A larger one, or a colleague’s folder:
      <code>ovenmark take-in FILE</code>.
    </p>
    <p role="status">
      ${data.sending === null
        ? nothing
        : data.sending < 1
          ? html`Sending ${data.name}
              <progress aria-label="Sending" max="1" .value=${data.sending}></progress>`
          : html`Reading ${data.name}…`}
    </p>
  </div>`;
}

async function send(data, tools, file) {
  if (!file || data.sending !== null) {
    return;
  }
  Object.assign(data, fresh(data.mostBytes), {name: file.name, stop: new AbortController()});
  if (file.size > data.mostBytes) {
    data.failure = {
      message: `“${file.name}” is larger than the ${data.mostBytes / 2 ** 20} MB that are taken.`,
      where: "",
      hint: "Take it in on the command line: ovenmark take-in FILE",
      problems: [],
    };
    tools.redraw();
    return;
  }
  data.sending = 0;
  tools.redraw();
  try {
    const progressed = (share) => {
      data.sending = share;
      tools.redraw();
    };
    const {signal} = data.stop;
    const sent = await api.upload("take-in/send", {}, file, {progressed, signal});
    Object.assign(data, {bundle: sent.bundle, offer: sent.offer});
    data.form.formula = sent.offer.arrival?.formula ?? null;
  } catch (thrown) {
    if (thrown.name === "AbortError") {
      return;
    }
    data.failure = api.expected(thrown);
    // The server knows it by its content, the person by its name.
    data.failure.where = data.failure.where.endsWith(".bundle") ? file.name : data.failure.where;
  }
  data.sending = null;
  tools.redraw();
}

function offer(data, tools) {
  const {form} = data;
  const {formulas, arrival} = data.offer;
  return html`<form
    novalidate
    @submit=${(event) => {
      event.preventDefault();
      take(data, tools);
    }}
  >
    ${formulas.length > 1
      ? choiceField({
          id: "take-formula",
          label: "Formula",
          value: form.formula ?? "",
          options: [
            ...(form.formula ? [] : [["", "Choose one of them"]]),
            ...formulas.map((each) => [each.formula, each.name]),
          ],
          chosen: (formula) => change(data, tools, {formula, as: "", differing: null}),
        })
      : nothing}
    ${arrival ? coming(data, tools, arrival) : nothing}
  </form>`;
}

function coming(data, tools, arrival) {
  const {form, busy} = data;
  return html`<section aria-labelledby="take-what">
      <h2 id="take-what">${arrival.name}</h2>
      <dl class="bundle-list">
        ${row(
          "Revisions",
          arrival.lines.map((each) => `${each.variant ?? "main line"}: ${each.revisions}`),
        )}
        ${row("Bakes and photos", [
          `${count(arrival.bakes, "bake")} and ${count(arrival.photos, "photo")}`,
        ])}
        ${row("Written by", arrival.people)} ${row("New foods", arrival.new_foods)}
        ${row("New goals", arrival.new_goals)} ${row("Comes in too", arrival.new_references)}
        ${row("Here already, and stays", arrival.own_references)}
        ${row("Left out, not readable", arrival.photos_left_out)}
      </dl>
    </section>
    ${textField({
      id: "take-as",
      label: "Short name here",
      size: "medium",
      value: form.as || arrival.as,
      hint: arrival.taken ? null : "Small letters, digits and hyphens.",
      problem: arrival.taken
        ? `There is, or was, a formula “${arrival.as}” here. Choose another short name.`
        : null,
      typed: (as) => change(data, tools, {as}, PAUSE_MS),
    })}
    ${arrival.new_references.length > 0 || !form.reference
      ? tickField({
          id: "take-reference",
          label: "The reference formula comes in too",
          value: form.reference,
          ticked: (reference) => change(data, tools, {reference}),
        })
      : nothing}
    ${arrival.policy_differs
      ? html`<p class="hint">
          Figures are worked out by another rule there. Numbered revisions keep theirs; the latest
          one follows the rule of your notebook.
        </p>`
      : nothing}
    ${arrival.differing.length > 0 ? differing(data, tools, arrival) : nothing}
    <p class="actions">
      <button type="submit" class="main" aria-disabled=${String(busy)}>Take it in</button>
      <button type="button" @click=${() => forget(data, tools)}>Throw the bundle away</button>
      ${busy ? html`<span class="quiet" role="status">Taking it in…</span>` : nothing}
    </p>`;
}

function differing(data, tools, arrival) {
  const way = (value, words) => html`<label class="tick">
    <input
      type="radio"
      name="differing"
      value=${value}
      .checked=${data.form.differing === value}
      @change=${() => {
        data.form.differing = value;
        tools.redraw();
      }}
    />
    <span>${words}</span>
  </label>`;
  const names = arrival.differing.map((each) => each.slug).join(", ");
  return html`<fieldset class="form-part bundle-differing">
    <legend>Your notebook has other figures for ${names}</legend>
    ${way("own", "Keep mine. The latest revision uses them, so its figures may move.")}
    ${way(
      "theirs",
      "Take theirs under other names (" +
        arrival.differing.map((each) => each.theirs).join(", ") +
        "). The formula gets a revision that uses them.",
    )}
    <p class="hint">Earlier revisions keep the figures that they had, either way.</p>
  </fieldset>`;
}

function change(data, tools, part, pause = 0) {
  Object.assign(data.form, part);
  tools.redraw();
  clearTimeout(data.timer);
  data.timer = setTimeout(() => look(data, tools), pause);
}

async function look(data, tools) {
  const asked = JSON.stringify(data.form);
  try {
    const answer = await order("take-in/look", carried(data));
    if (asked === JSON.stringify(data.form)) {
      Object.assign(data, {offer: answer, failure: null});
    }
  } catch (thrown) {
    data.failure = api.expected(thrown);
  }
  tools.redraw();
}

function carried({bundle, form}) {
  return {
    bundle,
    formula: form.formula,
    as: form.as.trim() || null,
    differing: form.differing,
    reference: form.reference,
  };
}

async function take(data, tools) {
  if (data.busy) {
    return;
  }
  Object.assign(data, {busy: true, failure: null});
  tools.redraw();
  const {arrival} = data.offer;
  try {
    const taken = await order("take-in", {...carried(data), seen: arrival.seen});
    const {formula, address} = taken.revision;
    notice({text: `Took in ${arrival.name} as ${address}.`});
    await tools.go(formulaPage(formula), {anew: true});
    return;
  } catch (thrown) {
    data.failure = api.expected(thrown);
  }
  data.busy = false;
  if (data.failure.reason === "conflict" && data.failure.where !== "differing") {
    const {failure} = data;
    await look(data, tools);
    data.failure = failure;
  }
  tools.redraw();
  document.querySelector(".bundle-taking .refused")?.scrollIntoView({block: "nearest"});
}

async function forget(data, tools) {
  try {
    await order("take-in/forget", {bundle: data.bundle});
  } catch (thrown) {
    api.expected(thrown);
  }
  Object.assign(data, fresh(data.mostBytes));
  tools.redraw();
}
