// Names that depend on another box of the row (counties of a state, programs of a field) follow it as it changes.
"use strict";

async function follow(box) {
  const other = document.getElementById(box.dataset.within);
  const list = document.getElementById(box.getAttribute("list"));
  if (!other || !list) {
    return;
  }
  const address = `/season/${box.dataset.table}/names?column=${encodeURIComponent(box.dataset.column)}&within=${encodeURIComponent(other.value)}`;
  const answer = await fetch(address);
  if (answer.ok) {
    const names = (await answer.text()).split("\n").filter((name) => name);
    list.replaceChildren(...names.map((name) => {
      const option = document.createElement("option");
      option.value = name;
      return option;
    }));
  }
}

addEventListener("DOMContentLoaded", () => {
  for (const box of document.querySelectorAll("input[data-within]")) {
    const other = document.getElementById(box.dataset.within);
    if (other) {
      other.addEventListener("change", () => follow(box));
    }
  }
  // "none" says that somebody looked and there is none: it stands alone.
  for (const checks of document.querySelectorAll(".checks")) {
    checks.addEventListener("change", (event) => {
      const boxes = [...checks.querySelectorAll("input[type=checkbox]")];
      const none = boxes.find((one) => one.value === "none");
      if (event.target.checked && none) {
        boxes.filter((one) => (event.target === none ? one !== none : one === none)).forEach((one) => { one.checked = false; });
      }
    });
  }
});
