// The foods of the notebook, with search also in the built-in table.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";
import * as api from "/api.js";
import {count, figure, number} from "/format.js";
import {problemList} from "/views/failure.js";

const WAIT_MS = 120;
const FIGURES = [
  ["energy_kcal", "Energy, kcal"],
  ["protein_g", "Protein, g"],
  ["fat_g", "Fat, g"],
  ["fibre_g", "Fibre, g"],
  ["net_carbohydrate_g", "Net carbohydrate, g"],
];
const COLUMNS = [
  ["name", "Food"],
  ...FIGURES,
  ["price", "Price a kg"],
  ["used", "Used by"],
];
const NUMBERS = new Set([...FIGURES.map(([key]) => key), "price"]);

const USES_SHOWN = 3;

/** The page of a food. */
export function foodAddress(slug, line) {
  return `/pantry/${slug}${line ? `?line=${encodeURIComponent(line)}` : ""}`;
}

export const pantryView = {
  async load({query}, {before, signal}) {
    const words = query.get("words") ?? "";
    const list =
      words || !query.get("all")
        ? await api.foods(words || undefined, signal)
        : await api.allFoods(signal);
    const typing = document.activeElement?.id === "pantry-words";
    return {list, words: typing && before ? before.words : words};
  },

  title: () => "Pantry",

  draw(data, place, tools) {
    const foods = sorted(data.list.foods, place.query);
    const own = foods.filter((each) => each.in_pantry).length;
    return html`<div class="page pantry">
      <div class="page-head">
        <div>
          <h1>Pantry</h1>
          <p class="sub">
            ${place.query.get("words")
              ? `${count(own, "food")} found here, ${foods.length - own} in the built-in table`
              : `${count(own, "food")} of this notebook, per 100 g`}
          </p>
        </div>
        <p class="actions">
          <a class="button main" href="/new-food">Add a food</a>
          <a class="button" href="/food-table">Import a table</a>
        </p>
      </div>
      ${finder(data, place, tools)}
      ${foods.length === 0 ? nothingFound(place) : table(foods, place)}
      <p class="quiet">
        “?” is unknown, not zero. Net carbohydrate by the notebook’s rule; “at most” where fibre or
        polyols are unknown.
      </p>
    </div>`;
  },

  shortcuts: () => [
    {
      key: "/",
      does: "Find a food",
      run: () => document.getElementById("pantry-words")?.focus(),
    },
  ],
};

function address(query, changed) {
  const next = new URLSearchParams(query);
  Object.entries(changed).forEach(([name, value]) =>
    value ? next.set(name, value) : next.delete(name),
  );
  const text = next.toString();
  return `/pantry${text ? `?${text}` : ""}`;
}

function finder(data, {query}, {go}) {
  const search = (text) => {
    data.words = text;
    clearTimeout(data.timer);
    data.timer = setTimeout(
      () => go(address(new URL(location.href).searchParams, {words: text.trim()}), {replace: true}),
      WAIT_MS,
    );
  };
  return html`<search class="finder">
    <label for="pantry-words">Find a food</label>
    <input
      id="pantry-words"
      type="search"
      autocomplete="off"
      placeholder="almond meal"
      .value=${live(data.words)}
      @input=${(event) => search(event.target.value)}
    />
    ${query.get("words")
      ? html`<span class="quiet">in the pantry and the built-in table</span>`
      : html`<label class="tick">
          <input
            type="checkbox"
            .checked=${live(Boolean(query.get("all")))}
            @change=${(event) =>
              go(address(query, {all: event.target.checked ? "yes" : ""}), {replace: true})}
          />
          <span>Show the built-in table too</span>
        </label>`}
  </search>`;
}

function nothingFound({query}) {
  const words = query.get("words");
  return words
    ? html`<p class="say">No food is called “${words}”.</p>
        <p><a href="/new-food?name=${encodeURIComponent(words)}">Add it from its label</a></p>`
    : html`<p class="say">There is no food in this notebook yet.</p>
        <p>
          A food comes here by itself when a formula first uses it. Or
          <a href="/new-food">copy a package label</a>, or
          <a href="/pantry?all=yes">look through the built-in table</a>.
        </p>`;
}

function valueOf(food, key) {
  switch (key) {
    case "name":
      return food.name.toLowerCase();
    case "used":
      return food.used_by.length;
    case "price":
      return food.price?.per_kilogram ?? null;
    case "net_carbohydrate_g":
      return food.net_carbohydrate?.net_carbohydrate_g ?? null;
    default:
      return food.per_100_g[key] ?? null;
  }
}

