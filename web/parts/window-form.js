// What a bake window is asked: which pieces, which limits, the oven, the thermal dose.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";
import {number, temperature} from "/format.js";
import {textField} from "/parts/fields.js";

const NAMES = ["pieces", "limits", "along", "oven", "time", "reference", "z"];

/** What the query of the page asks. */
export function askedOf(query) {
  return Object.fromEntries(
    NAMES.map((name) => [name, query.get(name)]).filter(([, value]) => value),
  );
}

/** The page of a window, with what is asked. */
export function windowPage(address, asked = {}) {
  const query = new URLSearchParams(
    NAMES.map((name) => [name, asked[name]]).filter(([, value]) => value),
  ).toString();
  return `/window/${address}${query ? `?${query}` : ""}`;
}

/** Which pieces and axes. data holds sheet, asked and typed; change takes what is asked now. */
export function windowChoices(data, change) {
  return html`<section class="window-asked" aria-label="Pieces and axes">
    ${pieces(data, change)} ${axis(data, change)} ${fine(data, change)}
  </section>`;
}

function pieces({sheet, asked}, change) {
  return html`<fieldset class="window-choices">
    <legend>Which pieces</legend>
    ${sheet.choices.map(
      (choice) => html`<label>
        <input
          type="radio"
          name="window-pieces"
          value=${choice.pieces}
          .checked=${live(choice.pieces === sheet.asked.pieces)}
          @change=${() => change({...asked, pieces: choice.pieces})}
        />
        <span>${choice.words}, <b>${choice.count}</b></span>
      </label>`,
    )}
  </fieldset>`;
}

/** The limits; the same members. */
export function windowLimits(data, change) {
  const {sheet, asked, typed} = data;
  const now = sheet.asked.limits;
  const ask = (next) => change({...asked, limits: next.join("; ")});
  const add = (event) => {
    event.preventDefault();
    const limit = typed.limit.trim();
    if (limit) {
      ask([...now, limit]);
    }
  };
  return html`<div class="window-limits">
    <h2>Limits</h2>
    ${now.length === 0 ? html`<p class="quiet">None yet.</p>` : nothing}
    <ul>
      ${sheet.limits.map(
        (each) => html`<li>
          <span><b>${each.limit}</b> <small class="quiet">${each.kept} of ${each.known}</small></span>
          <button type="button" class="plain" aria-label="Leave out: ${each.limit}"
            ?disabled=${now.length === 1}
            @click=${() => ask(now.filter((limit) => limit !== each.limit))}>Leave out</button>
        </li>`,
      )}
    </ul>
    <form @submit=${add}>
      ${textField({
        id: "window-limit",
        label: "Another limit",
        placeholder: "crust 2 to 3",
        list: "window-limit-words",
        value: typed.limit,
        problem: data.failure?.where === "limits" ? data.failure.message : undefined,
        typed: (text) => {
          typed.limit = text;
        },
        after: html`<button>Add</button>`,
      })}
      <datalist id="window-limit-words">
        ${proposals(sheet).map((words) => html`<option value=${words}></option>`)}
      </datalist>
    </form>
    ${sheet.asked.proposed
      ? html`<p class="quiet">Proposed by the pieces.</p>`
      : html`<button type="button" class="plain"
          @click=${() => change({...asked, limits: ""})}>Take those that the pieces propose</button>`}
  </div>`;
}

function proposals(sheet) {
  const faults = new Set();
  const merits = new Set();
  for (const {findings} of sheet.pieces) {
    findings.filter((each) => each.merit === false).forEach((each) => faults.add(each.word));
    findings.filter((each) => each.merit === true).forEach((each) => merits.add(each.word));
  }
  return [
    `core at least ${temperature(71)}`,
    "crust 2 to 3",
    ...[...faults].map((word) => `no ${word}`),
    ...[...merits].map((word) => `with ${word}`),
  ];
}

function axis({sheet, asked}, change) {
  if (sheet.asked.along === "minutes" && !sheet.pieces.some((piece) => piece.dose !== null)) {
    return nothing;
  }
  return html`<fieldset class="window-choices">
    <legend>Along the map</legend>
    ${[
      ["minutes", "time in the oven"],
      ["dose", "thermal dose of the core"],
    ].map(
      ([along, words]) => html`<label>
        <input
          type="radio"
          name="window-along"
          value=${along}
          .checked=${live(along === sheet.asked.along)}
          @change=${() => change({...asked, along})}
        />
        <span>${words}</span>
      </label>`,
    )}
  </fieldset>`;
}

function fine(data, change) {
  const {sheet, asked, typed} = data;
  const field = (name, label, placeholder, hint) =>
    textField({
      id: `window-${name}`,
      label,
      placeholder,
      hint,
      value: typed[name] ?? asked[name] ?? "",
      problem: data.failure?.where === name ? data.failure.message : undefined,
      typed: (text) => {
        typed[name] = text;
      },
    });
  const submit = (event) => {
    event.preventDefault();
    const {limit, ...fields} = typed;
    change({...asked, ...fields});
  };
  return html`<details class="window-fine" ?open=${data.fine}
    @toggle=${(event) => {
      data.fine = event.target.open;
    }}>
    <summary>Oven and thermal dose</summary>
    <form @submit=${submit}>
      ${field("oven", "The oven can be set to", "180 to 220 °C")}
      ${field("time", "Times that come into question", "14 to 30 min")}
      ${field(
        "reference",
        "Reference temperature of the dose",
        temperature(sheet.asked.reference_c),
      )}
      ${field(
        "z",
        "z of the dose, °C",
        number(sheet.asked.z_c),
        "So much hotter makes the dose ten times as fast. 100 °C and 33 °C give the cooking value.",
      )}
      <button>Show</button>
    </form>
  </details>`;
}
