// The form of a bake, for a new one and for changes: measures, what is seen and tasted, the tray.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";
import {changeUnits, setting} from "/parts/bake-document.js";
import {bakeResults} from "/parts/bake-results.js";
import {conflictChooser} from "/parts/conflicts.js";
import {choiceField, textArea, textField} from "/parts/fields.js";
import {findingsField} from "/parts/findings.js";
import {measures} from "/parts/measures.js";
import {pieceForm} from "/parts/piece-form.js";

/** Draws the form of what is being typed. hint stands above the measures. */
export function bakeForm(typing, {hint = nothing} = {}) {
  const {document} = typing;
  const any = document.form.pieces.length > 0;
  return html`
    ${any
      ? html`<section class="measure-section" aria-labelledby="measures-title">
          <h2 id="measures-title">Measures</h2>
          <p class="quiet">Leave empty what was not measured: it stays unknown. ${hint}</p>
          ${measures(typing, {
            touched: () => typing.touched(),
            redraw: () => typing.redraw(),
            remove: (key) => typing.remove(key),
            problems: typing.problems,
          })}
        </section>`
      : nothing}
    <datalist id="places">
      ${["middle", "upper", "lower", "front left", "front right", "back left", "back right"].map(
        (place) => html`<option value=${place}></option>`,
      )}
    </datalist>
    <div class="two-columns">
      ${any ? looks(typing) : nothing}
      ${any
        ? html`<section class="results" aria-labelledby="results-title">
            <h2 id="results-title">What it comes to</h2>
            ${bakeResults(typing.figures, typing.piece())}
          </section>`
        : nothing}
    </div>
    ${tray(typing)}
  `;
}

function looks(typing) {
  const {document, words} = typing;
  const piece = typing.piece();
  return html`<section class="looks" aria-labelledby="looks-title">
    <h2 id="looks-title">Seen and tasted</h2>
    <fieldset class="piece-choice">
      <legend class="unseen">Piece</legend>
      ${document.form.pieces.map(
        (each) => html`<label>
          <input
            type="radio"
            name="looked-at"
            .checked=${live(each.key === piece.key)}
            @change=${() => {
              typing.chosen = each.key;
              typing.redraw();
            }}
          />
          <span><b>${each.id || "?"}</b> <small>${setting(each, document.form.units)}</small></span>
        </label>`,
      )}
    </fieldset>
    ${pieceForm(piece, {
      words,
      problems: typing.problems,
      at: document.form.pieces.indexOf(piece),
      touched: () => typing.touched(),
      redraw: () => typing.redraw(),
    })}
  </section>`;
}

function tray(typing) {
  const {document, words, problems} = typing;
  const {form} = document;
  const type = (name) => (text) => {
    form[name] = text;
    typing.touched();
  };
  return html`<section class="tray-form" aria-labelledby="tray-title">
    <h2 id="tray-title">The whole tray</h2>
    <div class="tray-fields">
      <div>
        ${findingsField({
          id: "tray",
          legend: "What is seen of the whole tray",
          chosen: form.findings,
          vocabulary: words.findings,
          touched: () => typing.touched(),
          redraw: () => typing.redraw(),
        })}
      </div>
      <div>
        ${textField({
          id: "time",
          label: "Into the oven",
          hint: "Such as 2026-09-14 10:30, or 10:30 for today.",
          size: "medium",
          value: form.time,
          problem: problems.get("time"),
          typed: type("time"),
        })}
        ${textField({
          id: "baker",
          label: "Baker",
          size: "medium",
          value: form.baker,
          typed: type("baker"),
        })}
        ${textField({
          id: "ambient",
          label: "Room and oven",
          hint: "Temperature, humidity, fan: 22 °C, 55 % humidity, fan off.",
          value: form.ambient,
          typed: type("ambient"),
        })}
        ${textArea({
          id: "note",
          label: "Note on the bake",
          value: form.note,
          typed: type("note"),
        })}
        ${unitChoice(typing)}
      </div>
    </div>
  </section>`;
}

function unitChoice(typing) {
  const {units} = typing.document.form;
  const choose = (changed) => {
    changeUnits(typing.document, changed);
    typing.touched();
  };
  return html`<details class="form-units">
    <summary>Units of these fields: ${units.mass}, °${units.temperature}, mm</summary>
    ${choiceField({
      id: "form-mass",
      label: "Masses without a unit",
      value: units.mass,
      options: [
        ["g", "grams"],
        ["oz", "ounces"],
      ],
      chosen: (mass) => choose({mass}),
    })}
    ${choiceField({
      id: "form-heat",
      label: "Temperatures without a unit",
      value: units.temperature,
      options: [
        ["C", "°C"],
        ["F", "°F"],
      ],
      chosen: (temperature) => choose({temperature}),
    })}
    <p class="hint">
      Any unit may be written in a field all the same: 3.4 oz, 375 °F, 8.8 cm, 1 h 10 min.
    </p>
  </details>`;
}

/** Whether what was typed is kept, in a few words; and what to do when it is not. */
export function keptState({keeper}) {
  switch (keeper.state) {
    case "silent":
      return html`<p class="kept warn" role="status">
        Kept in this browser; the viewer does not answer yet.
      </p>`;
    case "gone":
      return html`<div class="kept warn" role="alert">
        <p>
          This unfinished bake was recorded or thrown away elsewhere. What you typed is still here.
        </p>
        <button type="button" @click=${() => keeper.anew()}>Keep it as a new one</button>
      </div>`;
    case "conflict":
      return html`<p class="kept warn" role="alert">Typed in two places: choose below.</p>`;
    default:
      return html`<p class="kept quiet" role="status">
        ${keeper.time ? `Kept, ${keeper.time.slice(11, 16)}` : "Kept as you type"}
      </p>`;
  }
}

/** The choices when the same field was typed in two places; nothing when there are none. */
export function keptConflicts({keeper}) {
  if (keeper.state !== "conflict") {
    return nothing;
  }
  return html`<section class="caution kept-conflicts" aria-labelledby="conflicts-title">
    <h2 id="conflicts-title">Typed differently in two places</h2>
    ${conflictChooser(
      keeper.conflicts,
      keeper.choices,
      (field, side) => keeper.choose(field, side),
      {names: {ours: "Typed here", theirs: "Typed elsewhere"}, id: "kept"},
    )}
  </section>`;
}
