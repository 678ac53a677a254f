// Says quietly when the viewer does not answer, tries again and again, and says no more once it
// answers. What was typed stays where it is.

import {html, nothing, render} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {isThere, onAnswer} from "/api.js";

const FIRST_WAIT_MS = 1000;
const LONGEST_WAIT_MS = 15_000;

const place = document.getElementById("answering");
const listeners = new Set();
let timer = null;
let wait = FIRST_WAIT_MS;
let unpaired = false;

/** Calls back when the viewer answers again after it did not. */
export function onReturn(listener) {
  listeners.add(listener);
}

onAnswer((outcome) => {
  if (outcome === "unpaired") {
    stop();
    unpaired = true;
    drawUnpaired();
  } else if (outcome === "answered") {
    back();
  } else if (timer === null) {
    wait = FIRST_WAIT_MS;
    draw();
    tryLater();
  }
});

// Whoever comes back from pairing again looks at this page again.
document.addEventListener("visibilitychange", () => {
  if (unpaired && !document.hidden) {
    api.phone().catch(() => {});
  }
});

function tryLater() {
  timer = setTimeout(tryNow, wait);
  wait = Math.min(LONGEST_WAIT_MS, wait * 2);
}

async function tryNow() {
  clearTimeout(timer);
  if (await isThere()) {
    back();
  } else {
    tryLater();
  }
}

function back() {
  if (timer === null && !unpaired) {
    return;
  }
  stop();
  unpaired = false;
  render(nothing, place);
  listeners.forEach((listener) => listener());
}

function stop() {
  clearTimeout(timer);
  timer = null;
}

// In a page of its own, so that what was typed here stays until this device is paired again.
function drawUnpaired() {
  render(
    html`<div class="notice warning">
      <p>
        <strong>This phone is no longer paired.</strong> What you typed is still here. Pair it
        again, then come back to this page.
      </p>
      <a class="button" href="/pair" target="_blank" rel="noopener">Pair again</a>
    </div>`,
    place,
  );
}

function draw() {
  render(
    html`<div class="notice warning">
      <p>
        <strong>The viewer does not answer.</strong> What you typed is still here. See whether
        <code>ovenmark view</code> still runs; this page goes on by itself when it is back.
      </p>
      <button type="button" @click=${tryNow}>Try now</button>
    </div>`,
    place,
  );
}