// Unknown stands at the end, whichever way it is sorted.
function sorted(foods, query) {
  const key = query.get("sort");
  if (!COLUMNS.some(([each]) => each === key)) {
    return foods;
  }
  const sign = query.get("down") ? -1 : 1;
  return [...foods].sort((one, other) => {
    const a = valueOf(one, key);
    const b = valueOf(other, key);
    if (a === null || b === null) {
      return (a === null) - (b === null);
    }
    return sign * (a < b ? -1 : a > b ? 1 : 0);
  });
}

// On a phone the rows are laid out as blocks; roles keep the table for those who listen.
function table(foods, place) {
  return html`<table class="food-list" role="table">
    <thead role="rowgroup">
      <tr role="row">
        ${COLUMNS.map((column) => heading(column, place.query))}
      </tr>
    </thead>
    <tbody role="rowgroup">
      ${foods.map((food) => (food.problems.length > 0 ? damaged(food) : row(food)))}
    </tbody>
  </table>`;
}

function heading([key, words], query) {
  const mine = query.get("sort") === key;
  const down = Boolean(query.get("down"));
  const first = key === "name" ? "" : "yes";
  const turned = down ? "" : "yes";
  const href = address(query, {sort: key, down: mine ? turned : first});
  const arrow = mine ? (down ? " ↓" : " ↑") : "";
  return html`<th
    role="columnheader"
    scope="col"
    class=${NUMBERS.has(key) ? "number" : ""}
    aria-sort=${mine ? (down ? "descending" : "ascending") : nothing}
  >
    <a href=${href}>${words}${arrow}</a>
  </th>`;
}

function row(food) {
  return html`<tr role="row" class=${food.in_pantry ? "" : "built-in"}>
    <th role="rowheader" scope="row">
      <a class="title" href=${foodAddress(food.food)}>${food.name}</a>
      <span class="beside">
        ${food.kind}, ${food.source}; ${allergens(food.allergens)}
        ${food.in_pantry ? nothing : html`<b>not yet in the pantry</b>`}
        ${food.kept_in ? `kept in ${food.kept_in}` : nothing}
      </span>
    </th>
    ${FIGURES.map(([key, words]) => cell(words, shown(food, key)))}
    ${cell("Price a kg", price(food.price))}
    <td role="cell" class="used ${food.used_by.length === 0 ? "none" : ""}">${uses(food)}</td>
  </tr>`;
}

function shown(food, key) {
  if (key === "net_carbohydrate_g") {
    const text = figure(food.net_carbohydrate, key);
    return text === "unknown" ? "?" : text;
  }
  const value = food.per_100_g[key];
  return value === null || value === undefined ? "?" : number(value);
}

function cell(words, text) {
  return html`<td role="cell" class="number ${text === "–" ? "none" : ""}">
    <span class="label">${words}</span>
    ${text === "?"
      ? html`<span class="unknown" aria-hidden="true">?</span><span class="unseen">unknown</span>`
      : text}
  </td>`;
}

function price(known) {
  return known ? `${known.per_kilogram.toFixed(2)} ${known.currency}` : "–";
}

function allergens(known) {
  if (known === null) {
    return html`<span class="unknown">allergens unknown</span>`;
  }
  return known.length === 0 ? "no allergen" : `contains ${known.join(", ")}`;
}

function uses(food) {
  if (food.used_by.length === 0) {
    return html`<span class="quiet">nobody</span>`;
  }
  const formulas = [...new Set(food.used_by.map((line) => line.split("/")[0]))];
  const more = formulas.length - USES_SHOWN;
  return html`${formulas.slice(0, USES_SHOWN).map((formula, at) => {
    const variants = food.used_by.filter((line) => line.startsWith(`${formula}/`)).length;
    const own = food.used_by.includes(formula);
    const beside = own ? `and ${count(variants, "variant")}` : `(${count(variants, "variant")})`;
    return html`${at > 0 ? ", " : nothing}<a href=${lineAddress(formula)}>${formula}</a>
      ${variants > 0 ? beside : nothing}`;
  })}${more > 0 ? html`, <a href=${foodAddress(food.food)}>${more} more</a>` : nothing}`;
}

/** The page of a line of history: a formula, or one of its variants. */
export function lineAddress(line) {
  const [formula, variant] = line.split("/");
  return `/formulas/${formula}${variant ? `?line=${variant}` : ""}`;
}

function damaged(food) {
  return html`<tr role="row">
    <th role="rowheader" scope="row">${food.name}</th>
    <td role="cell" colspan=${COLUMNS.length - 1}>
      The file cannot be read. ${problemList(food.problems)}
    </td>
  </tr>`;
}
