// The goals of the notebook, and how the formulas stand that state them.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {print as printed} from "/address.js";
import {capital, count, flowing} from "/format.js";
import {goalMark} from "/parts/goal.js";
import {problemList} from "/views/failure.js";
import {lineAddress} from "/views/pantry.js";

export const goalsView = {
  async load(place, {signal}) {
    const [list, standings] = await Promise.all([api.goals(signal), api.goalStandings(signal)]);
    return {list, standings};
  },

  title: () => "Goals",

  draw({list, standings}) {
    return html`<div class="page goals">
      <div class="page-head">
        <div>
          <h1>Goals</h1>
          <p class="sub">What formulas are developed towards</p>
        </div>
        <p class="actions"><a class="button main" href="/new-goal">Add a goal</a></p>
      </div>
      ${list.goals.length === 0
        ? html`<p class="say">There is no goal in this notebook yet.</p>
            <p>
              A goal is a set of limits, such as at most 4 g net carbohydrate a piece and no egg. A
              formula that states it shows at every change whether it is met.
            </p>`
        : html`<ul class="goal-list">
            ${list.goals.map((goal) => entry(goal, standings[goal.goal]?.formulas ?? []))}
          </ul>`}
    </div>`;
  },
};

function entry(goal, formulas) {
  return html`<li>
    <div class="what">
      <h2><a href="/goals/${goal.goal}">${goal.name}</a></h2>
      ${goal.problems.length > 0 ? problemList(goal.problems) : nothing}
      <ul class="rule-words">
        ${goal.rules.map((rule) => html`<li>${capital(flowing(rule))}</li>`)}
      </ul>
    </div>
    <div class="who">
      ${goal.used_by.length === 0
        ? html`<p class="quiet">No formula states it yet.</p>`
        : html`<h3 class="unseen">${count(goal.used_by.length, "formula")}</h3>
            <ul class="plain-list">
              ${formulas.map(standing)}
            </ul>`}
    </div>
  </li>`;
}

/** One formula with how it stands. */
export function standing(each) {
  return html`<li class="goal-standing">
    ${goalMark(each.standing?.met ?? null)}
    <span>
      <a href=${lineAddress(printed(each))}>${each.name}</a>
      ${each.variant ? html`<span class="quiet">${each.variant}</span>` : nothing}
      ${each.problems.length > 0 ? problemList(each.problems) : nothing}
    </span>
  </li>`;
}
