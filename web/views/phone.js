// A phone in the same kitchen: at the desk, how it gets in and which are in; on the phone, that it
// is in, and how to leave.

import {html, nothing, svg} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {order} from "/api.js";
import {count} from "/format.js";
import {confirmed} from "/parts/dialogs.js";
import {notice} from "/parts/notices.js";

const ASK_AGAIN_MS = 3000;

let timer = null;
let shown = null;

export const phoneView = {
  load: async (place, {signal}) => {
    shown = {state: await api.phone(signal)};
    return shown;
  },

  title: () => "Phone",

  draw: (data, place, tools) => html`<div class="page narrow phone">
    <h1>Phone</h1>
    ${data.state.here ? desk(data, tools) : device(data, tools)}
    ${data.state.open ? html`${plainText()} ${onHomeScreen()}` : nothing}
  </div>`,

  // Whoever pairs a phone looks at the desk meanwhile, to see that it is in.
  drawn: (content, data, tools) => {
    clearInterval(timer);
    if (data.state.here && data.state.open) {
      timer = setInterval(() => refresh(tools), ASK_AGAIN_MS);
    }
  },

  left: () => clearInterval(timer),
};

async function refresh(tools) {
  if (document.hidden) {
    return;
  }
  try {
    shown.state = await api.phone();
    tools.redraw();
  } catch {
    // The header says so; the next time may be better.
  }
}

function desk({state}, tools) {
  return state.open ? invite(state, tools) : closed();
}

function closed() {
  return html`<p class="say">
      A phone in the same kitchen can show the bench worksheet, take photos of a tray and note what
      was measured.
    </p>
    <p>
      This viewer answers on this machine alone. To let a phone in, end it in the terminal with
      Ctrl-C and start it with
    </p>
    <pre tabindex="0"><code>ovenmark view --lan</code></pre>
    <p>It then shows here and in the terminal what to scan with the phone’s camera.</p>`;
}

function invite(state, tools) {
  const {invitation} = state;
  return html`<p class="say">
      ${invitation
        ? "Scan this with the camera of a phone in the same network, and open the address."
        : "To let a phone in, make a code. It works once, for a few minutes."}
    </p>
    ${invitation ? drawn(state) : nothing}
    ${state.too_many_tries
      ? html`<p class="caution" role="status">
          Too many wrong codes were given, so the last code works no more. If that was not you,
          somebody else on this network tried.
        </p>`
      : nothing}
    <p class="actions">
      <button type="button" class=${invitation ? "" : "main"} @click=${() => act(tools, "code")}>
        Make a new code
      </button>
    </p>
    ${devices(state, tools)}`;
}

function drawn({page, invitation}) {
  const left = count(Math.ceil(invitation.seconds_left / 60), "minute");
  return html`<div class="invitation">
    <svg class="matrix" viewBox="0 0 ${invitation.size} ${invitation.size}" role="img"
      aria-label="QR code of the address with the code">
      <rect width="100%" height="100%" fill="#ffffff"/>
      ${svg`<path d=${invitation.path} fill="#000000" shape-rendering="crispEdges"/>`}
    </svg>
    <dl class="pairs">
      <div><dt>or open</dt><dd><code>${page}</code></dd></div>
      <div><dt>and type</dt><dd><code class="code">${invitation.code}</code></dd></div>
      <div>
        <dt>works once, until</dt>
        <dd>${time(invitation.until)}, ${left} left</dd>
      </div>
    </dl>
  </div>`;
}

function devices({devices: all}, tools) {
  return html`<section aria-live="polite">
    <h2>Paired</h2>
    ${all.length === 0
      ? html`<p class="quiet">No phone is paired.</p>`
      : html`<ul class="devices">
          ${all.map(
            (each) => html`<li>
              <span>
                <b>${each.name || "No name given"}</b>
                <span class="quiet">since ${time(each.since)}, until ${time(each.until)}</span>
              </span>
              <button type="button" @click=${() => end(each, tools)}>
                End<span class="unseen"> the pairing of ${each.name || "no name"}</span>
              </button>
            </li>`,
          )}
        </ul>`}
  </section>`;
}

async function end({device, name}, tools) {
  const sure = await confirmed(
    "End this pairing?",
    `The phone of ${name || "somebody without a name"} gets nothing more from this viewer until it`
      + " is paired anew. What it wrote stays.",
    "End the pairing",
    "Keep it",
  );
  if (sure) {
    await act(tools, "end", {device});
  }
}

async function act(tools, name, carried) {
  try {
    await order(`phone/${name}`, carried);
    await tools.again();
  } catch (failure) {
    notice({text: `${failure.message} ${failure.hint}`, warning: true});
  }
}

function device({state}, tools) {
  const [own] = state.devices;
  return html`<p class="say">
      This phone is paired${own.name ? ` in the name of ${own.name}` : ""} until ${time(own.until)}.
    </p>
    <p>
      ${own.name
        ? "What you write here is kept in this name."
        : "What you write here is kept in the name of the desk."}
    </p>
    <p class="actions">
      <button type="button" @click=${() => leave(tools)}>End the pairing</button>
    </p>`;
}

async function leave() {
  try {
    await order("pair/end");
    location.assign("/pair");
  } catch (failure) {
    notice({text: `${failure.message} ${failure.hint}`, warning: true});
  }
}

function plainText() {
  return html`<p class="caution">
    What goes over the kitchen’s network is not encrypted: others on the same network could read it,
    and with it the key of a paired phone. Use it on a network you trust. A pairing ends after 12
    hours, and when the viewer ends.
  </p>`;
}

function onHomeScreen() {
  return html`<details>
    <summary>On the phone’s home screen</summary>
    <p>
      Open the viewer on the phone and choose “Add to Home Screen” in the browser’s menu. It opens
      as long as the viewer runs at the desk and this machine keeps its address.
    </p>
    <p>
      It does not work on the phone alone: browsers let a page do that only over an encrypted
      connection, which a viewer in a kitchen does not have. Some phones keep the icon’s pairing
      apart from the browser’s; then pair once more there.
    </p>
  </details>`;
}

function time(text) {
  return text.slice(11, 16);
}
