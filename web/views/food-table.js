// Import of a table of foods: an own table, or a food table that was downloaded.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {count, number} from "/format.js";
import {textField} from "/parts/fields.js";
import {notice} from "/parts/notices.js";
import {problemList, refused} from "/views/failure.js";
import {foodAddress} from "/views/pantry.js";

const LARGEST_TABLE = 900_000;
const SHOWN = ["energy_kcal", "protein_g", "fat_g", "carbohydrate_g", "fibre_g", "sodium_mg"];

export const foodTableView = {
  load: async (place, {signal}) => ({choices: await api.kitchen(signal), words: ""}),

  title: () => "Import foods",

  draw(data, place, tools) {
    return html`<div class="page food-table">
      <h1>Import foods from a table</h1>
      ${picker(data, tools)}
      ${data.failure ? html`<div class="caution">${refused(data.failure)}</div>` : nothing}
      ${data.read ? result(data, tools) : help(data)}
    </div>`;
  },

  left: (data) => data.asking?.abort(),
};

function picker(data, tools) {
  return html`<div
      class="table-drop ${data.over ? "over" : ""}"
      @dragover=${(event) => {
        event.preventDefault();
        if (!data.over) {
          data.over = true;
          tools.redraw();
        }
      }}
      @dragleave=${() => {
        data.over = false;
        tools.redraw();
      }}
      @drop=${(event) => {
        event.preventDefault();
        data.over = false;
        take(data, event.dataTransfer.files[0], tools);
      }}
    >
      <label for="table-file">A table (CSV), or a food table as it was downloaded (zip)</label>
      <input
        id="table-file"
        type="file"
        accept=".csv,.tsv,.txt,.zip,text/csv,text/plain,application/zip"
        @change=${(event) => take(data, event.target.files[0], tools)}
      />
      <p class="hint">Or drop the file here. Nothing is added before you have seen it.</p>
    </div>
    ${data.file && isZip(data.file)
      ? html`<form
          class="zip-words"
          @submit=${(event) => {
            event.preventDefault();
            look(data, tools);
          }}
        >
          ${textField({
            id: "zip-words",
            label: "Which foods",
            hint: "Words of their description; the table holds thousands.",
            value: data.words,
            typed: (text) => {
              data.words = text;
            },
          })}
          <button type="submit" class="main">Look</button>
        </form>`
      : nothing}
    ${data.busy
      ? html`<p role="status">
          Reading ${data.file.name}…
          ${data.share === undefined
            ? nothing
            : html`<progress value=${data.share} aria-label="Sent"></progress>`}
          <button type="button" class="plain" @click=${() => data.asking.abort()}>Cancel</button>
        </p>`
      : nothing}`;
}

function isZip(file) {
  return /\.zip$/i.test(file.name);
}

function take(data, file, tools) {
  if (!file) {
    return;
  }
  Object.assign(data, {file, read: null, failure: null});
  if (isZip(file)) {
    tools.redraw();
    document.getElementById("zip-words")?.focus();
  } else if (file.size > LARGEST_TABLE) {
    data.failure = new api.Failure({
      sentence: `${file.name} is larger than ${LARGEST_TABLE / 1000} kB.`,
      hint: "Divide the table, or keep only the columns that are needed.",
    });
    tools.redraw();
  } else {
    look(data, tools);
  }
}

async function look(data, tools) {
  data.asking?.abort();
  const mine = new AbortController();
  Object.assign(data, {asking: mine, busy: true, failure: null});
  tools.redraw();
  try {
    if (isZip(data.file)) {
      const {name: file} = data.file;
      data.read = fromZip(
        await sent(data, "foods/zip", {words: data.words, file}, tools),
        file,
      );
    } else {
      data.text = await data.file.text();
      data.read = await api.order(
        "foods/table",
        {file: data.file.name, text: data.text},
        mine.signal,
      );
    }
    data.taken = new Set(
      fresh(data.read)
        .filter((each) => Object.values(each.per_100_g).some((value) => value !== null))
        .map((each) => each.food),
    );
  } catch (thrown) {
    if (!mine.signal.aborted) {
      data.failure = thrown;
    }
  }
  data.busy = false;
  tools.redraw();
}

function sent(data, order, parameters, tools) {
  const progressed = (share) => {
    data.share = share;
    tools.redraw();
  };
  return api.upload(order, parameters, data.file, {progressed, signal: data.asking.signal});
}

// The same shape for both kinds of table.
function fromZip(read, file) {
  return {
    file,
    foods: read.foods.map((each) => ({
      ...each,
      row: null,
      allergens: null,
      state: each.state === "found" ? "new" : each.state,
    })),
    columns: [],
    unknown_columns: [],
    added: read.added,
    problems: read.problems,
    more: read.more,
  };
}

function fresh(read) {
  return read.foods.filter((each) => each.state === "new");
}

