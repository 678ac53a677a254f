// Which figures would move if what is typed were saved: hollow before, filled after.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {formulaPage, print as printed} from "/address.js";
import {capital, count, flowing} from "/format.js";
import {plot} from "/parts/figures.js";
import {goalMark, goalWords} from "/parts/goal.js";
import {problemList} from "/views/failure.js";

const NEVER = "Numbered revisions never move: they keep the figures of their own day.";

/** What would move. words: {none, still}, for when nobody rests on it and when nothing moves. */
export function figureMoves(moves, words) {
  if (!moves) {
    return html`<p class="quiet">Working it out…</p>`;
  }
  return html`<p class="moves-say">${sentence(moves, words)}</p>
    ${moves.formulas.map(lineMoves)}
    ${moves.formulas.length > 0 && moves.same.length > 0
      ? html`<p class="quiet">Nothing moves in ${moves.same.join(", ")}.</p>`
      : nothing}
    ${moves.apart.length > 0
      ? html`<p class="quiet">
          ${moves.apart.join(", ")} ${moves.apart.length === 1 ? "keeps" : "keep"} a copy of
          ${moves.apart.length === 1 ? "its" : "their"} own, which would stay as it is.
        </p>`
      : nothing}
    ${words.asNew ? nothing : html`<p class="quiet">${NEVER}</p>`}`;
}

/** The same in a few words, leading to the whole; nothing when nothing moves. */
export function movesInShort(moves, words = {}) {
  return moves && moves.formulas.length > 0
    ? html`<a class="in-short" href="#would">${sentence(moves, words)}</a>`
    : nothing;
}

function sentence(moves, words) {
  const changed = (change) => moves.formulas.filter((each) => each.goal?.change === change).length;
  const missed = changed("newly missed");
  const met = changed("newly met");
  if (moves.formulas.length === 0) {
    return moves.same.length > 0 || moves.apart.length > 0 ? words.still : words.none;
  }
  if (words.asNew) {
    return html`<b>${count(changed("met"), "formula")} would meet it</b>, ${changed("missed")} would
      miss it${changed("not known") > 0 ? `, of ${changed("not known")} it is not known` : ""}.`;
  }
  const goals = [
    missed > 0 ? `${count(missed, "goal")} newly missed` : "",
    met > 0 ? `${count(met, "goal")} newly met` : "",
  ].filter(Boolean);
  const many = count(moves.formulas.length, "formula");
  return html`<b>${many} would move</b>${goals.length > 0 ? `, ${goals.join(", ")}` : ""}.`;
}

function lineMoves(each) {
  const first = each.figures.filter((figure) => figure.key);
  const rest = each.figures.filter((figure) => !figure.key);
  const shown = first.length > 0 ? first : rest;
  const more = first.length > 0 ? rest : [];
  return html`<section class="line-moves">
    <h3>
      <a href=${formulaPage(each.formula, {line: each.variant})}>${each.name}</a>
      ${each.variant ? html`<span class="quiet">${each.variant}</span>` : nothing}
    </h3>
    ${each.problems.length > 0 ? problemList(each.problems) : nothing}
    ${goalMove(each.goal)} ${allergenMoves(each)}
    ${shown.length > 0 ? movesTable(shown, each) : nothing}
    ${more.length > 0
      ? html`<details>
          <summary>${count(more.length, "more figure")}</summary>
          ${movesTable(more, each)}
        </details>`
      : nothing}
  </section>`;
}

function goalMove(goal) {
  if (!goal) {
    return html`<p class="quiet">It has no goal.</p>`;
  }
  const outcome =
    goal.change === "same"
      ? html`${goalMark(goal.to)}${goal.rules.length > 0 ? " as before" : ", as before"}`
      : goalMark(goal.to, html`<b>${goal.change}</b>`);
  return html`<p class="goal-move">${goal.name}: ${outcome}</p>
    ${goal.rules.length > 0
      ? html`<ul class="rules">
          ${goal.rules.map(ruleMove)}
        </ul>`
      : nothing}`;
}

function ruleMove(rule) {
  if (rule.gone) {
    return html`<li class="quiet">No longer asked: ${flowing(rule.rule)}</li>`;
  }
  return html`<li>
    ${goalMark(rule.to, html`<b>${goalWords(rule.to)}</b>`)}
    ${flowing(rule.rule + (rule.value_text ? `: ${rule.value_text}` : ""))}
    ${rule.because.length > 0
      ? html`<span class="remark">${rule.because.join(", ")}</span>`
      : nothing}
  </li>`;
}

function allergenMoves(each) {
  const parts = [
    ["would newly contain", each.allergens_gained, true],
    ["would no longer contain", each.allergens_lost, false],
    ["allergens no longer known in", each.now_unknown_in, true],
    ["allergens newly known in", each.now_known_in, false],
  ].filter(([, list]) => list.length > 0);
  return parts.map(
    ([words, list, warn]) =>
      html`<p class=${warn ? "problem" : ""}><b>${capital(words)} ${list.join(", ")}</b></p>`,
  );
}

function movesTable(figures, each) {
  return html`<table class="figure-table">
    <caption class="unseen">
      Figures of ${printed(each)}, before and after
    </caption>
    <thead class="unseen">
      <tr>
        <th scope="col">Figure</th>
        <th scope="col">Chart</th>
        <th scope="col">Before and after</th>
        <th scope="col">Change</th>
      </tr>
    </thead>
    <tbody>
      ${figures.map(
        (figure) => html`<tr>
          <th scope="row">${figure.label}<span class="quiet"> ${figure.per}</span></th>
          <td class="plot">${plot(figure, figure.limit)}</td>
          <td class="values">${flowing(figure.text)}</td>
          <td class="number change">${figure.delta_text}</td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}
