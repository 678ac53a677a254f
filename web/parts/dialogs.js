// A question that must be answered before the page goes on.

import {html, nothing, render} from "/lib/lit-html/lit-html.js";

/**
 * Opens a dialog over the page. draw(close, redraw) makes what is in it; close(answer) ends it.
 * Resolves with the answer, or null when it was left with Escape. The focus returns to where it
 * was.
 */
export function ask(title, draw, {wide = false} = {}) {
  return new Promise((resolve) => {
    const dialog = document.createElement("dialog");
    dialog.className = wide ? "wide" : "";
    dialog.setAttribute("aria-labelledby", "dialog-title");
    let answer = null;
    const close = (given = null) => {
      answer = given;
      dialog.close();
    };
    const redraw = () =>
      render(
        html`<h2 id="dialog-title">${title}</h2>
          ${draw(close, redraw)}`,
        dialog,
      );
    dialog.addEventListener("close", () => {
      render(nothing, dialog);
      dialog.remove();
      resolve(answer);
    });
    redraw();
    document.body.append(dialog);
    dialog.showModal();
  });
}

/** Asks for a yes; resolves with true or false. */
export async function confirmed(title, text, yes, no = "Cancel") {
  const answer = await ask(
    title,
    (close) => html`<p>${text}</p>
      <p class="actions">
        <button type="button" class="main" @click=${() => close(true)}>${yes}</button>
        <button type="button" @click=${() => close(false)}>${no}</button>
      </p>`,
  );
  return answer === true;
}
