// The season picture: marks that are dragged, keys and boxes that move passes, an answer that follows in place.
// Everything works without it, by the form under the picture.
"use strict";

const DAY = 86400000;
const trial = document.getElementById("trial");
const form = document.getElementById("passes");
const back = document.getElementById("back");
const undo = [];
let dragging = null;
let asking = null;
let next = null;
let settle = 0;
let focus = null;

const box = (pass, name) => form.querySelector(`fieldset[data-pass="${pass}"] input[name="${name}"]`);
const boxes = () => [...form.querySelectorAll("fieldset[data-pass] input[name]")];
const state = () => boxes().map((input) => input.value);
const iso = (time) => new Date(time).toISOString().slice(0, 10);
const shownDraw = () => [...trial.querySelectorAll(".draw")].find((draw) => draw.getClientRects().length);

// Which day lies under a place of the picture.
function dayAt(draw, clientX) {
  const data = draw.dataset;
  const frame = draw.getBoundingClientRect();
  const x = (clientX - frame.left) * (data.width / frame.width);
  const first = Date.parse(data.first);
  const days = (Date.parse(data.last) - first) / DAY;
  const day = Math.round((x - data.left) / (data.right - data.left) * days);
  return iso(first + Math.max(0, Math.min(days, day)) * DAY);
}

// Marks lie over the picture as places of their own, wide enough for a thumb.
function place() {
  for (const draw of trial.querySelectorAll(".draw")) {
    const data = draw.dataset;
    for (const handle of draw.querySelectorAll(".handle")) {
      handle.style.left = `${100 * handle.dataset.x / data.width}%`;
      handle.style.top = `${100 * handle.dataset.y / data.height}%`;
      handle.hidden = false;
    }
  }
  if (focus !== null && !dragging) {
    shownDraw()?.querySelector(`.handle[data-pass="${focus}"]`)?.focus({ preventScroll: true });
  }
}

function remember() {
  const now = state();
  if (!undo.length || undo[undo.length - 1].join("\n") !== now.join("\n")) {
    undo.push(now);
  }
  back.disabled = false;
}

// One question at a time: while an answer is on its way only the latest wish is kept.
// moving: few draws; soon: all draws; whole: the lawful days of all passes as well.
function ask(how) {
  if (asking && !(how === "moving" && asking.how !== "moving")) {
    next = how;
    return;
  }
  if (asking) {
    asking.stop.abort();
  }
  const mine = { how, stop: new AbortController() };
  asking = mine;
  next = null;
  const query = new URLSearchParams();
  query.set("program", form.elements.program.value);
  for (const fieldset of form.querySelectorAll("fieldset[data-pass]")) {
    for (const name of ["pass", "date", "rate"]) {
      query.append(name, fieldset.querySelector(`input[name="${name}"]`).value);
    }
  }
  query.set("width", String(Math.round(trial.clientWidth)));
  query.set("how", how);
  const began = performance.now();
  fetch(`${trial.dataset.address}?${query}`, { signal: mine.stop.signal })
    .then((answer) => answer.text().then((html) => {
      if (asking !== mine) {
        return;
      }
      if (answer.ok) {
        show(html);
        trial.dataset.milliseconds = String(Math.round(performance.now() - began));
        trial.dataset.how = how;
        say("");
      } else {
        say("The desk could not work this out. What you typed is still here; load the page anew if it stays so.");
      }
    }))
    .catch(() => asking === mine && say("The desk doesn’t answer; is it still running? What you typed is still here."))
    .finally(() => {
      if (asking !== mine) {
        return;
      }
      asking = null;
      if (next) {
        const wish = next;
        next = null;
        ask(wish);
      } else if (how === "soon") {
        ask("whole");
      }
    });
}

function show(html) {
  const fresh = document.createElement("div");
  fresh.innerHTML = html;
  const trouble = document.getElementById("trouble");
  const faults = [...fresh.querySelectorAll(".faultlist li")];
  const good = !faults.length;
  for (const fieldset of form.querySelectorAll("fieldset[data-pass]")) {
    const fault = faults.find((one) => one.dataset.pass === fieldset.dataset.pass);
    fieldset.querySelector(".fault").textContent = fault ? fault.textContent : "";
    const input = fieldset.querySelector('input[name="date"]');
    if (fault) {
      input.setAttribute("aria-invalid", "true");
    } else {
      input.removeAttribute("aria-invalid");
    }
  }
  trouble.hidden = good;
  trouble.textContent = faults.map((fault) => fault.textContent).join(" ");
  if (!good) {
    return;
  }
  const open = [...trial.querySelectorAll("details")].map((one) => one.open);
  if (document.activeElement?.matches("#trial .handle")) {
    focus = document.activeElement.dataset.pass;
  }
  const top = shownDraw()?.getBoundingClientRect().top;
  trial.replaceChildren(...fresh.childNodes);
  trial.querySelectorAll("details").forEach((one, i) => { one.open = !!open[i]; });
  const moved = (shownDraw()?.getBoundingClientRect().top ?? 0) - (top ?? 0);
  if (top !== undefined && moved) {
    scrollBy(0, moved); // the picture stays under the finger, however long the sentence above it
  }
  place();
}

