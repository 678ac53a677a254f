// Keeps the focus on the page when what had it is taken away by a drawing.

/** Once the page is drawn anew: if the focus was lost, gives it to the first of next() there is. */
export function keepFocus(...next) {
  requestAnimationFrame(() =>
    requestAnimationFrame(() => {
      if (document.activeElement === null || document.activeElement === document.body) {
        next.map((find) => find()).find(Boolean)?.focus();
      }
    }),
  );
}
