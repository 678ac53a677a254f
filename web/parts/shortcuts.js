// Keys that do what a button of the page does too.

/** Whether keys belong to what is being typed into. */
export function isTyping(target) {
  return Boolean(
    target.closest?.(
      "input:not([type=checkbox], [type=radio]), textarea, select, [contenteditable], dialog",
    ),
  );
}

/** Runs the shortcut of a pressed key, when there is one: {key, does, run}. */
export function runShortcut(event, shortcuts) {
  if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || event.repeat) {
    return;
  }
  const found = shortcuts.find((each) => each.run && each.key === event.key);
  if (found) {
    event.preventDefault();
    found.run();
  }
}