// What shares a tank moves along in the answer; its own box follows when the answer comes.
function set(pass, date) {
  const input = box(pass, "date");
  if (input.value === date) {
    return false;
  }
  const from = input.value;
  const mates = [...form.querySelectorAll(`fieldset[data-tank]`)].filter((one) =>
    one.dataset.tank && one.dataset.tank === input.closest("fieldset").dataset.tank && one.querySelector('input[name="date"]').value === from);
  input.value = date;
  mates.forEach((mate) => { mate.querySelector('input[name="date"]').value = date; });
  return true;
}

trial.addEventListener("pointerdown", (event) => {
  const handle = event.target.closest(".handle");
  if (!handle || event.button > 0) {
    return;
  }
  event.preventDefault();
  remember();
  focus = handle.dataset.pass;
  dragging = { pass: handle.dataset.pass, id: event.pointerId };
  trial.setPointerCapture(event.pointerId);
});

trial.addEventListener("pointermove", (event) => {
  const draw = dragging && event.pointerId === dragging.id && shownDraw();
  if (draw && set(dragging.pass, dayAt(draw, event.clientX))) {
    ask("moving");
  }
});

function drop(event) {
  if (!dragging || event.pointerId !== dragging.id) {
    return;
  }
  dragging = null;
  if (undo.length && undo[undo.length - 1].join("\n") === state().join("\n")) {
    undo.pop();
    back.disabled = !undo.length;
    place();
    return;
  }
  ask("soon");
}
trial.addEventListener("pointerup", drop);
trial.addEventListener("pointercancel", drop);

const STEPS = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -7, PageUp: 7 };
trial.addEventListener("keydown", (event) => {
  const handle = event.target.closest(".handle");
  const draw = handle && handle.closest(".draw");
  if (!handle || !(event.key in STEPS || event.key === "Home" || event.key === "End")) {
    return;
  }
  event.preventDefault();
  const first = Date.parse(draw.dataset.first);
  const last = Date.parse(draw.dataset.last);
  const now = Date.parse(box(handle.dataset.pass, "date").value);
  const to = event.key === "Home" ? first : event.key === "End" ? last : now + STEPS[event.key] * DAY;
  remember();
  focus = handle.dataset.pass;
  if (set(focus, iso(Math.max(first, Math.min(last, to))))) {
    ask("moving");
    clearTimeout(settle);
    settle = setTimeout(() => ask("soon"), 400);
  }
});
trial.addEventListener("focusout", (event) => {
  if (event.relatedTarget) {
    focus = null;
  }
});

// Boxes and sliders.
for (const input of form.querySelectorAll("fieldset[data-pass] .rate input")) {
  const high = Number(input.dataset.high);
  if (!high) {
    continue;
  }
  const slider = document.createElement("input");
  slider.type = "range";
  slider.min = String(Math.min(Number(input.value), Number(input.dataset.low) || high / 4) / 2);
  slider.max = String(high);
  slider.step = String(high / 100);
  slider.value = input.value;
  slider.setAttribute("aria-label", `${form.querySelector(`label[for="${input.id}"]`).textContent}, by slider`);
  input.after(slider);
  slider.addEventListener("pointerdown", remember);
  slider.addEventListener("keydown", remember);
  slider.addEventListener("input", (event) => {
    event.stopPropagation();
    input.value = String(Number(Number(slider.value).toPrecision(3)));
    ask("moving");
  });
  slider.addEventListener("change", (event) => { event.stopPropagation(); ask("soon"); });
  input.addEventListener("input", () => { slider.value = input.value; });
}
let before = state();
form.addEventListener("focusin", () => { before = state(); });
form.addEventListener("input", (event) => {
  if (!event.target.closest("fieldset[data-pass]")) {
    return;
  }
  undo.push(before);
  before = state();
  back.disabled = false;
  ask("moving");
  clearTimeout(settle);
  settle = setTimeout(() => ask("soon"), 500);
});
form.addEventListener("submit", (event) => {
  if (event.submitter && event.submitter.id === "try") {
    event.preventDefault();
    ask("soon");
  }
});

back.hidden = false;
back.addEventListener("click", () => {
  const then = undo.pop();
  if (then) {
    boxes().forEach((input, i) => { input.value = then[i]; });
    form.querySelectorAll('input[type="range"]').forEach((slider) => { slider.value = slider.previousElementSibling.value; });
    before = state();
    ask("soon");
  }
  back.disabled = !undo.length;
});
place();
