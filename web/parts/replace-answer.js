// One food in the place of another: what to weigh, everything that moves, what to mind.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {capital, flowing} from "/format.js";
import {plot} from "/parts/figures.js";
import {goalMark, goalWords} from "/parts/goal.js";

/** All about one food; draft(answer) begins a draft with it. */
export function answerInFull(sheet, answer, {draft, busy}) {
  return html`<article class="replace-one">
    <h2>${capital(answer.name)}</h2>
    <p class="replace-weigh-large">
      <span class="side-mark to" aria-hidden="true"></span> Weigh <b>${flowing(answer.weigh_text)}</b>
    </p>
    <p class="say">${flowing(answer.sentence)}</p>
    <p class="quiet">
      ${flowing(answer.keeps_text)} Its figures: ${answer.source}${answer.in_pantry
        ? ""
        : "; it comes into the pantry when the revision is saved"}.
      ${answer.elsewhere_text ? flowing(answer.elsewhere_text) : nothing}
    </p>
    <p class="actions">
      <button type="button" class="main" ?disabled=${busy} @click=${() => draft(answer)}>
        Begin a draft with it
      </button>
      <span class="quiet">Its note: “${answer.note}”</span>
    </p>
    ${warnings(answer)}
    <div class="columns">
      <div>${moves(answer.moves[0], sheet.goal)}</div>
      <div>
        ${goal(sheet, answer)} ${allergens(answer)} ${cost(answer.cost)}
        ${answer.moves.slice(1).map(
          (each) => html`<details class="more">
            <summary>What moves in ${each.label}</summary>
            ${table(each, null)}
          </details>`,
        )}
      </div>
    </div>
  </article>`;
}

function warnings(answer) {
  const words = [...answer.structure, ...answer.cautions];
  return words.length === 0
    ? nothing
    : html`<section class="caution">
        <h3>What the figures do not show</h3>
        <ul>
          ${words.map((each) => html`<li>${flowing(each)}</li>`)}
        </ul>
      </section>`;
}

function moves(each, goal) {
  return html`<section>
    <h3>What moves: ${each.label}</h3>
    ${each.moves.length === 0 ? html`<p>Nothing.</p>` : table(each, goal)}
  </section>`;
}

function table(each, goal) {
  return html`<table class="figure-table replace-figures">
    <caption class="unseen">Figures of ${each.label}, before and after</caption>
    <thead class="unseen">
      <tr>
        <th scope="col">Figure</th>
        <th scope="col">Chart</th>
        <th scope="col">Before and after</th>
        <th scope="col">Change</th>
      </tr>
    </thead>
    <tbody>
      ${each.moves.map(
        (move) => html`<tr>
          <th scope="row">${capital(move.label)}</th>
          <td class="plot">${plot(move, limitOf(goal, move))}</td>
          <td class="values">${flowing(move.change_text)}</td>
          <td class="number change">${move.delta_text}</td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}

/** The goal's zone, on an axis of the same measure only. */
function limitOf(goal, move) {
  return goal?.checks.find(
    (check) => check.limit && check.figure === move.figure && check.per === move.per,
  )?.limit;
}

function goal(sheet, answer) {
  if (!sheet.goal) {
    return nothing;
  }
  return html`<section>
    <h3>Goal: ${sheet.goal.name}, ${goalMark(answer.goal_met)}</h3>
    <ul class="rules">
      ${answer.rules.map(
        (rule) => html`<li>
          ${goalMark(rule.met, html`<b>${goalWords(rule.met)}</b>`)}
          (${rule.met === rule.now ? "as now" : `now ${goalWords(rule.now)}`}):
          ${flowing(rule.rule + (rule.value_text ? `: ${rule.value_text}` : ""))}
          ${rule.because.length > 0
            ? html`<span class="remark">${rule.because.join(", ")}</span>`
            : nothing}
        </li>`,
      )}
    </ul>
  </section>`;
}

function allergens(answer) {
  return html`<section>
    <h3>Allergens</h3>
    <dl class="pairs">
      <div>
        <dt>Gained</dt>
        <dd>${words(answer.allergens_gained)}</dd>
      </div>
      <div>
        <dt>Lost</dt>
        <dd>${words(answer.allergens_lost)}</dd>
      </div>
    </dl>
    ${answer.allergens_known ? nothing : html`<p class="problem">Those of the food are unknown.</p>`}
  </section>`;
}

function words(list) {
  return list.length === 0 ? "none" : list.join(", ");
}

/** What both cost; nothing when no food has a price. */
export function cost({per_piece: piece, per_batch: batch, unpriced}) {
  const rows = [
    ...piece.map((each) => ["A piece", each]),
    ...batch.map((each) => ["A batch", each]),
  ];
  return rows.length === 0
    ? nothing
    : html`<section>
        <h3>Cost</h3>
        <dl class="pairs">
          ${rows.map(
            ([name, each]) => html`<div>
              <dt>${name}</dt>
              <dd>
                ${flowing(
                  each.from_text === each.to_text
                    ? each.to_text
                    : `${each.from_text} → ${each.to_text}`,
                )}${each.delta === null ? ", change unknown" : `, ${each.delta_text}`}
              </dd>
            </div>`,
          )}
        </dl>
        ${unpriced.length > 0
          ? html`<p class="quiet">Without a price: ${unpriced.join(", ")}.</p>`
          : nothing}
      </section>`;
}
