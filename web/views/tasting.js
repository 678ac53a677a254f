// A tasting as its organiser sees it: what to mind, the sheets, the key when it is asked for, the
// answers, and what they tell.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {moment} from "/format.js";
import {ask} from "/parts/dialogs.js";
import {notice} from "/parts/notices.js";
import {answerFields, answerOf, carriedAnswer, isComplete} from "/parts/tasting-answer.js";
import {tastingResults} from "/parts/tasting-results.js";
import {refused} from "/views/failure.js";

export const tastingView = {
  async load({parts}, {signal, before}) {
    const tasting = await api.tasting(parts.formula, parts.tasting, signal);
    const same = before?.tasting.id === tasting.id && before.tasting.formula === tasting.formula;
    return {tasting, key: same ? before.key : null, more: "", failure: null};
  },

  title: ({tasting}) => `${tasting.kind_label} ${tasting.id}`,
  rereads: true,

  draw(data, place, tools) {
    const {tasting} = data;
    return html`<div class="page tasting">
      <p class="quiet"><a href="/tastings/${tasting.formula}">Tastings of ${tasting.name}</a></p>
      <h1>${tasting.kind_label} <span class="quiet">${moment(tasting.time)}</span></h1>
      <p class="say">${tasting.question}</p>
      ${tasting.note ? html`<p class="why">${tasting.note}</p>` : nothing}
      <div class="tasting-columns">
        <div>${samples(tasting)} ${before(tasting)} ${results(data, tools)}</div>
        <div>${sheets(data, tools)} ${key(data, tools)}</div>
      </div>
    </div>`;
  },
};

function samples(tasting) {
  return html`<section>
    <h2>Samples</h2>
    <ol class="tasting-samples">
      ${tasting.samples.map(
        (each) => html`<li><a href="/worksheet/${each.address}">${each.text}</a>
          ${each.note ? html`<span class="remark">${each.note}</span>` : nothing}</li>`,
      )}
    </ol>
    ${tasting.attributes.length > 0
      ? html`<p>Judged just about right: ${tasting.attributes.join(", ")}</p>`
      : nothing}
    ${tasting.remarks.map((each) => html`<p class="remark">${each}</p>`)}
  </section>`;
}

function before(tasting) {
  return html`<section class="caution">
    <h2>Before anything is served</h2>
    <ul>
      ${tasting.cautions.map((each) => html`<li>${each}</li>`)}
    </ul>
  </section>`;
}

function results({tasting}, tools) {
  return html`<section class="tasting-results">
    <h2>What the answers tell</h2>
    <p class="quiet">${tasting.results.answered} of ${tasting.results.sheets} sheets answered
      <button type="button" class="plain" @click=${tools.again}>Look again</button></p>
    ${tastingResults(tasting)}
  </section>`;
}

function sheets(data, tools) {
  const {tasting} = data;
  const base = `/tasting/${tasting.formula}/${tasting.id}`;
  return html`<section>
    <h2>Sheets</h2>
    <p class="actions">
      <a class="button" href="${base}/sheets">Print the sheets</a>
      <a href="/phone">Pair the tasters’ phones</a>
    </p>
    <table class="tasting-sheets">
      <thead>
        <tr>
          <th>Sheet</th>
          <th>Codes in order</th>
          <th>Answer</th>
          <th><span class="unseen">Act</span></th>
        </tr>
      </thead>
      <tbody>
        ${tasting.sheets.map(
          (sheet) => html`<tr>
            <th scope="row">
              <a href="${base}/sheet/${sheet.number}">${sheet.number}</a> ${sheet.initials ?? ""}
            </th>
            <td class="tasting-row-codes">${sheet.codes.join(" ")}</td>
            <td>${answered(sheet.answer)}</td>
            <td>
              <button type="button" @click=${() => enter(data, sheet, tools)}
                aria-label="${act(sheet)} the answer of sheet ${sheet.number}"
              >${act(sheet)}</button>
            </td>
          </tr>`,
        )}
      </tbody>
    </table>
    ${moreSheets(data, tools)}
  </section>`;
}

