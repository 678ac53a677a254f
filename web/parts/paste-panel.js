// Beginning a formula with pasted text: the text, and live beside it what is read in it.

import {html} from "/lib/lit-html/lit-html.js";
import {expected, order} from "/api.js";
import {textArea} from "/parts/fields.js";
import {keepForm} from "/parts/kept-form.js";
import {notice} from "/parts/notices.js";
import {pastedLines} from "/parts/pasting.js";
import {fileOf, holdsFile, textOf} from "/parts/text-drop.js";
import {refused} from "/views/failure.js";

const WAIT_MS = 150;
const HINT =
  "One ingredient a line, such as “1 1/2 cups almond meal, sifted” or “½ tsp salt”; or a recipe " +
  "with its method; or schema.org JSON-LD. A file can be dropped here.";

/** Draws the text and, beside it, what is read in it. */
export function pastePanel(data, tools) {
  return html`<div class="pasting">
    <div
      class="paste-in"
      @dragover=${(event) => holdsFile(event) && event.preventDefault()}
      @drop=${(event) => {
        if (holdsFile(event)) {
          event.preventDefault();
          takeFile(data, event, tools);
        }
      }}
    >
      ${textArea({
        id: "text",
        label: "Ingredients, or a whole recipe",
        value: data.form.text,
        rows: 16,
        typed: (text) => retype(data, text, tools),
        hint: HINT,
        problem: data.problems.text,
      })}
      <label class="file-choice">
        <input
          id="file"
          type="file"
          class="unseen"
          accept=".txt,.md,.json,.jsonld,.html,.htm,text/plain,application/json,application/ld+json"
          @change=${(event) => takeFile(data, event, tools)}
        />
        <span class="button">Choose a file</span>
      </label>
    </div>
    <section class="paste-out" aria-label="What was read">
      ${data.unread
        ? refused(data.unread)
        : data.read && data.form.text.trim()
          ? pastedLines(
              data.read,
              {...data.pasting, choices: data.form.choices},
              (change) => settle(data, change, tools),
              tools.redraw,
            )
          : html`<p class="quiet">What is read appears here as you type.</p>`}
    </section>
  </div>`;
}

function retype(data, text, tools) {
  data.form.text = text;
  delete data.problems.text;
  keepForm(data.form);
  tools.redraw();
  clearTimeout(data.timer);
  data.timer = setTimeout(() => readPasted(data, tools), WAIT_MS);
}

async function settle(data, change, tools) {
  const at = document.activeElement?.closest?.(".pasted-line")?.id;
  change(data.form.choices);
  keepForm(data.form);
  await readPasted(data, tools);
  if (at && !document.activeElement?.closest?.(".pasted")) {
    const next = document.getElementById(at);
    (next?.querySelector(".change") ?? next)?.focus();
  }
}

/** Asks what the text says; of several answers on their way the last asked counts. */
export async function readPasted(data, tools) {
  clearTimeout(data.timer);
  data.asking?.abort();
  const mine = new AbortController();
  data.asking = mine;
  const {text, choices} = data.form;
  try {
    data.read = await order(
      "paste",
      {text, foods: choices.foods, amounts: choices.amounts, left_out: choices.leftOut},
      mine.signal,
    );
    data.unread = null;
  } catch (thrown) {
    if (mine.signal.aborted) {
      return;
    }
    data.unread = expected(thrown);
  }
  tools.redraw();
}

async function takeFile(data, event, tools) {
  const file = fileOf(event);
  if (!file) {
    return;
  }
  const {text, problem} = await textOf(file);
  if (problem) {
    data.problems.text = problem;
    tools.redraw();
    return;
  }
  const earlier = data.form.text;
  retype(data, text, tools);
  if (earlier.trim() && earlier !== text) {
    notice({
      text: `“${file.name}” stands in the place of what was there.`,
      act: ["Put the earlier text back", () => retype(data, earlier, tools)],
    });
  }
}
