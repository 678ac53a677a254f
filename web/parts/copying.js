// Beginning a formula as a copy of a revision of another.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {choiceField} from "/parts/fields.js";
import {keepForm} from "/parts/kept-form.js";

/** Draws the choice of a formula and a revision, and what is copied. */
export function copyPanel(data, tools) {
  const options = data.formulas.flatMap((each) => [
    [each.formula, each.name],
    ...each.variants.map((variant) => [
      `${each.formula}/${variant.variant}`,
      `${each.name}, ${variant.variant}`,
    ]),
  ]);
  if (options.length === 0) {
    return html`<p class="say">
      There is no formula to copy yet. Begin from nothing, or paste a recipe.
    </p>`;
  }
  return html`<div class="copying">
    <div>
      ${choiceField({
        id: "from",
        label: "Formula to copy",
        value: lineOf(data.form.from),
        options: [["", "Choose one"], ...options],
        chosen: (line) => chooseFormula(data, line, tools),
        problem: data.problems.from,
      })}
      ${data.revisions.length > 0
        ? choiceField({
            id: "revision",
            label: "Revision",
            value: data.form.from,
            options: data.revisions,
            chosen: (address) => chooseRevision(data, address, tools),
          })
        : nothing}
    </div>
    ${data.sheet ? copied(data.sheet) : nothing}
  </div>`;
}

function lineOf(address) {
  return address.split("@")[0];
}

function copied(sheet) {
  return html`<section class="copied">
    <p class="say">
      Begins as a copy of ${sheet.name}. That stays as it is and becomes the reference that the new
      formula is compared with.
    </p>
    <ul>
      ${sheet.lines.map(
        (line) => html`<li><span class="amount">${line.entered}</span> ${line.name}</li>`,
      )}
    </ul>
  </section>`;
}

/** Takes a formula, or a revision of it, as the one to copy; an empty address takes none. */
export async function chooseFormula(data, address, tools) {
  Object.assign(data, {sheet: null, revisions: []});
  delete data.problems.from;
  data.form.from = address;
  keepForm(data.form);
  tools.redraw();
  if (!address) {
    return;
  }
  await tried(data, tools, async () => {
    const timeline = await api.timeline(lineOf(address));
    const own = timeline.revisions.filter((each) => each.variant === timeline.variant);
    data.revisions = own.map((each) => [each.address, `${each.revision}: ${each.note}`]);
    const wanted = own.find((each) => each.address === address) ?? own[0];
    await chooseRevision(data, wanted.address, tools);
  });
}

async function chooseRevision(data, address, tools) {
  data.form.from = address;
  keepForm(data.form);
  await tried(data, tools, async () => {
    const sheet = await api.sheet(address);
    if (data.form.from === address) {
      data.sheet = sheet;
    }
  });
}

async function tried(data, tools, act) {
  try {
    await act();
    data.failure = null;
  } catch (thrown) {
    data.failure = api.expected(thrown);
  }
  tools.redraw();
}
