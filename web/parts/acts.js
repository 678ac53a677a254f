// What can be done with a revision: edit, bake, restore, publish, branch, carry over, undo.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {order} from "/api.js";
import {
  carryPage,
  formulaPage,
  labelPage,
  print as printed,
  short,
  worksheetPage,
} from "/address.js";
import {count, flowing, moment} from "/format.js";
import {actDialog} from "/parts/act-dialog.js";
import {choiceField, textField} from "/parts/fields.js";
import {goalMark} from "/parts/goal.js";
import {entryOf} from "/parts/history.js";
import {notice} from "/parts/notices.js";

/** The revision of a timeline on which an address stands, as acts need it; null for others. */
export function onTimeline(timeline, address) {
  const entry = entryOf(timeline, address);
  if (!entry) {
    return null;
  }
  const newest = timeline.revisions.find((each) => each.variant === entry.variant);
  return {
    formula: timeline.formula,
    variant: entry.variant,
    address: entry.address,
    revision: entry.revision,
    commit: entry.commit,
    newest: newest.address === entry.address,
    published: entry.published,
    variants: entry.variant ? [] : timeline.variants.map((each) => each.variant),
  };
}

/** The revision of a worksheet, as acts need it; null for a file edited by hand. */
export function onSheet(sheet) {
  if (sheet.commit === null) {
    return null;
  }
  const {formula, variant, revision, commit, published} = sheet;
  const address = printed({formula, variant, point: String(revision)});
  const newest = !sheet.address.includes("@");
  return {formula, variant, address, revision, commit, newest, published, variants: []};
}

/** Draws the acts on a revision; nothing when there is none. */
export function revisionActs(subject, tools) {
  if (!subject) {
    return nothing;
  }
  const name = short(subject.address);
  const line = subject.variant ?? "the main line";
  const act = (words, run) =>
    html`<button type="button" @click=${() => run(subject, tools)}>${words}</button>`;
  return html`<div class="acts" role="group" aria-label="With revision ${name}">
    <button type="button" class="main" @click=${() => edit(subject, tools)}>
      Edit from ${name}
    </button>
    <a class="button" href="/record/${subject.address}">Record a bake of ${name}</a>
    <a class="button" href="/card/${subject.address}">Card of ${name}</a>
    <a class="button" href=${labelPage(subject.address)}>Label figures of ${name}</a>
    <a class="button" href="/story/${lineOf(subject)}">Story</a>
    <a class="button" href="/share/${subject.formula}">Share the formula</a>
    <details>
      <summary>Restore, publish, fork, carry over, undo</summary>
      <div class="more-acts">
        ${subject.newest ? nothing : act("Restore…", restore)}
        ${subject.published ? nothing : act("Publish…", publish)}
        ${act("Fork a variant…", fork)}
        ${subject.variant
          ? html`<a class="button" href=${carryPage(subject.formula, subject.variant)}
              >Carry improvements over…</a>`
          : subject.variants.map(
              (variant) => html`<a class="button" href=${carryPage(subject.formula, variant)}
                >Carry into ${variant}…</a>`,
            )}
        ${act(`Undo the last change of ${line}…`, undo)}
      </div>
    </details>
  </div>`;
}

function lineOf({formula, variant}) {
  return variant ? `${formula}/${variant}` : formula;
}

/** Begins a draft on a revision and opens it. */
export async function edit(subject, tools) {
  try {
    const {id} = await order("draft/begin", {base: subject.address});
    await tools.go(`/drafts/${id}`);
  } catch (thrown) {
    const failure = api.expected(thrown);
    notice({text: `${failure.message} ${failure.hint}`, warning: true});
  }
}

/** A list of changes in words. */
export function changeList(changes, none) {
  return changes.length === 0
    ? html`<p class="quiet">${none}</p>`
    : html`<ul class="changes">
        ${changes.map((change) => html`<li>${flowing(change.sentence)}</li>`)}
      </ul>`;
}

async function restore(subject, tools) {
  const name = short(subject.address);
  const written = await actDialog(`Restore ${name}`, {
    look: () => api.restoring(subject.address),
    start: (look) => ({note: look.note}),
    draw: (look) =>
      look.same
        ? html`<p>
            ${short(look.newest.address)}, the newest, says the same already. There is nothing to
            restore.
          </p>`
        : html`<p>
              What ${name} said becomes the newest revision, after ${short(look.newest.address)}.
              The revisions in between stay.
            </p>
            <h3>What changes against ${short(look.newest.address)}</h3>
            ${changeList(look.changes, "Nothing that can be put in words.")}`,
    fields: (look) => (look.same ? [] : ["note"]),
    yes: (look) => (look.same ? null : `Restore ${name}`),
    write: (look, form) =>
      order("restore", {
        address: subject.address,
        note: form.note,
        seen: look.newest.commit,
      }).then((answer) => ({...answer, before: look.newest.address})),
  });
  if (written) {
    committed(written);
    const {formula, variant, address} = written.revision;
    const page = formulaPage(formula, {line: variant, from: written.before, to: address});
    await tools.go(page, {anew: true});
  }
}

