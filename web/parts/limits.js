// The rules of a goal: limits, what it must be without, what net carbohydrate leaves out.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";
import {capital} from "/format.js";
import {choiceField, tickField} from "/parts/fields.js";
import {foodChooser, foodField} from "/parts/food-chooser.js";
import {problemOf, typed} from "/parts/tried-form.js";

const MANNERS = [
  ["at_most", "at most"],
  ["at_least", "at least"],
  ["between", "between"],
];
const SHARES = [
  ["1", "all"],
  ["0.5", "half"],
  ["0", "none"],
];

/** A limit as the form keeps it: both bounds are kept when the manner changes. */
export function limitOf({figure, per, limit}) {
  const {at_least: least, at_most: most} = limit;
  const oneBound = least === null ? "at_most" : "at_least";
  const manner = least !== null && most !== null ? "between" : oneBound;
  return {
    figure,
    per: per ?? "per_piece",
    manner,
    at_least: least === null ? "" : String(least),
    at_most: most === null ? "" : String(most),
  };
}

/** A limit as an order carries it. */
export function carriedLimit({figure, per, manner, at_least, at_most}) {
  return {
    figure,
    per,
    at_least: manner === "at_most" ? "" : at_least,
    at_most: manner === "at_least" ? "" : at_most,
  };
}

/** The limits, row by row. */
export function limitFields(form, choices) {
  const {limits} = form.state;
  return html`<fieldset class="form-part">
    <legend>Limits</legend>
    ${limits.length === 0 ? html`<p class="hint">None yet.</p>` : nothing}
    <ul class="limit-rows">
      ${limits.map((limit, at) => limitRow(form, choices, limit, at))}
    </ul>
    <button
      type="button"
      id="add-limit"
      @click=${() => {
        limits.push({
          figure: "net_carbohydrate_g",
          per: "per_piece",
          manner: "at_most",
          at_least: "",
          at_most: "",
        });
        typed(form, "limits");
        document.getElementById(`limit-${limits.length - 1}-figure`)?.focus();
      }}
    >
      Add a limit
    </button>
  </fieldset>`;
}

function limitRow(form, choices, limit, at) {
  const id = `limit-${at}`;
  const field = `limits.${at}`;
  const figure = choices.figures.find((each) => each.figure === limit.figure);
  const inside = document.activeElement?.id?.startsWith(`${id}-`) && !form.attempted;
  const problem = inside
    ? undefined
    : [field, `${field}.at_least`, `${field}.at_most`, `${field}.figure`]
        .map((each) => problemOf(form, each, id))
        .find(Boolean);
  const changed = (name) => (value) => {
    limit[name] = value;
    [field, `${field}.at_least`, `${field}.at_most`].forEach((each) => form.touched.add(each));
    typed(form, field);
  };
  const select = (name, label, options, value) => html`<select
    id="${id}-${name}"
    aria-label="${label} of limit ${at + 1}"
    @change=${(event) => changed(name)(event.target.value)}
  >
    ${options.map(
      ([each, words]) => html`<option value=${each} .selected=${each === value}>${words}</option>`,
    )}
  </select>`;
  const bound = (name, label) => html`<input
    id="${id}-${name}"
    class="bound"
    inputmode="decimal"
    autocomplete="off"
    aria-label="${label} of ${figure?.label ?? "the figure"}"
    aria-invalid=${problem ? "true" : nothing}
    aria-describedby=${problem ? `${id}-problem` : nothing}
    .value=${live(limit[name])}
    @input=${(event) => changed(name)(event.target.value)}
  />`;
  return html`<li class="limit-row ${problem ? "wrong" : ""}">
    ${select(
      "figure",
      "Figure",
      choices.figures.map((each) => [each.figure, capital(each.label)]),
      limit.figure,
    )}
    ${select("manner", "Manner", MANNERS, limit.manner)}
    <span class="bounds">
      ${limit.manner === "at_most" ? nothing : bound("at_least", "Least")}
      ${limit.manner === "between" ? html`<span>and</span>` : nothing}
      ${limit.manner === "at_least" ? nothing : bound("at_most", "Greatest")}
      <span class="unit">${figure?.unit}</span>
    </span>
    ${figure?.stated
      ? select(
          "per",
          "Stated",
          choices.bases.map((each) => [each.per, perWords(each.label)]),
          limit.per,
        )
      : html`<span class="quiet">of the formula</span>`}
    <button
      type="button"
      class="plain"
      @click=${() => {
        form.state.limits.splice(at, 1);
        typed(form, "limits");
      }}
    >
      Take out<span class="unseen"> the limit on ${figure?.label}</span>
    </button>
    <p class="problem" id="${id}-problem" ?hidden=${!problem}>${problem}</p>
  </li>`;
}

