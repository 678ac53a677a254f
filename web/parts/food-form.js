// The form of a food: what it is, its figures, allergens, household weights, price.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";
import {capital} from "/format.js";
import {choiceField, textField, tickField} from "/parts/fields.js";
import {labelFields} from "/parts/label-form.js";
import {drawAgain, otherProblems, problemOf, typed} from "/parts/tried-form.js";

const PRICE = /^(\S+) (\S+) for (.+?)(?: on (\S+))?$/;
const WEIGHT = "weight.";

/** What the form shows before anything is typed; page is null for a food that is new. */
export function freshFood(page, mode, name = "") {
  const facts = page?.facts ?? {};
  const [, amount = "", currency = "", buys = "", date = ""] = PRICE.exec(facts.price ?? "") ?? [];
  const isWeight = ([fact]) => fact.startsWith(WEIGHT);
  return {
    seen: page?.seen ?? null,
    food: page?.food.food ?? "",
    line: page?.line ?? null,
    mode,
    facts: page
      ? Object.fromEntries(
          Object.entries(facts).filter((each) => !isWeight(each) && each[0] !== "source"),
        )
      : {name, kind: "", density: "", polyol: ""},
    weights: Object.entries(facts)
      .filter(isWeight)
      .map(([fact, grams]) => ({measure: fact.slice(WEIGHT.length), grams})),
    label: {panel: "EU", serving: "", figures: {}, keep_unstated: false},
    allergens_known: Boolean(facts.allergens),
    allergens: facts.allergens && facts.allergens !== "none" ? facts.allergens.split(", ") : [],
    price: {amount, currency, buys, date},
    variants: true,
  };
}

/** The order that the form's state makes. */
export function carriedFood(state, nutrients) {
  const {amount, currency, buys, date} = state.price;
  const priced = [amount, currency, buys, date].some((text) => text.trim());
  const price = priced
    ? `${amount} ${currency} for ${buys}${date ? ` on ${date}` : ""}`.trim()
    : "";
  const known = state.allergens.length > 0 ? state.allergens.join(", ") : "none";
  const facts = {...state.facts, price, allergens: state.allergens_known ? known : ""};
  if (state.mode === "label") {
    nutrients.forEach(({figure}) => delete facts[figure]);
  }
  return {
    food: state.food,
    line: state.line,
    seen: state.seen,
    facts,
    weights: state.weights,
    label: state.mode === "label" ? state.label : null,
    variants: state.variants,
  };
}

/** The fields. choices: what can be chosen; page: the food as it is, or null. */
export function foodFields(form, choices, page) {
  const {state} = form;
  const fact = (name, more) =>
    textField({
      id: name,
      value: state.facts[name],
      problem: problemOf(form, name, name),
      typed: (text) => {
        state.facts[name] = text;
        typed(form, name);
      },
      ...more,
    });
  return html`<div class="food-form" @focusout=${() => drawAgain(form)}>
    ${otherProblems(form, drawnFields(form, choices))}
    <div class="field-pair">
      ${fact("name", {label: "Name", required: true})}
      ${choiceField({
        id: "kind",
        label: "Part it plays in a dough",
        value: state.facts.kind,
        options: [
          ...(page ? [] : [["", "Choose…"]]),
          ...choices.kinds.map((kind) => [kind, capital(kind)]),
        ],
        hint: "Liquid and dry foods make the liquid ratio.",
        chosen: (kind) => {
          state.facts.kind = kind;
          typed(form, "kind");
        },
      })}
    </div>
    ${page ? nothing : shortName(form)} ${problemLine(form, "kind")}
    ${figures(form, choices, page, fact)} ${allergens(form, choices)} ${weights(form, fact)}
    ${price(form)} ${polyol(form, choices)} ${variants(form, page)}
  </div>`;
}

function drawnFields(form, choices) {
  const figures =
    form.state.mode === "label"
      ? choices.labels.flatMap((label) => label.rows.map((row) => row.figure))
      : choices.nutrients.map((each) => each.figure);
  return new Set([
    "name", "kind", "food", "density", "price", "polyol", "serving_g",
    ...figures,
    ...form.state.weights.map((_, at) => `weights.${at}`),
  ]);
}

