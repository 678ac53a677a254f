// The story of a line of history: which revisions it tells of, the author's words, how it looks,
// and its files. What is chosen is looked at while it is typed, kept in this browser, and kept in
// the notebook on request.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {order} from "/api.js";
import {formulaPage, parse} from "/address.js";
import {count} from "/format.js";
import {drop, forget, keep, kept, keptElsewhere} from "/parts/kept.js";
import {notice} from "/parts/notices.js";
import {preferences} from "/preferences.js";
import {storyFigures, storyText} from "/parts/story-form.js";
import {storySteps} from "/parts/story-steps.js";
import {refused} from "/views/failure.js";

const WAIT_MS = 400;

export const storyView = {
  async load({parts}, {before, signal}) {
    if (before?.address === parts.address) {
      return before;
    }
    const shown = await api.story(parts.address, signal);
    const data = {
      address: parts.address,
      failure: null,
      unkept: null,
      saving: false,
      all: false,
    };
    take(data, shown);
    data.saved = plainPlan(shown.story);
    data.plan = structuredClone(data.saved);
    const found = kept(data.folder, name(data));
    data.elsewhere = found ? [] : keptElsewhere(data.folder, name(data));
    if (found) {
      data.plan = found.plan;
      data.base = found.base;
      data.restored = true;
    }
    return data;
  },

  title: ({story}) => `Story: ${story.name}`,

  drawn: (content, data, tools) => {
    if (data.restored) {
      look(data, tools);
    }
  },

  draw: (data, place, tools) => {
    inPreferredUnits(data, tools);
    const {story} = data;
    return html`<article class="page story-page">
      <h1>Story: ${story.name}</h1>
      <p class="quiet">
        <a href=${formulaPage(parse(data.address).formula)}>Timeline</a> ·
        <a href="/card/${story.card}">Card of ${story.card}</a>
      </p>
      <p>
        How this formula came to be, told from its bakes: choose the revisions that matter, add your
        own words, and publish it as a page, as Markdown or as pictures for a video.
      </p>
      ${left(data, tools)}
      <div class="story-columns">
        <form class="story-choices" @submit=${(event) => save(event, data, tools)}>
          ${saving(data, tools)} ${storyText(data, changed(data, tools))}
          ${storySteps(data, changed(data, tools))} ${storyFigures(data, changed(data, tools))}
        </form>
        <section class="story-preview" aria-labelledby="story-preview-title">
          <h2 id="story-preview-title">Preview</h2>
          ${refusal(data.failure)}
          <p class="actions">
            <a class="button main" href=${made("story", data)} target="_blank" rel="noopener"
              >Open the page</a
            >
            <a class="button" href=${made("story", data)} download="${fileName(data)}.html"
              >Download the page</a
            >
            <a
              class="button"
              href=${made("story-markdown", data)}
              download="${fileName(data)}.zip"
              >Download as Markdown</a
            >
          </p>
          <iframe
            class="story-frame"
            src=${made("story", data)}
            title="The story as it is published"
            @load=${(event) => event.target.contentWindow.scrollTo(0, data.scroll ?? 0)}
          ></iframe>
        </section>
      </div>
      ${pictures(data)}
    </article>`;
  },
};

function made(kind, data) {
  return `/made/${kind}?made=${data.made}`;
}

function refusal(failure) {
  return failure
    ? html`<div class="refused" role="alert">${refused(failure)}</div>`
    : nothing;
}

function fileName({address}) {
  return `${address.replace(/[^a-z0-9-]+/g, "-")}-story`;
}

function name({address}) {
  return `story ${address}`;
}

function take(data, {story, made: key, folder}) {
  Object.assign(data, {story, made: key, folder, base: data.base ?? story.base});
}

// What was chosen, with nothing in it that stands for nothing.
function plainPlan({plan}) {
  return {
    title: plan.title ?? "",
    by: plan.by ?? "",
    opening: plan.opening ?? "",
    closing: plan.closing ?? "",
    figures: plan.figures,
    steps: plan.steps.map((step) => ({
      revision: step.revision,
      heading: step.heading ?? "",
      words: step.words ?? "",
      photo: step.photo ?? "",
      figure: step.figure ?? "",
    })),
  };
}

function isChanged(data) {
  return JSON.stringify(data.plan) !== JSON.stringify(data.saved);
}

// Notes a change: keeps it in this browser, draws it, looks at it soon.
function changed(data, tools) {
  return (change, wait = 0) => {
    change(data.plan);
    keep(data.folder, name(data), {plan: data.plan, base: data.base});
    tools.redraw();
    clearTimeout(data.timer);
    data.timer = setTimeout(() => look(data, tools), wait ? WAIT_MS : 0);
  };
}

async function look(data, tools) {
  data.looking?.abort();
  data.looking = new AbortController();
  const {signal} = data.looking;
  try {
    const shown = await order(
      "story/look",
      {address: data.address, story: data.plan},
      signal,
    );
    data.scroll = document.querySelector(".story-frame")?.contentWindow?.scrollY;
    take(data, shown);
    data.failure = null;
  } catch (thrown) {
    if (signal.aborted) {
      return;
    }
    data.failure = api.expected(thrown);
  }
  tools.redraw();
}