function committed({outcome, revision}) {
  const name = short(revision.address);
  notice({
    text: outcome === "committed"
      ? `Saved ${name}: “${revision.note}”.`
      : `Nothing was saved: ${name} says the same already.`,
    link: [worksheetPage(revision.address), `Worksheet of ${name}`],
  });
}

async function publish(subject, tools) {
  const name = short(subject.address);
  const written = await actDialog(`Publish ${name}`, {
    look: () => api.publishing(subject.address),
    start: () => ({note: ""}),
    draw: (look) => html`<p>
        ${name}, “${look.revision.note}”, is marked as published. It stays as it is; later revisions
        can be published beside it.
      </p>
      ${look.goal ? html`<p>${look.goal.name}: ${goalMark(look.goal.met)}</p>` : nothing}
      ${look.remarks.map((remark) => html`<p class="problem">${remark}</p>`)}
      <details class="caution-fold">
        <summary>Allergens and cautions</summary>
        <ul>
          ${look.cautions.map((words) => html`<li>${words}</li>`)}
        </ul>
        <p>Local food codes and licensed practice decide.</p>
      </details>`,
    fields: () => ["note"],
    labels: {note: ["What is published, and where", "Such as “The breakfast bun of this winter”."]},
    yes: () => `Publish ${name}`,
    write: (look, form) =>
      order("publish", {address: subject.address, note: form.note, seen: look.revision.commit}),
  });
  if (written) {
    notice({
      text: `Published ${name}: “${written.note}”.`,
      link: [worksheetPage(subject.address), `Worksheet of ${name}`],
    });
    await tools.again();
  }
}

async function fork(subject, tools) {
  const name = short(subject.address);
  const written = await actDialog(`Fork a variant from ${name}`, {
    look: () => api.goals(),
    start: () => ({name: "", goal: "", note: ""}),
    draw: () => html`<p>
      A variant is a line of its own for another goal. It begins as ${name} is; what the main line
      improves later can be carried over.
    </p>`,
    own: (look, form, redraw) => html`${textField({
        id: "variant-name",
        label: "Name of the variant",
        hint: "Small letters, digits and hyphens, such as egg-free.",
        value: form.name,
        size: "medium",
        typed: (text) => {
          form.name = text;
          redraw();
        },
      })}
      ${look.goals.length > 0
        ? choiceField({
            id: "variant-goal",
            label: "Goal",
            value: form.goal,
            options: [["", "As the formula"], ...look.goals.map((each) => [each.goal, each.name])],
            chosen: (goal) => {
              form.goal = goal;
              redraw();
            },
          })
        : nothing}`,
    fields: () => ["note"],
    labels: {note: ["Why", "Such as “For guests who eat no egg”."]},
    yes: () => "Fork the variant",
    write: (look, form) =>
      order("fork", {
        address: subject.address,
        name: form.name,
        goal: form.goal,
        note: form.note.trim() || (form.goal ? `Begin ${form.name}` : ""),
        seen: subject.commit,
      }),
  });
  if (written) {
    const {formula, variant, address} = written.revision;
    notice({
      text: [`Forked ${variant} from ${name}.`, ...written.remarks].join(" "),
      link: [worksheetPage(address), `Worksheet of ${short(address)}`],
    });
    await tools.go(formulaPage(formula, {line: variant}), {anew: true});
  }
}

async function undo(subject, tools) {
  const line = subject.variant ? `${subject.formula}/${subject.variant}` : "main";
  const where = subject.variant ?? "the main line";
  const undone = await actDialog(`Undo the last change of ${where}`, {
    look: () => api.undoing(line),
    start: () => ({}),
    draw: (look) => html`<p>
        The last change is <b>“${look.note}”</b>, by ${look.author}, ${moment(look.time)}. Undoing
        it brings back what was before. The change stays in the history; undoing once more does it
        again.
      </p>
      ${look.formulas.some((each) => each.formula === subject.formula)
        ? nothing
        : html`<p class="problem">It did not touch the formula ${subject.formula}.</p>`}
      <h3>What happens</h3>
      ${look.formulas.map(
        (each) => html`<p>
            <b>${each.formula}</b> ${each.address === null ? "leaves the notebook." : "changes:"}
          </p>
          ${each.address === null
            ? nothing
            : changeList(each.changes, "Its file is as it was before.")}`,
      )}
      ${look.others.length > 0
        ? html`<ul class="changes">
            ${look.others.map((sentence) => html`<li>${sentence}</li>`)}
          </ul>`
        : nothing}`,
    fields: () => [],
    yes: () => "Undo it",
    write: (look) => order("undo", {line: look.line, seen: look.commit}),
  });
  if (!undone) {
    return;
  }
  const own = undone.formulas.find((each) => each.formula === subject.formula);
  notice({
    text: `Undone: “${undone.undone}”. ${formulasNow(undone.formulas)}`,
    link: own?.address ? [worksheetPage(own.address), `Worksheet of ${short(own.address)}`] : null,
  });
  await (own && own.address === null
    ? tools.go("/")
    : tools.go(formulaPage(subject.formula, {line: subject.variant}), {anew: true}));
}

function formulasNow(formulas) {
  const now = formulas.filter((each) => each.address !== null);
  return now.length === 0
    ? ""
    : now.length === 1
      ? `Now ${now[0].address}.`
      : `Now ${count(now.length, "formula")} are as before.`;
}
