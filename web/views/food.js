// One food: everything that is known of it, and the form that adds or changes it.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {capital, count, figure, fullDay, mass, number} from "/format.js";
import {figureMoves} from "/parts/figure-moves.js";
import {carriedFood, foodFields, freshFood} from "/parts/food-form.js";
import {formActions, formState, leaveForm, triedForm} from "/parts/tried-form.js";
import {foodAddress, lineAddress} from "/views/pantry.js";

const PARTS = new Set(["saturated_fat_g", "trans_fat_g", "fibre_g", "soluble_fibre_g", "sugars_g",
  "added_sugars_g", "polyols_g", "allulose_g"]);
const LIVE = {
  none: "No formula uses it yet, so no figure would move.",
  still: "No figure would move by what is typed so far.",
};

export const foodView = {
  async load({parts, query}, {signal}) {
    const [page, choices] = await Promise.all([
      api.foodPage(parts.food, query.get("line") || undefined, signal),
      api.kitchen(signal),
    ]);
    return {page, choices};
  },

  title: ({page}) => capital(page.food.name),

  draw(data, place, tools) {
    const mode = place.query.get("edit");
    if (!mode) {
      return shown(data, place);
    }
    data.form ??= begin(data, mode, tools, place);
    return editing(data, tools);
  },

  left: (data) => data.form && leaveForm(data.form),
};

export const newFoodView = {
  load: async (place, {signal}) => ({page: null, choices: await api.kitchen(signal)}),

  title: () => "Add a food",

  draw(data, place, tools) {
    data.form ??= begin(data, "label", tools, place);
    return editing(data, tools);
  },

  left: (data) => leaveForm(data.form),
};

function begin({page, choices}, mode, tools, {query}) {
  const name = page ? `food ${page.food.food} ${page.line ?? ""}` : "food";
  return triedForm({
    folder: choices.folder,
    name,
    fresh: freshFood(page, mode === "facts" ? "facts" : "label", query.get("name") ?? ""),
    carried: (state) => carriedFood(state, choices.nutrients),
    orders: ["food/try", "food/save"],
    saved: async (outcome) => {
      await tools.go(foodAddress(outcome.name, page?.line), {replace: true});
      scrollTo(0, 0);
    },
    tools,
  });
}

function shown({page, choices}) {
  const {food} = page;
  return html`<div class="page food">
    <div class="page-head">
      <div>
        <h1>${capital(food.name)}</h1>
        <p class="sub">
          ${capital(food.kind)}; ${source(food)}; filed as <code>${food.food}</code>${page.line
            ? html`; kept in <a href=${lineAddress(page.line)}>${page.line}</a>`
            : nothing}
        </p>
        ${page.names.length > 0
          ? html`<p class="sub">Also called ${page.names.join(", ")}</p>`
          : nothing}
      </div>
      ${acts(page)}
    </div>
    ${food.source_note ? html`<p class="why">${food.source_note}</p>` : nothing}
    ${food.remarks.map((each) => html`<p class="food-remark">${each}</p>`)}
    <div class="columns kitchen-columns">
      <div>${composition(page, choices)}</div>
      <div>
        ${allergens(food, choices)} ${uses(page)} ${weights(food)} ${price(food)}
        ${copies(page)} ${cautions(page.cautions)}
      </div>
    </div>
  </div>`;
}

function source(food) {
  const words = {
    label: "from its package label",
    typical: "typical label values",
    own: "own figures",
  };
  return words[food.source] ?? `${food.source}${food.source_id ? ` ${food.source_id}` : ""}`;
}

function acts({food, line}) {
  const edit = (mode) => {
    const query = new URLSearchParams({edit: mode, ...(line ? {line} : {})});
    return `/pantry/${food.food}?${query}`;
  };
  return food.in_pantry
    ? html`<p class="actions">
        <a class="button main" href=${edit("facts")}>Change</a>
        <a class="button" href=${edit("label")}>Copy a new label</a>
      </p>`
    : html`<p class="actions">
        <a class="button main" href=${edit("facts")}>Take it into the pantry</a>
        <a class="button" href=${edit("label")}>With the figures of your label</a>
      </p>`;
}

