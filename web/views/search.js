// The search: words and filters over the whole history, what was found formula by formula.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {bakePage, filterOf, formulaPage, searchPage, short, worksheetPage} from "/address.js";
import {capital, count, flowing, fullDay} from "/format.js";
import {sort} from "/parts/bakes.js";
import {filterFields, statedParts, withoutEmpty} from "/parts/history-filter.js";
import {followTask, progressView} from "/parts/progress.js";
import {textField} from "/parts/fields.js";
import {refused} from "/views/failure.js";

const PAUSE_MS = 250;

export const searchView = {
  rereads: true,

  async load({query}, {before, signal}) {
    const filter = filterOf(query);
    const formula = query.get("formula") ?? "";
    const reading = before?.reading ?? {};
    const typing = same(before?.typing, filter) ? null : before?.typing ?? null;
    const open = before?.open ?? Object.keys(filter).some((name) => name !== "words");
    const rest = {filter, formula, reading, typing, open, pause: before?.pause};
    try {
      return {...rest, found: await api.search(filter, formula || undefined, signal), failure: null};
    } catch (thrown) {
      return {...rest, found: before?.found ?? null, failure: api.expected(thrown)};
    }
  },

  title: ({filter}) => (filter.words ? `Search: ${filter.words}` : "Search"),

  draw: (data, place, tools) => {
    const {found, failure} = data;
    const stated = Object.keys(data.filter).length > 0;
    return html`<div class="page search-page">
      <h1>Search</h1>
      ${form(data, tools)} ${statedList(data)} ${readMore(data, tools)}
      ${failure ? refused(failure) : nothing}
      ${!failure && found && stated ? results(data) : nothing}
      ${!stated && !failure ? explanation(found) : nothing}
    </div>`;
  },

  drawn(content, data, tools) {
    content.querySelector("#search-words")?.focus({preventScroll: true});
    if (data.found?.unread > 0) {
      read(data, tools);
    }
  },

  left: (data) => data.reading.stop?.abort(),

  shortcuts: () => [
    {
      key: "/",
      does: "Go to the words to search for",
      run: () => document.getElementById("search-words")?.focus(),
    },
  ],
};

function same(one, other) {
  return JSON.stringify(one) === JSON.stringify(other);
}

function form(data, tools) {
  const filter = data.typing ?? data.filter;
  const narrow = data.found?.narrow;
  const go = () => tools.go(searchPage(data.typing ?? data.filter, data.formula), {replace: true});
  const change = (next, typing) => {
    data.typing = next;
    clearTimeout(data.pause);
    data.pause = setTimeout(go, typing ? PAUSE_MS : 0);
    tools.redraw();
  };
  const submit = (event) => {
    event.preventDefault();
    clearTimeout(data.pause);
    go();
  };
  return html`<form role="search" class="search-form" @submit=${submit}>
    <div class="first">
      ${textField({
        id: "search-words",
        label: "Words",
        type: "search",
        value: filter.words,
        hint: "The beginning of a word will do; accents and capitals do not matter.",
        typed: (words) => change(withoutEmpty({...filter, words}), true),
      })}
      <button class="main">Search</button>
    </div>
    <details ?open=${data.open} @toggle=${(event) => (data.open = event.target.open)}>
      <summary>Ingredient, finding, person, time</summary>
      ${filterFields({id: "search", filter, narrow, change})}
    </details>
  </form>`;
}

// What was stated, each with a link that leaves it out.
function statedList({filter, formula, found}) {
  const parts = statedParts(filter, found?.narrow).filter((part) => part.name !== "words");
  if (parts.length === 0 && !formula) {
    return nothing;
  }
  return html`<ul class="stated">
    ${formula
      ? html`<li>
          formula: <b>${found?.formulas[0]?.name ?? formula}</b>
          <a href=${searchPage(filter)} aria-label="Leave out the formula">leave out</a>
        </li>`
      : nothing}
    ${parts.map(
      ({name, value, without}) => html`<li>
        ${name ? `${name}: ` : ""}<b>${value}</b>
        <a href=${searchPage(without, formula)} aria-label="Leave out ${name} ${value}">leave out</a>
      </li>`,
    )}
  </ul>`;
}

// A long history is read once; meanwhile what has been read is searched.
function readMore(data, tools) {
  const {reading, found} = data;
  if (reading.task) {
    const {words, done, total} = reading.task;
    return progressView({
      id: "search-reading",
      words,
      done,
      total,
      cancelling: reading.stop.signal.aborted,
      cancel: () => {
        reading.stop.abort();
        tools.redraw();
      },
    });
  }
  return found?.unread > 0
    ? html`<div class="notice-line">
        <p>${count(found.unread, "revision or bake", "revisions and bakes")} have not been read for
          searching yet, so words in them are not found.</p>
        <button type="button" @click=${() => read(data, tools)}>Read them</button>
      </div>`
    : nothing;
}

