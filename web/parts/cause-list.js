// The common causes of a finding: first those whose figure moved with it, the others folded away.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {capital, count} from "/format.js";

/** The causes; begin orders a draft. */
export function causeList(sheet, begin) {
  const {causes} = sheet.inquiry;
  if (causes.length === 0) {
    return nothing;
  }
  const likely = causes.filter((each) => each.standing === "likely");
  const others = causes.filter((each) => each.standing !== "likely");
  const sources = [...new Set(causes.map((each) => each.source))];
  return html`<section class="causes">
    <h2>${likely.length > 0 ? "Likely causes, by your own figures" : "Common causes"}</h2>
    ${likely.length === 0 ? list(others, sheet, begin) : list(likely, sheet, begin)}
    ${likely.length > 0 && others.length > 0
      ? html`<details class="cause-more">
          <summary>
            ${capital(count(others.length, "more common cause"))}, whose figures did not move with
            it
          </summary>
          ${list(others, sheet, begin)}
        </details>`
      : nothing}
    <p class="quiet">Causes, their order and first steps: ${sources.join("; ")}.</p>
  </section>`;
}

function list(causes, sheet, begin) {
  return html`<ol class="cause-list">
    ${causes.map(
      (each) => html`<li value=${each.number} class="cause ${each.standing}">
        <h3>${capital(each.cause)}</h3>
        <p class="cause-figure">
          <span class="cause-mark ${each.standing === "likely" ? "present" : "gone"}"
            aria-hidden="true"
          ></span>
          ${capital(each.figure)} <span class="n">(${each.standing_text})</span>
        </p>
        ${each.details.length > 0
          ? html`<ul class="cause-evidence">
              ${each.details.map((words) => html`<li>${words}</li>`)}
            </ul>`
          : nothing}
        ${each.standing === "absent" ? nothing : html`<p>${each.advice}</p>`}
        ${act(each, sheet, begin)}
      </li>`,
    )}
  </ol>`;
}

function act(cause, {address, inquiry}, begin) {
  if (cause.standing === "absent") {
    return nothing;
  }
  if (cause.wish) {
    const query = new URLSearchParams({want: cause.wish});
    return html`<p>
      <a href=${`/levers/${address}?${query}`} aria-label="Find what to change for ${cause.wish}"
        >Find what to change</a
      >
    </p>`;
  }
  return cause.draft
    ? html`<p>
        <button
          type="button"
          aria-label="Open a draft against: ${cause.cause}"
          @click=${() =>
            begin("causes/remedy", {finding: inquiry.finding, cause: cause.number})}
        >
          Open a draft with it
        </button>
      </p>`
    : nothing;
}
