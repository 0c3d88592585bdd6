// Taking hold of a handle: the amount follows the pointer or the keys; the server is asked for one picture at a time, always for the
// latest amount, and each answer is shown in the next frame. Put down, it is one change that can be undone.

import { ask, say } from "./desk.js";
import { draw, lies, pieceOf, view } from "./table-view.js";

const KNOB = 26; // pixels from the place on the line to the middle of the knob
const REST = 700; // milliseconds after the last key, then it is put down

let held = null;
let again = ""; // the handle to go back to when the page has come anew

export function hands() {
  for (const handle of document.querySelectorAll("#hands .handle")) {
    const [x, y] = handle.dataset.out.split(" ").map(Number);
    handle.replaceChildren();
    draw(handle, "title").textContent = handle.getAttribute("aria-label");
    draw(handle, "path", { class: "stem", d: `M0 0L${x * (KNOB - 9)} ${y * (KNOB - 9)}` });
    draw(handle, "circle", { class: "spot", r: 3.5 });
    draw(handle, "circle", { class: "reach", cx: x * KNOB, cy: y * KNOB, r: 22 });
    draw(handle, "circle", { class: "knob", cx: x * KNOB, cy: y * KNOB, r: 10 });
    const cx = x * KNOB, cy = y * KNOB;
    draw(handle, "path", { class: "ways", d: [1, -1].map(s => `M${cx + s * x * 3.5 - y * 3} ${cy + s * y * 3.5 + x * 3}L${cx + s * x * 7} ${cy + s * y * 7}L${cx + s * x * 3.5 + y * 3} ${cy + s * y * 3.5 - x * 3}`).join("") });
    handle.addEventListener("pointerdown", event => grasp(event, handle));
    handle.addEventListener("pointermove", event => pull(event, handle));
    handle.addEventListener("pointerup", event => letGo(event, handle));
    handle.addEventListener("pointercancel", () => putBack());
    handle.addEventListener("keydown", event => key(event, handle));
    handle.addEventListener("blur", () => { if (held?.keys) putDown(); });
  }
  place();
  if (again) document.getElementById(again)?.focus({ preventScroll: true });
  again = "";
}

/** Handles keep their size on the screen, whatever the scale. */
export function place() {
  const spots = [];
  for (const handle of document.querySelectorAll("#hands .handle")) {
    const home = lies(handle.dataset.piece);
    const x = home.x + Number(handle.dataset.x);
    const y = home.y + Number(handle.dataset.y);
    handle.setAttribute("transform", `translate(${x} ${y}) scale(${1 / view.scale})`);
    spots.push({ handle, x, y, over: pieceOf(handle.dataset.piece)?.classList.contains("over") });
  }
  // With the back on the front, of two handles of one measure at one place the front's is enough.
  for (const one of spots) {
    const twin = one.over && spots.some(o => !o.over && o.handle.dataset.term === one.handle.dataset.term && Math.hypot(o.x - one.x, o.y - one.y) * view.scale < 44);
    one.handle.setAttribute("display", twin ? "none" : "inline");
  }
  if (held) tag();
}

function take(handle, keys) {
  held = { handle, keys, term: handle.dataset.term, per: Number(handle.dataset.per), from: Number(handle.dataset.amount), busy: false, back: snapshot() };
  held.amount = held.shown = held.good = held.from;
  view.svg.classList.add("held");
  handle.classList.add("grasped");
}

function grasp(event, handle) {
  if (event.button > 0 || (held && !held.keys)) return;
  if (held) return void putDown();
  event.preventDefault();
  handle.focus({ preventScroll: true });
  handle.setPointerCapture(event.pointerId);
  take(handle, false);
  held.start = view.at(event);
  tag();
}

function pull(event, handle) {
  if (!held || held.keys || held.handle !== handle) return;
  const [x, y] = handle.dataset.out.split(" ").map(Number);
  const now = view.at(event);
  const along = (now.x - held.start.x) * x + (now.y - held.start.y) * y;
  wish(held.from + along * held.per);
}