async function read(data, tools) {
  const {reading} = data;
  if (reading.task) {
    return;
  }
  reading.stop = new AbortController();
  try {
    const begun = await api.order("search/read");
    reading.task = begun;
    tools.redraw();
    await followTask(begun, {
      signal: reading.stop.signal,
      changed: (task) => {
        reading.task = task;
        tools.redraw();
      },
    });
  } catch (thrown) {
    data.failure = api.expected(thrown);
  } finally {
    reading.task = null;
  }
  if (location.pathname === "/search") {
    await tools.again();
  }
}

function explanation(found) {
  return html`<div class="quiet">
    <p>
      Searches the notes, method steps, ingredients, findings, verdicts and captions of all
      formulas, variants and revisions: also what an old method said.
    </p>
    ${found ? narrowing(found.narrow, {}, "") : nothing}
  </div>`;
}

function results({found, filter, formula}) {
  const more = found.formula_count - found.formulas.length;
  return html`<p class="found-count" role="status">
      ${found.count === 0
        ? "Nothing fits."
        : `${count(found.count, "revision or bake", "revisions and bakes")} in ${count(
            found.formula_count,
            "formula",
          )}`}
    </p>
    ${found.count === 0
      ? html`<p class="quiet">Write fewer words, or the beginning of a word, or leave a part out.</p>`
      : narrowing(found.narrow, filter, formula)}
    ${found.formulas.map((group) => formulaGroup(group, filter, formula))}
    ${more > 0
      ? html`<p class="quiet">${count(more, "more formula")}: add a word to narrow it down.</p>`
      : nothing}`;
}

// Words with which to look more closely, as links that add them.
function narrowing(narrow, filter, formula) {
  const line = (label, name, choices) => {
    const others = choices.filter((choice) => choice.value !== filter[name]);
    return others.length === 0 || filter[name]
      ? nothing
      : html`<div>
          <dt>${label}</dt>
          ${others.map(
            (choice) => html`<dd>
              <a href=${searchPage({...filter, [name]: choice.value}, formula)}>${choice.words}</a>
              <span class="n">${choice.count}</span>
            </dd>`,
          )}
        </div>`;
  };
  return html`<dl class="search-narrow">
    ${line("Findings", "finding", narrow.findings)}
    ${line("Changed ingredients", "ingredient", narrow.ingredients)}
    ${line("People", "person", narrow.people)}
  </dl>`;
}

function formulaGroup(group, filter, formula) {
  const more = group.count - group.hits.length;
  return html`<section class="found">
    <h2><a href=${formulaPage(group.formula)}>${group.name}</a></h2>
    <ol>
      ${group.hits.map((hit) => (hit.bake ? bakeHit(group.formula, hit) : revisionHit(hit)))}
    </ol>
    ${more > 0 && !formula
      ? html`<p>
          <a href=${searchPage(filter, group.formula)}
            >All ${group.count} in ${group.name}</a>
        </p>`
      : more > 0
        ? html`<p class="quiet">${more} earlier ones are not shown.</p>`
        : nothing}
  </section>`;
}

function revisionHit(hit) {
  return html`<li>
    <p class="hit">
      <a href=${worksheetPage(hit.address)}>${capital(`revision ${short(hit.address)}`)}</a>
      <span class="quiet">${fullDay(hit.time)}, ${hit.person}</span>
      <span class="title">${runs(hit.title)}</span>
    </p>
    ${passages(hit)}
  </li>`;
}

function bakeHit(formula, hit) {
  return html`<li>
    <p class="hit">
      <a href=${bakePage({formula, id: hit.bake})}>Bake of ${short(hit.address)}</a>
      <span class="quiet">${fullDay(hit.time)}${hit.person ? `, ${hit.person}` : ""}</span>
    </p>
    ${hit.findings.length > 0
      ? html`<p class="search-findings">
          ${hit.findings.map(
            (each) => html`<span>${runs(each.runs)} <i>${sort(each.merit)}</i></span>`,
          )}
        </p>`
      : nothing}
    ${passages(hit)}
  </li>`;
}

function passages(hit) {
  return html`${hit.passages.map(
    (passage) => html`<p class="passage">
      <span class="place">${capital(passage.place)}</span> ${runs(passage.runs)}
    </p>`,
  )}
  ${hit.changes.map((sentence) => html`<p class="passage">${flowing(sentence)}</p>`)}`;
}

function runs(pieces) {
  return pieces.map(({text, match}) => (match ? html`<mark>${text}</mark>` : text));
}
