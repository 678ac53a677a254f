// Finds the page that an address means, loads what it needs and shows it.

import {html, render} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {onPreference} from "/preferences.js";
import {onReturn} from "/parts/answering.js";
import {drawHeader} from "/parts/header.js";
import {generalKeys, keysAreOn, listKeys} from "/parts/keys.js";
import {isTyping, runShortcut} from "/parts/shortcuts.js";
import {failureView} from "/views/failure.js";

const LOADING_AFTER_MS = 300;

// A view is fetched when its page is opened first. It has these members:
//   load(place, {before, signal})   what it needs; before is the data of the same view just shown
//   title(data, place)
//   draw(data, place, tools)        tools: go, again (load anew), redraw (draw the same data again)
//   drawn?(content, data, tools)    after the first drawing at this address
//   left?(data)                     when another page takes its place
//   shortcuts?(data, place, tools)  [{key, does, run}], listed by "?"; one without run only lists
//                                   what a part of the page does by itself
//   rereads?                        true when load may be called again at any time, because nobody
//                                   types there: done when other units are preferred
const routes = [
  [/^\/phone$/, () => import("/views/phone.js").then((m) => m.phoneView)],
  [
    /^\/preferences$/,
    () => import("/views/preferences.js").then((m) => m.preferencesView),
  ],
  [/^\/$/, () => import("/views/formulas.js").then((m) => m.formulasView)],
  [/^\/take-in$/, () => import("/views/take-in.js").then((m) => m.takeInView)],
  [/^\/share\/(?<formula>[^/]+)$/, () => import("/views/share.js").then((m) => m.shareView)],
  [/^\/begin$/, () => import("/views/begin.js").then((m) => m.beginView)],
  [
    /^\/carry\/(?<formula>[^/]+)\/(?<variant>[^/]+)$/,
    () => import("/views/carry.js").then((m) => m.carryView),
  ],
  [/^\/search$/, () => import("/views/search.js").then((m) => m.searchView)],
  [/^\/formulas\/(?<formula>[^/]+)$/, () => import("/views/formula.js").then((m) => m.formulaView)],
  [
    /^\/worksheet\/(?<address>[^/]+(?:\/[^/]+)?)$/,
    () => import("/views/worksheet.js").then((m) => m.worksheetView),
  ],
  [
    /^\/levers\/(?<address>[^/]+(?:\/[^/]+)?)$/,
    () => import("/views/levers.js").then((m) => m.leversView),
  ],
  [
    /^\/scale\/(?<address>[^/]+(?:\/[^/]+)?)$/,
    () => import("/views/scale.js").then((m) => m.scaleView),
  ],
  [
    /^\/mattered\/(?<address>[^/]+(?:\/[^/]+)?)$/,
    () => import("/views/mattered.js").then((m) => m.matteredView),
  ],
  [
    /^\/bakes\/(?<formula>[^/]+)\/(?<bake>[^/]+)$/,
    () => import("/views/bake.js").then((m) => m.bakeView),
  ],
  [/^\/pantry$/, () => import("/views/pantry.js").then((m) => m.pantryView)],
  [/^\/pantry\/(?<food>[^/]+)$/, () => import("/views/food.js").then((m) => m.foodView)],
  [/^\/new-food$/, () => import("/views/food.js").then((m) => m.newFoodView)],
  [/^\/food-table$/, () => import("/views/food-table.js").then((m) => m.foodTableView)],
  [/^\/goals$/, () => import("/views/goals.js").then((m) => m.goalsView)],
  [/^\/goals\/(?<goal>[^/]+)$/, () => import("/views/goal.js").then((m) => m.goalView)],
  [/^\/new-goal$/, () => import("/views/goal.js").then((m) => m.newGoalView)],
  [/^\/notebook$/, () => import("/views/notebook.js").then((m) => m.notebookView)],
  [
    /^\/record\/(?<address>[^/]+(?:\/[^/]+)?)$/,
    () => import("/views/record.js").then((m) => m.recordView),
  ],
  [
    /^\/window\/(?<address>[^/]+(?:\/[^/]+)?)$/,
    () => import("/views/window.js").then((m) => m.windowView),
  ],
  [
    /^\/replace\/(?<address>[^/]+(?:\/[^/]+)?)$/,
    () => import("/views/replace.js").then((m) => m.replaceView),
  ],
  [
    /^\/rebuild\/(?<address>[^/]+(?:\/[^/]+)?)$/,
    () => import("/views/rebuild.js").then((m) => m.rebuildView),
  ],
  [
    /^\/card\/(?<address>[^/]+(?:\/[^/]+)?)$/,
    () => import("/views/card.js").then((m) => m.cardView),
  ],
  [
    /^\/story\/(?<address>[^/]+(?:\/[^/]+)?)$/,
    () => import("/views/story.js").then((m) => m.storyView),
  ],
  [
    /^\/label\/(?<address>[^/]+(?:\/[^/]+)?)$/,
    () => import("/views/label.js").then((m) => m.labelView),
  ],
  [/^\/beside$/, () => import("/views/photos.js").then((m) => m.besideView)],
  [
    /^\/causes\/(?<address>[^/]+(?:\/[^/]+)?)$/,
    () => import("/views/causes.js").then((m) => m.causesView),
  ],
  [
    /^\/tastings\/(?<address>[^/]+(?:\/[^/]+)?)$/,
    () => import("/views/tastings.js").then((m) => m.tastingsView),
  ],
  [
    /^\/tasting\/(?<formula>[^/]+)\/(?<tasting>[^/]+)$/,
    () => import("/views/tasting.js").then((m) => m.tastingView),
  ],
  [
    /^\/tasting\/(?<formula>[^/]+)\/(?<tasting>[^/]+)\/sheets$/,
    () => import("/views/tasting-sheet.js").then((m) => m.tastingSheetsView),
  ],
  [
    /^\/tasting\/(?<formula>[^/]+)\/(?<tasting>[^/]+)\/sheet\/(?<sheet>[^/]+)$/,
    () => import("/views/tasting-sheet.js").then((m) => m.tastingSheetView),
  ],
  [/^\/drafts\/(?<draft>[^/]+)$/, () => import("/views/edit.js").then((m) => m.editView)],
];
const missing = () => import("/views/missing.js").then((m) => m.missingView);

