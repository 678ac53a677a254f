// The fields by which a timeline is filtered and the history is searched.

import {html, nothing} from "/lib/lit-html/lit-html.js";
import {choiceField, textField, tickField} from "/parts/fields.js";

const KINDS = [
  ["baked", "has bakes"],
  ["published", "published"],
  ["restored", "takes an earlier one back"],
  ["carried", "carries the main line over"],
  ["oven", "changed the oven"],
  ["method", "changed the method"],
];
const NAMES = {
  words: "words",
  finding: "finding",
  ingredient: "ingredient",
  person: "person",
  since: "since",
  until: "until",
};

/** A search without what is empty. */
export function withoutEmpty(filter) {
  return Object.fromEntries(Object.entries(filter).filter(([, value]) => value));
}

/**
 * What is stated, in words, each with what is left without it: [{name, value, without}]; value is
 * how a food or person is called, as far as the choices know.
 */
export function statedParts(filter, narrow) {
  const parts = [];
  for (const [name, label] of Object.entries(NAMES)) {
    if (filter[name]) {
      const value = called(name, filter[name], narrow);
      parts.push({name: label, value, without: withoutEmpty({...filter, [name]: ""})});
    }
  }
  for (const kind of kindsOf(filter)) {
    const kinds = kindsOf(filter).filter((each) => each !== kind).join(",");
    const value = KINDS.find(([each]) => each === kind)?.[1] ?? kind;
    parts.push({name: "", value, without: withoutEmpty({...filter, kinds})});
  }
  return parts;
}

function called(name, value, narrow) {
  const choices = name === "ingredient" ? narrow?.ingredients : [];
  return choices?.find((choice) => choice.value === value)?.words ?? value;
}

function kindsOf(filter) {
  return (filter.kinds ?? "").split(",").filter(Boolean);
}

/**
 * The fields: {id, filter, narrow, change, words}. Change is called with the search as it shall be
 * and whether somebody is still typing it; words is the label of the field for free words, without
 * it there is none.
 */
export function filterFields({id, filter, narrow, change, words}) {
  const typed = (name) => (value) => change(withoutEmpty({...filter, [name]: value}), true);
  const chosen = (name) => (value) => change(withoutEmpty({...filter, [name]: value}), false);
  const tick = (kind) => (ticked) => {
    const others = kindsOf(filter).filter((each) => each !== kind);
    change(withoutEmpty({...filter, kinds: [...others, ...(ticked ? [kind] : [])].join(",")}));
  };
  return html`<div class="filter-fields">
    ${words
      ? textField({
          id: `${id}-words`,
          label: words,
          value: filter.words,
          type: "search",
          typed: typed("words"),
        })
      : nothing}
    ${textField({
      id: `${id}-ingredient`,
      label: "Changed ingredient",
      value: called("ingredient", filter.ingredient, narrow),
      list: `${id}-ingredients`,
      typed: typed("ingredient"),
    })}
    ${textField({
      id: `${id}-finding`,
      label: "Finding of a bake",
      value: filter.finding,
      list: `${id}-findings`,
      typed: typed("finding"),
    })}
    ${person(id, filter, narrow, typed, chosen)}
    ${textField({
      id: `${id}-since`,
      label: "Since",
      type: "date",
      value: filter.since,
      typed: typed("since"),
    })}
    ${textField({
      id: `${id}-until`,
      label: "Until",
      type: "date",
      value: filter.until,
      typed: typed("until"),
    })}
    <fieldset class="kinds">
      <legend>Only revisions that are so</legend>
      ${KINDS.map(([kind, label]) =>
        tickField({
          id: `${id}-${kind}`,
          label,
          value: kindsOf(filter).includes(kind),
          ticked: tick(kind),
        }),
      )}
    </fieldset>
    ${choices(`${id}-ingredients`, narrow?.ingredients)} ${choices(`${id}-findings`, narrow?.findings)}
  </div>`;
}

function person(id, filter, narrow, typed, chosen) {
  const people = narrow?.people ?? [];
  const known = people.some((each) => each.value === filter.person);
  if (filter.person && !known) {
    return textField({
      id: `${id}-person`,
      label: "Person",
      value: filter.person,
      typed: typed("person"),
    });
  }
  return choiceField({
    id: `${id}-person`,
    label: "Person",
    value: filter.person ?? "",
    options: [["", "anybody"], ...people.map((each) => [each.value, each.words])],
    chosen: chosen("person"),
  });
}

function choices(id, all) {
  return html`<datalist id=${id}>
    ${(all ?? []).map((each) => html`<option value=${each.words}></option>`)}
  </datalist>`;
}