function act(sheet) {
  return sheet.answer ? "Correct" : "Enter";
}

function answered(answer) {
  if (!answer) {
    return html`<span class="quiet">open</span>`;
  }
  const said = answer.choice
    ?? (answer.ranking.length > 0
      ? answer.ranking.join(" > ")
      : answer.scores.map((each) => `${each.code}: ${each.liking ?? "not said"}`).join(", "));
  return html`${said === "none" ? "no preference" : said}
    ${answer.note ? html`<span class="remark">“${answer.note}”</span>` : nothing}`;
}

function moreSheets(data, tools) {
  return html`<form class="tasting-more" @submit=${(event) => addSheets(event, data, tools)}>
    <label for="more">More tasters</label>
    <input id="more" inputmode="numeric" autocomplete="off" .value=${data.more}
      @input=${(event) => (data.more = event.target.value)} />
    <button>Add sheets</button>
    ${data.failure ? html`<div class="tasting-refused">${refused(data.failure)}</div>` : nothing}
  </form>`;
}

async function addSheets(event, data, tools) {
  event.preventDefault();
  const {tasting} = data;
  data.failure = null;
  try {
    data.tasting = await api.order("tasting/more", {
      formula: tasting.formula,
      id: tasting.id,
      sheets: Number.parseInt(data.more, 10) || 0,
    });
    data.more = "";
    data.key = null;
  } catch (thrown) {
    data.failure = api.expected(thrown);
  }
  tools.redraw();
}

function key(data, tools) {
  const {tasting} = data;
  const toggle = async () => {
    try {
      data.key = data.key ? null : await api.tastingKey(tasting.formula, tasting.id);
    } catch (thrown) {
      notice({text: api.expected(thrown).message, warning: true});
    }
    tools.redraw();
  };
  return html`<section class="tasting-key">
    <h2>Key</h2>
    <p>
      <button type="button" aria-expanded=${data.key ? "true" : "false"} @click=${toggle}>
        ${data.key ? "Hide which code is which" : "Show which code is which"}
      </button>
    </p>
    ${data.key
      ? html`<table>
          <thead>
            <tr><th>Sheet</th><th>Plates in order: code, sample</th></tr>
          </thead>
          <tbody>
            ${data.key.sheets.map(
              (sheet) => html`<tr>
                <th scope="row">${sheet.number} ${sheet.initials ?? ""}</th>
                <td>${sheet.plates.map(
                  (plate) => html`<span class="tasting-plate"
                    ><span class="tasting-code">${plate.code}</span>
                    sample ${plate.sample}</span> `,
                )}</td>
              </tr>`,
            )}
          </tbody>
        </table>`
      : html`<p class="hint">For whoever fills the plates; not for who serves or tastes.</p>`}
  </section>`;
}

async function enter(data, sheet, tools) {
  const {tasting} = data;
  const form = {...sheet, kind: tasting.kind, attributes: tasting.attributes};
  const answer = answerOf(sheet.answer, sheet.initials);
  let failure = null;
  const save = async (event, close, redraw) => {
    event.preventDefault();
    try {
      data.tasting = await api.order("tasting/correct", {
        formula: tasting.formula,
        id: tasting.id,
        sheet: sheet.number,
        answer: carriedAnswer(answer),
        based_on: sheet.version,
      });
      close(true);
    } catch (thrown) {
      failure = api.expected(thrown);
      redraw();
    }
  };
  const saved = await ask(
    `Answer of sheet ${sheet.number}`,
    (close, redraw) => html`<form @submit=${(event) => save(event, close, redraw)}>
      ${answerFields(form, answer, redraw)}
      ${failure ? html`<div class="tasting-refused">${refused(failure)}</div>` : nothing}
      <p class="actions">
        <button class="main" ?disabled=${!isComplete(form, answer)}>Save the answer</button>
        <button type="button" @click=${() => close()}>Cancel</button>
      </p>
    </form>`,
    {wide: tasting.kind === "liking" || tasting.kind === "just-about-right"},
  );
  if (saved) {
    tools.redraw();
  } else if (failure?.reason === "conflict") {
    tools.again();
  }
}
