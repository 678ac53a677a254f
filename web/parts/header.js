// The header of every page: where one can go, and whose notebook it is. On a narrow screen the
// places are folded behind one button.

import {html, nothing, render} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {notebookPrefers} from "/preferences.js";

const BELONGS = {
  "/": /^\/(formulas|worksheet|bakes|drafts|carry|label|card|story|share)\/|^\/(begin|beside)$/,
  "/pantry": /^\/(new-food|food-table)$/,
  "/goals": /^\/new-goal$/,
};

const place = document.getElementById("header");

let notebook = null;
let asked = false;
let open = false;
let last = null;

/**
 * Draws it. sections and tools are lists of [address, words]; path is that of the present page;
 * keys opens the list of keys.
 */
export function drawHeader(shown) {
  if (last && shown.path !== last.path) {
    open = false;
  }
  last = shown;
  draw();
  if (!asked) {
    asked = true;
    api.notebookLine().then(
      (line) => {
        notebook = line;
        draw();
        notebookPrefers(line);
      },
      () => {
        asked = false;
      },
    );
  }
}

/** Asks anew whose notebook it is, after its settings were changed. */
export function notebookChanged() {
  asked = false;
  drawHeader(last);
}

function draw() {
  render(
    html`<a class="name" href="/">Ovenmark</a>
      <button type="button" class="menu" aria-expanded=${open} aria-controls="menu"
        @click=${() => fold(!open)}>${open ? "Close menu" : "Menu"}</button>
      <nav id="menu" aria-label="Main" class=${open ? "open" : ""} @keydown=${leave}>
        <div>${last.sections.map(link)}</div>
        <div class="tools">
          ${last.tools.map(link)}
          <button type="button" class="plain" @click=${last.keys}>Keys</button>
        </div>
      </nav>
      <p class="notebook">
        ${notebook
          ? html`<span>${notebook.title}</span> <code title=${notebook.folder}
                >${notebook.folder}</code>`
          : nothing}
      </p>`,
    place,
  );
}

function link([address, words]) {
  return html`<a href=${address} aria-current=${current(address)}>${words}</a>`;
}

// Pages that belong to a section say so, and the section's own page says that it is that page.
function current(address) {
  const {path} = last;
  if (path === address) {
    return "page";
  }
  return path.startsWith(address + "/") || BELONGS[address]?.test(path) ? "true" : nothing;
}

function fold(next) {
  open = next;
  draw();
}

function leave(event) {
  if (event.key === "Escape" && open) {
    fold(false);
    place.querySelector(".menu").focus();
  }
}