function wish(mm) {
  const step = view.svg.dataset.inches === "true" ? 25.4 / 8 : 1;
  const snapped = Math.round(mm / step) * step;
  // From an amount that is no whole number of steps the first step is what is left to the next.
  held.amount = Math.abs(mm - held.from) < step / 2 ? held.from : snapped;
  follow();
}

async function follow() {
  const mine = held;
  if (mine.busy) return;
  mine.busy = true;
  try {
    while (held === mine && mine.amount !== mine.shown) {
      const wanted = mine.amount;
      const answer = await ask("table/drag", { measure: mine.term, mm: wanted }, { quiet: true });
      await new Promise(requestAnimationFrame);
      mine.shown = wanted;
      if (held !== mine) break;
      if (answer.refused) {
        mine.refused = answer.refused;
        says(answer.refused);
      } else {
        mine.refused = "";
        mine.good = wanted;
        mine.says = answer.says;
        show(answer);
      }
      tag();
    }
  } catch (problem) {
    say(problem.message);
    if (held === mine) putBack();
  } finally {
    mine.busy = false;
    mine.rested?.();
  }
}

const rest = mine => new Promise(done => { if (mine.busy) mine.rested = done; else done(); });

function show(answer) {
  for (const lines of answer.pieces) {
    const piece = pieceOf(lines.name);
    for (const line of piece.querySelectorAll("[data-line]")) line.setAttribute("d", lines[line.dataset.line]);
  }
  for (const one of answer.handles) {
    const handle = document.getElementById(one.id);
    if (!handle) continue;
    handle.dataset.x = one.x;
    handle.dataset.y = one.y;
    handle.setAttribute("aria-valuenow", one.amountMm);
    handle.setAttribute("aria-valuetext", one.says);
  }
  place();
  const rows = new Map(answer.rows.map(row => [row.term, row]));
  for (const tr of document.querySelectorAll("#panel-drag tr[data-term]")) {
    const row = rows.get(tr.dataset.term);
    if (!row) continue;
    text(tr.querySelector("[data-now]"), row.now);
    text(tr.querySelector("[data-change]"), row.change);
    text(tr.querySelector("[data-each]"), row.each);
    tr.classList.toggle("altered", row.change !== "");
    tr.classList.toggle("chosen", row.term === held.term);
  }
  const proofs = document.getElementById("proofs");
  text(proofs, answer.proofs.headline);
  proofs.className = answer.proofs.holds ? "good" : "problem";
  const failures = document.getElementById("failures");
  document.getElementById("kinds").replaceChildren(...answer.proofs.kinds.map(item));
  if (failures.childElementCount || answer.proofs.failures.length) failures.replaceChildren(...answer.proofs.failures.map(item));
}

const item = sentence => Object.assign(document.createElement("li"), { textContent: sentence });

function text(element, words) {
  if (element.textContent !== words) element.textContent = words;
}

export function says(words) {
  text(document.getElementById("table-says"), words);
}

/** The amount beside the hand. */
function tag() {
  const acting = document.getElementById("acting");
  let label = acting.querySelector(".amount");
  if (!label) {
    label = draw(acting, "g", { class: "amount", "aria-hidden": "true" });
    draw(label, "rect", { rx: 6, height: 34, y: -17 });
    draw(label, "text", { "text-anchor": "middle", y: 6 });
  }
  const home = lies(held.handle.dataset.piece);
  const [x, y] = held.handle.dataset.out.split(" ").map(Number);
  const amount = held.says || held.handle.getAttribute("aria-valuetext");
  const words = held.refused ? "no farther than this" : `${held.handle.getAttribute("aria-label").split(",")[0]} ${amount}`;
  label.classList.toggle("refused", Boolean(held.refused));
  const line = label.querySelector("text");
  text(line, words);
  const wide = line.getComputedTextLength() + 24;
  const rect = label.querySelector("rect");
  rect.setAttribute("width", wide);
  rect.setAttribute("x", -wide / 2);
  const px = home.x + Number(held.handle.dataset.x) + (x * (KNOB + 30 + wide / 2 * Math.abs(x))) / view.scale;
  const py = home.y + Number(held.handle.dataset.y) + (y * (KNOB + 36)) / view.scale;
  label.setAttribute("transform", `translate(${px} ${py}) scale(${1 / view.scale})`);
}

