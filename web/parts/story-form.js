// What a story says around its steps, and the figures whose way it draws.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {choiceField, textArea, textField, tickField} from "/parts/fields.js";

const MOST_FIGURES = 6;

/** Title, teller, opening, closing; change(plan => …, typed) notes a change of the plan. */
export function storyText(data, change) {
  const {plan, story} = data;
  const type = (key) => (value) =>
    change((each) => {
      each[key] = value;
    }, true);
  return html`${textField({
      id: "story-title",
      label: "Title",
      value: plan.title,
      placeholder: story.name,
      typed: type("title"),
    })}
    ${textField({
      id: "story-by",
      label: "Told by",
      hint: "Left empty, nobody is named.",
      value: plan.by,
      typed: type("by"),
    })}
    ${textArea({
      id: "story-opening",
      label: "Opening",
      hint: "Why this formula, and for whom.",
      rows: 3,
      value: plan.opening,
      typed: type("opening"),
    })}
    ${textArea({
      id: "story-closing",
      label: "Closing",
      hint: "What you would say at the end, before the formula.",
      rows: 3,
      value: plan.closing,
      typed: type("closing"),
    })}`;
}

/** The figures whose way is drawn. */
export function storyFigures(data, change) {
  const {plan, story} = data;
  const shown = story.arcs.map((arc) => arc.figure);
  const chosen = plan.figures.length > 0 ? plan.figures : shown;
  const label = (key) => story.figures.find((each) => each.key === key)?.label ?? key;
  const set = (next) =>
    change((each) => {
      each.figures = next;
    });
  const free = story.figures.filter((each) => !chosen.includes(each.key));
  return html`<fieldset class="form-part story-figures">
    <legend>Figures whose way is drawn</legend>
    ${chosen.map((key) =>
      tickField({
        id: `story-figure-${key}`,
        label: label(key),
        value: true,
        ticked: () => set(chosen.filter((each) => each !== key)),
      }),
    )}
    ${chosen.length < MOST_FIGURES
      ? choiceField({
          id: "story-figure-more",
          label: "Add a figure",
          value: "",
          options: [
            ["", "Choose…"],
            ...free.map((each) => [each.key, `${each.label}, ${each.group}`]),
          ],
          chosen: (key) => key && set([...chosen, key]),
        })
      : nothing}
    ${plan.figures.length > 0
      ? html`<button type="button" class="plain" @click=${() => set([])}>
          The usual figures again
        </button>`
      : nothing}
  </fieldset>`;
}
