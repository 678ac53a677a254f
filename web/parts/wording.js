// What differs beside weights and figures: oven, yield, goal, method, texts.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {capital, count} from "/format.js";
import {goalMark} from "/parts/goal.js";

/** Rules of the goal, those whose standing changed first. */
export function goalChanges(goal) {
  if (!goal || goal.rules.length === 0) {
    return nothing;
  }
  const still = goal.rules.filter((rule) => rule.change.startsWith("still"));
  const moved = goal.rules.filter((rule) => !rule.change.startsWith("still"));
  const other = goal.from_goal !== goal.to_goal;
  return html`<section class="goal-changes">
    <h2>Goal</h2>
    <p class="quiet">
      ${other
        ? html`${goal.from_goal ?? "No goal"} → ${goal.to_goal ?? "no goal"}`
        : goal.to_goal}
    </p>
    <ul>
      ${moved.map(rule)}
    </ul>
    ${still.length > 0 && moved.length > 0
      ? html`<details>
          <summary>${count(still.length, "rule")} as before</summary>
          <ul>
            ${still.map(rule)}
          </ul>
        </details>`
      : html`<ul>
          ${still.map(rule)}
        </ul>`}
  </section>`;
}

function rule(each) {
  const met = each.change === "only before" ? each.from_met : each.to_met;
  return html`<li>${goalMark(met, html`<b>${each.change}</b>`)} ${each.rule}</li>`;
}

/** Fields that differ, before and now. */
export function fieldTable(title, fields, from, to) {
  if (fields.length === 0) {
    return nothing;
  }
  return html`<section class="fields">
    <h2>${title}</h2>
    <table>
      <thead>
        <tr>
          <th scope="col"><span class="unseen">Field</span></th>
          <th scope="col">${from}</th>
          <th scope="col">${to}</th>
        </tr>
      </thead>
      <tbody>
        ${fields.map(
          (each) => html`<tr>
            <th scope="row">${capital(each.field)}</th>
            <td class="before">${each.from ?? html`<span class="quiet">not stated</span>`}</td>
            <td class="after">${each.to ?? html`<span class="quiet">not stated</span>`}</td>
          </tr>`,
        )}
      </tbody>
    </table>
  </section>`;
}

/** The method word by word: what left is struck through, what came is underlined. */
export function methodDiff(steps) {
  if (steps.every((step) => step.change === "same")) {
    return nothing;
  }
  const same = steps.filter((step) => step.change === "same").length;
  return html`<section class="method">
    <h2>Method</h2>
    <ol class="steps">
      ${steps.filter((step) => step.change !== "same").map(stepItem)}
    </ol>
    ${same > 0 ? html`<p class="quiet">${count(same, "step")} as before.</p>` : nothing}
  </section>`;
}

function stepItem(step) {
  return html`<li>
    <span class="step-number">${stepNumber(step)}</span>
    <p>${step.runs.map(run)}</p>
  </li>`;
}

function stepNumber({change, from_number: from, to_number: to}) {
  if (change === "added") {
    return `new step ${to}`;
  }
  if (change === "removed") {
    return `step ${from}, left out`;
  }
  return from === to ? `step ${to}` : `step ${to}, was ${from}`;
}

function run({change, text}) {
  switch (change) {
    case "added":
      return html`<ins>${unseen("(new: ")}${text}${unseen(")")}</ins>`;
    case "removed":
      return html`<del>${unseen("(left out: ")}${text}${unseen(")")}</del>`;
    default:
      return text;
  }
}

// For those who listen, since lines through and under words are not read out.
function unseen(words) {
  return html`<span class="unseen">${words}</span>`;
}
