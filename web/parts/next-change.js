// Where a practitioner finds out what to do next: links on the page of a formula.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {causesPage} from "/address.js";

// [words, the page of an address such as "lupin-bun/egg-free@7"], in the order of the work.
const pages = [
  ["Bake window", (address) => `/window/${address}`],
  ["Levers: what to change to reach a figure", (address) => `/levers/${address}`],
  ["Scale", (address) => `/scale/${address}`],
  ["Replace a food", (address) => `/replace/${address}`],
  ["Beside its reference", (address) => `/rebuild/${address}`],
  ["Causes of a finding", (address) => causesPage(address)],
  ["What mattered so far", (address) => `/mattered/${address}`],
  ["Taste blind", (address) => `/tastings/${address}`],
];

/** The links for an address of a revision; nothing when there is none. */
export function nextChange(address) {
  if (!address || pages.length === 0) {
    return nothing;
  }
  return html`<nav class="next-change" aria-label="Find the next change">
    <span>Find the next change:</span>
    ${pages.map(([words, page]) => html`<a href=${page(address)}>${words}</a>`)}
  </nav>`;
}
