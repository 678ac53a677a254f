// A taster's sheet: on a phone to be filled in, or all of a tasting on paper. Nothing here tells
// the samples apart.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {
  answerFields,
  answerOf,
  carriedAnswer,
  isComplete,
  LIKING,
  RIGHT,
} from "/parts/tasting-answer.js";
import {refused} from "/views/failure.js";

export const tastingSheetView = {
  async load({parts}, {signal}) {
    const sheet = await api.tastingSheet(parts.formula, parts.tasting, parts.sheet, signal);
    return {sheet, answer: kept(sheet) ?? answerOf(null, sheet.initials), failure: null};
  },

  title: ({sheet}) => `Sheet ${sheet.number}`,

  draw(data, place, tools) {
    const {sheet} = data;
    return html`<div class="page narrow tasting-sheet">
      <h1>Sheet ${sheet.number}</h1>
      ${sheet.answered ? thanks() : filling(data, tools)}
    </div>`;
  },
};

function thanks() {
  return html`<p class="say" role="status">Thank you. The answer of this sheet is in.</p>
    <p>Should it need a correction, tell whoever runs the tasting.</p>`;
}

function filling(data, tools) {
  const {sheet, answer} = data;
  const changed = () => {
    keep(sheet, answer);
    tools.redraw();
  };
  return html`${before(sheet)}
    <p class="say">${sheet.question}</p>
    <p>Taste in this order. Rinse with water between the samples.</p>
    ${codes(sheet)}
    <form @submit=${(event) => send(event, data, tools)}>
      ${answerFields(sheet, answer, changed)}
      ${data.failure ? html`<div class="tasting-refused">${refused(data.failure)}</div>` : nothing}
      <p class="actions">
        <button class="main" ?disabled=${data.sending || !isComplete(sheet, answer)}>
          Send the answer
        </button>
        <span class="quiet">It can be sent once.</span>
      </p>
    </form>`;
}

function before(sheet) {
  return html`<section class="caution">
    <h2>Before you taste</h2>
    <ul>
      ${sheet.cautions.map((each) => html`<li>${each}</li>`)}
    </ul>
  </section>`;
}

function codes(sheet) {
  return html`<ol class="tasting-codes" aria-label="Samples in the order of tasting">
    ${sheet.codes.map((code) => html`<li><span class="tasting-code">${code}</span></li>`)}
  </ol>`;
}

async function send(event, data, tools) {
  event.preventDefault();
  const {sheet, answer} = data;
  data.sending = true;
  data.failure = null;
  tools.redraw();
  try {
    data.sheet = await api.order("tasting/answer", {
      formula: sheet.formula,
      id: sheet.id,
      sheet: sheet.number,
      answer: carriedAnswer(answer),
    });
    forget(sheet);
    scrollTo(0, 0);
  } catch (thrown) {
    data.failure = api.expected(thrown);
  } finally {
    data.sending = false;
    tools.redraw();
  }
}

// What is not sent yet outlives a reload; a browser that keeps nothing asks again.
const name = ({formula, id, number}) => `ovenmark.tasting.${formula}.${id}.${number}`;

function kept(sheet) {
  try {
    const answer = JSON.parse(localStorage.getItem(name(sheet)));
    return Array.isArray(answer?.ranking) && answer.scores ? answer : null;
  } catch {
    return null;
  }
}

function keep(sheet, answer) {
  try {
    localStorage.setItem(name(sheet), JSON.stringify(answer));
  } catch {
    // Then it lives as long as the page.
  }
}

function forget(sheet) {
  try {
    localStorage.removeItem(name(sheet));
  } catch {
    // Nothing was kept.
  }
}

export const tastingSheetsView = {
  async load({parts}, {signal}) {
    return api.tastingSheets(parts.formula, parts.tasting, signal);
  },

  title: (data) => `Sheets of ${data.id}`,

  draw(data) {
    return html`<div class="page tasting-paper">
      <div class="actions">
        <h1>Sheets of tasting ${data.id}</h1>
        <button type="button" class="main" @click=${() => print()}>Print</button>
        <a href="/tasting/${data.formula}/${data.id}">Back to the tasting</a>
      </div>
      ${data.sheets.map((sheet) => paper(sheet))}
    </div>`;
  },
};

const blank = html`<span class="tasting-blank"></span>`;

function paper(sheet) {
  return html`<section class="tasting-page" aria-labelledby="paper-${sheet.number}">
    <h2 id="paper-${sheet.number}">
      Sheet ${sheet.number} <span class="quiet">tasting ${sheet.id}</span>
      <span class="tasting-who">Initials: ${sheet.initials ?? blank}</span>
    </h2>
    <p class="tasting-mind">${sheet.cautions.join(" ")}</p>
    <p class="tasting-asked">
      ${sheet.question} Taste in this order, from left to right; rinse with water in between.
    </p>
    ${codes(sheet)} ${blanks(sheet)}
    <p>Remarks: <span class="tasting-blank wide"></span></p>
  </section>`;
}

function blanks(sheet) {
  switch (sheet.kind) {
    case "triangle":
      return html`<p>The odd sample (guess if you must): ${blank}</p>`;
    case "preference":
      return html`<p>
        I prefer: ${blank} &emsp; <span class="tasting-box"></span> no preference
      </p>`;
    case "ranking":
      return html`<p>
        Best first: ${sheet.codes.map((each, at) => html`${at + 1}. ${blank} `)}
      </p>`;
    default:
      return html`<p class="hint">1 ${LIKING[0].toLowerCase()}, 5 ${LIKING[4].toLowerCase()},
          9 ${LIKING[8].toLowerCase()}. Circle a number${sheet.attributes.length > 0
            ? ", and tick one box for each attribute"
            : ""}.</p>
        ${sheet.codes.map((code) => blankScore(sheet, code))}`;
  }
}

function blankScore(sheet, code) {
  return html`<div class="tasting-blank-score">
    <p><span class="tasting-code">${code}</span>
      <span class="nine-numbers">1 2 3 4 5 6 7 8 9</span></p>
    ${sheet.attributes.map(
      (name) => html`<p><strong>${name}</strong>
        ${RIGHT.map((words) => html`<span class="tasting-boxed"
          ><span class="tasting-box"></span> ${words.toLowerCase()}</span> `)}</p>`,
    )}
  </div>`;
}
