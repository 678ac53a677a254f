// Which keys do what: those of the present page, those that hold everywhere, and the list of them.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {preferences} from "/preferences.js";
import {ask} from "/parts/dialogs.js";

const PLACES = [
  ["f", "/"],
  ["p", "/pantry"],
  ["g", "/goals"],
  ["n", "/notebook"],
];
const SEARCH = "/search";

let listed = false;

/** The keys that hold on every page: for the places of the header, and for this list. */
export function generalKeys(sections, go, list) {
  const named = new Map(sections);
  const places = PLACES.filter(([, address]) => named.has(address)).map(([key, address]) => ({
    key,
    does: `Go to ${named.get(address)}`,
    run: () => go(address),
  }));
  const search = named.has(SEARCH)
    ? [{key: "/", does: "Search", run: () => toSearch(go)}]
    : [];
  return [...places, ...search, {key: "?", does: "List the keys", run: list}];
}

async function toSearch(go) {
  if (location.pathname !== SEARCH) {
    await go(SEARCH);
  }
  document.querySelector("main input[type=search], main input")?.focus();
}

/** Whether single letters may do anything. */
export function keysAreOn() {
  return preferences().keys === "on";
}

/** Shows the list. own and general are shortcuts; one without run only says what is built in. */
export async function listKeys(own, general) {
  if (listed) {
    return;
  }
  listed = true;
  const shown = own.filter((each) => each.does);
  const hidden = new Set(shown.map((each) => each.key));
  await ask(
    "Keys",
    (close) => html`${keysAreOn()
        ? html`<p>They do nothing while you type.</p>`
        : html`<p>They are switched off at present.</p>`}
      <table class="keys">
        <thead class="unseen">
          <tr><th scope="col">Key</th><th scope="col">What it does</th></tr>
        </thead>
        ${shown.length > 0 ? group("On this page", shown) : nothing}
        ${group("On every page", general.filter((each) => !hidden.has(each.key)))}
        ${group("In every browser", [
          {key: "Tab", does: "Go to the next link, button or field; with Shift to the one before"},
          {key: "Enter", does: "Follow the link, press the button"},
          {key: "Space", does: "Tick the box, press the button"},
          {key: "Esc", does: "Close a dialog or the menu"},
        ])}
      </table>
      <p class="actions">
        <button type="button" class="main" @click=${() => close()}>Close</button>
        <a href="/preferences" @click=${() => close()}>
          ${keysAreOn() ? "Switch the letters off" : "Switch the letters on"} in Preferences</a>
      </p>`,
  );
  listed = false;
}

function group(title, keys) {
  return html`<tbody>
    <tr><th colspan="2" scope="rowgroup" class="group">${title}</th></tr>
    ${keys.map(
      (each) => html`<tr>
        <th scope="row"><kbd>${each.key}</kbd></th>
        <td>${each.does}</td>
      </tr>`,
    )}
  </tbody>`;
}
