// Chooses light or dark before anything is drawn, as the reader prefers or as the system does. A
// plain script, so that it runs first. preferences.js keeps the choice and says when it changes.

(() => {
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const BARS = {light: "#ffffff", dark: "#1a2021"};

  const preferred = () => {
    try {
      return JSON.parse(localStorage.getItem("ovenmark.preferences"))?.colours;
    } catch {
      return null;
    }
  };

  const choose = () => {
    const wanted = preferred();
    const chosen = wanted === "light" || wanted === "dark" ? wanted : dark.matches ? "dark" : "light";
    document.documentElement.dataset.colours = chosen;
    document.querySelector("meta[name=theme-color]")?.setAttribute("content", BARS[chosen]);
  };

  choose();
  dark.addEventListener("change", choose);
  addEventListener("storage", choose);
  addEventListener("ovenmark-preferences", choose);
})();
