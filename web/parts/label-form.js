// A package label, field by field in the order in which it is printed.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {choiceField, textField, tickField} from "/parts/fields.js";
import {problemOf, typed} from "/parts/tried-form.js";

const PANELS = {
  EU: ["European Union", "Carbohydrate is printed without fibre; salt is sodium × 2.5."],
  US: ["United States", "Total carbohydrate includes fibre."],
};

/** The fields of a label. */
export function labelFields(form, choices, page) {
  const {label} = form.state;
  const rows = choices.labels.find((each) => each.panel === label.panel).rows;
  const per = label.serving.trim() ? "a serving" : "100 g";
  return html`<div class="field-pair">
      ${choiceField({
        id: "panel",
        label: "Label as in",
        value: label.panel,
        options: choices.labels.map(({panel}) => [panel, PANELS[panel]?.[0] ?? panel]),
        hint: PANELS[label.panel]?.[1],
        chosen: (panel) => {
          label.panel = panel;
          typed(form, "panel");
        },
      })}
      ${textField({
        id: "serving_g",
        label: "Figures are for",
        value: label.serving,
        hint: "Leave it empty for 100 g, or write what a serving weighs: 30 g.",
        problem: problemOf(form, "serving_g", "serving_g"),
        typed: (text) => {
          label.serving = text;
          typed(form, "serving_g");
        },
      })}
    </div>
    <div class="label-panel">
      <p class="per"><b>Printed for ${per}</b> <span class="quiet">empty stays unknown</span></p>
      ${rows.map((row) => labelRow(form, row))}
      ${lineProblem(form, "label")} ${lineProblem(form, "")}
    </div>
    ${page
      ? tickField({
          id: "keep-unstated",
          label: "Keep figures that the label does not state (water, ash …) as they are",
          value: label.keep_unstated,
          ticked: (on) => {
            label.keep_unstated = on;
            typed(form, "keep_unstated");
          },
        })
      : nothing}`;
}

function labelRow(form, row) {
  const {figures} = form.state.label;
  return html`<div class="label-row ${row.part ? "part-of" : ""}">
    ${textField({
      id: row.figure,
      label: row.words,
      unit: row.unit,
      size: "short",
      inputmode: "decimal",
      value: figures[row.figure],
      problem: problemOf(form, row.figure, row.figure),
      typed: (text) => {
        figures[row.figure] = text;
        typed(form, row.figure);
      },
    })}
  </div>`;
}

/** A problem of several figures together, once something was typed. */
function lineProblem(form, field) {
  const found = form.tried?.problems.find((each) => each.field === field);
  const begun = form.attempted || Object.values(form.state.label.figures).some(Boolean);
  return found && begun
    ? html`<p class="problem">${found.message} ${found.hint}</p>`
    : nothing;
}
