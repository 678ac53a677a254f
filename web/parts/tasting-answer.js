// What a taster fills in: the odd one, the preferred one, an order, or scores; by touch or by keys.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";
import {textArea, textField} from "/parts/fields.js";

/** The nine categories of liking, as they are commonly worded. */
export const LIKING = [
  "Dislike extremely",
  "Dislike very much",
  "Dislike moderately",
  "Dislike slightly",
  "Neither like nor dislike",
  "Like slightly",
  "Like moderately",
  "Like very much",
  "Like extremely",
];

/** The five categories of just about right, from -2. */
export const RIGHT = [
  "Much too little",
  "Too little",
  "Just right",
  "Too much",
  "Much too much",
];

const NONE = "none";

/** An answer to be filled in, beginning with what was said already. */
export function answerOf(said, initials) {
  const scores = {};
  for (const each of said?.scores ?? []) {
    scores[each.code] = {liking: each.liking, attributes: {...each.attributes}};
  }
  return {
    choice: said?.choice ?? "",
    ranking: [...(said?.ranking ?? [])],
    scores,
    note: said?.note ?? "",
    initials: initials ?? "",
  };
}

/** What an order carries of it. */
export function carriedAnswer(answer) {
  return {
    choice: answer.choice || null,
    ranking: answer.ranking,
    scores: Object.entries(answer.scores).map(([code, score]) => ({code, ...score})),
    note: answer.note,
    initials: answer.initials,
  };
}

/** Whether enough is filled in to be sent. */
export function isComplete(sheet, answer) {
  switch (sheet.kind) {
    case "triangle":
    case "preference":
      return answer.choice !== "";
    case "ranking":
      return answer.ranking.length === sheet.codes.length;
    default:
      return Object.values(answer.scores).some(
        (score) => score.liking != null || Object.values(score.attributes).some((s) => s != null),
      );
  }
}

/** The fields; changed is called after each change. */
export function answerFields(sheet, answer, changed) {
  const set = (change) => {
    change();
    changed();
  };
  return html`<div class="tasting-answer">
    ${question(sheet, answer, set)}
    ${textArea({
      id: `note-${sheet.number}`,
      label: "Remarks",
      value: answer.note,
      rows: 2,
      typed: (text) => set(() => (answer.note = text)),
    })}
    ${textField({
      id: `initials-${sheet.number}`,
      label: "Initials",
      hint: "May be left out.",
      value: answer.initials,
      size: "short",
      typed: (text) => set(() => (answer.initials = text)),
    })}
  </div>`;
}

function question(sheet, answer, set) {
  switch (sheet.kind) {
    case "triangle":
      return picks(sheet, answer, set, "The odd sample; guess if you must", []);
    case "preference":
      return picks(sheet, answer, set, "The sample that you prefer", [[NONE, "No preference"]]);
    case "ranking":
      return ranking(sheet, answer, set);
    default:
      return sheet.codes.map((code) => scored(sheet, answer, code, set));
  }
}

function picks(sheet, answer, set, legend, more) {
  const options = [...sheet.codes.map((code) => [code, code]), ...more];
  return html`<fieldset class="tasting-picks">
    <legend>${legend}</legend>
    ${options.map(([value, words]) =>
      radio({
        name: `choice-${sheet.number}`,
        value,
        label: html`<span class=${value === NONE ? nothing : "tasting-code"}>${words}</span>`,
        checked: answer.choice === value,
        chosen: () => set(() => (answer.choice = value)),
      }),
    )}
  </fieldset>`;
}

function radio({name, value, label, checked, chosen}) {
  return html`<label class="tasting-radio">
    <input type="radio" name=${name} value=${value} .checked=${live(checked)} @change=${chosen} />
    ${label}
  </label>`;
}

function ranking(sheet, answer, set) {
  const place = (code) => answer.ranking.indexOf(code) + 1;
  const toggle = (code) =>
    set(() => {
      const at = answer.ranking.indexOf(code);
      if (at < 0) {
        answer.ranking.push(code);
      } else {
        answer.ranking.splice(at);
      }
    });
  return html`<fieldset class="tasting-picks">
    <legend>Choose the samples in order, the one you like best first</legend>
    ${sheet.codes.map(
      (code) => html`<button
        type="button"
        class="tasting-rank"
        aria-pressed=${place(code) > 0 ? "true" : "false"}
        @click=${() => toggle(code)}
      >
        <span class="tasting-code">${code}</span>
        <span>${place(code) > 0 ? `rank ${place(code)}` : "not ranked yet"}</span>
      </button>`,
    )}
    <p class="hint">Choose a sample again to take it and those after it back.</p>
  </fieldset>`;
}

function scored(sheet, answer, code, set) {
  const score = answer.scores[code] ?? {liking: null, attributes: {}};
  const put = (change) =>
    set(() => {
      change(score);
      answer.scores[code] = score;
    });
  const half = score.liking != null && !Number.isInteger(score.liking);
  return html`<section class="tasting-sample">
    <h2>Sample <span class="tasting-code">${code}</span></h2>
    <fieldset class="tasting-scale nine">
      <legend>How much do you like ${code}?</legend>
      ${half ? html`<p class="hint">Entered as ${score.liking}.</p>` : nothing}
      ${LIKING.map((words, at) =>
        radio({
          name: `liking-${sheet.number}-${code}`,
          value: at + 1,
          label: html`<span class="tasting-point"
            ><strong>${at + 1}</strong> <span>${words}</span></span
          >`,
          checked: score.liking === at + 1,
          chosen: () => put((each) => (each.liking = at + 1)),
        }),
      )}
    </fieldset>
    ${sheet.attributes.map(
      (name) => html`<fieldset class="tasting-scale five">
        <legend>${name}</legend>
        ${RIGHT.map((words, at) =>
          radio({
            name: `${name}-${sheet.number}-${code}`,
            value: at - 2,
            label: html`<span class="tasting-point"><span>${words}</span></span>`,
            checked: score.attributes[name] === at - 2,
            chosen: () => put((each) => (each.attributes[name] = at - 2)),
          }),
        )}
      </fieldset>`,
    )}
  </section>`;
}
