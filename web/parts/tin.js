// A tin as the form holds it, and as it is asked for: round:20cmx5cm, loaf:25/23cmx11/9cmx7cm.

const TEXT = /^(round|square|loaf):(.*)$/;
const LENGTH = /^([\d./]*)(mm|cm|in)$/;

/** What the form shows of a tin that is asked for. */
export function tinOf(text) {
  const empty = {shape: "loaf", unit: "cm", length: "", width: "", depth: ""};
  const found = TEXT.exec(text ?? "");
  if (!found) {
    return empty;
  }
  const lengths = found[2].split("x").map((part) => LENGTH.exec(part));
  if (lengths.some((part) => !part)) {
    return empty;
  }
  const sizes = lengths.map(([, size]) => size);
  return {
    shape: found[1],
    unit: lengths[0][2],
    length: sizes[0],
    width: found[1] === "loaf" ? sizes[1] ?? "" : "",
    depth: sizes.at(-1),
  };
}

/** The tin as it is asked for; nothing while a size is missing. */
export function tinText({shape, unit, length, width, depth}) {
  const sizes = (shape === "loaf" ? [length, width, depth] : [length, depth])
    .map((size) => size.trim());
  return sizes.every((size) => size !== "")
    ? `${shape}:${sizes.map((size) => size + unit).join("x")}`
    : "";
}
