// A formula that is being edited.

import {html} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";

export const editView = {
  load: ({parts}, {signal}) => api.draft(parts.draft, signal),
  title: (draft) => `Editing ${draft.document.name || "a new formula"}`,
  draw: (draft) => html`<div class="page"><h1>${draft.document.name || "New formula"}</h1></div>`,
};
