// Small help for the pages. Everything works without it, by whole pages.
"use strict";

// A figure on a page links to its working: open it.
function openTarget() {
  const target = location.hash && document.getElementById(decodeURIComponent(location.hash.slice(1)));
  if (target instanceof HTMLDetailsElement) {
    target.open = true;
    target.scrollIntoView();
  }
}

// Faults arrive beside their boxes; the boxes themselves are left alone, so that nobody is thrown out while typing.
function markFaultyBoxes() {
  for (const box of document.querySelectorAll("input[aria-describedby], select[aria-describedby], textarea[aria-describedby]")) {
    if (document.querySelector(`[data-box="${CSS.escape(box.id)}"]`)) {
      box.setAttribute("aria-invalid", "true");
    } else {
      box.removeAttribute("aria-invalid");
    }
  }
}

// Cells copied from a spreadsheet row go into the boxes of a row.
function spreadPaste(event) {
  const row = event.target.closest(".row");
  const cells = (event.clipboardData.getData("text") || "").trim().split(/\t|\r?\n/);
  if (!row || event.target.tagName === "TEXTAREA" || cells.length < 2) {
    return;
  }
  const boxes = [...row.querySelectorAll("input")];
  const first = boxes.indexOf(event.target);
  if (first < 0 || boxes.length < 2) {
    return;
  }
  event.preventDefault();
  cells.slice(0, boxes.length - first).forEach((cell, i) => { boxes[first + i].value = cell.trim(); });
  event.target.dispatchEvent(new Event("input", { bubbles: true }));
}

function say(words) {
  document.getElementById("silence").textContent = words;
}

// A label that leads to a box which is folded away: unfold it first.
function unfold(event) {
  const label = event.target.closest("label.to, a.to, .faults a");
  const id = label && (label.htmlFor || (label.hash || "").slice(1));
  const box = id && document.getElementById(id);
  const folded = box && box.closest("details:not([open])");
  if (folded) {
    folded.open = true;
  }
  if (box && label.matches("a.to")) {
    event.preventDefault();
    box.focus();
    box.scrollIntoView({ block: "center" });
  }
}

// A workbook dropped on the page goes into its box.
function dropWorkbook(event) {
  const box = document.querySelector("input[type=file][name=workbook]");
  if (box && event.dataTransfer && event.dataTransfer.files.length > 0) {
    event.preventDefault();
    box.files = event.dataTransfer.files;
    box.focus();
  }
}

addEventListener("click", unfold, true);
addEventListener("dragover", (event) => {
  if (document.querySelector("input[type=file][name=workbook]")) {
    event.preventDefault();
  }
});
addEventListener("drop", dropWorkbook);
addEventListener("hashchange", openTarget);
addEventListener("paste", spreadPaste);
addEventListener("beforeprint", () => document.querySelectorAll("details").forEach((one) => { one.open = true; }));
addEventListener("DOMContentLoaded", () => {
  openTarget();
  const faults = document.getElementById("choice-faults");
  if (faults) {
    faults.focus();
  }
  document.body.addEventListener("htmx:afterSettle", () => { markFaultyBoxes(); say(""); });
  document.body.addEventListener("htmx:sendError", () => say("The desk doesn’t answer; is it still running? What you typed is still here."));
  document.body.addEventListener("htmx:responseError", () => say("The desk could not work this out. What you typed is still here; load the page anew if it stays so."));
});
