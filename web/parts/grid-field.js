// A field that takes temperatures and times in one line, with a preview of the pieces they make.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {live} from "/lib/lit-html/directives/live.js";
import {Failure, order} from "/api.js";
import {count, number} from "/format.js";

const PAUSE_MS = 60;

const state = {text: "", read: null, timer: null};

/**
 * Draws it. add is called with the settings of the pieces; touched keeps what is typed, redraw
 * shows the preview.
 */
export function gridField(document, {add, touched, redraw}) {
  const read = document.grid.trim() && state.text === document.grid ? state.read : null;
  if (document.grid.trim() && state.text !== document.grid) {
    look(document, redraw);
  }
  const make = async () => {
    const current = state.text === document.grid && state.read ? state.read : await ask(document);
    if (current?.pieces.length > 0) {
      document.grid = "";
      add(current.pieces);
    } else {
      redraw();
    }
  };
  const wrong = read?.problem;
  return html`<div class="field grid-field ${wrong ? "wrong" : ""}">
    <label for="grid">Temperatures × times</label>
    <div class="control">
      <input
        id="grid"
        name="grid"
        type="text"
        autocomplete="off"
        enterkeyhint="done"
        placeholder=${document.form.units.temperature === "F"
          ? "375, 400 °F × 14, 16 min"
          : "190, 200 °C × 14, 16, 18 min"}
        aria-invalid=${wrong ? "true" : nothing}
        aria-describedby="grid-hint grid-preview"
        .value=${live(document.grid)}
        @input=${(event) => {
          document.grid = event.target.value;
          touched();
          redraw();
        }}
        @keydown=${(event) => {
          if (event.key === "Enter") {
            event.preventDefault();
            make();
          }
        }}
      />
      <button type="button" class=${read?.pieces.length > 0 ? "main" : ""} @click=${make}
        ?disabled=${!document.grid.trim()}>
        ${read?.pieces.length > 0
          ? `Make ${read.pieces.length === 1 ? "this piece" : `these ${read.pieces.length} pieces`}`
          : "Make pieces"}
      </button>
    </div>
    <p class="hint" id="grid-hint">One piece for each temperature with each time.</p>
    <div id="grid-preview" role="status">${preview(read)}</div>
  </div>`;
}

function preview(read) {
  if (!read) {
    return nothing;
  }
  if (read.problem) {
    return html`<p class="problem">${read.problem.sentence} ${read.problem.hint}</p>`;
  }
  return html`<p class="unseen">${count(read.pieces.length, "piece")}</p>
    <ol class="grid-preview">
      ${read.pieces.map(
        (each) => html`<li><b>${each.id}</b> ${each.temperature}, ${number(each.minutes)} min</li>`,
      )}
    </ol>`;
}

function look(document, redraw) {
  clearTimeout(state.timer);
  state.timer = setTimeout(async () => {
    await ask(document);
    redraw();
  }, PAUSE_MS);
}

async function ask(document) {
  clearTimeout(state.timer);
  const text = document.grid;
  try {
    const read = await order("bake/grid", {text, units: document.form.units});
    Object.assign(state, {text, read});
    return read;
  } catch (thrown) {
    if (!(thrown instanceof Failure)) {
      throw thrown;
    }
    return null;
  }
}
