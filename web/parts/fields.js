// Fields of a form: a label, what is typed, a hint, and what is wrong with it, all tied together.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";

/**
 * A line of text. typed is called with each change of the text.
 * {id, label, value, typed, hint, problem, unit, type, inputmode, list, size, required, unseen,
 * after: what stands behind the unit}
 */
export function textField(field) {
  return framed(
    field,
    html`<input
        id=${field.id}
        name=${field.id}
        type=${field.type ?? "text"}
        class=${field.size ?? nothing}
        inputmode=${field.inputmode ?? nothing}
        autocomplete="off"
        placeholder=${field.placeholder ?? nothing}
        list=${field.list ?? nothing}
        ?required=${field.required}
        aria-invalid=${field.problem ? "true" : nothing}
        aria-describedby=${describedBy(field)}
        .value=${live(field.value ?? "")}
        @input=${(event) => field.typed(event.target.value)}
      />${field.unit ? html`<span class="unit">${field.unit}</span>` : nothing}${field.after}`,
  );
}

/** Several lines of text; the same members, and rows. */
export function textArea(field) {
  return framed(
    field,
    html`<textarea
      id=${field.id}
      name=${field.id}
      rows=${field.rows ?? 3}
      aria-invalid=${field.problem ? "true" : nothing}
      aria-describedby=${describedBy(field)}
      .value=${live(field.value ?? "")}
      @input=${(event) => field.typed(event.target.value)}
    ></textarea>`,
  );
}

/** One of several: options are [value, words]; chosen is called with the value. */
export function choiceField(field) {
  return framed(
    field,
    html`<select
      id=${field.id}
      name=${field.id}
      aria-describedby=${describedBy(field)}
      @change=${(event) => field.chosen(event.target.value)}
    >
      ${field.options.map(
        ([value, words]) =>
          html`<option value=${value} .selected=${value === (field.value ?? "")}>${words}</option>`,
      )}
    </select>`,
  );
}

/** Yes or no. */
export function tickField({id, label, value, ticked}) {
  return html`<label class="tick" for=${id}>
    <input
      id=${id}
      name=${id}
      type="checkbox"
      .checked=${live(Boolean(value))}
      @change=${(event) => ticked(event.target.checked)}
    />
    <span>${label}</span>
  </label>`;
}

function framed(field, control) {
  return html`<div class="field ${field.problem ? "wrong" : ""}">
    <label for=${field.id} class=${field.unseen ? "unseen" : nothing}>${field.label}</label>
    <div class="control">${control}</div>
    ${field.hint ? html`<p class="hint" id="${field.id}-hint">${field.hint}</p>` : nothing}
    <p class="problem" id="${field.id}-problem" ?hidden=${!field.problem}>${field.problem ?? ""}</p>
  </div>`;
}

function describedBy({id, hint, problem}) {
  const ids = [hint ? `${id}-hint` : null, problem ? `${id}-problem` : null].filter(Boolean);
  return ids.length > 0 ? ids.join(" ") : nothing;
}