function problemLine(form, field) {
  const problem = problemOf(form, field, field);
  return problem ? html`<p class="problem">${problem}</p>` : nothing;
}

function shortName(form) {
  return html`<details ?open=${Boolean(problemOf(form, "food", "food"))}>
    <summary>Short name: ${form.state.food || form.tried?.food.food || "made of the name"}</summary>
    ${textField({
      id: "food",
      label: "Short name",
      value: form.state.food,
      hint: "It is filed under this; leave it empty to have one made of the name.",
      problem: problemOf(form, "food", "food"),
      typed: (text) => {
        form.state.food = text.trim();
        typed(form, "food");
      },
    })}
  </details>`;
}

function figures(form, choices, page, fact) {
  const {state} = form;
  const mode = (value, words) => html`<label class="tick">
    <input
      type="radio"
      name="mode"
      .checked=${state.mode === value}
      @change=${() => {
        state.mode = value;
        typed(form, "mode");
      }}
    />
    <span>${words}</span>
  </label>`;
  return html`<fieldset class="form-part">
    <legend>Figures</legend>
    <p class="modes">
      ${mode("label", "Copy a package label")} ${mode("facts", "As kept, per 100 g")}
    </p>
    ${state.mode === "label"
      ? labelFields(form, choices, page)
      : html`<p class="hint">
            For 100 g. Carbohydrate includes fibre. An empty field stays unknown.
          </p>
          <div class="figure-fields">
            ${choices.nutrients.map(({figure, label, unit}) =>
              fact(figure, {label: capital(label), unit, inputmode: "decimal", size: "short"}),
            )}
          </div>`}
  </fieldset>`;
}

function allergens(form, choices) {
  const {state} = form;
  const known = (value, words) => html`<label class="tick">
    <input
      type="radio"
      name="allergens-known"
      .checked=${state.allergens_known === value}
      @change=${() => {
        state.allergens_known = value;
        typed(form, "allergens");
      }}
    />
    <span>${words}</span>
  </label>`;
  const tick = ({allergen, gluten}) =>
    tickField({
      id: `allergen-${allergen.replaceAll(" ", "-")}`,
      label: gluten ? `${capital(allergen)} (gluten)` : capital(allergen),
      value: state.allergens.includes(allergen),
      ticked: (on) => {
        const ticked = new Set(state.allergens);
        ticked[on ? "add" : "delete"](allergen);
        state.allergens = choices.allergens
          .map((each) => each.allergen)
          .filter((each) => ticked.has(each));
        typed(form, "allergens");
      },
    });
  const groups = [
    ["United States and European Union", choices.allergens.filter((each) => each.us && each.eu)],
    ["European Union", choices.allergens.filter((each) => !each.us)],
  ];
  return html`<fieldset class="form-part">
    <legend>Allergens</legend>
    <p class="modes">
      ${known(false, "Not known")}
      ${known(true, "Known: contains what is ticked, and is free of the rest")}
    </p>
    ${state.allergens_known
      ? html`${groups.map(
            ([name, list]) => html`<div class="ticks" role="group" aria-label=${name}>
              <p class="quiet">${name}</p>
              ${list.map(tick)}
            </div>`,
          )}
          ${state.allergens.length === 0
            ? html`<p class="hint">None ticked: known to be free of all of them.</p>`
            : nothing}`
      : html`<p class="hint">
          As long as this is open, no goal without allergens can be known to be met.
        </p>`}
  </fieldset>`;
}

