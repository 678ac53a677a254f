// The revisions of a line of history, of which a story tells some; what is said of each.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {count} from "/format.js";
import {choiceField, textArea, textField, tickField} from "/parts/fields.js";

/**
 * Draws them. data holds the story, the plan and whether all revisions are listed; change notes a
 * change of the plan: change(plan => …, typed).
 */
export function storySteps(data, change) {
  const {plan, story} = data;
  const told = plan.steps.length > 0 ? plan.steps.map((step) => step.revision) : proposed(story);
  const listed = story.revisions.filter(
    (each) => data.all || each.bakes > 0 || told.includes(each.revision),
  );
  const hidden = story.revisions.length - listed.length;
  return html`<fieldset class="form-part story-steps">
    <legend>Revisions it tells of</legend>
    <p class="hint">
      ${plan.steps.length > 0
        ? `${count(told.length, "revision")} chosen.`
        : "Proposed: every bake that taught something."}
      ${plan.steps.length > 0
        ? html`<button
            type="button"
            class="plain"
            @click=${() =>
              change((each) => {
                each.steps = [];
              })}
          >
            As proposed
          </button>`
        : nothing}
    </p>
    <ol>
      ${listed.map((each) => row(each, told.includes(each.revision), data, change))}
    </ol>
    ${hidden > 0
      ? html`<button
          type="button"
          class="plain"
          @click=${() => {
            data.all = true;
            change(() => {});
          }}
        >
          List ${count(hidden, "revision")} that ${hidden === 1 ? "was" : "were"} not baked
        </button>`
      : nothing}
  </fieldset>`;
}

function proposed(story) {
  return story.steps.map((step) => step.revision);
}

function row(candidate, told, data, change) {
  const {revision, date, note, taught, bakes, readable} = candidate;
  const reason = !readable
    ? "cannot be worked out: a file is damaged"
    : taught ?? (bakes > 0 ? "baked, nothing new" : "not baked");
  return html`<li class=${told ? "told" : nothing}>
    ${readable
      ? tickField({
          id: `story-tell-${revision}`,
          label: html`<b>${revision}</b> ${note} <span class="quiet">${date} · ${reason}</span>`,
          value: told,
          ticked: (on) => change((plan) => choose(plan, data.story, revision, on)),
        })
      : html`<span><b>${revision}</b> ${note} <span class="quiet">${reason}</span></span>`}
    ${told ? words(candidate, data, change) : nothing}
  </li>`;
}

function choose(plan, story, revision, on) {
  const steps = chosen(plan, story).filter((step) => step.revision !== revision);
  plan.steps = on
    ? [...steps, blank(revision)].sort((one, other) => one.revision - other.revision)
    : steps;
}

// Once something is chosen, what was proposed is chosen too.
function chosen(plan, story) {
  return plan.steps.length > 0 ? plan.steps : proposed(story).map(blank);
}

function blank(revision) {
  return {revision, heading: "", words: "", photo: "", figure: ""};
}

function words({revision, note}, data, change) {
  const step = data.plan.steps.find((each) => each.revision === revision) ?? blank(revision);
  const seen = data.story.steps.find((each) => each.revision === revision);
  const set = (key, typed) => (value) =>
    change((plan) => {
      plan.steps = chosen(plan, data.story);
      plan.steps.find((each) => each.revision === revision)[key] = value;
    }, typed);
  const said = step.heading || step.words || step.photo || step.figure;
  return html`<details class="story-words" ?open=${Boolean(said)}>
    <summary>Words, photo and figure of ${revision}</summary>
    ${textField({
      id: `story-heading-${revision}`,
      label: "Heading",
      value: step.heading,
      placeholder: note,
      typed: set("heading", true),
    })}
    ${textArea({
      id: `story-words-${revision}`,
      label: "Your words",
      rows: 3,
      value: step.words,
      typed: set("words", true),
    })}
    ${choiceField({
      id: `story-photo-${revision}`,
      label: "Photo",
      value: step.photo,
      options: [
        ["", "One of its best-liked bake"],
        ["none", "No photo"],
        ...data.story.photos.map((each) => [
          each.file,
          `${each.file.split("/").pop()}: ${each.caption}`,
        ]),
      ],
      chosen: set("photo"),
    })}
    ${seen && seen.moves.length > 0
      ? choiceField({
          id: `story-figure-of-${revision}`,
          label: "Figure that moved",
          value: step.figure,
          options: [
            ["", "The most telling one"],
            ...seen.moves.map((move) => [
              move.figure,
              `${move.label}: ${move.from_text} → ${move.to_text}`,
            ]),
          ],
          chosen: set("figure"),
        })
      : nothing}
  </details>`;
}
