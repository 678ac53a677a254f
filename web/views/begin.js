// Write a formula: from nothing, from another formula, or from pasted text. Nothing is committed.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {order} from "/api.js";
import {number} from "/format.js";
import {chooseFormula, copyPanel} from "/parts/copying.js";
import {choiceField, textField} from "/parts/fields.js";
import {pastePanel, readPasted} from "/parts/paste-panel.js";
import {firstOpen, noChoices, openLines} from "/parts/pasting.js";
import {forgetForm, keepForm, keptForm} from "/parts/kept-form.js";
import {refused} from "/views/failure.js";

const WAYS = [
  ["nothing", "From nothing"],
  ["copy", "Copy a formula"],
  ["paste", "Paste"],
];

// While the page is loading there is nothing to draw again.
const QUIET = {redraw() {}};

export const beginView = {
  async load({query}, {before, signal}) {
    const asked = query.get("way");
    const way = WAYS.some(([key]) => key === asked) ? asked : "nothing";
    const data = before ?? (await fresh(query.get("from"), signal));
    data.way = way;
    if (way === "paste" && data.form.text.trim() && !data.read) {
      await readPasted(data, QUIET);
    }
    if (way === "copy" && data.form.from && !data.sheet) {
      await chooseFormula(data, data.form.from, QUIET);
    }
    return data;
  },

  title: () => "Write a formula",

  draw: (data, place, tools) => html`<div class="page begin ${data.way}">
    <h1>Write a formula</h1>
    <nav class="ways" aria-label="Ways to begin">
      <ul>
        ${WAYS.map(
          ([way, name]) => html`<li>
            <a href="/begin?way=${way}" aria-current=${data.way === way ? "page" : nothing}
              >${name}</a>
          </li>`,
        )}
      </ul>
    </nav>
    <p class="quiet">
      One that somebody shared with you: <a href="/take-in">take in a bundle</a>.
    </p>
    <form
      novalidate
      @submit=${(event) => {
        event.preventDefault();
        begin(data, tools);
      }}
    >
      ${way(data, tools)} ${facts(data, tools)}
      ${data.problems.open
        ? html`<p class="problem" role="status">${data.problems.open}</p>`
        : nothing}
      ${data.failure ? html`<div class="refused">${refused(data.failure)}</div>` : nothing}
      <p class="actions">
        <button type="submit" class="main" aria-disabled=${String(data.busy)}>Continue</button>
        <span class="quiet">It becomes a draft. Nothing is saved to the notebook yet.</span>
      </p>
    </form>
  </div>`,

  left: (data) => clearTimeout(data.timer),
};

async function fresh(from, signal) {
  const [list, goals] = await Promise.all([api.formulas(signal), api.goals(signal)]);
  const form = keptForm({...EMPTY_FORM, choices: noChoices()});
  return {
    formulas: list.formulas.filter((each) => each.problems.length === 0),
    goals: goals.goals,
    form: from ? {...form, from} : form,
    problems: {},
    read: null,
    unread: null,
    failure: null,
    pasting: {opened: new Set(), choosers: {}, typed: {}},
    sheet: null,
    revisions: [],
    busy: false,
  };
}

const EMPTY_FORM = {name: "", pieces: "", goal: "", text: "", from: ""};

function way(data, tools) {
  if (data.way === "copy") {
    return copyPanel(data, tools);
  }
  return data.way === "paste" ? pastePanel(data, tools) : nothing;
}

/* name, pieces, goal */

