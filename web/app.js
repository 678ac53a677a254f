// Finds the page that an address means, loads what it needs and shows it.

import {html, nothing, render} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {bakeView} from "/views/bake.js";
import {failureView} from "/views/failure.js";
import {formulaView} from "/views/formula.js";
import {formulasView} from "/views/formulas.js";
import {missingView} from "/views/missing.js";
import {worksheetView} from "/views/worksheet.js";

const LOADING_AFTER_MS = 300;

const routes = [
  [/^\/$/, formulasView],
  [/^\/formulas\/(?<formula>[^/]+)$/, formulaView],
  [/^\/worksheet\/(?<address>[^/]+(?:\/[^/]+)?)$/, worksheetView],
  [/^\/bakes\/(?<formula>[^/]+)\/(?<bake>[^/]+)$/, bakeView],
];

const header = document.getElementById("header");
const content = document.getElementById("content");
let current = null;
let loading = null;
let notebook = null;

/** What an address asks for: the view, its parts, and the page's query. */
function placeOf(url) {
  for (const [shape, view] of routes) {
    const found = shape.exec(url.pathname);
    if (found) {
      const parts = Object.fromEntries(
        Object.entries(found.groups ?? {}).map(([name, text]) => [name, decoded(text)]),
      );
      return {view, path: url.pathname, parts, query: url.searchParams};
    }
  }
  return {view: missingView, path: url.pathname, parts: {}, query: url.searchParams};
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
  const before = current?.place.view === place.view ? current.data : null;
  const timer = setTimeout(() => drawLoading(mine), LOADING_AFTER_MS);
  content.setAttribute("aria-busy", "true");
  let data = null;
  let view = place.view;
  try {
    data = await view.load(place, {before, signal: mine.signal});
  } catch (thrown) {
    if (mine.signal.aborted) {
      return;
    }
    view = failureView;
    data = thrown;
  } finally {
    clearTimeout(timer);
  }
  if (mine.signal.aborted) {
    return;
  }
  current = {place, data: view === place.view ? data : null};
  document.title = `${view.title(data, place)} · Ovenmark`;
  render(view.draw(data, place, {go, again: () => show({keep: true, scroll: scrollY})}), content);
  content.removeAttribute("aria-busy");
  content.classList.remove("waiting");
  drawHeader(place);
  if (!keep) {
    scrollTo(0, scroll);
    view.drawn?.(content);
    focusHeading();
  }
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
        <a href="/" aria-current=${place.path === "/" ? "page" : nothing}>Formulas</a>
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

history.scrollRestoration = "manual";
show();
