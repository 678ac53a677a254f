// A text file that is dropped or chosen, read on this machine.

const LARGEST = 900_000;
const COPY = "Copy the recipe out of it and paste that.";

/** The file of a drop or of a file field, or null. */
export function fileOf(event) {
  const files = event.dataTransfer?.files ?? event.target.files;
  return files?.length > 0 ? files[0] : null;
}

/** Whether something dragged holds a file. */
export function holdsFile(event) {
  return [...(event.dataTransfer?.types ?? [])].includes("Files");
}

/** The text of a file: {text}, or {problem} in one sentence. */
export async function textOf(file) {
  if (file.size > LARGEST) {
    return {problem: `“${file.name}” is larger than 0.9 MB. ${COPY}`};
  }
  try {
    const text = new TextDecoder("utf-8", {fatal: true}).decode(await file.arrayBuffer());
    return text.includes("\u0000") ? notText(file) : {text};
  } catch {
    return notText(file);
  }
}

function notText(file) {
  return {problem: `“${file.name}” is not a text file in UTF-8. ${COPY}`};
}
