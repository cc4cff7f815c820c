// The builder: what a product's label allows follows its choice; a blank pass is always left to go on with.
"use strict";

function fits(trip, chosen) {
  const option = trip.querySelector("[name$='.what']").selectedOptions[0];
  const work = !option || !option.value || option.value.startsWith("=");
  trip.querySelector(".range").textContent = work ? "" : option.dataset.range || "";
  const methods = (option && option.dataset.methods || "").split(";").filter((one) => one);
  const how = trip.querySelector("[name$='.method']");
  for (const one of how.options) {
    one.hidden = methods.length > 0 && one.value !== "" && !methods.includes(one.value) && !one.selected;
  }
  if (chosen && option && !work) {
    trip.querySelector("[name$='.unit']").value = option.dataset.unit || "";
    if (methods.length === 1) {
      how.value = methods[0];
    }
  }
}

function oneMore(trips) {
  const all = [...trips.querySelectorAll(".trip")];
  const last = all[all.length - 1];
  if (!last.querySelector("[name$='.what']").value) {
    return;
  }
  const next = last.cloneNode(true);
  const from = last.dataset.trip;
  const to = String(Number(from) + 1);
  next.dataset.trip = to;
  next.querySelector("legend").firstChild.textContent = `Pass ${Number(to) + 1} `;
  for (const one of next.querySelectorAll("*")) {
    for (const name of ["id", "for", "name", "aria-describedby", "data-box"]) {
      const value = one.getAttribute(name);
      if (value) {
        one.setAttribute(name, value.replaceAll(`t${from}-`, `t${to}-`).replaceAll(`t${from}.`, `t${to}.`));
      }
    }
    if (one.matches("input[type=checkbox]")) {
      one.checked = false;
    } else if (one.matches("input, select")) {
      one.value = one.name.endsWith(".from") ? "-1" : "";
    } else if (one.matches(".fault, .range")) {
      one.textContent = "";
    }
  }
  trips.append(next);
}

addEventListener("DOMContentLoaded", () => {
  const trips = document.getElementById("trips");
  if (!trips) {
    return;
  }
  trips.querySelectorAll(".trip").forEach((trip) => fits(trip, false));
  trips.addEventListener("change", (event) => {
    const trip = event.target.closest(".trip");
    if (trip && event.target.name.endsWith(".what")) {
      fits(trip, true);
      oneMore(trips);
    }
  });
});
