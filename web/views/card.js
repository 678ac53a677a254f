// The card of a revision: what is chosen for it, how it looks, and its texts for other places.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {formulaPage, parse, worksheetPage} from "/address.js";
import {choiceField, textArea, textField} from "/parts/fields.js";
import {notice} from "/parts/notices.js";
import {refused} from "/views/failure.js";

const PAUSE_MS = 350;
const CHOICES = ["paper", "masses", "times", "photo", "storage", "more"];

/** What is said more about a caution stands in the address as "word", KEY=TEXT, once for each. */
const WORD = "word";

export const cardView = {
  async load({parts, query}, {before, signal}) {
    const same = before?.address === parts.address ? before : null;
    const chosen = Object.fromEntries(CHOICES.map((key) => [key, query.get(key) ?? ""]));
    chosen[WORD] = Object.fromEntries(query.getAll(WORD).map(keyAndText));
    const data = {address: parts.address, chosen, form: same?.form ?? "text", failure: null};
    try {
      data.card = await api.card(parts.address, {...chosen, [WORD]: words(chosen)}, signal);
    } catch (thrown) {
      const failure = api.expected(thrown);
      if (!same?.card) {
        throw failure;
      }
      Object.assign(data, {card: same.card, shown: same.shown, failure});
    }
    data.shown = data.failure ? same.shown : chosen;
    return data;
  },

  title: ({card}) => `Card: ${card.name}`,

  draw: (data, place, tools) => {
    const {card} = data;
    return html`<article class="page card-page">
      <h1>Card: ${card.name}</h1>
      <p class="quiet">
        <a href=${worksheetPage(data.address)}>${card.address}</a> ·
        <a href=${formulaPage(parse(data.address).formula)}>Timeline</a>
      </p>
      <p>
        The same revision with the same choices gives the same card. Its figures are an aid, not a
        label: local law and licensed practice decide what may be declared.
      </p>
      ${card.remarks.map((words) => html`<p class="problem">${words}</p>`)}
      <div class="card-columns">
        <div class="card-choices">${choices(data, tools)}</div>
        <section class="card-preview" aria-labelledby="card-preview-title">
          <h2 id="card-preview-title">Preview</h2>
          ${data.failure
            ? html`<div class="refused" role="alert">${refused(data.failure)}</div>`
            : nothing}
          <p class="actions">
            <a class="button main" href=${made(data)} target="_blank" rel="noopener"
              >Open to print</a>
            <a class="button" href=${made(data)} download=${fileName(data)}>Download the page</a>
          </p>
          <iframe class="card-frame paper-${data.shown.paper || "a4"}" src=${made(data)}
            title="The card as it is printed"></iframe>
        </section>
      </div>
      ${cautions(data, tools)} ${texts(data, tools)}
    </article>`;
  },
};

function made({address, shown}) {
  return `/made/card?${asked(shown, {address})}`;
}

function asked(chosen, more = {}) {
  const query = new URLSearchParams(more);
  CHOICES.filter((key) => chosen[key]).forEach((key) => query.set(key, chosen[key]));
  words(chosen).forEach((each) => query.append(WORD, each));
  return query;
}

function words(chosen) {
  return Object.entries(chosen[WORD])
    .filter(([, text]) => text.trim())
    .map(([key, text]) => `${key}=${text}`);
}

function keyAndText(word) {
  const sign = word.indexOf("=");
  return sign < 0 ? [word, ""] : [word.slice(0, sign), word.slice(sign + 1)];
}

function fileName({card}) {
  return `${card.address.replace(/[^a-z0-9-]+/g, "-").replace(/-$/, "")}.html`;
}

let timer = null;

function choose(data, tools, change, pause = 0) {
  Object.assign(data.chosen, change);
  clearTimeout(timer);
  timer = setTimeout(() => {
    const query = asked(data.chosen);
    tools.go(`/card/${data.address}${query.size > 0 ? `?${query}` : ""}`, {replace: true});
  }, pause);
}

