// Drawing on the map. The places stand in the form's box, one to a line; the map shows and changes that box and keeps
// nothing of its own, so that typing and touching are one thing and the form works without this file.
const chart = document.getElementById("chart");
const box = document.getElementById("places");
const drawn = document.getElementById("drawn");
if (chart && box && drawn) {
  const grid = { west: +chart.dataset.west, north: +chart.dataset.north, across: +chart.dataset.across, down: +chart.dataset.down };
  const before = [];
  let held = null;
  let moved = false;

  const form = () => document.querySelector("input[name=form]:checked")?.value ?? "point";

  const read = () => box.value.split(/\r?\n/)
    .map((line) => line.trim().split(/[,;\s]+/).map(Number))
    .filter((pair) => pair.length === 2 && pair.every(Number.isFinite))
    .map(([latitude, longitude]) => ({ x: (longitude - grid.west) * grid.across, y: (grid.north - latitude) * grid.down }));

  const write = (points) => {
    box.value = points
      .map((point) => `${(grid.north - point.y / grid.down).toFixed(7)}, ${(grid.west + point.x / grid.across).toFixed(7)}`)
      .join("\n");
    show();
  };

  const remember = () => {
    before.push(box.value);
    if (before.length > 200) {
      before.shift();
    }
  };

  const make = (name, attributes) => {
    const element = document.createElementNS("http://www.w3.org/2000/svg", name);
    Object.entries(attributes).forEach(([key, value]) => element.setAttribute(key, value));
    return element;
  };

  const show = () => {
    const points = read();
    const path = points.map((point) => `${point.x.toFixed(1)} ${point.y.toFixed(1)}`).join(" L");
    drawn.replaceChildren(
      make("path", { d: points.length > 1 ? `M${path}${form() === "area" ? " Z" : ""}` : "", class: form() }),
      ...points.map((point, index) => make("circle", { cx: point.x, cy: point.y, r: touchSize(), "data-index": index })),
    );
  };

  // A place must be wide enough for a finger however small the map is shown.
  const touchSize = () => Math.max(7, 11 * chart.viewBox.baseVal.width / Math.max(1, chart.clientWidth));

  const place = (event) => {
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(chart.getScreenCTM().inverse());
    return { x: at.x, y: at.y };
  };

  chart.addEventListener("pointerdown", (event) => {
    const index = event.target.dataset?.index;
    held = index === undefined ? null : Number(index);
    moved = false;
    if (held !== null) {
      remember();
      chart.setPointerCapture(event.pointerId);
      event.preventDefault();
    }
  });
  chart.addEventListener("pointermove", (event) => {
    if (held !== null) {
      moved = true;
      const points = read();
      points[held] = place(event);
      write(points);
    }
  });
  chart.addEventListener("pointerup", () => {
    if (held !== null && !moved) {
      before.pop();
    }
  });
  chart.addEventListener("pointercancel", () => { held = null; });
  chart.addEventListener("click", (event) => {
    if (held !== null) {
      held = null;
      return;
    }
    remember();
    write(form() === "point" ? [place(event)] : [...read(), place(event)]);
  });

  document.getElementById("tools").hidden = false;
  document.getElementById("undo").addEventListener("click", () => {
    if (before.length > 0) {
      box.value = before.pop();
      show();
    }
  });
  document.getElementById("clear").addEventListener("click", () => { remember(); box.value = ""; show(); });
  box.addEventListener("input", show);
  document.querySelectorAll("input[name=form]").forEach((one) => one.addEventListener("change", show));
  addEventListener("resize", show);
  show();
}

// A file dropped anywhere on the page of all fields goes into the box.
const files = document.querySelector("input[type=file][name=map]");
if (files) {
  addEventListener("dragover", (event) => event.preventDefault());
  addEventListener("drop", (event) => {
    event.preventDefault();
    if (event.dataTransfer.files.length > 0) {
      files.files = event.dataTransfer.files;
      files.focus();
    }
  });
}
