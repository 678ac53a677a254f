// To what a formula is scaled: how many, how large, what is at hand, what is lost, which scale.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";
import {choiceField, textField} from "/parts/fields.js";
import {readableField} from "/parts/lever-form.js";
import {tinOf, tinText} from "/parts/tin.js";

const SIZES = [
  ["", "as the formula states it"],
  ["dough_per_piece", "a dough mass"],
  ["baked_per_piece", "a baked mass"],
  ["tin", "what a tin takes"],
];
const SHAPES = [
  ["round", "round"],
  ["square", "square"],
  ["loaf", "loaf"],
];
// What is taken when nothing is said, common practice, no source; the answer says so too.
const USUAL = {fill: "60"};
const NUMBER = /^\d+(\.\d+)?$/;

/** The form; changed is called with what is asked differently. */
export function scaleForm(data, changed, redraw) {
  const {asked, ui} = data;
  const own = SIZES.map(([name]) => name).find((name) => name && asked[name]) ?? "";
  const size = ui.size ?? own;
  return html`<form class="lever-form scale-form" @submit=${(event) => event.preventDefault()}>
    <fieldset>
      <legend>How many</legend>
      ${textField({
        id: "scale-pieces",
        label: size === "tin" ? "Tins" : "Pieces",
        value: asked.pieces ?? "",
        inputmode: "numeric",
        size: "short",
        typed: (pieces) => changed({pieces, have: pieces.trim() ? [] : asked.have ?? []}),
      })}
    </fieldset>
    <fieldset>
      <legend>or as many as is at hand for</legend>
      ${have(data, changed, redraw)}
    </fieldset>
    <fieldset>
      <legend>How large</legend>
      ${choiceField({
        id: "scale-size",
        label: "A piece is",
        value: size,
        options: SIZES,
        chosen: (next) => {
          ui.size = next;
          changed(Object.fromEntries(SIZES.map(([name]) => [name, ""]).filter(([name]) => name)));
        },
      })}
      ${size === "dough_per_piece" || size === "baked_per_piece"
        ? massField(size, asked, changed)
        : nothing}
      ${size === "tin" ? tinFields(data, changed, redraw) : nothing}
    </fieldset>
    <fieldset>
      <legend>Losses and scale</legend>
      <div class="scale-sizes">
        ${percentField("handling_loss", "Lost on handling", asked, changed)}
        ${percentField("baking_loss", "Lost on baking", asked, changed)}
      </div>
      <p class="hint">Left free: as the formula states it, and as the bakes weighed it.</p>
      ${readableField("scale-readable", asked, changed)}
    </fieldset>
  </form>`;
}

function massField(name, asked, changed) {
  return textField({
    id: `scale-${name}`,
    label: name === "dough_per_piece" ? "Dough a piece" : "Baked a piece",
    value: asked[name] ?? "",
    size: "short",
    hint: "Such as 95 g or 3.5 oz",
    typed: (text) => changed({[name]: text}),
  });
}

function percentField(name, label, asked, changed) {
  return textField({
    id: `scale-${name}`,
    label,
    value: asked[name] ?? "",
    inputmode: "decimal",
    size: "short",
    unit: "%",
    placeholder: USUAL[name],
    typed: (text) => changed({[name]: text}),
  });
}

/* what is at hand */

// Rows as they are typed: a line and an amount. Asked for are those that have both.
function have({start, asked, ui}, changed, redraw) {
  ui.have ??= (asked.have ?? []).map((text) => {
    const equals = text.indexOf("=");
    return {line: text.slice(0, equals), amount: text.slice(equals + 1).replace(/ g$/, "")};
  });
  if (ui.have.length === 0) {
    ui.have.push({line: "", amount: ""});
  }
  const rows = ui.have;
  const send = () => {
    const stated = rows
      .filter(({line, amount}) => line && amount.trim())
      .map(({line, amount}) => `${line}=${inGrams(amount.trim())}`);
    changed(stated.length > 0 ? {have: stated, pieces: ""} : {have: []});
  };
  const options = [["", "nothing in particular"],
    ...start.lines.map(({line, name}) => [line, name])];
  return html`${rows.map(
      (row, at) => html`<div class="scale-have">
        <select aria-label="Ingredient at hand ${at + 1}"
          @change=${({target}) => {
            row.line = target.value;
            send();
          }}>
          ${options.map(
            ([value, words]) =>
              html`<option value=${value} .selected=${value === row.line}>${words}</option>`,
          )}
        </select>
        <input aria-label="How much is at hand ${at + 1}, g" placeholder="g" autocomplete="off"
          inputmode="decimal" .value=${live(row.amount)}
          @input=${({target}) => {
            row.amount = target.value;
            send();
          }}>
        ${rows.length > 1
          ? html`<button type="button" class="plain" aria-label="Leave out ingredient ${at + 1}"
              @click=${() => {
                rows.splice(at, 1);
                send();
              }}>Leave out</button>`
          : nothing}
      </div>`,
    )}
    <button type="button" class="lever-more" @click=${() => {
      rows.push({line: "", amount: ""});
      redraw();
    }}>Add another; the scarcest decides</button>`;
}

function inGrams(text) {
  return NUMBER.test(text) ? `${text} g` : text;
}

/* a tin */

function tinFields({asked, ui}, changed) {
  ui.tin ??= tinOf(asked.tin);
  const {tin} = ui;
  const set = (part) => {
    Object.assign(tin, part);
    changed({tin: tinText(tin)});
  };
  const across = {round: "Across", square: "Side", loaf: "Length"}[tin.shape];
  const size = (name, label) =>
    textField({
      id: `tin-${name}`,
      label,
      value: tin[name],
      inputmode: "decimal",
      typed: (text) => set({[name]: text}),
    });
  return html`<div class="scale-sizes">
      ${choiceField({
        id: "tin-shape",
        label: "Tin",
        value: tin.shape,
        options: SHAPES,
        chosen: (shape) => set({shape}),
      })}
      ${choiceField({
        id: "tin-unit",
        label: "In",
        value: tin.unit,
        options: [["cm", "cm"], ["mm", "mm"], ["in", "inches"]],
        chosen: (unit) => set({unit}),
      })}
    </div>
    <div class="scale-sizes">
      ${size("length", across)} ${tin.shape === "loaf" ? size("width", "Width") : nothing}
      ${size("depth", "Depth")}
    </div>
    <p class="hint">At the rim; where the walls slant, rim/bottom such as 20/18.</p>
    ${textField({
      id: "scale-density",
      label: "A millilitre of the dough weighs",
      value: asked.density ?? "",
      inputmode: "decimal",
      size: "short",
      unit: "g",
      hint: "Weigh a measuring cup of it.",
      typed: (density) => changed({density}),
    })}
    ${percentField("fill", "Tin filled with dough to", asked, changed)}
    ${textField({
      id: "scale-from-tin",
      label: "or the tin that a piece fills now",
      value: asked.from_tin ?? "",
      hint: "Such as round 20 x 5 cm; free when the formula’s oven stage names it.",
      typed: (text) => changed({from_tin: text}),
    })}`;
}
