// An address that means no page.

import {html} from "/lib/lit-html/lit-html.js";

export const missingView = {
  load: async () => null,

  title: () => "No such page",

  draw: (data, place) => html`<div class="page narrow">
    <h1>No such page</h1>
    <p class="say">There is nothing at <code>${place.path}</code>.</p>
    <p><a href="/">All formulas</a></p>
  </div>`,
};
