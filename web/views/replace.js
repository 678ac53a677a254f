// Which foods can stand in for a line of a formula, how much of each, and what that moves.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {worksheetPage} from "/address.js";
import {flowing} from "/format.js";
import {choiceField} from "/parts/fields.js";
import {goalMark, goalWords} from "/parts/goal.js";
import {answerInFull} from "/parts/replace-answer.js";
import {answerLists, setAsideList} from "/parts/replace-list.js";
import {refused} from "/views/failure.js";

const NO_GOAL = "none";

export const replaceView = {
  rereads: true,

  async load({parts, query}, {before, signal}) {
    const {address} = parts;
    const asked = askedBy(query);
    const same = before?.address === address;
    const choices = same ? before.choices : await api.replaceChoices(address, signal);
    const narrow = same && before.asked.line === asked.line
      ? before.narrow
      : {words: "", own: false, met: false, all: {}};
    const data = {address, asked, choices, narrow, sheet: null, failure: null, busy: false};
    if (asked.line) {
      try {
        data.sheet = await api.replacing(address, asked, signal);
      } catch (thrown) {
        data.failure = api.expected(thrown);
      }
    }
    return data;
  },

  title: ({choices, sheet}) =>
    sheet ? `Replace ${sheet.line.name}, ${choices.name}` : `Replace a food, ${choices.name}`,

  draw: (data, place, tools) => html`<div class="page replace-page">
    <h1>
      ${data.sheet
        ? html`Replace ${data.sheet.line.name}`
        : html`Replace a food`}
    </h1>
    <p class="sub">
      in <a href=${worksheetPage(data.address)}>${data.choices.name} ${data.choices.address}</a>
    </p>
    ${question(data, tools)} ${data.failure ? refused(data.failure) : nothing}
    ${data.sheet ? answered(data, tools) : nothing}
    ${!data.sheet && !data.failure ? explanation() : nothing}
  </div>`,
};

function askedBy(query) {
  const asked = {};
  for (const name of ["line", "keep", "goal", "with"]) {
    if (query.get(name)) {
      asked[name] = query.get(name);
    }
  }
  return asked;
}

/** The address of the page with what is asked. */
function page(address, asked) {
  const query = new URLSearchParams(
    Object.entries(asked).filter(([, value]) => value !== "" && value !== undefined),
  );
  const text = query.toString();
  return `/replace/${address}${text ? "?" + text : ""}`;
}

function question(data, tools) {
  const {asked, choices} = data;
  const go = (next) => tools.go(page(data.address, {...asked, ...next}), {replace: true});
  const usual = choices.lines.find((line) => line.line === asked.line)?.usual;
  const usualWords = choices.keeps.find((each) => each.keep === usual)?.label;
  const own = choices.goals.find((goal) => goal.goal === choices.goal)?.name;
  return html`<form class="replace-asked" @submit=${(event) => event.preventDefault()}>
    ${choiceField({
      id: "replace-line",
      label: "The line that gives way",
      value: asked.line ?? "",
      chosen: (line) => go({line, keep: "", with: ""}),
      options: [
        ...(asked.line ? [] : [["", "Choose a line…"]]),
        ...choices.lines.map((line) => [line.line, `${line.name}, ${line.entered}`]),
      ],
    })}
    ${choiceField({
      id: "replace-keep",
      label: "What stays the same",
      value: asked.keep ?? "",
      chosen: (keep) => go({keep}),
      options: [
        ["", usualWords ? `its ${usualWords}, as usual` : "what is usual for it"],
        ...choices.keeps.map((each) => [each.keep, `its ${each.label}`]),
      ],
    })}
    ${choiceField({
      id: "replace-goal",
      label: "The goal to keep",
      value: asked.goal ?? "",
      chosen: (goal) => go({goal}),
      options: [
        ["", own ? `${own}, the formula’s own` : "the formula has none"],
        ...choices.goals
          .filter((goal) => goal.goal !== choices.goal)
          .map((goal) => [goal.goal, goal.name]),
        ...(own ? [[NO_GOAL, "no goal"]] : []),
      ],
    })}
  </form>`;
}

function explanation() {
  return html`<p class="say">
    Choose a line. The foods of your pantry and of the built-in table that can take its place are
    listed with the amount that keeps its protein, dry mass, fat, water or mass, and with everything
    that would move.
  </p>`;
}

function answered(data, tools) {
  const {sheet, asked} = data;
  const whole = asked.with ? sheet.answers[0] : null;
  const draft = (answer) => begin(data, answer, tools);
  const of = (food) => page(data.address, {...asked, with: food});
  return html`${now(sheet)}
    ${asked.with
      ? html`<p class="replace-back">
          <a href=${page(data.address, {...asked, with: ""})}>All foods that can stand in</a>
        </p>`
      : html`<p class="say">${flowing(sheet.summary)}</p>
          ${sheet.line.work.length > 0
            ? html`<p class="caution">${sheet.line.work.join(" ")}</p>`
            : nothing}`}
    ${whole ? answerInFull(sheet, whole, {draft, busy: data.busy}) : nothing}
    ${asked.with ? nothing : answerLists(sheet, data.narrow, {of, redraw: tools.redraw})}
    ${setAsideList(sheet, Boolean(asked.with))} ${toKnow(sheet)}`;
}

/** The line as it is, what is kept of it, and how the goal stands. */
function now(sheet) {
  const {line, kept, goal} = sheet;
  return html`<dl class="pairs replace-now">
    <div>
      <dt>Now</dt>
      <dd>${flowing(`${line.entered} of ${line.name}`)}, <span class="quiet">${line.source}</span>
      </dd>
    </div>
    <div>
      <dt>Stays</dt>
      <dd>${flowing(keptWords(kept))}</dd>
    </div>
    ${goal
      ? html`<div>
          <dt>Goal</dt>
          <dd>${goal.name}, now ${goalMark(goal.met, goalWords(goal.met))}</dd>
        </div>`
      : nothing}
  </dl>`;
}

function keptWords(kept) {
  return kept.keep === "mass" ? kept.text : `${kept.text} ${kept.label} (${kept.per_100_text})`;
}

async function begin(data, answer, tools) {
  data.busy = true;
  data.failure = null;
  tools.redraw();
  try {
    const draft = await api.order("replace/draft", {
      ...data.asked,
      address: data.sheet.address,
      with: answer.food,
    });
    await tools.go(`/drafts/${draft.id}`);
  } catch (thrown) {
    data.failure = api.expected(thrown);
    data.busy = false;
    tools.redraw();
  }
}

function toKnow(sheet) {
  return html`${sheet.remarks.length > 0
      ? html`<section class="replace-remarks">
          <h2>To know</h2>
          <ul>
            ${sheet.remarks.map((words) => html`<li>${flowing(words)}</li>`)}
          </ul>
        </section>`
      : nothing}
    <section class="caution replace-cautions">
      <h2>Allergens and cautions of the formula as it is</h2>
      <ul>
        ${sheet.cautions.map((words) => html`<li>${flowing(words)}</li>`)}
      </ul>
      <p>Local food codes and licensed practice decide.</p>
    </section>`;
}
