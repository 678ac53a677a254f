// The blind tastings of a formula, and the form that sets up another one.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {formulaPage} from "/address.js";
import {moment} from "/format.js";
import {choiceField, textArea, textField} from "/parts/fields.js";
import {problemList, refused} from "/views/failure.js";

const OTHER = "other";

export const tastingsView = {
  async load({parts}, {signal, before}) {
    const list = await api.tastings(parts.address, signal);
    return {list, form: before?.form ?? begin(list), failure: null, sending: false};
  },

  title: ({list}) => `Tastings of ${list.name}`,

  draw(data, place, tools) {
    const {list} = data;
    return html`<div class="page narrow tastings">
      <p class="quiet"><a href=${formulaPage(list.formula)}>${list.name}</a></p>
      <h1>Blind tastings</h1>
      ${list.tastings.length === 0 && list.problems.length === 0
        ? html`<p class="say">Nothing was tasted blind yet.</p>
            <p class="why">A blind tasting hides which sample is which behind codes of three digits,
              and serves them in balanced orders, so that neither knowing nor sequence decides.</p>`
        : nothing}
      <ul class="tasting-list">
        ${list.tastings.map(line)}
      </ul>
      ${list.problems.length > 0 ? problemList(list.problems) : nothing}
      ${planning(data, tools)}
    </div>`;
  },
};

function line(tasting) {
  return html`<li>
    <h2>
      <a href="/tasting/${tasting.formula}/${tasting.id}"
        >${tasting.kind_label}, ${moment(tasting.time)}</a>
    </h2>
    <p>${tasting.samples.join(" / ")}</p>
    <p>${tasting.says}</p>
    <p class="quiet">${tasting.answered} of ${tasting.sheets} sheets answered</p>
  </li>`;
}

function begin(list) {
  const revisions = list.samples.filter((each) => !each.sample.includes(":"));
  return {
    kind: "triangle",
    samples: [revisions[1], revisions[0]].map((each) => chosen(each)),
    tasters: "12",
    question: "",
    attributes: "sweet, salty, moist, firm",
    note: "",
  };
}

function planning(data, tools) {
  const {list, form} = data;
  const kind = list.kinds.find((each) => each.key === form.kind);
  const put = (name) => (value) => {
    form[name] = value;
    fit(form, list);
    tools.redraw();
  };
  const wrong = (name) => (data.failure?.where === name ? data.failure.message : "");
  return html`<form class="tasting-form" @submit=${(event) => plan(event, data, tools)}>
    <h2>Set up a tasting</h2>
    ${choiceField({
      id: "kind",
      label: "What the tasters do",
      value: form.kind,
      options: list.kinds.map((each) => [each.key, `${each.label}: ${each.question}`]),
      chosen: put("kind"),
    })}
    <fieldset>
      <legend>Samples</legend>
      ${form.samples.map((sample, at) => sampleField(data, kind, sample, at, tools))}
      ${form.samples.length < kind.most_samples
        ? html`<button type="button" @click=${() => add(data, tools)}>Add a sample</button>`
        : nothing}
      <p class="problem" ?hidden=${!wrong("samples")}>${wrong("samples")}</p>
    </fieldset>
    ${textField({
      id: "tasters",
      label: "How many people taste",
      value: form.tasters,
      size: "short",
      inputmode: "numeric",
      problem: wrong("tasters"),
      hint: "Decide it beforehand: stopping when the result pleases misleads.",
      typed: put("tasters"),
    })}
    ${form.kind === "triangle" ? panels(list.panels) : nothing}
    ${form.kind === "just-about-right"
      ? textField({
          id: "attributes",
          label: "What may be too little or too much",
          value: form.attributes,
          hint: "With commas between, such as sweet, moist.",
          typed: put("attributes"),
        })
      : nothing}
    ${textField({
      id: "question",
      label: "Question",
      value: form.question,
      placeholder: kind.question,
      hint: "Left empty, it is the one shown.",
      typed: put("question"),
    })}
    ${textArea({
      id: "note",
      label: "Note for yourself",
      value: form.note,
      rows: 2,
      typed: put("note"),
    })}
    ${data.failure ? html`<div class="tasting-refused">${refused(data.failure)}</div>` : nothing}
    <p class="actions">
      <button class="main" ?disabled=${data.sending}>Draw codes and orders</button>
    </p>
  </form>`;
}

