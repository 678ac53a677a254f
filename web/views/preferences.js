// How this browser's reader wants things: units, colours, sound, keys. All at once, without a
// button to save, since nothing but this browser changes.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {mass, temperature} from "/format.js";
import {prefer, preferences} from "/preferences.js";

const GROUPS = [
  {
    name: "temperature",
    title: "Oven and core temperatures",
    choices: [["C", "°C", "degrees Celsius"], ["F", "°F", "degrees Fahrenheit"]],
  },
  {
    name: "mass",
    title: "Masses at the bench",
    choices: [["g", "g", "grams"], ["oz", "oz", "ounces (avoirdupois)"]],
    hint: "Nutrients stay in grams, as on the labels of food. Rounded ounces need not add up.",
  },
  {
    name: "colours",
    title: "Colours",
    choices: [["system", "As the system", ""], ["light", "Light", ""], ["dark", "Dark", ""]],
  },
  {
    name: "sound",
    title: "Sound of timers",
    choices: [["on", "On", ""], ["off", "Off", "they are seen only"]],
  },
  {
    name: "keys",
    title: "Letters as shortcuts",
    choices: [["on", "On", ""], ["off", "Off", "for speech input, or when keys are hit by chance"]],
    hint: "“Keys” in the header lists them.",
  },
];

export const preferencesView = {
  load: async () => ({}),

  title: () => "Preferences",

  draw: (data, place, {redraw}) => html`<div class="page narrow preferences">
    <h1>Preferences</h1>
    <p class="say">
      How this browser shows things on this device. The notebook stays as it is, whatever you choose
      here.
    </p>
    <div class="groups">${GROUPS.map((group) => choice(group, redraw))}</div>
    <section>
      <h2>For example</h2>
      <p role="status" class="sample">
        ${mass(94.6)} of dough a piece, ${mass(1000)} in the batch, ${temperature(190)} in the oven,
        ${temperature(96)} in the centre.
      </p>
      <p class="quiet">
        What people wrote stays in their words: notes, method steps, and amounts such as “2 tbsp”.
      </p>
    </section>
  </div>`,
};

function choice({name, title, choices, hint}, redraw) {
  const chosen = preferences()[name];
  return html`<fieldset aria-describedby=${hint ? `${name}-hint` : nothing}>
    <legend>${title}</legend>
    ${choices.map(
      ([value, words, more]) => html`<label class="tick">
        <input type="radio" name=${name} value=${value} .checked=${chosen === value}
          @change=${() => {
            prefer({[name]: value});
            redraw();
          }}>
        <span>${words}${more ? html` <span class="quiet">${more}</span>` : nothing}</span>
      </label>`,
    )}
    ${hint ? html`<p class="hint" id="${name}-hint">${hint}</p>` : nothing}
  </fieldset>`;
}
