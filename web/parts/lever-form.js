// What is asked of a formula: wishes in words, lines that stay, limits, what is fixed.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";
import {capital, count, flowing} from "/format.js";
import {choiceField, textField} from "/parts/fields.js";
import {goalMark} from "/parts/goal.js";

const SUGGESTIONS = "lever-suggestions";
const GRAMS = /^\d+(\.\d+)?$/;

/** The form; changed is called with what is asked differently. */
export function leverForm(data, failure, changed) {
  return html`<form class="lever-form" @submit=${(event) => event.preventDefault()}>
    ${wishes(data, failure, changed)} ${suggestions(data, changed)}
    ${lines(data, failure, changed)} ${rest(data, changed)}
    <datalist id=${SUGGESTIONS}>
      ${data.start.wishes.map((offer) => html`<option value=${offer.wish}></option>`)}
    </datalist>
  </form>`;
}

function wishes({asked, sheet}, failure, changed) {
  const {want} = asked;
  const at = failure ? want.findIndex((text) => text.trim() === failure.where) : -1;
  const problem = failure ? `${failure.message} ${failure.hint}` : null;
  return html`<fieldset>
    <legend>What shall it be?</legend>
    ${want.map((text, index) =>
      textField({
        id: `want-${index}`,
        label: `Wish ${index + 1}`,
        unseen: true,
        value: text,
        list: SUGGESTIONS,
        placeholder: "liquid ratio 0.85",
        problem: index === at ? problem : null,
        typed: (typed) => changed({want: want.with(index, typed)}),
        after: want.length > 1
          ? html`<button type="button" class="plain" aria-label="Leave out wish ${index + 1}"
              @click=${() => changed({want: want.toSpliced(index, 1)})}>Leave out</button>`
          : nothing,
      }),
    )}
    ${problem && at < 0 && !isOfALine(failure, asked)
      ? html`<p class="problem">${problem}</p>`
      : nothing}
    ${sheet ? standing(sheet) : nothing}
    <button type="button" class="lever-more" @click=${() => changed({want: [...want, ""]})}>
      Add another wish
    </button>
  </fieldset>`;
}

function standing(sheet) {
  return html`<ul class="lever-standing">
    ${sheet.asked.wishes.map(
      (wish) => html`<li>
        ${goalMark(wish.granted, html`<b>${capital(flowing(wish.wish))}</b>`)}
        <span class="quiet">now ${flowing(wish.now_text)}</span>
      </li>`,
    )}
  </ul>`;
}

// A goal's limits as they stand there; figures as they are, to be changed.
function suggestions({start, asked}, changed) {
  const fresh = asked.want.every((text) => text.trim() === "");
  const offer = (each) => html`<li>
    <button type="button" @click=${() => take(asked, each, changed)}>
      ${flowing(each.wish)}
    </button>
    ${each.fromGoal ? html`<span class="quiet">now ${flowing(each.nowText)}</span>` : nothing}
  </li>`;
  const offers = start.wishes.map((each) => ({
    ...each,
    fromGoal: each.from_goal,
    nowText: each.now_text,
  }));
  const goal = offers.filter((each) => each.fromGoal);
  if (offers.length === 0) {
    return nothing;
  }
  return html`<details class="lever-offers" ?open=${fresh}>
    <summary>Choose a figure</summary>
    ${goal.length > 0
      ? html`<p class="quiet">Limits of the goal ${start.goal}</p>
          <ul>${goal.map(offer)}</ul>`
      : nothing}
    <p class="quiet">As it is now; change the number</p>
    <ul>${offers.filter((each) => !each.fromGoal).map(offer)}</ul>
  </details>`;
}

// Into the first free field, with the number chosen, so that typing replaces it.
function take({want}, offer, changed) {
  const free = want.findIndex((text) => text.trim() === "");
  const index = free < 0 ? want.length : free;
  changed({want: free < 0 ? [...want, offer.wish] : want.with(free, offer.wish)});
  requestAnimationFrame(() => {
    const field = document.getElementById(`want-${index}`);
    const [digits] = /\d[\d.]*(?=\D*$)|\d[\d.]*/.exec(offer.wish) ?? [""];
    const place = offer.wish.indexOf(digits);
    field?.focus();
    field?.setSelectionRange(place, place + digits.length);
  });
}

/* lines */

function isOfALine(failure, asked) {
  return [...(asked.at_least ?? []), ...(asked.at_most ?? []), ...(asked.within ?? [])].includes(
    failure.where,
  );
}