async function add(data, tools) {
  data.busy = true;
  data.failure = null;
  tools.redraw();
  const takes = [...data.taken];
  data.asking = new AbortController();
  try {
    const {name: file} = data.file;
    data.read = isZip(data.file)
      ? fromZip(
          await sent(
            data,
            "foods/zip/add",
            {words: data.words, file, take: takes.join(",")},
            tools,
          ),
          file,
        )
      : await api.order("foods/table/add", {file, text: data.text, take: takes});
    data.taken = new Set();
    notice({
      text: `${count(data.read.added, "food")} added to the pantry.`,
      link: ["/pantry", "Show the pantry"],
    });
  } catch (thrown) {
    data.failure = thrown;
  }
  data.busy = false;
  tools.redraw();
}

function result(data, tools) {
  const {read} = data;
  const open = fresh(read);
  return html`<section aria-label="What the table holds">
    <p class="say">
      ${read.file}: ${count(read.foods.length, "food")}, ${open.length} of them
      new${read.problems.length > 0 ? `, ${count(read.problems.length, "problem")}` : ""}.
    </p>
    ${read.more ? html`<p class="quiet">More foods fit; use more words to see others.</p>` : nothing}
    ${read.unknown_columns.length > 0
      ? html`<p>Columns left out: ${read.unknown_columns.join(", ")}.</p>`
      : nothing}
    ${read.problems.length > 0
      ? html`<details class="row-problems" open>
          <summary>${count(read.problems.length, "problem")}, row by row</summary>
          ${problemList(read.problems)}
        </details>`
      : nothing}
    ${table(data, tools)}
    <div class="form-actions">
      ${open.length === 0
        ? nothing
        : html`<button
            type="button"
            class="main"
            ?disabled=${data.busy || data.taken.size === 0}
            @click=${() => add(data, tools)}
          >
            Add ${count(data.taken.size, "food")}
          </button>`}
      <a class="button" href="/pantry">To the pantry</a>
    </div>
  </section>`;
}

function table(data, tools) {
  const nutrients = data.choices.nutrients.filter((each) => SHOWN.includes(each.figure));
  return html`<div class="wide-table" tabindex="0" role="region" aria-label="Foods of the table">
    <table>
      <thead>
        <tr>
          <th scope="col">Take</th>
          <th scope="col">Food</th>
          <th scope="col">Kind</th>
          ${nutrients.map(
            ({label, unit}) => html`<th scope="col" class="number">${label}, ${unit}</th>`,
          )}
          <th scope="col">Allergens</th>
        </tr>
      </thead>
      <tbody>
        ${data.read.foods.map((food) => row(food, nutrients, data, tools))}
      </tbody>
    </table>
  </div>`;
}

function row(food, nutrients, data, tools) {
  return html`<tr>
    <td>
      ${food.state === "new"
        ? html`<label class="tick">
            <input
              type="checkbox"
              .checked=${data.taken.has(food.food)}
              @change=${(event) => {
                data.taken[event.target.checked ? "add" : "delete"](food.food);
                tools.redraw();
              }}
            />
            <span class="unseen">Take ${food.name}</span>
          </label>`
        : html`<span class="quiet">${food.state}</span>`}
    </td>
    <th scope="row">
      ${food.state === "new"
        ? food.name
        : html`<a href=${foodAddress(food.food)}>${food.name}</a>`}
      <span class="beside">
        ${food.row === null ? food.source_id : `row ${food.row}`}, filed as ${food.food}
      </span>
    </th>
    <td>
      ${food.kind}${food.kind_guessed
        ? html` <span class="unknown">guessed: check it</span>`
        : nothing}
    </td>
    ${nutrients.map(({figure}) => {
      const value = food.per_100_g[figure];
      return html`<td class="number">
        ${value === null || value === undefined
          ? html`<span class="unknown">unknown</span>`
          : number(value)}
      </td>`;
    })}
    <td>${allergens(food.allergens)}</td>
  </tr>`;
}

function allergens(known) {
  if (known === null) {
    return html`<span class="unknown">unknown</span>`;
  }
  return known.length === 0 ? "none" : known.join(", ");
}

function help({choices}) {
  return html`<section>
    <h2>What a table may hold</h2>
    <p>
      One food a row, figures per 100 g; the first row names the columns, with commas, semicolons or
      tabs between. Only the name is needed. An empty cell stays unknown. Carbohydrate includes
      fibre, unless its column is called <code>carbohydrate_without_fibre_g</code>.
    </p>
    <pre tabindex="0"><code>name;kind;protein_g;fat_g;carbohydrate_g;fibre_g;salt_g;allergens
Lupin flour, coarse;dry;37,2;9,6;41,4;28;0,04;lupin
Sunflower meal;dry;46;11;29;;0,02;none</code></pre>
    <details>
      <summary>All columns</summary>
      <p><code class="column-names">${choices.table_columns.join(", ")}</code></p>
    </details>
    <p class="quiet">
      A downloaded food table is the zip file of SR28 (FOOD_DES.txt, NUT_DATA.txt, WEIGHT.txt) or of
      FoodData Central (food.csv, food_nutrient.csv …), up to 64 MB. Larger ones can be read with
      <code>ovenmark pantry import</code>.
    </p>
  </section>`;
}
