// The foods that can stand in for another, and those that are not proposed, with the reason.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {count, figure, flowing} from "/format.js";
import {textField, tickField} from "/parts/fields.js";
import {goalMark} from "/parts/goal.js";

const FIRST = {same: 8, other: 4};
const COLUMNS = [
  ["liquid_ratio", "Liquid ratio"],
  ["dough_moisture_percent", "Moisture, %"],
  ["net_carbohydrate_g", "Net carb., g"],
  ["protein_g", "Protein, g"],
  ["fat_g", "Fat, g"],
  ["energy_kcal", "kcal"],
];
const REASONS = [
  ["forbidden", "Kept out by the goal"],
  ["unknown", "What is to be kept is not known of them"],
  ["nothing", "They hold nothing of what is to be kept"],
  ["other work", "Leavening, acid, salt and seasoning"],
  ["out of proportion", "Out of proportion"],
  ["unreadable", "Their file is damaged"],
];

/** The answers in two lists, with fields that narrow them. */
export function answerLists(sheet, narrow, {of, redraw}) {
  if (sheet.answers.length === 0) {
    return nothing;
  }
  const fitting = sheet.answers.filter((answer) => fits(answer, narrow));
  const same = fitting.filter((answer) => answer.same_kind);
  const other = fitting.filter((answer) => !answer.same_kind);
  const tell = {sheet, narrow, of, redraw};
  return html`<form class="replace-narrow" @submit=${(event) => event.preventDefault()}>
      ${textField({
        id: "replace-words",
        label: "Only foods named",
        type: "search",
        size: "medium",
        value: narrow.words,
        typed: (words) => {
          narrow.words = words;
          redraw();
        },
      })}
      ${tickField({
        id: "replace-own",
        label: "Only foods of the pantry",
        value: narrow.own,
        ticked: (own) => {
          narrow.own = own;
          redraw();
        },
      })}
      ${sheet.goal
        ? tickField({
            id: "replace-met",
            label: "Only where the goal is met",
            value: narrow.met,
            ticked: (met) => {
              narrow.met = met;
              redraw();
            },
          })
        : nothing}
    </form>
    <p class="unseen" role="status">${count(fitting.length, "food")} listed</p>
    ${fitting.length === 0 ? html`<p>No food in the list fits that.</p>` : nothing}
    ${list("same", "Of the same kind", same, tell)} ${list("other", "Of another kind", other, tell)}`;
}

function fits(answer, narrow) {
  const words = narrow.words.trim().toLowerCase();
  return (!narrow.own || answer.in_pantry)
    && (!narrow.met || answer.goal_met === true)
    && (words === "" || `${answer.name} ${answer.food}`.toLowerCase().includes(words));
}

function list(key, heading, answers, tell) {
  if (answers.length === 0) {
    return nothing;
  }
  const {sheet, narrow, redraw} = tell;
  const narrowed = narrow.words || narrow.own || narrow.met;
  const shown = narrow.all[key] || narrowed ? answers : answers.slice(0, FIRST[key]);
  const more = () => {
    narrow.all[key] = true;
    redraw();
  };
  return html`<section class="replace-list">
    <h2>${heading} <span class="quiet">${answers.length}</span></h2>
    <table>
      <thead>
        <tr>
          <th scope="col">Food</th>
          <th scope="col" class="number">Weigh</th>
          ${COLUMNS.map(
            ([, words]) => html`<th scope="col" class="number replace-figure">${words}</th>`,
          )}
          <th scope="col">${sheet.goal ? "Goal" : html`<span class="unseen">Goal</span>`}</th>
        </tr>
      </thead>
      <tbody>
        <tr class="replace-as-is">
          <th scope="row">${sheet.line.name}, as it is</th>
          <td class="number">${flowing(sheet.line.entered)}</td>
          ${figures(sheet.figures_now)}
          <td>${sheet.goal ? goalMark(sheet.goal.met) : nothing}</td>
        </tr>
      </tbody>
      ${shown.map((answer) => entry(answer, tell))}
    </table>
    ${shown.length < answers.length
      ? html`<button type="button" @click=${more}>
          Show ${answers.length - shown.length} more ${key === "same" ? "of the same kind" : ""}
        </button>`
      : nothing}
  </section>`;
}

function figures(set) {
  return COLUMNS.map(
    ([key]) => html`<td class="number replace-figure">${figure(set, key)}</td>`,
  );
}

function entry(answer, {sheet, of}) {
  return html`<tbody class="replace-entry">
    <tr>
      <th scope="row">
        <a href=${of(answer.food)}>${answer.name}</a>
        ${answer.in_pantry ? nothing : html`<span class="quiet">built-in table</span>`}
      </th>
      <td class="number replace-weigh">${flowing(answer.weigh_text)}</td>
      ${figures(answer.figures)}
      <td>${sheet.goal ? goalMark(answer.goal_met) : nothing}</td>
    </tr>
    <tr class="replace-words">
      <td colspan=${COLUMNS.length + 3}>
        <p>${flowing(answer.brief)}</p>
        ${brings(answer)}
      </td>
    </tr>
  </tbody>`;
}

/** The allergens that a food brings or takes away, and what else there is to mind with it. */
function brings(answer) {
  const lost = answer.allergens_lost.length > 0
    ? html`<p>Without ${answer.allergens_lost.join(", ")}.</p>`
    : nothing;
  const warn = [
    answer.allergens_gained.length > 0 ? `Brings ${answer.allergens_gained.join(", ")}.` : "",
    answer.allergens_known ? "" : "Its allergens are unknown.",
  ].filter(Boolean);
  return warn.length + answer.cautions.length === 0
    ? lost
    : html`<p class="problem"><b>${warn.join(" ")}</b> ${answer.cautions.join(" ")}</p>
        ${lost}`;
}

/** Foods that are not proposed; nothing is left out silently. */
export function setAsideList(sheet, open) {
  if (sheet.set_aside.length === 0) {
    return nothing;
  }
  return html`<section class="replace-aside">
    <h2>Not proposed <span class="quiet">${sheet.set_aside.length}</span></h2>
    ${REASONS.map(([why, heading]) => {
      const foods = sheet.set_aside.filter((each) => each.why === why);
      return foods.length === 0
        ? nothing
        : html`<details ?open=${open}>
            <summary>${heading}: ${count(foods.length, "food")}</summary>
            <ul>
              ${foods.map(
                (each) => html`<li>${each.name}: ${flowing(each.because)}</li>`,
              )}
            </ul>
          </details>`;
    })}
  </section>`;
}