function composition({food, net_carbohydrate, net_carbohydrate_rule}, choices) {
  const known = choices.nutrients.filter(({figure: key}) => isKnown(food.per_100_g[key])).length;
  return html`<section>
    <h2>In 100 g</h2>
    <table class="food-composition">
      <thead class="unseen">
        <tr>
          <th scope="col">Figure</th>
          <th scope="col">Amount</th>
        </tr>
      </thead>
      <tbody>
        ${choices.nutrients.map((each) => nutrient(each, food.per_100_g[each.figure]))}
        <tr class="worked-out">
          <th scope="row">Net carbohydrate</th>
          <td class="number">${figure(net_carbohydrate, "net_carbohydrate_g", "g")}</td>
        </tr>
      </tbody>
    </table>
    <p class="quiet">
      ${known} of ${choices.nutrients.length} figures are known. Net carbohydrate =
      ${net_carbohydrate_rule}.
    </p>
  </section>`;
}

function isKnown(value) {
  return value !== null && value !== undefined;
}

function nutrient({figure: key, label, unit}, value) {
  return html`<tr class=${PARTS.has(key) ? "part-of" : ""}>
    <th scope="row">${capital(label)}</th>
    <td class="number">
      ${isKnown(value) ? `${number(value)} ${unit}` : html`<span class="unknown">unknown</span>`}
    </td>
  </tr>`;
}

function allergens(food, choices) {
  const free = choices.allergens
    .map((each) => each.allergen)
    .filter((each) => !food.allergens?.includes(each));
  return html`<section>
    <h2>Allergens</h2>
    ${food.allergens === null
      ? html`<p class="unknown"><b>Not known.</b> Read the package before serving.</p>`
      : html`<p>
            ${food.allergens.length > 0
              ? html`<b>Contains ${food.allergens.join(", ")}.</b>`
              : html`<b>Contains none of them.</b>`}
          </p>
          <p class="quiet">Known to be free of ${free.join(", ")}.</p>`}
  </section>`;
}

function uses({uses: list}) {
  if (list.length === 0) {
    return html`<section>
      <h2>Used by</h2>
      <p class="quiet">No formula uses it yet.</p>
    </section>`;
  }
  return html`<section>
    <h2>Used by ${count(list.length, "formula")}</h2>
    <ul class="uses">
      ${list.map(
        (use) => html`<li>
          <a href=${lineAddress(use.line)}>${use.name}</a>
          ${use.variant ? html`<span class="quiet">${use.variant}</span>` : nothing}
          <ul>
            ${use.lines.map(
              (line) => html`<li>
                <code>${line.id}</code> ${line.entered}${amount(line)}
                ${isKnown(line.percent_of_batch)
                  ? html`<span class="quiet">${number(line.percent_of_batch)} % of the batch</span>`
                  : nothing}
              </li>`,
            )}
          </ul>
        </li>`,
      )}
    </ul>
  </section>`;
}

function amount(line) {
  if (!isKnown(line.grams)) {
    return html`, <span class="unknown">mass unknown</span>`;
  }
  return line.approximate ? ` ≈ ${mass(line.grams)}` : "";
}

function weights(food) {
  const density = food.density_g_per_ml;
  return html`<section>
    <h2>Household weights</h2>
    ${food.household.length === 0 && !isKnown(density)
      ? html`<p class="quiet">None known: a cup or spoon of it cannot be worked out.</p>`
      : html`<dl class="pairs">
          ${food.household.map(
            (each) => html`<div>
              <dt>1 ${each.measure}</dt>
              <dd>${mass(each.grams)}</dd>
            </div>`,
          )}
          <div>
            <dt>Density</dt>
            <dd>${isKnown(density) ? `${number(density)} g/ml` : "unknown"}</dd>
          </div>
        </dl>`}
  </section>`;
}

function price({price: known}) {
  return html`<section>
    <h2>Price</h2>
    ${known
      ? html`<p>
          ${known.amount.toFixed(2)} ${known.currency} for ${mass(known.grams)}:
          ${known.per_kilogram.toFixed(2)} a kilogram${known.date
            ? html`, on <time datetime=${known.date}>${fullDay(known.date)}</time>`
            : html` <span class="quiet">(day not noted)</span>`}
        </p>`
      : html`<p class="quiet">Unknown.</p>`}
  </section>`;
}

