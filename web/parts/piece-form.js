// What is seen and tasted of one piece: crust, findings, each taster's scores, verdict, note.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";
import {textArea, textField} from "/parts/fields.js";
import {findingsField} from "/parts/findings.js";

const STEPS = ["-2", "-1", "0", "1", "2"];
const LIKING = ["1", "2", "3", "4", "5", "6", "7", "8", "9"];
const CRUST = ["0", "1", "2", "3", "4"];

const other = {name: ""};

/** Draws it. touched is called after every change, redraw when only the form looks different. */
export function pieceForm(piece, {words, touched, redraw, problems, at}) {
  const id = `piece-${piece.key}`;
  const type = (name) => (text) => {
    piece[name] = text;
    touched();
  };
  return html`<div class="piece-form">
    ${crust(piece, id, words, touched)}
    ${findingsField({
      id,
      legend: `What is seen of ${piece.id}`,
      chosen: piece.findings,
      vocabulary: words.findings,
      touched,
      redraw,
    })}
    ${tasters(piece, id, words, {touched})}
    <div class="verdict">
      ${textField({
        id: `${id}-core_log`,
        label: `Core of ${piece.id} while it baked`,
        hint: "Minutes since it went in, with temperatures: 4 min 45 °C, 8 min 78 °C, 12 min 96 °C.",
        value: piece.core_log ?? "",
        problem: problems?.get(`pieces.${at}.core_log`),
        typed: type("core_log"),
      })}
      ${textField({
        id: `${id}-verdict`,
        label: "Verdict",
        hint: "What to do with it, or what it taught.",
        value: piece.verdict,
        typed: type("verdict"),
      })}
      ${textArea({
        id: `${id}-note`,
        label: `Note on ${piece.id}`,
        rows: 2,
        value: piece.note,
        typed: type("note"),
      })}
    </div>
  </div>`;
}

function crust(piece, id, words, touched) {
  const values = withOwn(CRUST, piece.crust);
  return html`<fieldset class="scale crust-scale">
    <legend>Crust</legend>
    <div class="steps">
      ${values.map((value) =>
        step({
          name: `${id}-crust`,
          value,
          words: words.crust[Number(value)] ?? value,
          chosen: piece.crust,
          mark: html`<span class="swatch crust-${Math.round(Number(value))}"></span>`,
          choose: (next) => {
            piece.crust = next;
            touched();
          },
        }),
      )}
      ${takeBack(piece.crust, `the crust of ${piece.id}`, () => {
        piece.crust = "";
        touched();
      })}
    </div>
  </fieldset>`;
}

// A value between the steps, as it may be recorded, gets a step of its own in its place.
function withOwn(steps, value) {
  return !value || steps.includes(value)
    ? steps
    : [...steps, value].sort((one, other) => Number(one) - Number(other));
}

function step({name, value, words, chosen, mark, choose}) {
  return html`<label class="step">
    <input
      type="radio"
      name=${name}
      value=${value}
      .checked=${live(chosen === value)}
      @change=${() => choose(value)}
    />
    ${mark ?? nothing}
    <span class="step-value">${value.replace("-", "−")}</span>
    <span class="step-words">${words}</span>
  </label>`;
}

function takeBack(value, what, run) {
  return value
    ? html`<button type="button" class="plain take-back" aria-label="Take back ${what}"
        @click=${run}>Take back</button>`
    : nothing;
}

function tasters(piece, id, words, tools) {
  const {touched} = tools;
  const shown = piece.tasters.length > 0 ? piece.tasters : [{liking: "", attributes: {}}];
  const write = () => {
    if (piece.tasters.length === 0) {
      piece.tasters.push(shown[0]);
    }
    touched();
  };
  return html`<section class="tasters" aria-label="Tasting of ${piece.id}">
    ${shown.map((taster, at) =>
      tasterForm(piece, taster, at, {...tools, id, words, write, only: shown.length === 1}),
    )}
    <p class="taster-acts">
      <button type="button" @click=${() => {
        write();
        piece.tasters.push({liking: "", attributes: {}});
        touched();
      }}>Add a taster</button>
      ${piece.tasters.length > 1
        ? html`<button type="button" class="plain" @click=${() => {
            piece.tasters.pop();
            touched();
          }}>Take taster ${piece.tasters.length} away</button>`
        : nothing}
    </p>
  </section>`;
}

function tasterForm(piece, taster, at, {id, words, write, only}) {
  const own = `${id}-taster-${at}`;
  const values = withOwn(LIKING, taster.liking);
  const scored = Object.values(taster.attributes).filter(Boolean).length;
  const name = only ? "" : `Taster ${at + 1}: `;
  const attributes = name ? `${name}attributes` : "Attributes";
  return html`<fieldset class="scale liking-scale">
      <legend>${name}${name ? "liking" : "Liking"}, 1 to 9</legend>
      <div class="steps">
        ${values.map((value) =>
          step({
            name: `${own}-liking`,
            value,
            words: words.liking[Number(value) - 1] ?? "between",
            chosen: taster.liking,
            choose: (next) => {
              taster.liking = next;
              write();
            },
          }),
        )}
        ${takeBack(taster.liking, `the liking of taster ${at + 1}`, () => {
          taster.liking = "";
          write();
        })}
      </div>
      <p class="said" aria-live="polite">${words.liking[Number(taster.liking) - 1] ?? ""}</p>
    </fieldset>
    <details class="attributes">
      <summary>
        ${attributes}, just about right${scored > 0 ? ` (${scored} scored)` : ""}
      </summary>
      ${attributeNames(piece, words).map((attribute) =>
        attributeScale(taster, attribute, {own, words, write}),
      )}
      <div class="field other-attribute">
        <label for="${own}-other">Another attribute</label>
        <div class="control">
          <input id="${own}-other" type="text" class="medium" autocomplete="off"
            .value=${live(other.name)} @input=${(event) => {
              other.name = event.target.value;
            }}/>
          <button type="button" @click=${() => {
            if (other.name.trim()) {
              taster.attributes[other.name.trim()] ??= "";
              other.name = "";
              write();
            }
          }}>Add</button>
        </div>
      </div>
    </details>`;
}

function attributeNames(piece, words) {
  const names = words.attributes.map((each) => each.name);
  for (const taster of piece.tasters) {
    names.push(...Object.keys(taster.attributes).filter((name) => !names.includes(name)));
  }
  return names;
}

function attributeScale(taster, attribute, {own, words, write}) {
  const steps =
    words.attributes.find((each) => each.name === attribute)?.steps ?? words.other_steps;
  const score = taster.attributes[attribute] ?? "";
  const values = withOwn(STEPS, score);
  const set = (next) => {
    taster.attributes[attribute] = next;
    write();
  };
  return html`<fieldset class="scale right-scale">
    <legend>${attribute}</legend>
    <div class="steps">
      ${values.map((value) =>
        step({
          name: `${own}-${attribute}`,
          value,
          words: steps[Number(value) + 2] ?? value,
          chosen: score,
          choose: set,
        }),
      )}
      ${takeBack(score, `the score for ${attribute}`, () => set(""))}
    </div>
  </fieldset>`;
}
