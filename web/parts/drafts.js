// Unfinished drafts: to go on with, or to throw away.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {expected, order} from "/api.js";
import {short} from "/address.js";
import {moment} from "/format.js";
import {confirmed} from "/parts/dialogs.js";
import {notice} from "/parts/notices.js";

/** Lists drafts; nothing when there is none. */
export function draftList(drafts, tools) {
  return drafts.length === 0
    ? nothing
    : html`<section class="drafts">
        <h2>Unfinished drafts</h2>
        <ul>
          ${drafts.map((draft) => entry(draft, tools))}
        </ul>
      </section>`;
}

function entry(draft, tools) {
  const name = draft.name.trim() || draft.formula || "New formula";
  return html`<li>
    <a href="/drafts/${draft.id}">${name}</a>
    <span class="quiet">
      ${draft.base ? `from ${short(draft.base)}` : "new"}; kept
      <time datetime=${draft.time}>${moment(draft.time)}</time>, ${draft.author}
    </span>
    <button
      type="button"
      class="plain"
      aria-label="Throw the draft “${name}” away"
      @click=${() => discard(draft, name, tools)}
    >
      Throw away
    </button>
  </li>`;
}

async function discard({id, version}, name, tools) {
  const yes = await confirmed(
    `Throw “${name}” away?`,
    "What was typed in this draft is lost. The notebook’s revisions stay as they are.",
    "Throw away",
    "Keep it",
  );
  if (!yes) {
    return;
  }
  try {
    await order("draft/discard", {id, version});
    notice({text: `The draft “${name}” is gone.`});
  } catch (thrown) {
    const failure = expected(thrown);
    notice({text: `${failure.message} ${failure.hint}`.trim(), warning: true});
  }
  await tools.again();
}