function lines({start, asked}, failure, changed) {
  const keep = new Set((asked.keep ?? []).filter(Boolean));
  const stated = keep.size
    + ["at_least", "at_most", "within"].reduce((sum, name) => sum + (asked[name] ?? []).length, 0);
  return html`<details class="lever-lines" ?open=${stated > 0}>
    <summary>
      Lines that stay, limits of lines${stated > 0 ? `: ${count(stated, "limit")}` : ""}
    </summary>
    <table role="table">
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">Line</th>
          <th role="columnheader" scope="col">Stays</th>
          <th role="columnheader" scope="col">At least</th>
          <th role="columnheader" scope="col">At most</th>
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${start.lines.map(
          (line) => html`<tr role="row">
            <th role="rowheader" scope="row">
              ${line.name} <span class="quiet">${flowing(line.entered)}</span>
            </th>
            <td role="cell">
              <label class="box">
                <input type="checkbox" aria-label="${line.name} stays"
                  .checked=${live(keep.has(line.line))}
                  @change=${(event) => changed({keep: toggled(keep, line.line, event)})}>
              </label>
            </td>
            <td role="cell">${bound("at_least", "at least", line, asked, failure, changed)}</td>
            <td role="cell">${bound("at_most", "at most", line, asked, failure, changed)}</td>
          </tr>`,
        )}
      </tbody>
    </table>
    ${textField({
      id: "within",
      label: "No line by more than",
      value: ((asked.within ?? [])[0] ?? "").replace(/ ?%$/, ""),
      size: "short",
      unit: "%",
      inputmode: "decimal",
      problem: failure && (asked.within ?? []).includes(failure.where) ? failure.message : null,
      typed: (text) => changed({within: text.trim() ? [text] : []}),
    })}
  </details>`;
}

function toggled(keep, line, event) {
  const next = new Set(keep);
  next[event.target.checked ? "add" : "delete"](line);
  return [...next];
}

// A limit is asked for as "water=170 g"; a number alone is taken for grams, as the unit says.
function bound(name, words, line, asked, failure, changed) {
  const all = asked[name] ?? [];
  const own = all.find((text) => text.startsWith(`${line.line}=`)) ?? "";
  const others = all.filter((text) => text !== own);
  const typed = own.slice(line.line.length + 1).replace(/^(\d+(?:\.\d+)?) g$/, "$1");
  const bad = failure?.where === own && own !== "";
  return html`<input
      inputmode="decimal"
      autocomplete="off"
      aria-label="${line.name} ${words}, g"
      aria-invalid=${bad ? "true" : nothing}
      placeholder="g"
      .value=${live(typed)}
      @input=${({target}) => {
        const text = target.value.trim();
        const next = `${line.line}=${GRAMS.test(text) ? `${text} g` : target.value}`;
        changed({[name]: text ? [...others, next] : others});
      }}>
    ${bad ? html`<span class="problem">${failure.message}</span>` : nothing}`;
}

/* what is fixed, and the scale */

function rest({start, asked}, changed) {
  const stated = ["batch", "pieces", "readable"].some((name) => asked[name]);
  return html`<details class="lever-fixed" ?open=${stated}>
    <summary>
      Batch, pieces, scale <span class="quiet">${flowing(restWords(start, asked))}</span>
    </summary>
    ${choiceField({
      id: "lever-batch",
      label: "Batch mass",
      value: asked.batch ?? start.batch,
      options: [
        ["free", "may change"],
        ["fixed", "stays"],
      ],
      chosen: (batch) => changed({batch}),
    })}
    ${choiceField({
      id: "lever-pieces",
      label: "Pieces",
      value: asked.pieces ?? start.pieces,
      options: [
        ["fixed", "number stays, their size follows"],
        ["free", "size stays, their number follows"],
      ],
      chosen: (pieces) => changed({pieces}),
    })}
    ${readableField("lever-readable", asked, changed)}
  </details>`;
}

function restWords(start, asked) {
  return [
    (asked.batch ?? start.batch) === "fixed" ? "batch stays" : "batch may change",
    (asked.pieces ?? start.pieces) === "fixed" ? "number of pieces stays" : "their size stays",
    asked.readable ?? "0.1 g",
  ].join(", ");
}

/** What the scale at the bench can show. */
export function readableField(id, asked, changed) {
  return choiceField({
    id,
    label: "The scale shows",
    value: asked.readable ?? "0.1 g",
    options: [
      ["0.01 g", "0.01 g"],
      ["0.1 g", "0.1 g"],
      ["1 g", "1 g"],
      ["5 g", "5 g"],
      ["exact", "exact masses, no rounding"],
    ],
    chosen: (readable) => changed({readable}),
  });
}