function facts(data, tools) {
  const type = (field) => (text) => {
    data.form[field] = text;
    delete data.problems[field];
    keepForm(data.form);
    tools.redraw();
  };
  const found = proposals(data);
  return html`<div class="facts">
    ${textField({
      id: "name",
      label: "Name",
      value: data.form.name,
      typed: type("name"),
      required: true,
      problem: data.problems.name,
      hint: found.name
        ? `Left empty, it is “${found.name}”.`
        : data.way === "nothing"
          ? "Such as “Seeded lupin bun”."
          : undefined,
    })}
    ${textField({
      id: "pieces",
      label: "Pieces of a batch",
      value: data.form.pieces,
      typed: type("pieces"),
      inputmode: "numeric",
      size: "short",
      hint: piecesHint(found, data),
      after: perhaps(data, type("pieces")),
    })}
    ${data.goals.length > 0
      ? choiceField({
          id: "goal",
          label: "Goal",
          value: data.form.goal,
          chosen: type("goal"),
          options: [
            ["", found.goal ? "As in the formula copied" : "No goal yet"],
            ...data.goals.map((goal) => [goal.goal, goal.name]),
          ],
        })
      : nothing}
  </div>`;
}

/** What stands in the place of a field that is left empty. */
function proposals({way: current, read: found, sheet}) {
  if (current === "paste" && found) {
    return {name: found.name, pieces: found.yield?.pieces ?? null};
  }
  if (current === "copy" && sheet) {
    return {name: null, pieces: sheet.yield.pieces, goal: sheet.goal};
  }
  return {name: null, pieces: null};
}

// What the text may have meant: for the person to say.
function perhaps({way: current, read: found, form}, type) {
  const pieces = current === "paste" ? (found?.yield?.perhaps ?? null) : null;
  return pieces === null || form.pieces
    ? nothing
    : html`<button type="button" @click=${() => type(String(pieces))}>${pieces} pieces</button>`;
}

function piecesHint(found, data) {
  if (found.pieces !== null && found.pieces !== undefined) {
    return `Left empty, it is ${number(found.pieces)}.`;
  }
  return data.way === "paste" && data.read?.yield
    ? `The text says “${data.read.yield.text}”: say how many pieces that is.`
    : "May be left open for now.";
}

/* on to the draft */

async function begin(data, tools) {
  if (data.busy) {
    return;
  }
  data.problems = {};
  data.failure = null;
  try {
    await goOn(data, tools);
  } catch (thrown) {
    data.failure = api.expected(thrown);
  }
  data.busy = false;
  tools.redraw();
}

async function goOn(data, tools) {
  if (data.way === "paste") {
    await readPasted(data, tools);
  }
  const wrong = missing(data);
  if (wrong) {
    data.problems = {[wrong.field]: wrong.sentence};
    tools.redraw();
    document.getElementById(wrong.focus)?.focus();
    return;
  }
  data.busy = true;
  tools.redraw();
  const {id} = await order("draft/begin", {document: await documentOf(data)});
  forgetForm();
  await tools.go(`/drafts/${id}`);
}

/** What hinders going on, and where: {field, sentence, focus}; null when nothing does. */
function missing(data) {
  const {way: current, form, read: found, unread, sheet} = data;
  if (current === "copy" && !sheet) {
    return {field: "from", sentence: "Choose the formula to copy.", focus: "from"};
  }
  if (current === "paste") {
    const none = !found || unread || !found.lines.some((line) => line.kind === "ingredient");
    if (!form.text.trim() || none) {
      return {
        field: "text",
        sentence: "There is no ingredient to begin with yet.",
        focus: "text",
      };
    }
    if (openLines(found).length > 0) {
      return {
        field: "open",
        sentence: "Some lines still need a choice. Settle them, or leave them out.",
        focus: firstOpen(found),
      };
    }
  }
  if (!form.name.trim() && !proposals(data).name) {
    return {field: "name", sentence: "Give the formula a name.", focus: "name"};
  }
  return null;
}

async function documentOf(data) {
  const {form} = data;
  const start = {nothing: async () => ({}), copy: copyOf, paste: async () => data.read.formula};
  const formula = await start[data.way](data);
  const result = {...formula, name: form.name.trim() || proposals(data).name};
  if (form.goal) {
    result.goal = form.goal;
  }
  const pieces = form.pieces.trim();
  if (pieces) {
    result.yield = {...formula.yield, pieces: /^\d+$/.test(pieces) ? Number(pieces) : pieces};
  }
  return result;
}

async function copyOf(data) {
  return (await api.copyOf(data.form.from)).formula;
}

