// Pairs a device with the viewer. This page stands alone, since a device that is not paired gets
// nothing else of the site.

const NAME = "ovenmark.name";

const form = document.getElementById("pair");
const code = document.getElementById("code");
const name = document.getElementById("name");
const problem = document.getElementById("problem");
const button = form.querySelector("button");

// The code comes in the fragment, which is never sent; it need not stand in the address for long.
code.value = location.hash.slice(1);
history.replaceState(null, "", location.pathname);
name.value = kept();
(code.value ? name : code).focus();

form.addEventListener("submit", async (event) => {
  event.preventDefault();
  say("");
  button.disabled = true;
  try {
    const response = await fetch("/api/pair", {
      method: "POST",
      headers: {"Content-Type": "application/json"},
      body: JSON.stringify({code: code.value, name: name.value}),
    });
    const answer = await response.json();
    if (response.ok) {
      keep(name.value);
      location.replace("/");
      return;
    }
    say(`${answer.sentence} ${answer.hint}`);
    (answer.where === "name" ? name : code).focus();
  } catch {
    say("The viewer does not answer. See whether it still runs at the desk, and try again.");
  }
  button.disabled = false;
});

function say(words) {
  problem.textContent = words;
  code.toggleAttribute("aria-invalid", Boolean(words));
}

function kept() {
  try {
    return localStorage.getItem(NAME) ?? "";
  } catch {
    return "";
  }
}

function keep(given) {
  try {
    localStorage.setItem(NAME, given);
  } catch {
    // Then it is typed again the next time.
  }
}
