// A finding looked into: its likely causes, what changed when it came or went, and the bakes that
// tell changes apart.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {expected, order} from "/api.js";
import {bakePage, causesPage, short, worksheetPage} from "/address.js";
import {capital, count, fullDay} from "/format.js";
import {causeList} from "/parts/cause-list.js";
import {planSection} from "/parts/cause-plan.js";
import {choiceField} from "/parts/fields.js";
import {notice} from "/parts/notices.js";

export const causesView = {
  rereads: true,

  async load({parts, query}, {signal}) {
    const asked = Object.fromEntries(
      ["finding", "pieces", "tray"].map((name) => [name, query.get(name) ?? undefined]),
    );
    const sheet = await api.causes(parts.address, asked, signal);
    const first = sheet.findings[0];
    return sheet.inquiry || !first
      ? sheet
      : api.causes(parts.address, {...asked, finding: first.word}, signal);
  },

  title: (sheet) =>
    `${sheet.inquiry ? `${capital(sheet.inquiry.finding)}, causes` : "Causes"} · ${sheet.name}`,

  draw(sheet, place, tools) {
    const begin = beginner(sheet, tools);
    return html`<article class="page sheet-of-paper causes-page">
      <header>
        <h1>${sheet.inquiry ? capital(sheet.inquiry.finding) : "Causes of a finding"}</h1>
        <p class="sub">
          ${sheet.name},
          <a href=${worksheetPage(sheet.address)}>revision ${short(sheet.address)}</a> and the bakes up to it
        </p>
      </header>
      <div class="cause-columns">
        ${chooser(sheet, tools)}
        <div class="cause-answer">
          ${sheet.inquiry ? inquiry(sheet, begin, tools) : nothingFound(sheet)} ${cautions(sheet)}
        </div>
      </div>
    </article>`;
  },
};

// Orders a draft and goes to it.
function beginner(sheet, tools) {
  return async (name, carried) => {
    try {
      const draft = await order(name, {
        address: sheet.address,
        finding: sheet.inquiry.finding,
        ...carried,
      });
      await tools.go(`/drafts/${draft.id}`);
    } catch (thrown) {
      const failure = expected(thrown);
      notice({text: `${failure.message} ${failure.hint}`, warning: true});
    }
  };
}

const STANDINGS = {
  present: "on the newest bake",
  always: "on every bake",
  gone: "gone",
};

function chooser(sheet, tools) {
  const chosen = sheet.inquiry?.finding;
  const known = sheet.findings.some((each) => each.word === chosen);
  const faults = sheet.findings.filter((each) => each.merit !== true);
  const merits = sheet.findings.filter((each) => each.merit === true);
  return html`<nav class="cause-findings" aria-label="Findings">
    ${findingGroup("Faults", faults, chosen, sheet)}
    ${findingGroup("Merits", merits, chosen, sheet)}
    ${choiceField({
      id: "cause-other",
      label: "Another fault",
      value: known ? "" : chosen ?? "",
      options: [
        ["", "not on any bake so far"],
        ...[...new Set([...(known || !chosen ? [] : [chosen]), ...sheet.others])].map((word) => [
          word,
          word,
        ]),
      ],
      chosen: (finding) => finding && tools.go(causesPage(sheet.address, {finding})),
    })}
  </nav>`;
}

function findingGroup(name, rows, chosen, sheet) {
  return rows.length === 0
    ? nothing
    : html`<h2>${name}</h2>
        <ul>
          ${rows.map(
            (each) => html`<li>
              <a
                href=${causesPage(sheet.address, {finding: each.word})}
                aria-current=${each.word === chosen ? "page" : nothing}
              >
                <span class="cause-mark ${each.standing}" aria-hidden="true"></span>
                <b>${each.word}</b>
                <span class="n">${STANDINGS[each.standing]}, ${each.bakes} of ${each.judged}</span>
              </a>
            </li>`,
          )}
        </ul>`;
}

function nothingFound(sheet) {
  return html`<p class="say">
      No bake up to this revision has a finding yet. Note what you see on the pieces when you
      record a bake; then it is told here what may be behind it.
    </p>
    <p class="actions">
      <a class="button" href=${`/record/${sheet.address}`}>Record a bake</a>
    </p>`;
}

function inquiry(sheet, begin, tools) {
  const {inquiry} = sheet;
  return html`<p class="say">${inquiry.summary}</p>
    ${bakes(inquiry)}
    ${sheet.unjudged_bakes > 0
      ? html`<p class="quiet">
          Nothing was noted on ${count(sheet.unjudged_bakes, "more bake")}, which tells nothing.
        </p>`
      : nothing}
    ${causeList(sheet, begin)} ${turns(inquiry)} ${planSection(sheet, begin, tools)}`;
}

// The judged bakes in order: filled with the finding, hollow without it.
function bakes({bakes: rows, finding}) {
  return rows.length === 0
    ? nothing
    : html`<section aria-label="Bakes with and without it">
        <ol class="cause-bakes">
          ${rows.map(
            (each) => html`<li class=${each.has ? "has" : ""}>
              <a href=${bakePage({formula: each.formula, id: each.bake})}>
                <span class="cause-mark ${each.has ? "present" : "gone"}" aria-hidden="true"></span>
                <span>${short(each.address)}</span>
                <span class="n">${fullDay(each.time)}</span>
                <span class="n">${howMany(each, finding)}</span>
              </a>
            </li>`,
          )}
        </ol>
      </section>`;
}

function howMany({has, pieces, with: found}) {
  if (!has) {
    return "without it";
  }
  return pieces === 0 ? "with it" : `on ${found} of ${pieces}`;
}

function turns({turns: all}) {
  if (all.length === 0) {
    return nothing;
  }
  const newest = all[all.length - 1];
  const earlier = all.slice(0, -1).reverse();
  return html`<section>
    <h2>What changed when it ${newest.came ? "came" : "went"}</h2>
    ${turn(newest)}
    ${earlier.length > 0
      ? html`<details class="cause-more">
          <summary>${capital(count(earlier.length, "earlier time"))} it came or went</summary>
          ${earlier.map(
            (each) => html`<h3>${each.came ? "Came" : "Went"}</h3>
              ${turn(each)}`,
          )}
        </details>`
      : nothing}
  </section>`;
}

function turn(each) {
  return html`<div class="cause-turn">
    <p>
      <span class="cause-mark ${each.came ? "gone" : "present"}" aria-hidden="true"></span>
      ${each.came ? "Without it" : "With it"}: ${each.from},
      <a href=${worksheetPage(each.from_address)}>${each.from_address}</a>.
      <span class="cause-mark ${each.came ? "present" : "gone"}" aria-hidden="true"></span>
      ${each.came ? "With it" : "Without it"}: ${each.to},
      <a href=${worksheetPage(each.to_address)}>${each.to_address}</a>.
    </p>
    <p class=${each.confounded ? "caution" : ""}>${each.sentence}</p>
    <dl class="cause-changes">
      ${each.changes.map(
        (change) => html`<div>
          <dt>${capital(change.name)}</dt>
          <dd>${change.detail || "changed"}</dd>
        </div>`,
      )}
    </dl>
    ${each.like_for_like ? html`<p>${each.like_for_like}</p>` : nothing}
  </div>`;
}

function cautions({cautions: all}) {
  return html`<section class="cautions">
    <h2>To mind</h2>
    <ul>
      ${all.map((each) => html`<li>${each}</li>`)}
    </ul>
  </section>`;
}
