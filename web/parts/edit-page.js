// The page of an open draft: its head, what must be known, the form, and the strip of figures.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {formulaPage, short, worksheetPage} from "/address.js";
import {count, flowing, moment} from "/format.js";
import {
  back, discard, forget, forth, goTo, keepAsNew, openAbout, save, say, throwAway, toggleWeigh,
} from "/parts/edit-acts.js";
import {
  aboutFields, headFields, methodFields, ovenFields, yieldFields,
} from "/parts/edit-fields.js";
import {figurePanel, glance} from "/parts/edit-figures.js";
import {statusWords} from "/parts/edit-keeping.js";
import {lineEditor} from "/parts/edit-lines.js";
import {weighMode} from "/parts/edit-weigh.js";

/** Draws it; weigh is whether it is shown for the scale. */
export function editPage(data, weigh) {
  const {state, ui} = data;
  ui.say = (words) => say(data, words);
  ui.state = (per) => {
    ui.per = per;
    state.redraw();
  };
  ui.opened = (open) => openAbout(ui, open, state);
  return html`<article class="page edit ${weigh ? "weighing" : ""}" data-drawn=${state.status}>
    ${head(data, weigh)} ${banners(data)}
    <p class="unseen" role="status">${ui.said}</p>
    ${weigh && state.sheet
      ? weighMode(state, ui)
      : html`<div class="edit-columns">
          <div class="edit-form">
            ${headFields(state, ui)} ${lineEditor(state, ui)}
            <div class="edit-pair">${yieldFields(state)} ${ovenFields(state)}</div>
            ${methodFields(state, ui)} ${aboutFields(state, ui)} ${ending(data)}
          </div>
          ${strip(data)}
        </div>`}
  </article>`;
}

function head(data, weigh) {
  const {state} = data;
  const {base} = state;
  const name = state.document.name?.trim() || "New formula";
  return html`<header class="edit-title">
    <div>
      <h1>${name}</h1>
      <p class="sub">
        ${base
          ? html`Draft on <a href=${worksheetPage(base.address)}>${short(base.address)}</a>,
              ${moment(base.time)}: ${base.note}`
          : "Draft of a new formula, not saved yet"}
      </p>
      ${keptWords(data)}
    </div>
    <div class="edit-acts">
      ${saveButtons(data)}
      <button type="button" ?disabled=${state.past.length === 0} @click=${() => back(data)}>
        Undo
      </button>
      <button type="button" ?disabled=${state.future.length === 0} @click=${() => forth(data)}>
        Redo
      </button>
      <button type="button" aria-pressed=${String(weigh)} @click=${() => toggleWeigh(data)}>
        ${weigh ? "Back to the formula" : "At the scale"}
      </button>
      <button type="button" class="plain" @click=${() => discard(data)}>Discard</button>
    </div>
  </header>`;
}

function keptWords({state}) {
  const alarm = !["kept", "keeping"].includes(state.status);
  const words = state.failure
    ? `${statusWords.refused}: ${state.failure.message}`
    : statusWords[state.status];
  return html`<p class="kept ${alarm ? "alarm" : ""}">
    ${alarm ? nothing : html`<span aria-hidden="true" class="kept-dot is-${state.status}"></span>`}
    <span role=${alarm ? "status" : nothing}>${words}</span>
  </p>`;
}

function saveButtons(data) {
  const {state} = data;
  const {sheet} = state;
  const words = state.base && sheet ? `Save as ${sheet.sheet.revision}` : "Save";
  return html`<button type="button" class="main" @click=${() => save(data, false)}>
      ${words}…
    </button>
    <button type="button" @click=${() => save(data, true)}>Save and record a bake…</button>`;
}

function banners(data) {
  const {state} = data;
  const last = state.newer.at(-1);
  return html`${state.saved
      ? html`<div class="edit-banner" role="status">
          <p>
            This draft is saved already, as <a href=${worksheetPage(state.saved.address)}
              >${short(state.saved.address)}</a>: ${state.saved.note}. It was left over.
          </p>
          <button type="button" @click=${() => throwAway(data, true)}>Throw it away</button>
        </div>`
      : last
        ? html`<div class="edit-banner" role="status">
            <p>
              ${last.author} saved ${short(last.address)} while this draft was open:
              <b>${last.note}</b>. Saving merges it with yours.
              <a href=${formulaPage(last.formula, {
                line: last.variant,
                from: state.base.address,
                to: last.address,
              })}>What it changes</a>
            </p>
          </div>`
        : nothing}
    ${state.status === "conflict" && data.undecided
      ? html`<div class="edit-banner warning">
          <p>This draft was changed at two places. What you type is kept in this browser only.</p>
          <button type="button" @click=${() => data.undecided()}>Look at both</button>
        </div>`
      : nothing}
    ${state.status === "gone"
      ? html`<div class="edit-banner warning" role="status">
          <p>
            The viewer has no such draft any more: it was saved or thrown away elsewhere. What you
            see is kept in this browser.
          </p>
          <button type="button" @click=${() => keepAsNew(data)}>Keep it as a new draft</button>
          <button type="button" class="plain" @click=${() => forget(data)}>Let it go</button>
        </div>`
      : nothing}
    ${(state.sheet?.remarks ?? []).map((words) => html`<p class="quiet remark">${words}</p>`)}`;
}

// On a phone the strip stays at the lower edge: a few figures, and all of them on demand.
function strip(data) {
  const {state, ui} = data;
  return html`<aside class="edit-strip ${ui.strip ? "open" : ""}" aria-label="Figures">
    <button
      type="button"
      class="glance"
      aria-expanded=${String(ui.strip)}
      aria-controls="all-figures"
      @click=${() => {
        ui.strip = !ui.strip;
        state.redraw();
      }}
    >
      ${glance(state)} <span class="glance-more">${ui.strip ? "Fewer" : "All figures"}</span>
    </button>
    <div class="all-figures" id="all-figures">
      <p class="sides-key" aria-hidden="true">
        ${state.base
          ? html`<span class="ring"></span> ${short(state.base.address)}
              <span class="disc"></span> this draft`
          : nothing}
      </p>
      ${figurePanel(state, ui)}
    </div>
  </aside>`;
}

function ending(data) {
  const {state} = data;
  const changes = state.sheet?.changes ?? [];
  return html`<section class="edit-end">
    ${state.base
      ? html`<h2>What changes</h2>
          ${changes.length === 0
            ? html`<p class="quiet">Nothing yet.</p>`
            : html`<ul class="changes">
                ${changes.map((each) => html`<li>${flowing(each.sentence)}</li>`)}
              </ul>`}`
      : nothing}
    ${problemSummary(data)}
    <p class="actions">${saveButtons(data)}</p>
  </section>`;
}

function problemSummary({state}) {
  const problems = state.sheet?.problems ?? [];
  return problems.length === 0
    ? nothing
    : html`<div class="to-complete">
        <p>${count(problems.length, "thing")} to complete before it can be saved:</p>
        <ul>
          ${problems.map(
            (each) => html`<li>
              <button type="button" class="plain" @click=${() => goTo(state, each.where)}>
                ${each.message}
              </button>
            </li>`,
          )}
        </ul>
      </div>`;
}