// What the header leads to of the notebook.
const sections = [
  ["/", "Formulas"],
  ["/search", "Search"],
  ["/pantry", "Pantry"],
  ["/goals", "Goals"],
  ["/notebook", "Notebook"],
];
// What is this browser's own.
const ownTools = [
  ["/phone", "Phone"],
  ["/preferences", "Preferences"],
];

const content = document.getElementById("content");
let current = null;
let loading = null;

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
 * With replace the step back skips the present one; with anew nothing that was loaded is used again.
 * On the same page focus and scroll stay.
 */
function go(address, {replace = false, anew = false} = {}) {
  const url = new URL(address, location.href);
  history.replaceState({scroll: scrollY}, "");
  history[replace ? "replaceState" : "pushState"]({scroll: 0}, "", url);
  return show({keep: current?.place.path === url.pathname, scroll: 0, anew});
}

/** Shows what the browser's address asks for. */
async function show({keep = false, scroll = 0, anew = false} = {}) {
  loading?.abort();
  const mine = new AbortController();
  loading = mine;
  const place = placeOf(new URL(location.href));
  const timer = setTimeout(() => drawLoading(mine), LOADING_AFTER_MS);
  content.setAttribute("aria-busy", "true");
  let data = null;
  let view = failureView;
  try {
    const wanted = await fetched(place);
    const before = current?.view === wanted && !anew ? current.data : null;
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
  header(place);
  if (!keep) {
    scrollTo(0, scroll);
    focusHeading();
    view.drawn?.(content, data, tools);
  }
}

// A view that could not be fetched does not say why; a question does. Browsers may not ask for the
// view again before the page is loaded anew.
async function fetched(place) {
  try {
    return await place.fetched();
  } catch (thrown) {
    try {
      await api.phone();
    } catch (failure) {
      throw Object.assign(failure, {reload: true});
    }
    throw thrown;
  }
}

const tools = {
  go,
  again: () => show({keep: true, scroll: scrollY, anew: true}),
  redraw: () => current && drawCurrent(),
};

let drawing = false;
let drawAnew = false;

// What is taken away by a drawing may lose the focus, and ask for a drawing because of that: that
// one comes after it, never within.
function drawCurrent() {
  if (drawing) {
    drawAnew = true;
    return;
  }
  drawing = true;
  try {
    const {view, data, place} = current;
    document.title = `${view.title(data, place)} · Ovenmark`;
    render(view.draw(data, place, tools), content);
  } finally {
    drawing = false;
  }
  if (drawAnew) {
    drawAnew = false;
    drawCurrent();
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

function header(place) {
  drawHeader({sections, tools: ownTools, path: place.path, keys: openKeys});
}

function pageKeys() {
  return current?.view.shortcuts?.(current.data, current.place, tools) ?? [];
}

const everywhere = generalKeys(sections, go, () => openKeys());

function openKeys() {
  listKeys(pageKeys(), everywhere);
}

document.addEventListener("click", (event) => {
  const link = event.target.closest?.("a[href]");
  const plain = !event.defaultPrevented && event.button === 0
    && !event.metaKey && !event.ctrlKey && !event.shiftKey && !event.altKey;
  const elsewhere = link?.target || link?.hasAttribute("download");
  if (!link || !plain || elsewhere || link.origin !== location.origin) {
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
  if (current && keysAreOn() && !isTyping(event.target)) {
    runShortcut(event, [...pageKeys(), ...everywhere]);
  }
});

// What was read from the server is read again, with sentences in the new units; what is being
// typed is only drawn again.
onPreference(() => {
  if (current?.view.rereads) {
    show({keep: true, scroll: scrollY, anew: true});
  } else {
    tools.redraw();
  }
});

onReturn(() => {
  if (current?.view === failureView && ["silent", "unpaired"].includes(current.data.reason)) {
    if (current.data.reload) {
      location.reload();
    } else {
      tools.again();
    }
  }
});

// Timers of bakes go on after a reload of any page.
try {
  if (Object.keys(localStorage).some((name) => name.startsWith("ovenmark.bake."))) {
    import("/parts/timer-watch.js").then((m) => m.watchKept());
  }
} catch {
  // A browser that keeps nothing has no timers to take up.
}

history.scrollRestoration = "manual";
show();
