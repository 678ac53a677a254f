// Plans of bakes that tell changes apart which came together. Nothing is worked out here.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {causesPage, short} from "/address.js";
import {capital, count, mass, massNumber, massUnit, number, signed, withUnit} from "/format.js";
import {textField} from "/parts/fields.js";

/** The plans of an inquiry, with the form that says how much is baked. */
export function planSection(sheet, begin, tools) {
  const {inquiry} = sheet;
  if (inquiry.plans.length === 0) {
    return inquiry.remarks.length > 0
      ? html`<section>
          <h2>Bakes that tell the changes apart</h2>
          ${remarks(inquiry.remarks)}
        </section>`
      : nothing;
  }
  return html`<section class="cause-plans">
    <h2>Bakes that tell the changes apart</h2>
    ${size(sheet, tools)} ${inquiry.plans.map((plan) => planOf(plan, sheet, begin))}
    ${remarks(inquiry.remarks)}
  </section>`;
}

function remarks(all) {
  return all.length === 0
    ? nothing
    : html`<ul class="cause-remarks">
        ${all.map((words) => html`<li>${words}</li>`)}
      </ul>`;
}

function size(sheet, tools) {
  const {inquiry} = sheet;
  const typed = {pieces: String(inquiry.pieces), tray: String(inquiry.tray)};
  const field = (name, label) =>
    textField({
      id: `cause-${name}`,
      label,
      value: typed[name],
      inputmode: "numeric",
      size: "short",
      typed: (text) => {
        typed[name] = text;
      },
    });
  return html`<form
    class="cause-size"
    @submit=${(event) => {
      event.preventDefault();
      tools.go(causesPage(sheet.address, {finding: inquiry.finding, ...typed}), {replace: true});
    }}
  >
    ${field("pieces", "Pieces of each setting")} ${field("tray", "Pieces on a tray")}
    <button type="submit">Work out again</button>
  </form>`;
}

function planOf(plan, sheet, begin) {
  return html`<section class="cause-plan" aria-labelledby="plan-${plan.number}">
    <h3 id="plan-${plan.number}">${plan.title} <span class="n">${plan.design}</span></h3>
    <p>Takes ${takes(plan.all)}. ${missing(plan)}</p>
    ${plan.factors.length === 2 ? grid(plan, sheet, begin) : list(plan, sheet, begin)}
    ${plan.pairs.length > 0
      ? html`<p><b>So far:</b></p>
          <ul>
            ${plan.pairs.map((words) => html`<li>${words}</li>`)}
          </ul>`
      : nothing}
    ${contrasts(plan)} ${doughs(plan)} ${loads(plan)} ${remarks(plan.remarks)}
  </section>`;
}

function takes(cost) {
  return [
    `${mass(cost.dough_g)} dough in ${count(cost.doughs, "mix", "mixes")}`,
    `${count(cost.pieces, "piece")} on ${count(cost.trays, "tray")}`,
    `${withUnit(cost.oven_minutes, "min")} in the oven`,
  ].join(", ");
}

function missing({all, missing: left}) {
  if (left.settings === 0) {
    return "Every setting was baked already, though not on one day.";
  }
  return left.settings < all.settings
    ? `Only what was not baked yet takes ${takes(left)}; all on one day is surer.`
    : "";
}

const level = (high, words) => html`<span class="cause-level">
  <span class="cause-mark ${high ? "present" : "gone"}" aria-hidden="true"></span>${words}
</span>`;

// Two factors as a square: the first down, the second across.
function grid(plan, sheet, begin) {
  const [down, across] = plan.factors;
  const setting = (first, second) =>
    plan.settings.find(({high}) => high[0] === first && high[1] === second);
  return html`<table class="cause-grid" role="table">
    <caption class="unseen">
      ${capital(down.name)} down, ${across.name} across
    </caption>
    <thead role="rowgroup">
      <tr role="row">
        <td role="cell"></td>
        ${[false, true].map(
          (second) => html`<th scope="col" role="columnheader">
            ${capital(across.name)}: ${level(second, second ? across.to : across.from)}
          </th>`,
        )}
      </tr>
    </thead>
    <tbody role="rowgroup">
      ${[false, true].map(
        (first) => html`<tr role="row">
          <th scope="row" role="rowheader">
            ${capital(down.name)}: ${level(first, first ? down.to : down.from)}
          </th>
          ${[false, true].map(
            (second) => html`<td role="cell">
              ${settingOf(setting(first, second), plan, sheet, begin)}
            </td>`,
          )}
        </tr>`,
      )}
    </tbody>
  </table>`;
}

