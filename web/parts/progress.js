// What takes long: how far it is, in words and as a bar, with a button to cancel it.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {Failure} from "/api.js";

const FIRST_WAIT_MS = 100;
const LONGEST_WAIT_MS = 1000;

/**
 * The part of a page that shows how far something is.
 * {id, words, done, total, cancel, cancelling}: total 0 or missing while it is unknown how much
 * there is to do; cancel is called when it is no longer wanted, without it there is no button.
 */
export function progressView({id, words, done = 0, total = 0, cancel, cancelling = false}) {
  const known = total > 0;
  const share = known ? Math.min(100, Math.floor((100 * done) / total)) : null;
  return html`<div class="progress">
    <p class="words" id="${id}-words">${words}${cancelling ? ": being cancelled" : ""}</p>
    <progress
      max=${known ? total : nothing}
      value=${known ? Math.min(done, total) : nothing}
      aria-labelledby="${id}-words"
    ></progress>
    <span class="share" aria-hidden="true">${known ? `${share} %` : ""}</span>
    ${cancel
      ? html`<button type="button" ?disabled=${cancelling} @click=${cancel}
          aria-describedby="${id}-words">Cancel</button>`
      : nothing}
    <span class="unseen" role="status">${spoken(words, share, cancelling)}</span>
  </div>`;
}

// Read out at the start and at each quarter, so that nobody is talked over all the time.
function spoken(words, share, cancelling) {
  if (cancelling) {
    return `${words}: being cancelled`;
  }
  return share === null || share < 25 ? words : `${words}: ${25 * Math.floor(share / 25)} %`;
}

/**
 * Follows a task of the server until it has ended: begun is what the order that began it answered.
 * changed is called with {words, done, total, state} each time something is known. Resolves with
 * the outcome, or with null when the task was cancelled; throws the failure when it failed.
 * Aborting the signal cancels the task.
 */
export async function followTask(begun, {changed = () => {}, signal} = {}) {
  let at = begun;
  let wait = FIRST_WAIT_MS;
  while (at.state === "waiting" || at.state === "running") {
    changed(at);
    await pause(wait, signal);
    if (signal?.aborted) {
      await api.order("task/cancel", {task: at.task});
      signal = undefined;
    }
    at = await api.task(at.task);
    wait = Math.min(LONGEST_WAIT_MS, wait * 1.5);
  }
  changed(at);
  if (at.state === "failed") {
    throw new Failure(at.failure);
  }
  return at.state === "done" ? at.outcome : null;
}

function pause(time, signal) {
  return new Promise((resolve) => {
    const timer = setTimeout(resolve, time);
    signal?.addEventListener(
      "abort",
      () => {
        clearTimeout(timer);
        resolve();
      },
      {once: true},
    );
    if (signal?.aborted) {
      clearTimeout(timer);
      resolve();
    }
  });
}