function weights(form, fact) {
  const {state} = form;
  const row = (each, at) => {
    const field = `weights.${at}`;
    const id = `weight-${at}`;
    const input = (name, label, size, problem) => html`<input
      id="${id}-${name}"
      class=${size}
      aria-label="${label}${name === "grams" && each.measure ? ` of 1 ${each.measure}` : ""}"
      aria-invalid=${problem ? "true" : nothing}
      autocomplete="off"
      placeholder=${name === "measure" ? "cup" : "112 g"}
      .value=${live(each[name])}
      @input=${(event) => {
        each[name] = event.target.value;
        typed(form, field);
      }}
    />`;
    const problem =
      document.activeElement?.id?.startsWith(id) && !form.attempted
        ? undefined
        : problemOf(form, field, id);
    return html`<li class="weight-row ${problem ? "wrong" : ""}">
      <span>1</span> ${input("measure", "Household measure", "medium", problem)}
      <span>weighs</span> ${input("grams", "Weight", "short", problem)}
      <button
        type="button"
        class="plain"
        @click=${() => {
          state.weights.splice(at, 1);
          typed(form, "weights");
        }}
      >
        Take out<span class="unseen"> ${each.measure || "this measure"}</span>
      </button>
      ${problem ? html`<p class="problem">${problem}</p>` : nothing}
    </li>`;
  };
  return html`<fieldset class="form-part">
    <legend>Household weights</legend>
    <p class="hint">What a cup, a spoon or one piece of it weighs, as weighed at your bench.</p>
    <ul class="weight-rows">
      ${state.weights.map(row)}
    </ul>
    <button
      type="button"
      id="add-weight"
      @click=${() => {
        state.weights.push({measure: "", grams: ""});
        typed(form, "weights");
        document.getElementById(`weight-${state.weights.length - 1}-measure`)?.focus();
      }}
    >
      Add a measure
    </button>
    ${fact("density", {
      label: "Density",
      unit: "g/ml",
      size: "short",
      inputmode: "decimal",
      hint: "Used for any volume that has no weight above.",
    })}
  </fieldset>`;
}

function price(form) {
  const {price: parts} = form.state;
  const input = (name, label, size, more = {}) =>
    textField({
      id: `price-${name}`,
      label,
      size,
      value: parts[name],
      typed: (text) => {
        parts[name] = text;
        typed(form, "price");
      },
      ...more,
    });
  const inside = document.activeElement?.id?.startsWith("price-") && !form.attempted;
  const problem = inside ? undefined : problemOf(form, "price", "price");
  return html`<fieldset class="form-part ${problem ? "wrong" : ""}">
    <legend>Price</legend>
    <div class="price-fields">
      ${input("amount", "Amount", "short", {inputmode: "decimal"})}
      ${input("currency", "Currency", "short", {list: "currencies"})}
      ${input("buys", "For", "short")} ${input("date", "On", "medium", {type: "date"})}
    </div>
    <datalist id="currencies">
      ${["EUR", "USD", "GBP", "CHF", "SEK", "DKK", "NOK", "PLN", "CAD", "AUD"].map(
        (code) => html`<option value=${code}></option>`,
      )}
    </datalist>
    ${problem ? html`<p class="problem">${problem}</p>` : nothing}
  </fieldset>`;
}

function polyol(form, choices) {
  const now = form.state.facts.polyol ?? "";
  const options = [...new Set([...choices.polyols, now].filter(Boolean))];
  return html`<details class="form-part">
    <summary>Sugar alcohols in it: ${now || "not stated which"}</summary>
    ${choiceField({
      id: "polyol",
      label: "Which sugar alcohol its polyols are",
      value: now,
      options: [["", "Not stated"], ...options.map((each) => [each, capital(each)])],
      hint: "Energy by factors differs by kind; without it energy is given with bounds.",
      chosen: (kind) => {
        form.state.facts.polyol = kind;
        typed(form, "polyol");
      },
    })}
  </details>`;
}

function variants(form, page) {
  const same = page?.copies.filter((each) => each.same) ?? [];
  return same.length === 0
    ? nothing
    : tickField({
        id: "variants",
        label: `Change it in the variants too that keep the same: ${same
          .map((each) => each.line)
          .join(", ")}`,
        value: form.state.variants,
        ticked: (on) => {
          form.state.variants = on;
          typed(form, "variants");
        },
      });
}
