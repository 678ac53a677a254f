// A formula for somebody else: what goes along, what is chosen, and the bundle to download.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import * as api from "/api.js";
import {formulaPage} from "/address.js";
import {count} from "/format.js";
import {choiceField, tickField} from "/parts/fields.js";
import {notice} from "/parts/notices.js";

export const shareView = {
  async load({parts, query}, {signal}) {
    const chosen = {
      reference: query.get("reference") === "true",
      emails: query.get("emails") === "true",
      prices: query.get("prices") === "true",
      others: query.get("others") === "true",
    };
    if (query.get("variant")) {
      chosen.variant = query.get("variant");
    }
    return {chosen, share: await api.share(parts.formula, chosen, signal)};
  },

  title: ({share}) => `Share ${share.name}`,

  draw: (data, place, tools) => {
    const {share, chosen} = data;
    return html`<div class="page bundle-page">
      <h1>Share ${share.name}</h1>
      <p class="say">
        The formula with its whole history, as a notebook of its own in one file. Ovenmark takes it
        in; native <code>git clone</code> opens it.
      </p>
      <p class="actions">
        <a
          class="button main bundle-download"
          href=${`/made/bundle?${new URLSearchParams({formula: share.formula, ...chosen})}`}
          download=${share.file_name}
          @click=${() => notice({text: `${share.file_name} is being made.`})}
          >Download ${share.file_name}</a
        >
        <a href=${formulaPage(share.formula, {line: share.variant})}>Timeline of ${share.name}</a>
      </p>
      ${choices(data, tools)} ${along(share)} ${stays(share)} ${heed(share)}
    </div>`;
  },
};

function choices({share, chosen}, tools) {
  const choose = (key) => (value) => {
    const wanted = {...chosen, [key]: value};
    if (!wanted.variant) {
      delete wanted.variant;
    }
    const query = new URLSearchParams(wanted);
    tools.go(`/share/${share.formula}?${query}`, {replace: true});
  };
  const names = share.references.map((each) => each.formula).join(", ");
  return html`<fieldset class="form-part">
    <legend>Your choice</legend>
    ${lines(share, choose("variant"))}
    ${names
      ? html`${tickField({
            id: "share-reference",
            label: `The reference formula goes along: ${names}`,
            value: chosen.reference,
            ticked: choose("reference"),
          })}
          <p class="hint">
            What it was at each step, without its bakes.
            ${chosen.reference
              ? nothing
              : html`Its short name stays: it is written in the formula’s own file.`}
          </p>`
      : nothing}
    ${tickField({
      id: "share-emails",
      label: "E-mail addresses of those who wrote go along",
      value: chosen.emails,
      ticked: choose("emails"),
    })}
    <p class="hint">
      ${chosen.emails
        ? "Each revision carries the name and the address of who wrote it."
        : "Each revision carries the name of who wrote it and no address."}
    </p>
    ${tickField({
      id: "share-others",
      label: `Notes go along that others than ${share.sharer} wrote`,
      value: chosen.others,
      ticked: choose("others"),
    })}
    <p class="hint">
      Of revisions and of bakes.
      ${chosen.others
        ? "Ask them first."
        : "What they changed and measured goes along, without their words."}
    </p>
    ${share.foods_with_prices.length > 0
      ? html`${tickField({
            id: "share-prices",
            label: "Prices go along, and what else you keep with foods",
            value: chosen.prices,
            ticked: choose("prices"),
          })}
          <p class="hint">
            ${chosen.prices ? "In" : "They are taken out of"} all revisions:
            ${share.foods_with_prices.join(", ")}.
          </p>`
      : nothing}
  </fieldset>`;
}

/** All lines, or one variant alone; nothing to choose without variants. */
function lines({variant, variants, on_main_line: whole}, chosen) {
  if (variants.length === 0 || (!whole && variants.length === 1)) {
    return whole || variant === null
      ? nothing
      : html`<p class="hint">
          The formula is not on your main line: its variant <b>${variant}</b> is shared, as the main
          line.
        </p>`;
  }
  return choiceField({
    id: "share-variant",
    label: "Line of history",
    value: variant ?? "",
    options: [
      ...(whole ? [["", `The main line with ${count(variants.length, "variant")}`]] : []),
      ...variants.map((each) => [each, `${each} alone, as the main line`]),
    ],
    chosen,
  });
}

function along(share) {
  const people = share.people.map((each) =>
    each.email ? `${each.name} <${each.email}>` : each.name,
  );
  return html`<section aria-labelledby="share-along">
    <h2 id="share-along">What goes along</h2>
    <dl class="bundle-list">
      ${row(
        "Revisions",
        share.lines.map((each) => `${each.variant ?? "main line"}: ${each.revisions}`),
      )}
      ${row("Bakes and photos", [
        `${count(share.bakes, "bake")} and ${count(share.photos, "photo")}`,
      ])}
      ${row("Foods", share.foods)} ${row("Goals", share.goals)}
      ${row(
        "Reference",
        share.references.filter((each) => each.along).map((each) => each.formula),
      )}
      ${row("Published", share.publications > 0 ? [count(share.publications, "revision")] : [])}
      ${row("Written by", people)}
    </dl>
  </section>`;
}

function stays(share) {
  const other = share.commits_left_out;
  return html`<section aria-labelledby="share-stays">
    <h2 id="share-stays">What stays</h2>
    <ul class="bundle-notes">
      <li>
        Every other formula, and ${count(other, "change")} about other things. Stories. Tastings, which name
        guests. Title, units and all else of the notebook’s settings, except the rules that figures
        are worked out by.
      </li>
      ${share.photos_stripped.length > 0
        ? html`<li>
            What ${count(share.photos_stripped.length, "photo")} told of place, time or camera: it is
            taken out.
          </li>`
        : nothing}
      ${share.photos_left_out.map(
        (each) => html`<li>The picture <code>${each}</code>, which cannot be read.</li>`,
      )}
    </ul>
    ${share.notes_cut.length > 0
      ? html`<details>
          <summary>
            ${count(share.notes_cut.length, "note")} of ${share.notes}
            ${share.notes_cut.length === 1 ? "does" : "do"} not go along as written
          </summary>
          <p class="hint">
            They speak of other formulas, hold an address, or others wrote them; that part is cut.
          </p>
          <ul class="bundle-notes">
            ${share.notes_cut.map((each) => html`<li>“${each}”</li>`)}
          </ul>
        </details>`
      : nothing}
  </section>`;
}

function heed(share) {
  if (share.speaks_of_others.length === 0 && share.unknown_fields.length === 0) {
    return nothing;
  }
  return html`<div class="caution" role="note">
    <p><b>Read these before you send it.</b> They go along word for word:</p>
    <ul>
      ${share.speaks_of_others.map(
        (each) => html`<li><code>${each}</code> names another formula.</li>`,
      )}
      ${share.unknown_fields.map(
        (each) => html`<li>
          <code>${each.file}</code> has fields that Ovenmark does not know:
          ${each.fields.join(", ")}.
        </li>`,
      )}
    </ul>
  </div>`;
}

/** A row of a list of facts; nothing when there are none. */
export function row(term, facts) {
  return facts.length === 0
    ? nothing
    : html`<div>
        <dt>${term}</dt>
        <dd>${facts.join(", ")}</dd>
      </div>`;
}
