// What is typed into the page that begins a formula outlives a reload of the page.

const KEY = "begin";

/** The form as it was kept, over what it holds otherwise. */
export function keptForm(otherwise) {
  try {
    return {...otherwise, ...JSON.parse(sessionStorage.getItem(KEY) ?? "{}")};
  } catch {
    return otherwise;
  }
}

/** Keeps it; without room to keep it, it lives as long as the page. */
export function keepForm(form) {
  try {
    sessionStorage.setItem(KEY, JSON.stringify(form));
  } catch {
    // Nothing else is lost.
  }
}

/** Forgets it. */
export function forgetForm() {
  sessionStorage.removeItem(KEY);
}