// Sentences are in the reader's units: when others are preferred, the story is looked at again.
function inPreferredUnits(data, tools) {
  const {mass, temperature} = preferences();
  const units = `${mass} ${temperature}`;
  if (data.units && data.units !== units) {
    setTimeout(() => look(data, tools));
  }
  data.units = units;
}

async function save(event, data, tools) {
  event.preventDefault();
  if (data.saving) {
    return;
  }
  data.saving = true;
  data.unkept = null;
  tools.redraw();
  try {
    const plan = structuredClone(data.plan);
    const shown = await order("story/keep", {
      address: data.address,
      story: plan,
      base: data.base,
    });
    data.base = shown.story.base;
    take(data, shown);
    Object.assign(data, {saved: plan, failure: null, restored: false});
    if (!isChanged(data)) {
      forget(data.folder, name(data));
    }
    notice({text: "The notebook keeps this story."});
  } catch (thrown) {
    data.unkept = api.expected(thrown);
  }
  data.saving = false;
  tools.redraw();
}

function saving(data, tools) {
  const fresh = !isChanged(data);
  return html`<div class="story-saving">
    <p class="actions">
      <button type="submit" class="main" aria-disabled=${data.saving ? "true" : nothing}>
        Keep this story
      </button>
      ${fresh
        ? nothing
        : html`<button type="button" class="plain" @click=${() => startOver(data, tools)}>
            Back to what is kept
          </button>`}
    </p>
    <p class="quiet" role="status">
      ${fresh
        ? data.story.kept
          ? "As the notebook keeps it."
          : "Not kept yet: this is what is proposed."
        : "Changed. This browser holds the changes until the notebook keeps them."}
    </p>
    ${refusal(data.unkept)}
    ${data.unkept?.reason === "conflict"
      ? html`<p>
          <button type="button" @click=${() => readAgain(data, tools)}>
            Read what is kept now, with my choices over it
          </button>
        </p>`
      : nothing}
  </div>`;
}

// Mine go on over theirs only after they were told that there is a newer one.
async function readAgain(data, tools) {
  try {
    const shown = await api.story(data.address);
    data.base = shown.story.base;
    data.saved = plainPlan(shown.story);
    data.unkept = null;
    keep(data.folder, name(data), {plan: data.plan, base: data.base});
    notice({text: "Your choices stand. Keeping them replaces what was kept meanwhile."});
  } catch (thrown) {
    data.unkept = api.expected(thrown);
  }
  tools.redraw();
}

function startOver(data, tools) {
  const mine = data.plan;
  data.plan = structuredClone(data.saved);
  data.restored = false;
  forget(data.folder, name(data));
  look(data, tools);
  notice({
    text: "Back to what is kept.",
    act: ["Take my changes again", () => changed(data, tools)((plan) => Object.assign(plan, mine))],
  });
}

function left(data, tools) {
  const [other] = data.elsewhere ?? [];
  if (!other) {
    return data.restored
      ? html`<p class="story-note" role="status">
          What you changed before is here again; the notebook does not keep it yet.
        </p>`
      : nothing;
  }
  return html`<p class="story-note">
    Another window left changes of this story behind.
    <button
      type="button"
      @click=${() => {
        drop(other.id);
        data.elsewhere = [];
        data.base = other.state.base;
        changed(data, tools)((plan) => Object.assign(plan, other.state.plan));
      }}
    >
      Take them up
    </button>
    <button
      type="button"
      class="plain"
      @click=${() => {
        drop(other.id);
        data.elsewhere = [];
        tools.redraw();
      }}
    >
      Throw them away
    </button>
  </p>`;
}

function pictures(data) {
  const list = data.story.pictures ?? [];
  return html`<section class="story-pictures" aria-labelledby="story-pictures-title">
    <h2 id="story-pictures-title">Pictures for a video</h2>
    <p>
      ${count(list.length, "picture")} of 1920 × 1080, and a text that says what each shows. They
      follow the choices above.
    </p>
    <p class="actions">
      <a
        class="button"
        href=${made("story-pictures", data)}
        download="${fileName(data)}-pictures.zip"
        @click=${() => notice({text: "The pictures are being drawn. That takes some seconds."})}
        >Download the pictures</a
      >
    </p>
    <ol class="story-strip">
      ${list.map(
        (each, index) => html`<li>
          <a
            href="${made("story-picture", data)}&number=${index + 1}"
            target="_blank"
            rel="noopener"
            ><img
              src="${made("story-picture", data)}&number=${index + 1}"
              alt=${each.alternative}
              width="1920"
              height="1080"
              loading="lazy"
          /></a>
          <span class="quiet">${each.name}</span>
        </li>`,
      )}
    </ol>
  </section>`;
}