function copies({copies: list, food}) {
  const apart = list.filter((each) => !each.same);
  return apart.length === 0
    ? nothing
    : html`<section>
        <h2>Other copies</h2>
        <p>
          These variants rest on a copy that says something else. Carrying the main line over brings
          them this one, unless theirs was changed.
        </p>
        <ul class="plain-list">
          ${apart.map(
            (each) =>
              html`<li><a href=${foodAddress(food.food, each.line)}>${each.line}</a></li>`,
          )}
        </ul>
      </section>`;
}

/** Cautions with who decides. */
export function cautions(list) {
  return list.length === 0
    ? nothing
    : html`<section class="caution">
        <h2>Mind</h2>
        <ul>
          ${list.map((each) => html`<li>${each}</li>`)}
        </ul>
        <p>Local food codes and licensed practice decide.</p>
      </section>`;
}

function editing({form, page, choices}) {
  const {tried} = form;
  const title = page ? `Change ${page.food.name}` : "Add a food";
  const back = page ? foodAddress(page.food.food, page.line) : "/pantry";
  return html`<div class="page food">
    <h1>${page && !page.food.in_pantry ? `Take ${page.food.name} into the pantry` : title}</h1>
    ${formState(form, page ? page.food.name : "it")}
    <div class="columns kitchen-columns">
      <div>
        ${foodFields(form, choices, page)}
        ${formActions(form, "Save", html`<a class="button" href=${back}>Leave</a>`)}
        <p class="quiet">What you type is kept in this browser until you save or throw it away.</p>
      </div>
      <aside class="would" id="would" aria-label="What would move" aria-live="polite">
        ${page ? wouldMove(tried) : nothing} ${would(tried, page, choices)}
        ${tried ? cautions(tried.cautions) : nothing}
      </aside>
    </div>
  </div>`;
}

function wouldMove(tried) {
  return html`<section>
    <h2>What would move</h2>
    ${tried && tried.changed.length > 0
      ? html`<p class="quiet">Changed: ${tried.changed.join("; ")}.</p>`
      : nothing}
    ${tried && tried.problems.length > 0
      ? html`<p class="problem">
          ${count(tried.problems.length, "field")} cannot be read yet and
          ${tried.problems.length === 1 ? "is" : "are"} left as before.
        </p>`
      : nothing}
    ${figureMoves(tried?.moves, LIVE)}
  </section>`;
}

/** What would be kept for 100 g: all of a new food, what differs of one that is there. */
function would(tried, page, choices) {
  if (!tried) {
    return nothing;
  }
  const before = page?.food.in_pantry ? page.food.per_100_g : null;
  const after = tried.food.per_100_g;
  const rows = choices.nutrients.filter(({figure: key}) =>
    before ? (before[key] ?? null) !== (after[key] ?? null) : isKnown(after[key]),
  );
  const unknown = before ? [] : choices.nutrients.filter((each) => !isKnown(after[each.figure]));
  return rows.length + unknown.length === 0
    ? nothing
    : html`<section>
        <h2>${before ? "Kept for 100 g, what differs" : "Would be kept for 100 g"}</h2>
        <table class="food-composition">
          <thead class=${before ? "" : "unseen"}>
            <tr>
              <th scope="col"><span class="unseen">Figure</span></th>
              ${before ? html`<th scope="col" class="number">before</th>` : nothing}
              <th scope="col" class="number">after</th>
            </tr>
          </thead>
          <tbody>
            ${rows.map((each) => wouldRow(each, before, after))}
          </tbody>
        </table>
        ${unknown.length > 0
          ? html`<p class="unknown">
              Unknown: ${unknown.map((each) => each.label).join(", ")}.
            </p>`
          : nothing}
      </section>`;
}

function wouldRow({figure: key, label, unit}, before, after) {
  const text = (value) =>
    isKnown(value) ? `${number(value)} ${unit}` : html`<span class="unknown">unknown</span>`;
  return html`<tr>
    <th scope="row">${capital(label)}</th>
    ${before ? html`<td class="number was">${text(before[key])}</td>` : nothing}
    <td class="number">${text(after[key])}</td>
  </tr>`;
}
