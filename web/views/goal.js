// One goal: its rules, how every formula stands to it, and the form that adds or changes it.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {print as printed} from "/address.js";
import {capital, count, flowing} from "/format.js";
import {figureMoves} from "/parts/figure-moves.js";
import {textArea, textField, tickField} from "/parts/fields.js";
import {goalMark, ruleList} from "/parts/goal.js";
import {
  carriedLimit,
  limitFields,
  limitOf,
  shareFields,
  sharesOf,
  withoutFields,
} from "/parts/limits.js";
import {
  drawAgain,
  formActions,
  formState,
  leaveForm,
  otherProblems,
  problemOf,
  triedForm,
  typed,
} from "/parts/tried-form.js";
import {problemList} from "/views/failure.js";
import {cautions} from "/views/food.js";
import {lineAddress} from "/views/pantry.js";

const NO_LAW = "Net carbohydrate has no legal definition: common practice, no source.";

export const goalView = {
  async load({parts}, {signal}) {
    const [page, choices, notebook] = await Promise.all([
      api.goalPage(parts.goal, signal),
      api.kitchen(signal),
      api.notebook(signal),
    ]);
    return {page, choices, notebook, others: null};
  },

  title: ({page}) => page.goal.name,

  draw(data, place, tools) {
    if (!place.query.get("edit")) {
      return shown(data, tools);
    }
    data.form ??= begin(data, tools);
    return editing(data);
  },

  left: (data) => data.form && leaveForm(data.form),
};

export const newGoalView = {
  async load(place, {signal}) {
    const [choices, notebook] = await Promise.all([api.kitchen(signal), api.notebook(signal)]);
    return {page: null, choices, notebook};
  },

  title: () => "Add a goal",

  draw(data, place, tools) {
    data.form ??= begin(data, tools);
    return editing(data);
  },

  left: (data) => leaveForm(data.form),
};

function shown(data, tools) {
  const {goal, cautions: list} = data.page;
  return html`<div class="page goal-page">
    <div class="page-head">
      <div>
        <h1>${goal.name}</h1>
        <p class="sub">filed as <code>${goal.goal}</code></p>
      </div>
      <p class="actions">
        <a class="button main" href="/goals/${goal.goal}?edit=yes">Change</a>
      </p>
    </div>
    ${goal.note ? html`<p class="why">${goal.note}</p>` : nothing}
    <div class="columns kitchen-columns">
      <div>
        <section>
          <h2>Rules</h2>
          <ul class="rule-words">
            ${goal.rules.map((rule) => html`<li>${capital(flowing(rule))}</li>`)}
          </ul>
          <p class="quiet">
            Net carbohydrate =
            ${goal.net_carbohydrate_rule ?? data.notebook.net_carbohydrate_rule}
            (${goal.net_carbohydrate_rule ? "this goal’s own rule" : "the notebook’s rule"}).
          </p>
        </section>
      </div>
      <div>
        <section>
          <h2>How the formulas stand now</h2>
          ${goal.formulas.length === 0
            ? html`<p>
                No formula states this goal yet. Open <a href="/">a formula</a> and choose it there.
              </p>`
            : goal.formulas.map(standingBlock)}
        </section>
        ${others(data, tools)}
      </div>
    </div>
    ${cautions(list)}
  </div>`;
}

function standingBlock(each) {
  return html`<div class="standing-block">
    <h3>
      <a href=${lineAddress(printed(each))}>${each.name}</a>
      ${each.variant ? html`<span class="quiet">${each.variant}</span>` : nothing}
      ${goalMark(each.standing?.met ?? null)}
    </h3>
    ${each.problems.length > 0 ? problemList(each.problems) : nothing}
    ${each.standing ? ruleList(each.standing.checks) : nothing}
  </div>`;
}

function others(data, tools) {
  const opened = async (event) => {
    if (!event.target.open || data.others) {
      return;
    }
    try {
      data.others = (await api.goalOthers(data.page.goal.goal)).formulas;
    } catch (thrown) {
      data.others = [];
      data.othersFailed = thrown.message;
    }
    tools.redraw();
  };
  return html`<details class="others" @toggle=${opened}>
    <summary>How other formulas would stand</summary>
    ${data.others === null
      ? html`<p class="quiet">Working it out…</p>`
      : data.othersFailed
        ? html`<p class="problem">${data.othersFailed}</p>`
        : data.others.length === 0
          ? html`<p class="quiet">There is no other formula.</p>`
          : data.others.map(standingBlock)}
  </details>`;
}