function letGo(event, handle) {
  if (held && !held.keys && held.handle === handle) putDown();
}

async function putDown() {
  const mine = held;
  clearTimeout(mine.timer);
  await rest(mine);
  if (held !== mine) return;
  const amount = mine.refused ? mine.good : mine.amount;
  const refused = mine.refused;
  if (Math.abs(amount - mine.from) < 1e-6) return void putBack(refused);
  again = mine.handle.id;
  letLoose();
  await window.htmx.ajax("POST", `/p/${document.getElementById("bar").dataset.project}/table/put`, {
    source: document.body, values: { measure: mine.term, mm: amount }, target: "#main", select: "#main", selectOOB: "#bar", swap: "outerHTML",
  });
  const row = document.querySelector(`#panel-drag tr[data-term="${CSS.escape(mine.term)}"] th`);
  says(refused || `${row ? row.textContent : ""} ${mine.says || ""}. ${document.getElementById("proofs")?.textContent || ""}`);
}

function putBack(sentence = "") {
  if (!held) return;
  held.back();
  letLoose();
  place();
  says(sentence);
}

function letLoose() {
  clearTimeout(held.timer);
  held.handle.classList.remove("grasped");
  view.svg.classList.remove("held");
  document.querySelector("#acting .amount")?.remove();
  held = null;
}

/** The page as it is, to be put back. */
function snapshot() {
  const lines = [...document.querySelectorAll("#lying [data-line]")].map(line => [line, line.getAttribute("d")]);
  const handles = [...document.querySelectorAll("#hands .handle")].map(h => [h, h.dataset.x, h.dataset.y, h.getAttribute("aria-valuenow"), h.getAttribute("aria-valuetext")]);
  const parts = ["#panel-drag tbody", "#proofs", "#failures", "#kinds"].map(css => document.querySelector(css)).map(part => [part, part.innerHTML, part.className]);
  return () => {
    lines.forEach(([line, d]) => line.setAttribute("d", d));
    handles.forEach(([handle, x, y, now, words]) => {
      handle.dataset.x = x;
      handle.dataset.y = y;
      handle.setAttribute("aria-valuenow", now);
      handle.setAttribute("aria-valuetext", words);
    });
    parts.forEach(([part, html, look]) => { part.innerHTML = html; part.className = look; });
  };
}

function key(event, handle) {
  const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  if (event.key === "Escape" && held) {
    event.stopPropagation();
    putBack("Put back as it was.");
  } else if (event.key === "Enter" && held?.keys) {
    putDown();
  } else if (arrows[event.key] && !(held && !held.keys)) {
    const [x, y] = handle.dataset.out.split(" ").map(Number);
    const way = arrows[event.key][0] * x + arrows[event.key][1] * y;
    // Across the handle's own way: right and up are larger.
    const sign = Math.abs(way) > 0.4 ? Math.sign(way) : event.key === "ArrowRight" || event.key === "ArrowUp" ? 1 : -1;
    if (!held) take(handle, true);
    const step = Number(view.svg.dataset.key);
    const far = event.shiftKey ? (view.svg.dataset.inches === "true" ? 4 : 5) : 1;
    held.amount = Math.round((held.amount + sign * step * far) * 1000) / 1000;
    clearTimeout(held.timer);
    held.timer = setTimeout(() => { if (held?.keys) putDown(); }, REST);
    follow();
    tag();
  } else {
    return;
  }
  event.preventDefault();
}
