// The Table screen: which tool is in the hand, and what each does when the page comes or comes anew.

import { draw, moving, overlay, view } from "./table-view.js";
import { hands, place, says } from "./table-drag.js";
import * as steps from "./table-steps.js";
import * as walk from "./table-walk.js";
import * as tape from "./table-tape.js";

const kept = { tool: "drag", overlay: "" };

function begin() {
  const svg = document.getElementById("table");
  if (!svg || svg === view.svg) return;
  svg.setAttribute("tabindex", "0");
  view.begin(svg);
  moving(svg, { clicked: at => { if (kept.tool === "tape") tape.clicked(at); } });
  for (const button of document.querySelectorAll("[data-tool]")) button.addEventListener("click", () => choose(button.dataset.tool));
  const zooms = { in: () => view.zoom(1.3), out: () => view.zoom(1 / 1.3), all: () => view.show(shownBox()) };
  for (const button of document.querySelectorAll("[data-zoom]")) button.addEventListener("click", () => zooms[button.dataset.zoom]());
  const over = document.getElementById("overlay");
  over.value = kept.overlay;
  over.addEventListener("change", () => { kept.overlay = over.value; lay(); });
  steps.steps();
  walk.walks();
  tape.tapes();
  lay();
  hands();
  choose(kept.tool, true);
}

let shownBox = () => view.whole();

function lay() {
  overlay(kept.overlay);
  document.querySelector("[data-overlaid]").hidden = kept.overlay === "";
  place();
  tape.paint();
}

/** Each piece's name stands in its middle, word under word where the piece is too narrow for it. */
function names() {
  for (const piece of document.querySelectorAll("#lying .piece")) {
    const box = piece.querySelector(".stitching").getBBox();
    const name = piece.querySelector("[data-name]");
    const words = piece.dataset.piece;
    const size = 16 / view.scale;
    const lines = words.length * size * 0.5 > box.width * 0.85 ? words.split(" ") : [words];
    name.setAttribute("font-size", size);
    name.setAttribute("y", box.y + box.height * 0.62);
    name.replaceChildren();
    lines.forEach((line, i) => { draw(name, "tspan", { x: box.x + box.width / 2, dy: i === 0 ? 0 : size * 1.2 }).textContent = line; });
  }
}

function choose(tool, fresh = false) {
  const was = kept.tool;
  kept.tool = tool;
  for (const button of document.querySelectorAll("[data-tool]")) button.setAttribute("aria-pressed", String(button.dataset.tool === tool));
  for (const part of ["drag", "steps", "tape", "walk"]) document.getElementById(`panel-${part}`).hidden = part !== tool;
  view.svg.dataset.hand = tool;
  for (const legend of document.querySelectorAll(".legend")) legend.hidden = !legend.dataset.for.split(" ").includes(tool);
  const playing = tool === "steps" || tool === "walk";
  document.getElementById("lying").setAttribute("visibility", playing ? "hidden" : "visible");
  document.getElementById("hands").setAttribute("display", tool === "drag" ? "inline" : "none");
  document.getElementById("overlay").disabled = playing;
  document.getElementById("acting").replaceChildren();
  if (!fresh) says("");
  steps.close();
  walk.close();
  tape.close();
  shownBox = () => view.whole();
  if (tool === "steps") {
    steps.open().then(() => { const box = view.box; shownBox = () => box; });
  } else if (tool === "walk") {
    walk.open().then(() => { const box = view.box; shownBox = () => box; });
  } else if (was === "steps" || was === "walk") {
    view.show(view.whole());
  }
}

view.onScale(() => {
  place();
  steps.rescale();
  walk.rescale();
  if (kept.tool === "tape") tape.paint();
  names();
});
window.addEventListener("resize", () => { if (view.svg?.isConnected) view.show(view.box); });
document.addEventListener("htmx:beforeSwap", () => { steps.close(); walk.close(); });
document.addEventListener("htmx:afterSwap", begin);
begin();