function choices(data, tools) {
  const {card, chosen} = data;
  const pick = (key) => (value) => choose(data, tools, {[key]: value});
  const type = (key) => (value) => choose(data, tools, {[key]: value}, PAUSE_MS);
  return html`${choiceField({
      id: "card-paper",
      label: "Paper",
      value: chosen.paper,
      options: [
        ["", "A4"],
        ["letter", "US Letter"],
        ["4x6", "4 × 6 in"],
      ],
      chosen: pick("paper"),
    })}
    ${choiceField({
      id: "card-masses",
      label: "Masses in",
      value: chosen.masses,
      options: [
        ["", "grams"],
        ["oz", "ounces"],
      ],
      chosen: pick("masses"),
    })}
    ${textField({
      id: "card-times",
      label: "Times the formula",
      hint: "Such as 2 or 0.5.",
      size: "short",
      inputmode: "decimal",
      value: chosen.times,
      placeholder: "1",
      typed: type("times"),
    })}
    ${choiceField({
      id: "card-photo",
      label: "Photo",
      hint: card.photos.length === 0 ? "No bake of this formula has a photo yet." : null,
      value: chosen.photo,
      options: [
        ["", "One of its best-liked bake"],
        ["none", "No photo"],
        ...card.photos.map((each) => [each.file, `${each.file.split("/").pop()}: ${each.caption}`]),
      ],
      chosen: pick("photo"),
    })}
    ${textArea({
      id: "card-storage",
      label: "Storage",
      hint:
        card.storage && !chosen.storage
          ? `As the formula says: ${card.storage}`
          : "Such as: two days in a closed box, or frozen for a month.",
      value: chosen.storage,
      typed: type("storage"),
    })}`;
}

function cautions(data, tools) {
  const {card, chosen} = data;
  const own = card.cautions.filter(({caution}) => caution !== null);
  return html`<section class="card-cautions" aria-labelledby="card-cautions-title">
    <h2 id="card-cautions-title">Cautions</h2>
    <p class="quiet">
      What the formula calls for always stands on the card. You can say more about it.
    </p>
    <ul>
      ${own.map(
        ({caution, own: words}) => html`<li>
          <p dir="auto">${words}</p>
          ${textArea({
            id: `card-word-${caution}`,
            label: html`Say more<span class="unseen"> about ${caution}</span>`,
            rows: 1,
            value: chosen[WORD][caution] ?? "",
            typed: (text) =>
              choose(data, tools, {[WORD]: {...data.chosen[WORD], [caution]: text}}, PAUSE_MS),
          })}
        </li>`,
      )}
      <li>
        ${textArea({
          id: "card-more",
          label: "A further caution",
          rows: 2,
          value: chosen.more,
          typed: (text) => choose(data, tools, {more: text}, PAUSE_MS),
        })}
      </li>
    </ul>
  </section>`;
}

function texts(data, tools) {
  const {card} = data;
  const forms = [
    ["text", "Text for a description", card.text.text, card.text],
    ["short", "Short text", card.short_text.text, card.short_text],
    ["markdown", "Markdown", card.markdown, null],
    ["json_ld", "Data for programs", JSON.stringify(card.json_ld, null, 2), null],
  ];
  const [, words, text, limits] = forms.find(([key]) => key === data.form);
  return html`<section class="card-texts" aria-labelledby="card-texts-title">
    <h2 id="card-texts-title">For other places</h2>
    <fieldset class="card-forms">
      <legend class="unseen">Which text</legend>
      ${forms.map(
        ([key, label]) => html`<label
          ><input type="radio" name="card-form" value=${key} .checked=${key === data.form}
            @change=${() => {
              data.form = key;
              tools.redraw();
            }} />
          <span>${label}</span></label
        >`,
      )}
    </fieldset>
    ${limits
      ? html`<p class=${limits.fits ? "quiet" : "problem"}>
          ${limits.signs} of ${limits.limit} signs${limits.fits
            ? ""
            : ": too long, and nothing more can be left out"}.
          ${limits.left_out.length > 0 ? `Left out: ${limits.left_out.join(", ")}.` : ""}
        </p>`
      : nothing}
    <p class="actions">
      <button type="button" @click=${() => copy(text)}>Copy</button>
    </p>
    <pre class="card-text" tabindex="0" dir="auto" aria-label=${words}>${text}</pre>
  </section>`;
}

async function copy(text) {
  try {
    await navigator.clipboard.writeText(text);
    notice({text: "Copied."});
  } catch {
    notice({
      text: "The browser did not allow copying. Select the text and copy it.",
      warning: true,
    });
  }
}
