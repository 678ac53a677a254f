// Finds the page that an address means, loads what it needs and shows it.

import {html, nothing, render} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {isTyping, runShortcut} from "/parts/shortcuts.js";
import {failureView} from "/views/failure.js";

const LOADING_AFTER_MS = 300;

// A view is fetched when its page is opened first. It has these members:
//   load(place, {before, signal})   what it needs; before is the data of the same view just shown
//   title(data, place)
//   draw(data, place, tools)        tools: go, again (load anew), redraw (draw the same data again)
//   drawn?(content, data, tools)    after the first drawing at this address
//   left?(data)                     when another page takes its place
//   shortcuts?(data, place, tools)  [{key, does, run}], listed by "?"
const routes = [
  [/^\/$/, () => import("/views/formulas.js").then((m) => m.formulasView)],
  [/^\/formulas\/(?<formula>[^/]+)$/, () => import("/views/formula.js").then((m) => m.formulaView)],
  [
    /^\/worksheet\/(?<address>[^/]+(?:\/[^/]+)?)$/,
    () => import("/views/worksheet.js").then((m) => m.worksheetView),
  ],
  [
    /^\/bakes\/(?<formula>[^/]+)\/(?<bake>[^/]+)$/,
    () => import("/views/bake.js").then((m) => m.bakeView),
  ],
  [/^\/drafts\/(?<draft>[^/]+)$/, () => import("/views/edit.js").then((m) => m.editView)],
];
const missing = () => import("/views/missing.js").then((m) => m.missingView);

// What the header leads to.
const sections = [["/", "Formulas"]];

const header = document.getElementById("header");
const content = document.getElementById("content");
let current = null;
let loading = null;
let notebook = null;

/** What an address asks for: the view, its parts, and the page's query. */
function placeOf(url) {
  for (const [shape, fetched] of routes) {
    const found = shape.exec(url.pathname);
    if (found) {
      const parts = Object.fromEntries(
        Object.entries(found.groups ?? {}).map(([name, text]) => [name, decoded(text)]),
      );
      return {fetched, path: url.pathname, parts, query: url.searchParams};
    }
  }
  return {fetched: missing, path: url.pathname, parts: {}, query: url.searchParams};
}

function decoded(text) {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/**
 * Goes to another address of the viewer.
 * With replace the step back skips the present one. On the same page focus and scroll stay.
 */
function go(address, {replace = false} = {}) {
  const url = new URL(address, location.href);
  history.replaceState({scroll: scrollY}, "");
  history[replace ? "replaceState" : "pushState"]({scroll: 0}, "", url);
  return show({keep: current?.place.path === url.pathname, scroll: 0});
}

/** Shows what the browser's address asks for. */
async function show({keep = false, scroll = 0} = {}) {
  loading?.abort();
  const mine = new AbortController();
  loading = mine;
  const place = placeOf(new URL(location.href));
  const timer = setTimeout(() => drawLoading(mine), LOADING_AFTER_MS);
  content.setAttribute("aria-busy", "true");
  let data = null;
  let view = failureView;
  try {
    const wanted = await place.fetched();
    const before = current?.view === wanted ? current.data : null;
    data = await wanted.load(place, {before, signal: mine.signal});
    view = wanted;
  } catch (thrown) {
    data = thrown;
  } finally {
    clearTimeout(timer);
  }
  if (mine.signal.aborted) {
    return;
  }
  if (current && (!keep || current.view !== view)) {
    current.view.left?.(current.data);
  }
  current = {place, view, data};
  drawCurrent();
  content.removeAttribute("aria-busy");
  content.classList.remove("waiting");
  drawHeader(place);
  if (!keep) {
    scrollTo(0, scroll);
    focusHeading();
    view.drawn?.(content, data, tools);
  }
}

const tools = {
  go,
  again: () => show({keep: true, scroll: scrollY}),
  redraw: () => current && drawCurrent(),
};

function drawCurrent() {
  const {view, data, place} = current;
  document.title = `${view.title(data, place)} · Ovenmark`;
  render(view.draw(data, place, tools), content);
}

function drawLoading(mine) {
  if (loading === mine) {
    content.classList.add("waiting");
    if (!current) {
      render(html`<p class="loading" role="status">Loading…</p>`, content);
    }
  }
}

// The first page is where the reader already is; later ones announce themselves by their heading.
let first = true;
function focusHeading() {
  const heading = content.querySelector("h1");
  if (!first && heading) {
    heading.setAttribute("tabindex", "-1");
    heading.focus({preventScroll: true});
  }
  first = false;
}

function drawHeader(place) {
  render(
    html`<a class="name" href="/">Ovenmark</a>
      <nav aria-label="Main">
        ${sections.map(
          ([address, name]) => html`<a
            href=${address}
            aria-current=${place.path === address ? "page" : nothing}
            >${name}</a
          >`,
        )}
      </nav>
      <p class="notebook">
        ${notebook ? html`<span>${notebook.title}</span> <code>${notebook.folder}</code>` : nothing}
      </p>`,
    header,
  );
  if (!notebook) {
    api.formulas().then(
      (list) => {
        notebook = list;
        drawHeader(placeOf(new URL(location.href)));
      },
      () => {},
    );
  }
}

document.addEventListener("click", (event) => {
  const link = event.target.closest?.("a[href]");
  const plain = !event.defaultPrevented && event.button === 0
    && !event.metaKey && !event.ctrlKey && !event.shiftKey && !event.altKey;
  if (!link || !plain || link.target || link.origin !== location.origin) {
    return;
  }
  const samePlace = link.pathname === location.pathname && link.search === location.search;
  if ((link.hash && samePlace) || link.pathname.startsWith("/photos/")) {
    return;
  }
  event.preventDefault();
  go(link.href);
});

addEventListener("popstate", (event) => {
  const url = new URL(location.href);
  show({keep: current?.place.path === url.pathname, scroll: event.state?.scroll ?? 0});
});

document.addEventListener("keydown", (event) => {
  if (current && !isTyping(event.target)) {
    runShortcut(event, current.view.shortcuts?.(current.data, current.place, tools) ?? []);
  }
});

history.scrollRestoration = "manual";
show();
