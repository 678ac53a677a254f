// What could not be shown, why, and what to do.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {formulaPage, parse} from "/address.js";
import {Failure} from "/api.js";

export const failureView = {
  title: (failure) => (failure.reason === "not_found" ? "Not found" : "Not shown"),

  draw(thrown, place, {again}) {
    const failure =
      thrown instanceof Failure
        ? thrown
        : {message: "The page could not be drawn.", where: "", hint: String(thrown), problems: []};
    const formula = place.parts.formula ? null : parse(place.parts.address ?? "").formula;
    return html`<div class="page narrow">
      <h1>${failure.reason === "not_found" ? "Not found" : "This cannot be shown"}</h1>
      ${refused(failure)}
      <p class="actions">
        <button type="button" @click=${again}>Try again</button>
        ${formula ? html`<a href=${formulaPage(formula)}>Timeline of ${formula}</a>` : nothing}
        <a href="/">All formulas</a>
      </p>
    </div>`;
  },
};

/** The sentence of a failure, where it is, and what to do. */
export function refused(failure) {
  if (failure.problems.length > 0) {
    return problemList(failure.problems);
  }
  return html`<p class="say" role="status">${failure.message}</p>
    ${failure.where ? html`<p class="where"><code>${failure.where}</code></p>` : nothing}
    ${failure.hint ? html`<p>${failure.hint}</p>` : nothing}`;
}

/** What is wrong with a file, place by place. */
export function problemList(problems) {
  return html`<ul class="problems">
    ${problems.map(
      (each) => html`<li>
        <code>${each.where}</code>
        <span>${each.message} ${each.hint}</span>
      </li>`,
    )}
  </ul>`;
}