function list(plan, sheet, begin) {
  return html`<ol class="cause-settings">
    ${plan.settings.map(
      (setting) => html`<li>
        <p class="cause-levels">
          ${setting.levels.map((words, at) =>
            level(setting.high[at], named(plan.factors[at].name, words)),
          )}
        </p>
        ${settingOf(setting, plan, sheet, begin)}
      </li>`,
    )}
  </ol>`;
}

function named(name, words) {
  return words.includes(name) ? capital(words) : `${capital(name)}: ${words}`;
}

// The pieces of a setting, as the page that records a bake takes them over.
function plannedPieces({oven}, {inquiry}) {
  if (!oven) {
    return "";
  }
  const piece = oven.replace(" for ", " ");
  return `?${new URLSearchParams({plan: Array(inquiry.pieces).fill(piece).join(", ")})}`;
}

function settingOf(setting, plan, sheet, begin) {
  return html`<div class="cause-setting">
    <p>
      <b>Setting ${setting.number}</b>${setting.oven ? html`, ${setting.oven}` : nothing}
      <span class="n">dough ${setting.dough}</span>
    </p>
    <p class=${setting.baked === 0 ? "n" : ""}>
      ${setting.baked === 0
        ? "not baked yet"
        : `found on ${setting.with} of ${count(setting.baked, "piece")}`}
    </p>
    ${setting.address
      ? html`<a
          href=${`/record/${setting.address}${plannedPieces(setting, sheet)}`}
          aria-label="Record a bake of setting ${setting.number}, ${setting.address}"
          >Record a bake of ${short(setting.address)}</a
        >`
      : html`<button
          type="button"
          aria-label="Open a draft of setting ${setting.number}, plan ${plan.number}"
          @click=${() =>
            begin("causes/setting", {
              pieces: String(sheet.inquiry.pieces),
              tray: String(sheet.inquiry.tray),
              plan: plan.number,
              setting: setting.number,
            })}
        >
          Open a draft
        </button>`}
  </div>`;
}

function contrasts({number: plan, contrasts: all}) {
  const known = all.some((each) => each.effect_points !== null);
  const mixed = all.some((each) => each.alias !== null);
  return html`<div
    class="cause-scroll"
    tabindex="0"
    role="region"
    aria-label="What plan ${plan} answers"
  >
    <table class="cause-contrasts">
      <thead>
        <tr>
          <th scope="col">What it answers</th>
          <th scope="col">Settings</th>
          <th scope="col">against</th>
          ${mixed ? html`<th scope="col">cannot be told from</th>` : nothing}
          ${known ? html`<th scope="col" class="number">so far, points</th>` : nothing}
        </tr>
      </thead>
      <tbody>
        ${all.map(
          (each) => html`<tr>
            <th scope="row">${each.question}</th>
            <td>${each.plus.join(", ")}</td>
            <td>${each.minus.join(", ")}</td>
            ${mixed ? html`<td>${each.alias ?? ""}</td>` : nothing}
            ${known ? html`<td class="number">${signed(each.effect_points)}</td>` : nothing}
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

function doughs({doughs: all}) {
  return html`<details class="cause-more">
    <summary>What to weigh: ${count(all.length, "dough")}</summary>
    <div class="cause-doughs">
      ${all.map(
        (dough) => html`<table>
          <caption>
            Dough ${dough.number}, ${mass(dough.dough_g)} for ${count(dough.pieces, "piece")},
            ${dough.address ? short(dough.address) : "a draft"}
          </caption>
          <thead>
            <tr>
              <th scope="col">Food</th>
              <th scope="col" class="number">Batch</th>
              <th scope="col" class="number">For this, ${massUnit()}</th>
            </tr>
          </thead>
          <tbody>
            ${dough.lines.map(
              (line) => html`<tr class=${line.differs ? "cause-differs" : ""}>
                <th scope="row">
                  ${line.name}${line.differs ? html` <span class="n">changed</span>` : nothing}
                </th>
                <td class="number">${line.entered}</td>
                <td class="number">
                  ${line.grams === null ? "unknown" : number(massNumber(line.grams))}
                </td>
              </tr>`,
            )}
          </tbody>
        </table>`,
      )}
    </div>
  </details>`;
}

function loads({loads: all}) {
  return html`<details class="cause-more">
    <summary>In the oven: ${count(all.length, "load")}, places drawn by lot</summary>
    ${all.map(
      (load) => html`<h4>
          ${[
            load.oven || "As usual",
            load.rack ? `rack ${load.rack}` : null,
            count(load.trays, "tray"),
            withUnit(load.minutes, "min"),
          ]
            .filter(Boolean)
            .join(", ")}
        </h4>
        <ol class="cause-places">
          ${load.places.map(
            (place) => html`<li>
              setting ${place.setting}, dough ${place.dough}${place.minutes === null
                ? nothing
                : html`, out at ${number(place.minutes)} min`}
            </li>`,
          )}
        </ol>`,
    )}
  </details>`;
}