function begin({page, choices, notebook}, tools) {
  return triedForm({
    folder: choices.folder,
    name: `goal ${page?.goal.goal ?? ""}`,
    fresh: fresh(page, notebook),
    carried,
    orders: ["goal/try", "goal/save"],
    words: {asNew: !page},
    saved: async (outcome) => {
      await tools.go(`/goals/${outcome.name}`, {replace: true});
      scrollTo(0, 0);
    },
    tools,
  });
}

function fresh(page, notebook) {
  const goal = page?.goal;
  return {
    seen: page?.seen ?? null,
    goal: goal?.goal ?? "",
    name: goal?.name ?? "",
    note: goal?.note ?? "",
    limits: (goal?.limits ?? []).map(limitOf),
    without_allergens: goal?.without_allergens ?? [],
    without_foods: goal?.without_foods ?? [],
    own_rule: Boolean(page?.subtract),
    subtract: sharesOf(page?.subtract ?? notebook.subtract),
    variants: true,
  };
}

function carried(state) {
  const {own_rule: own, limits, subtract, ...rest} = state;
  return {...rest, limits: limits.map(carriedLimit), subtract: own ? subtract : null};
}

function editing({form, page, choices, notebook}) {
  const {state, tried} = form;
  const back = page ? `/goals/${page.goal.goal}` : "/goals";
  const drawn = new Set([
    "name", "goal", "without_foods",
    ...state.limits.flatMap((_, at) => [
      `limits.${at}`, `limits.${at}.at_least`, `limits.${at}.at_most`, `limits.${at}.figure`,
    ]),
  ]);
  return html`<div class="page goal-page">
    <h1>${page ? `Change ${page.goal.name}` : "Add a goal"}</h1>
    ${formState(form, page ? page.goal.name : "it")}
    <div class="columns kitchen-columns">
      <div @focusout=${() => drawAgain(form)}>
        ${otherProblems(form, drawn)} ${texts(form)} ${limitFields(form, choices)}
        ${withoutFields(form, choices)} ${netRule(form, notebook)} ${variantTick(form, page)}
        ${formActions(form, "Save", html`<a class="button" href=${back}>Leave</a>`)}
        <p class="quiet">What you type is kept in this browser until you save or throw it away.</p>
      </div>
      <aside class="would" id="would" aria-label="Who would stand otherwise" aria-live="polite">
        <section>
          <h2>${page ? "Who would stand otherwise" : "Who would meet it"}</h2>
          ${tried && tried.rules.length > 0
            ? html`<p class="quiet">Rules: ${flowing(tried.rules.join("; "))}.</p>`
            : nothing}
          ${figureMoves(tried?.moves, {
            none: page
              ? "No formula states it yet, so nobody would stand otherwise."
              : "Add a rule to see how the formulas would stand.",
            still: "Nobody would stand otherwise by what is typed so far.",
            asNew: !page,
          })}
        </section>
        ${tried ? cautions(tried.cautions) : nothing}
      </aside>
    </div>
  </div>`;
}

function texts(form) {
  const {state} = form;
  const changed = (name) => (text) => {
    state[name] = text;
    typed(form, name);
  };
  return html`${textField({
      id: "name",
      label: "Name",
      required: true,
      value: state.name,
      problem: problemOf(form, "name", "name"),
      typed: changed("name"),
    })}
    ${problemOf(form, "goal", "name")
      ? textField({
          id: "goal",
          label: "Short name",
          value: state.goal,
          problem: problemOf(form, "goal", "goal"),
          typed: changed("goal"),
        })
      : nothing}
    ${textArea({
      id: "note",
      label: "Note",
      rows: 2,
      hint: "For whom, and why.",
      value: state.note,
      typed: changed("note"),
    })}`;
}

function netRule(form, notebook) {
  const {state} = form;
  const choice = (own, words) => html`<label class="tick">
    <input
      type="radio"
      name="own-rule"
      .checked=${state.own_rule === own}
      @change=${() => {
        state.own_rule = own;
        typed(form, "subtract");
      }}
    />
    <span>${words}</span>
  </label>`;
  return html`<fieldset class="form-part">
    <legend>Net carbohydrate</legend>
    <p class="modes">
      ${choice(false, `As the notebook counts: ${notebook.net_carbohydrate_rule}`)}
      ${choice(true, "By a rule of its own")}
    </p>
    ${state.own_rule ? shareFields(form, state.subtract, NO_LAW) : nothing}
  </fieldset>`;
}

function variantTick(form, page) {
  const variants = page?.goal.formulas.filter((each) => each.variant) ?? [];
  return variants.length === 0
    ? nothing
    : tickField({
        id: "variants",
        label: `Change it too for ${count(variants.length, "variant")}, where the copy is the same`,
        value: form.state.variants,
        ticked: (on) => {
          form.state.variants = on;
          typed(form, "variants");
        },
      });
}
