// Addresses of formulas, variants and revisions, and the addresses of the pages that show them.

/** seeded-lupin-bun/egg-free@7 → its parts; the point is "7", "edited", a commit or "". */
export function parse(text) {
  const [line, point = ""] = text.split("@");
  const [formula, variant = ""] = line.split("/");
  return {formula, variant, point};
}

/** The parts → seeded-lupin-bun/egg-free@7. */
export function print({formula, variant, point}) {
  return formula + (variant ? "/" + variant : "") + (point ? "@" + point : "");
}

/** A revision as people read it beside its formula's name: 7, egg-free 7, edited. */
export function short(address) {
  const {variant, point} = parse(address);
  const state = /^[0-9a-f]{7,}$/.test(point) ? point.slice(0, 7) : point || "latest";
  return variant ? `${variant} ${state}` : state;
}

/**
 * The revision that a sheet or a side of a comparison shows, as people read it. Without a number in
 * its address it is the newest one, worked out with the foods of today.
 */
export function revisionName({commit, variant, revision}) {
  const state = commit === null ? "edited" : String(revision);
  return variant ? `${variant} ${state}` : state;
}

/**
 * A revision as a pin writes it into the address of the page of a formula: "7", "egg-free@7", or
 * "../wheat-bun@2" for one of another formula.
 */
export function toPin(address, formula) {
  const parts = parse(address);
  if (parts.formula !== formula) {
    return "../" + address;
  }
  if (parts.variant) {
    return parts.variant + (parts.point ? "@" + parts.point : "");
  }
  return parts.point || "latest";
}

/** The reverse of toPin. */
export function fromPin(pin, formula) {
  if (pin.startsWith("../")) {
    return pin.slice(3);
  }
  if (pin.includes("@")) {
    return `${formula}/${pin}`;
  }
  return /^(\d+|[0-9a-f]{7,40}|edited|latest)$/.test(pin)
    ? `${formula}@${pin}`
    : `${formula}/${pin}`;
}

// What history is searched by, as the pages write it into their addresses.
const FILTERS = {
  words: "q",
  finding: "finding",
  ingredient: "ingredient",
  person: "person",
  since: "since",
  until: "until",
  kinds: "kind",
};

/** The search that the query of a page states: {words, finding, …}; only what is stated. */
export function filterOf(query) {
  const stated = Object.entries(FILTERS).map(([name, short]) => [name, query.get(short)]);
  return Object.fromEntries(stated.filter(([, value]) => value));
}

/** The page of a formula. Everything else than the formula may be left out. */
export function formulaPage(formula, {line, from, to, per, figure, trends, filter} = {}) {
  const query = new URLSearchParams();
  const put = (name, value) => value && query.set(name, value);
  put("line", line);
  put("a", from && toPin(from, formula));
  put("b", to && toPin(to, formula));
  put("per", per);
  put("figure", figure);
  put("trends", trends);
  Object.entries(filter ?? {}).forEach(([name, value]) => put(FILTERS[name], value));
  return `/formulas/${formula}` + written(query);
}

/** The page that searches the history of all formulas, or of one. */
export function searchPage(filter, formula) {
  const query = new URLSearchParams();
  const put = (name, value) => value && query.set(name, value);
  Object.entries(filter).forEach(([name, value]) => put(FILTERS[name], value));
  put("formula", formula);
  return "/search" + written(query);
}

function written(query) {
  const text = query
    .toString()
    .replaceAll("%40", "@")
    .replaceAll("%2F", "/")
    .replaceAll("%2C", ",");
  return text ? "?" + text : "";
}

/** The page of a revision worked out. */
export function worksheetPage(address) {
  return "/worksheet/" + address;
}

/** The page of the causes of findings; finding, pieces and tray may be left out. */
export function causesPage(address, {finding, pieces, tray} = {}) {
  const query = new URLSearchParams(
    Object.entries({finding, pieces, tray}).filter(([, value]) => value),
  );
  return `/causes/${address}${query.size > 0 ? "?" + query : ""}`;
}

/** The page of a revision's label; chosen are the choices made there, empty ones left out. */
export function labelPage(address, chosen = {}) {
  const stated = Object.entries(chosen).filter(([, value]) => value);
  return `/label/${address}` + written(new URLSearchParams(stated));
}

/** The page that carries the main line's improvements into a variant. */
export function carryPage(formula, variant) {
  return `/carry/${formula}/${variant}`;
}

/** The page of what mattered over the bakes of a line of history. */
export function matteredPage(address, variants = false) {
  return `/mattered/${address}${variants ? "?variants=yes" : ""}`;
}

/** The page of a bake. */
export function bakePage(bake) {
  return `/bakes/${bake.formula}/${bake.id}`;
}

/** The page of two photos beside each other; photos/bun/tray.jpg is written bun/tray.jpg. */
export function besidePage({left, right, formula, as}) {
  const query = new URLSearchParams();
  const put = (name, value) => value && query.set(name, value);
  put("formula", formula);
  put("left", left?.replace(/^photos\//, ""));
  put("right", right?.replace(/^photos\//, ""));
  put("as", as);
  const text = query.toString().replaceAll("%2F", "/");
  return "/beside" + (text ? "?" + text : "");
}

/** A photo, scaled to a width or as it is. */
export function photo(file, width) {
  const path = "/" + file.split("/").map(encodeURIComponent).join("/");
  return width ? `${path}?width=${width}` : path;
}
