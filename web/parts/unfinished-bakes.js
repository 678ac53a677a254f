// Bakes that were begun and not recorded yet: shown where one would look for them.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {until} from "/lib/lit-html/directives/until.js";
import {Failure, order, unfinishedBakes} from "/api.js";
import {short} from "/address.js";
import {count, moment} from "/format.js";
import {confirmed} from "/parts/dialogs.js";
import {notice} from "/parts/notices.js";

const KNOWN_FOR_MS = 5000;

let known = {formula: null, at: 0, list: null};

/** The unfinished bakes of a formula, fetched by themselves; nothing when there are none. */
export function unfinishedOf(formula) {
  if (known.formula !== formula || Date.now() - known.at > KNOWN_FOR_MS) {
    const list = unfinishedBakes(formula).then(
      (found) => unfinishedList(found, (id) => forget(formula, id)),
      () => nothing,
    );
    known = {formula, at: Date.now(), list};
  }
  return until(known.list, nothing);
}

function forget(formula, id) {
  known = {formula: null, at: 0, list: null};
  document.getElementById(`unfinished-${id}`)?.setAttribute("hidden", "");
}

/** Where an unfinished bake is gone on with. */
export function unfinishedPage({id, address, bake}) {
  return bake
    ? `/bakes/${address.split(/[/@]/)[0]}/${bake}?edit=${id}`
    : `/record/${address}?draft=${id}`;
}

/** Draws unfinished bakes; gone is called with the id of one that was thrown away. */
export function unfinishedList(list, gone) {
  if (list.length === 0) {
    return nothing;
  }
  return html`<section class="unfinished" aria-label="Unfinished bakes">
    <h2>${count(list.length, "bake")} not recorded yet</h2>
    <ul>
      ${list.map(
        (each) => html`<li id="unfinished-${each.id}">
          <span>
            ${each.bake ? `Changes to the bake ${each.bake}` : `A bake of ${short(each.address)}`},
            ${count(each.pieces, "piece")}${each.timers > 0
              ? `, ${count(each.timers, "timer")}`
              : ""},
            typed ${moment(each.time)} by ${each.author}
          </span>
          <a class="button" href=${unfinishedPage(each)}>Go on</a>
          <button type="button" class="plain" aria-label="Throw the unfinished bake away"
            @click=${() => throwAway(each, gone)}>Throw away</button>
        </li>`,
      )}
    </ul>
  </section>`;
}

async function throwAway(each, gone) {
  const sure = await confirmed(
    "Throw this unfinished bake away?",
    `It has ${count(each.pieces, "piece")} and was not recorded.`,
    "Throw it away",
  );
  if (!sure) {
    return;
  }
  try {
    const thrown = await order("bake/discard", {id: each.id, version: each.version});
    gone(each.id);
    notice({
      text: "The unfinished bake was thrown away.",
      act: ["Bring it back", () => bringBack(each, thrown.document)],
    });
  } catch (failure) {
    if (!(failure instanceof Failure)) {
      throw failure;
    }
    notice({text: `${failure.message} ${failure.hint}`, warning: true});
  }
}

async function bringBack(each, document) {
  const {id} = await order("bake/begin", {document});
  known = {formula: null, at: 0, list: null};
  notice({text: "It is back.", link: [unfinishedPage({...each, id}), "Go on with it"]});
}