function perWords(label) {
  return /^\d/.test(label) ? `per ${label}` : `a ${label}`;
}

/** Allergens and foods that it must be without. */
export function withoutFields(form, choices) {
  const {state} = form;
  const words = ["gluten", ...choices.allergens.map((each) => each.allergen)];
  form.chooser ??= foodChooser({
    id: "without-food",
    label: "Without a food",
    redraw: () => form.tools.redraw(),
    chosen: ({slug}) => {
      if (!state.without_foods.includes(slug)) {
        form.state.without_foods = [...form.state.without_foods, slug];
      }
      Object.assign(form.chooser, {slug: "", text: ""});
      typed(form, "without_foods");
    },
  });
  return html`<fieldset class="form-part">
    <legend>Without allergens</legend>
    <div class="ticks">
      ${words.map((word) =>
        tickField({
          id: `without-${word.replaceAll(" ", "-")}`,
          label: word === "gluten" ? "Gluten (wheat, rye, barley, oats)" : capital(word),
          value: state.without_allergens.includes(word),
          ticked: (on) => {
            const ticked = new Set(state.without_allergens);
            ticked[on ? "add" : "delete"](word);
            state.without_allergens = words.filter((each) => ticked.has(each));
            typed(form, "without_allergens");
          },
        }),
      )}
    </div>
    ${foodField(form.chooser, problemOf(form, "without_foods", "without-food"))}
    ${state.without_foods.length > 0
      ? html`<ul class="without-foods">
          ${state.without_foods.map(
            (slug) => html`<li>
              <a href="/pantry/${slug}">${slug}</a>
              <button
                type="button"
                class="plain"
                @click=${() => {
                  state.without_foods = state.without_foods.filter((each) => each !== slug);
                  typed(form, "without_foods");
                }}
              >
                Take out<span class="unseen"> ${slug}</span>
              </button>
            </li>`,
          )}
        </ul>`
      : nothing}
  </fieldset>`;
}

/** What net carbohydrate leaves out. shares: {fibre, polyols, allulose} as texts. */
export function shareFields(form, shares, note) {
  return html`<div class="shares">
      ${["fibre", "polyols", "allulose"].map((part) =>
        choiceField({
          id: `subtract-${part}`,
          label: capital(part),
          value: shares[part],
          options: [
            ...SHARES.map(([value, words]) => [value, `${words} left out`]),
            ...(SHARES.some(([value]) => value === shares[part])
              ? []
              : [[shares[part], `${Number(shares[part]) * 100} % left out`]]),
          ],
          chosen: (share) => {
            shares[part] = share;
            typed(form, `subtract.${part}`);
          },
        }),
      )}
    </div>
    ${note ? html`<p class="hint">${note}</p>` : nothing}`;
}

/** Shares as numbers or null → as the form keeps them. */
export function sharesOf(subtract) {
  return subtract
    ? Object.fromEntries(Object.entries(subtract).map(([part, share]) => [part, String(share)]))
    : {fibre: "1", polyols: "1", allulose: "1"};
}
