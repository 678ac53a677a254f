// What cannot be read yet, beside its field: but not while the field is being typed into, nor
// before anybody was there.

/** What is wrong with a field, by its path in the document; empty text when nothing is. */
export function problemAt(state, path, id) {
  const blank = !document.getElementById(id)?.value.trim();
  if (document.activeElement?.id === id || (blank && !state.visited?.has(id))) {
    return "";
  }
  const found = (state.sheet?.problems ?? []).find((each) => each.where === path);
  return found ? `${found.message} ${found.hint}` : "";
}

/** The id of the field of a path, such as lines.3.amount. */
export function fieldId(state, path) {
  const [part, at, name] = path.split(".");
  if (part === "yield") {
    return `yield-${at ?? "pieces"}`;
  }
  if (at === undefined) {
    return `draft-${part}`;
  }
  const list = {lines: "line", bake: "stage", method: "step"}[part];
  const key = state.keys[part]?.[Number(at)];
  return name ? `${list}-${key}-${name}` : `${list}-${key}`;
}
