// The person screen: the figure follows the field in focus, Enter goes to the next field, and what cannot be read is marked at its field.
// The fields themselves are never drawn anew while she types in them.

import { part } from "./desk.js";

const fields = () => [...document.querySelectorAll("input[data-measure]")].filter(field => field.offsetParent !== null);

let looking = new AbortController();

/** Shows the way of the tape for a field, or draws the figure anew. Not through htmx: a look must never push a reading out of the queue. */
async function look(field) {
  looking.abort();
  looking = new AbortController();
  const shown = document.getElementById("look");
  const { measure, side } = field ? field.dataset : { measure: shown.dataset.shows, side: shown.dataset.side };
  try {
    const drawn = await part(`person/look?${new URLSearchParams({ measure, side })}`, looking.signal);
    document.getElementById("look").outerHTML = drawn;
  } catch { /* a later look took its place, or the server is gone, which the next reading says */ }
}

document.addEventListener("focusin", event => {
  const field = event.target.closest("input[data-measure]");
  const shown = document.getElementById("look");
  if (field && shown && (shown.dataset.shows !== field.dataset.measure || shown.dataset.side !== field.dataset.side)) look(field);
});

document.addEventListener("keydown", event => {
  const field = event.target.closest("input[data-measure]");
  if (!field || event.key !== "Enter") return;
  event.preventDefault();
  const all = fields();
  const next = all[all.indexOf(field) + (event.shiftKey ? -1 : 1)];
  if (next) {
    next.focus();
    next.select();
  }
});

document.addEventListener("click", event => {
  const link = event.target.closest("[data-go]");
  const field = link && document.getElementById(link.dataset.go);
  if (!field) return;
  event.preventDefault();
  field.scrollIntoView({ block: "center" });
  field.focus();
});

/** A reading is kept when she pauses in typing or leaves the field, whichever is first. */
const PAUSE_MS = 450;
const pauses = new Map();

function read(field) {
  clearTimeout(pauses.get(field));
  if (pauses.delete(field)) field.dispatchEvent(new CustomEvent("reading"));
}

document.addEventListener("input", event => {
  const field = event.target.closest("input[data-measure]");
  if (!field) return;
  clearTimeout(pauses.get(field));
  pauses.set(field, setTimeout(() => read(field), PAUSE_MS));
});

document.addEventListener("focusout", event => {
  const field = event.target.closest("input[data-measure]");
  if (field) read(field);
});

/** Marks the fields whose text cannot be used, as their notes say. */
function mark() {
  for (const says of document.querySelectorAll(".says")) {
    const wrong = says.dataset.wrong.split(" ");
    for (const field of says.parentElement.querySelectorAll("input[data-measure]")) {
      if (wrong.includes(field.id)) field.setAttribute("aria-invalid", "true");
      else field.removeAttribute("aria-invalid");
    }
  }
}

/** Whether only what the garment needs is shown outlives a page that is drawn anew. */
function only() {
  const box = document.getElementById("only");
  const wanted = sessionStorage.getItem("only") === "yes";
  if (box) box.checked = wanted;
  document.querySelector(".measuring")?.classList.toggle("only-needed", Boolean(box) && wanted);
}

document.addEventListener("change", event => {
  if (event.target.id !== "only") return;
  sessionStorage.setItem("only", event.target.checked ? "yes" : "no");
  only();
});

/** Says aloud what came of a reading; its notes stand beside the field, where eyes find them. */
function hear(says) {
  const comes = document.getElementById(says.id.replace("says-", "comes-"));
  document.getElementById("heard").textContent = [comes, ...says.children].map(part => part.textContent.trim()).filter(Boolean).join(". ");
}

document.addEventListener("htmx:afterSettle", event => {
  only();
  mark();
  const path = event.detail.pathInfo?.requestPath ?? "";
  if (!path.endsWith("/person/read") || !event.detail.target?.classList.contains("says")) return;
  const says = document.getElementById(event.detail.target.id);
  if (says) hear(says);
  look(document.activeElement.closest?.("input[data-measure]"));
});
only();
