// The notebook's own settings, and which figures a change of them would move.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {capital, count} from "/format.js";
import {figureMoves} from "/parts/figure-moves.js";
import {choiceField, textField, tickField} from "/parts/fields.js";
import {notebookChanged} from "/parts/header.js";
import {shareFields, sharesOf} from "/parts/limits.js";
import {
  drawAgain,
  formActions,
  formState,
  leaveForm,
  problemOf,
  triedForm,
  typed,
} from "/parts/tried-form.js";

const ENERGY = {
  foods: "The foods’ own values",
  "US factors": "Factors of the United States (21 CFR 101.9)",
  "EU factors": "Factors of the European Union (1169/2011, Annex XIV)",
};

export const notebookView = {
  async load(place, {before, signal}) {
    const [page, choices] = await Promise.all([api.notebook(signal), api.kitchen(signal)]);
    before?.form && leaveForm(before.form);
    return {page, choices};
  },

  title: () => "Notebook",

  draw(data, place, tools) {
    data.form ??= begin(data, tools);
    const {form, page, choices} = data;
    return html`<div class="page notebook-page">
      <h1>${page.title}</h1>
      <p class="sub">
        ${count(page.formulas, "formula")}, ${count(page.variants, "variant")},
        ${count(page.foods, "food")}, ${count(page.goals, "goal")}, in
        <code>${page.folder}</code>
      </p>
      <p><a href="/take-in">Take in a formula from a bundle</a></p>
      ${formState(form, "the settings")}
      <div class="columns kitchen-columns">
        <div @focusout=${() => drawAgain(form)}>
          ${fields(form, page, choices)}
          ${formActions(form, "Save settings", nothing)}
        </div>
        <aside class="would" id="would" aria-label="What would move" aria-live="polite">
          <section>
            <h2>What would move</h2>
            ${form.tried && form.tried.changed.length > 0
              ? html`<p class="quiet">Changed: ${form.tried.changed.join(", ")}.</p>`
              : nothing}
            ${figureMoves(form.tried?.moves, {
              none: "No figure would move by what is chosen so far.",
              still: "No figure would move by what is chosen so far.",
            })}
          </section>
        </aside>
      </div>
    </div>`;
  },

  left: (data) => data.form && leaveForm(data.form),
};

function begin({page, choices}, tools) {
  return triedForm({
    folder: choices.folder,
    name: "notebook",
    fresh: {
      seen: page.seen,
      title: page.title,
      temperature_unit: page.temperature_unit,
      mass_unit: page.mass_unit,
      energy_rule: page.energy_rule,
      subtract: sharesOf(page.subtract),
      variants: true,
    },
    carried: (state) => state,
    orders: ["notebook/try", "notebook/save"],
    saved: () => {
      notebookChanged();
      return tools.again();
    },
    tools,
  });
}

function fields(form, page, choices) {
  const {state} = form;
  const changed = (name) => (value) => {
    state[name] = value;
    typed(form, name);
  };
  const unit = (name, label, options) =>
    choiceField({id: name, label, value: state[name], options, chosen: changed(name)});
  return html`${textField({
      id: "title",
      label: "Title",
      value: state.title,
      problem: problemOf(form, "title", "title"),
      typed: changed("title"),
    })}
    <fieldset class="form-part">
      <legend>Units that it is shown in</legend>
      <div class="field-pair">
        ${unit("temperature_unit", "Temperatures", [
          ["°C", "°C"],
          ["°F", "°F"],
        ])}
        ${unit("mass_unit", "Masses", [
          ["g", "Grams"],
          ["oz", "Ounces"],
        ])}
      </div>
      <p class="hint">For everybody. Every reader may choose others for their own browser.</p>
    </fieldset>
    <fieldset class="form-part">
      <legend>Energy</legend>
      ${choiceField({
        id: "energy_rule",
        label: "Worked out by",
        value: state.energy_rule,
        options: choices.energy_rules.map((rule) => [rule, ENERGY[rule] ?? rule]),
        chosen: changed("energy_rule"),
      })}
    </fieldset>
    <fieldset class="form-part">
      <legend>Net carbohydrate</legend>
      ${shareFields(
        form,
        state.subtract,
        html`${capital(form.tried?.net_carbohydrate_rule ?? page.net_carbohydrate_rule)}. It has no
        legal definition: common practice, no source. Whoever doses medicine by it should settle the
        counting with those who treat them.`,
      )}
    </fieldset>
    ${page.variants > 0
      ? tickField({
          id: "variants",
          label: "Change them too for variants whose settings say the same",
          value: state.variants,
          ticked: changed("variants"),
        })
      : nothing}`;
}
