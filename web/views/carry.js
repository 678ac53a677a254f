// Carrying the main line's improvements into a variant: what comes over, what has to be chosen.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {order} from "/api.js";
import {formulaPage, revisionName, short, worksheetPage} from "/address.js";
import {changeList} from "/parts/acts.js";
import {choicesFor, conflictChooser, openConflicts} from "/parts/conflicts.js";
import {textField} from "/parts/fields.js";
import {goalMark, ruleList} from "/parts/goal.js";
import {notice} from "/parts/notices.js";
import {refused} from "/views/failure.js";

export const carryView = {
  async load({parts}, {signal}) {
    const variant = `${parts.formula}/${parts.variant}`;
    const [sheet, first] = await Promise.all([
      api.sheet(variant, signal),
      look(variant, {}, signal),
    ]);
    return {
      variant,
      name: sheet.name,
      goal: sheet.goal,
      answer: first,
      conflicts: first.conflicts,
      choices: {},
      note: `Carry over ${first.from.address}`,
      failure: null,
      asked: false,
      busy: false,
    };
  },

  title: ({name, answer}) => `Carry over into ${answer.revision.variant}, ${name}`,

  draw: (data, place, tools) => html`<div class="page narrow carry">
    <h1>Carry over into ${data.answer.revision.variant}</h1>
    <p class="sub">${data.name}</p>
    ${data.failure
      ? html`<div class="refused" role="alert">${refused(data.failure)}</div>`
      : nothing}
    ${data.answer.outcome === "nothing" ? nothingToCarry(data) : preview(data, tools)}
  </div>`,
};

function look(variant, choices, signal) {
  return order("carry/preview", {variant, choices}, signal);
}

function nothingToCarry({answer}) {
  return html`<p class="say">
      ${short(answer.revision.address)} holds everything of the main line’s
      ${short(answer.from.address)} already.
    </p>
    ${back(answer)}`;
}

function back({revision}) {
  return html`<p>
    <a href=${formulaPage(revision.formula, {line: revision.variant})}
      >Timeline of ${revision.variant}</a>
  </p>`;
}

function preview(data, tools) {
  const {answer, conflicts, choices} = data;
  const variant = answer.revision.variant;
  const names = {ours: `The variant, ${variant}`, theirs: "The main line"};
  return html`<p class="say">
      What the main line improved up to
      <a href=${worksheetPage(answer.from.address)}>${short(answer.from.address)}</a> comes into
      <a href=${worksheetPage(answer.revision.address)}>${short(answer.revision.address)}</a>.
      Nothing is written until you carry it over.
    </p>
    ${conflicts.length > 0
      ? html`<section>
          <h2>To choose</h2>
          ${conflictChooser(conflicts, choices, (field, side) => choose(data, field, side, tools), {
            names,
          })}
        </section>`
      : nothing}
    <section>
      <h2>What changes in ${variant}</h2>
      ${changeList(answer.changes, "The formula stays as it is.")}
      ${openConflicts(conflicts, choices).length > 0
        ? html`<p class="quiet">Where a choice is open, the variant’s side is shown.</p>`
        : nothing}
    </section>
    ${answer.notes.length > 0
      ? html`<section class="caution">
          <h2>To mind</h2>
          <ul>
            ${answer.notes.map((words) => html`<li>${words}</li>`)}
          </ul>
          <p>Local food codes and licensed practice decide.</p>
        </section>`
      : nothing}
    ${goals(data)}
    <form
      novalidate
      @submit=${(event) => {
        event.preventDefault();
        carry(data, tools);
      }}
    >
      ${textField({
        id: "carry-note",
        label: "Note",
        hint: "What and why, in a line.",
        value: data.note,
        typed: (text) => {
          data.note = text;
          tools.redraw();
        },
      })}
      ${data.asked && openConflicts(conflicts, choices).length > 0
        ? html`<p class="problem" role="alert">Choose a side at each place first.</p>`
        : nothing}
      <p class="actions">
        <button type="submit" class="main" aria-disabled=${String(data.busy ?? false)}>Carry over</button>
        <a href=${formulaPage(answer.revision.formula, {line: variant})}>Back to the timeline</a>
      </p>
    </form>`;
}

function goals({answer, goal}) {
  if (!answer.goal) {
    return nothing;
  }
  return html`<section>
    <h2>Goal: ${answer.goal.name}</h2>
    <p>
      Now: ${goalMark(goal?.met ?? null)}. Afterwards: ${goalMark(answer.goal.met)}
    </p>
    <details>
      <summary>Rule by rule, afterwards</summary>
      ${ruleList(answer.goal.checks)}
    </details>
  </section>`;
}

async function choose(data, field, side, tools) {
  data.choices[field] = side;
  tools.redraw();
  data.asking?.abort();
  const mine = new AbortController();
  data.asking = mine;
  try {
    take(data, await look(data.variant, data.choices, mine.signal));
  } catch (thrown) {
    if (mine.signal.aborted) {
      return;
    }
    await lookAnew(data, api.expected(thrown));
  }
  tools.redraw();
}

// What was said with choices made names only what is still open; the places to choose stay.
function take(data, answer) {
  data.answer = answer;
}

/** After a refusal: what the notebook says now, with the choices that still have a place. */
async function lookAnew(data, failure) {
  data.failure = failure;
  if (failure.reason === "silent") {
    return;
  }
  const first = await look(data.variant, {});
  data.conflicts = first.conflicts;
  data.choices = choicesFor(first.conflicts, data.choices);
  data.answer =
    Object.keys(data.choices).length > 0 ? await look(data.variant, data.choices) : first;
}

async function carry(data, tools) {
  if (data.busy) {
    return;
  }
  data.asked = true;
  if (openConflicts(data.conflicts, data.choices).length > 0) {
    tools.redraw();
    document.querySelector(".conflict input:not(:checked)")?.focus();
    return;
  }
  Object.assign(data, {busy: true, failure: null});
  tools.redraw();
  try {
    const written = await order("carry", {
      variant: data.variant,
      choices: data.choices,
      note: data.note,
      seen_variant: data.answer.revision.commit,
      seen_main: data.answer.from.commit,
    });
    await done(data, written, tools);
  } catch (thrown) {
    await lookAnew(data, api.expected(thrown)).catch(() => {});
  } finally {
    data.busy = false;
  }
  tools.redraw();
}

async function done(data, written, tools) {
  const {revision, outcome} = written;
  const name = revisionName(revision);
  notice({
    text: outcome === "carried"
      ? [`Carried ${short(written.from.address)} over: ${name}, “${revision.note}”.`,
          ...written.notes].join(" ")
      : `Nothing was carried: ${name} holds everything already.`,
    link: [worksheetPage(revision.address), `Worksheet of ${name}`],
  });
  await tools.go(
    formulaPage(revision.formula, {
      line: revision.variant,
      from: data.answer.revision.address,
      to: revision.address,
    }),
  );
}
