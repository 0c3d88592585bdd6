// The Cloth screen: how large the cloth is seen, what is open, and the files. What a hand does is in cloth-hand.js, the search in cloth-search.js.

import "./take.js";
import { cloth, draw } from "./cloth-view.js";
import { hands } from "./cloth-hand.js";
import { watch } from "./cloth-search.js";

const kept = { open: new Set(), measures: true };

let begun = null;

function begin() {
  const room = document.querySelector(".cloth-room");
  if (room === begun) return;
  begun = room;
  const svg = document.getElementById("cloth");
  for (const details of document.querySelectorAll(".cloth-form details")) {
    if (kept.open.has(details.id) || details.querySelector("[aria-invalid=true], .problem")) details.open = true;
    details.addEventListener("toggle", () => kept.open[details.open ? "add" : "delete"](details.id));
  }
  if (!svg) return;
  for (const button of document.querySelectorAll("[data-zoom]")) button.addEventListener("click", () => cloth.zoom(button.dataset.zoom === "in" ? 1.4 : 1 / 1.4));
  const measures = document.getElementById("measures-on");
  measures.checked = kept.measures;
  measures.addEventListener("change", () => { kept.measures = measures.checked; shown(); });
  shown();
  watch(shown);
}

/** The drawing has come, or come anew. */
function shown() {
  look();
  hands();
}

function look() {
  const svg = document.getElementById("cloth");
  if (!svg) return;
  svg.classList.toggle("no-measures", !kept.measures);
  draw(svg);
}

window.addEventListener("resize", look);
document.addEventListener("htmx:afterSwap", begin);
// Only now do class and width have what came anew, and not what was there before.
document.addEventListener("htmx:afterSettle", look);
begin();