function sampleField(data, kind, sample, at, tools) {
  const set = (name) => (value) => {
    sample[name] = value;
    tools.redraw();
  };
  const options = data.list.samples.map((each) => [each.sample, each.words]);
  return html`<div class="tasting-sample-field">
    ${choiceField({
      id: `sample-${at}`,
      label: `Sample ${at + 1}`,
      value: sample.chosen,
      options: [...options, [OTHER, "Of another formula: write its address"]],
      chosen: set("chosen"),
    })}
    ${sample.chosen === OTHER
      ? textField({
          id: `sample-${at}-address`,
          label: `Address of sample ${at + 1}`,
          value: sample.typed,
          hint: "As in wheat-bun@2, or with bake and piece: wheat-bun@2:2026-09-14-1/b",
          typed: set("typed"),
        })
      : nothing}
    ${data.form.samples.length > kind.least_samples
      ? html`<button type="button" class="plain" @click=${() => remove(data, at, tools)}>
          Leave sample ${at + 1} out
        </button>`
      : nothing}
  </div>`;
}

function add({form, list}, tools) {
  form.samples.push(free(form, list));
  tools.redraw();
}

function free(form, list) {
  const taken = form.samples.map((each) => each.chosen);
  return chosen(
    list.samples.find((each) => !each.sample.includes(":") && !taken.includes(each.sample)),
  );
}

function chosen(choice) {
  return {chosen: choice?.sample ?? OTHER, typed: ""};
}

function remove({form}, at, tools) {
  form.samples.splice(at, 1);
  tools.redraw();
}

// Another kind may take more or fewer samples.
function fit(form, list) {
  const kind = list.kinds.find((each) => each.key === form.kind);
  form.samples.splice(kind.most_samples);
  while (form.samples.length < kind.least_samples) {
    form.samples.push(free(form, list));
  }
}

function panels(list) {
  const share = (each) =>
    each.visible_share === null ? "none" : `${Math.round(100 * each.visible_share)} %`;
  return html`<details>
    <summary>How many are enough?</summary>
    <table>
      <thead>
        <tr>
          <th class="number">tasters</th>
          <th class="number">must be right</th>
          <th>seen 4 times in 5 when so many people notice</th>
        </tr>
      </thead>
      <tbody>
        ${list.map(
          (each) => html`<tr>
            <td class="number">${each.tasters}</td>
            <td class="number">${each.least_correct ?? "none"}</td>
            <td>${share(each)}</td>
          </tr>`,
        )}
      </tbody>
    </table>
    <p class="hint">At α 0.05, exact. Six or a multiple of six keep the orders balanced.</p>
  </details>`;
}

async function plan(event, data, tools) {
  event.preventDefault();
  const {form} = data;
  data.sending = true;
  data.failure = null;
  tools.redraw();
  try {
    const tasting = await api.order("tasting/new", {
      kind: form.kind,
      samples: form.samples.map((each) => (each.chosen === OTHER ? each.typed : each.chosen)),
      tasters: Number.parseInt(form.tasters, 10) || 0,
      question: form.question,
      attributes: form.kind === "just-about-right" ? form.attributes.split(",") : [],
      note: form.note,
      seed: null,
    });
    data.form = null;
    tools.go(`/tasting/${tasting.formula}/${tasting.id}`);
  } catch (thrown) {
    data.failure = api.expected(thrown);
    data.sending = false;
    tools.redraw();
  }
}
