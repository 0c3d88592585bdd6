// Laying by hand: a piece follows the pointer or the keys and stays where it is put, whether it may lie there or not; the server is asked what
// would be wrong, one question at a time, always for the latest place. Put down, it is one change that can be undone.

import { ask, say } from "./desk.js";
import { cloth } from "./cloth-view.js";
import { pause, resume } from "./cloth-search.js";

const REST = 700; // milliseconds after the last key, then it is put down

let held = null;
let chosen = -1; // the place in the list of the piece that the buttons are for

export function hands() {
  for (const piece of pieces()) {
    piece.addEventListener("pointerdown", event => grasp(event, piece));
    piece.addEventListener("pointermove", event => pull(event, piece));
    piece.addEventListener("pointerup", () => letGo(piece));
    piece.addEventListener("pointercancel", () => putBack());
    piece.addEventListener("keydown", event => key(event, piece));
    piece.addEventListener("focus", () => choose(piece));
    piece.addEventListener("blur", () => { if (held?.keys) putDown(); });
  }
  for (const button of document.querySelectorAll("[data-hand]")) button.onclick = () => turn(pieceAt(chosen), button.dataset.hand);
  for (const button of document.querySelectorAll("[data-nudge]")) button.onclick = () => nudge(pieceAt(chosen), ...button.dataset.nudge.split(" ").map(Number), false);
  const again = pieceAt(chosen);
  if (again) choose(again);
  else chosen = -1;
}

const pieces = () => [...document.querySelectorAll("#pieces .piece")];
const pieceAt = at => document.getElementById(`piece-${at}`);
const measures = at => document.querySelector(`.measures[data-of="${at}"]`);
const on = () => document.getElementById("laid").dataset.on;
const project = () => document.getElementById("bar").dataset.project;

function choose(piece) {
  chosen = Number(piece.dataset.at);
  for (const other of pieces()) other.setAttribute("aria-pressed", String(other === piece));
  document.querySelector(".hand-tools").hidden = false;
  document.getElementById("in-hand").textContent = piece.dataset.name;
  document.querySelector("[data-hand=hold]").textContent = piece.dataset.held === "true" ? "Let it go" : "Hold it";
}

function take(piece, keys) {
  pause();
  // In the hand it lies above the others; what is moved in the page loses the focus, so that comes first.
  if (piece.nextElementSibling) piece.parentElement.append(piece);
  piece.focus({ preventScroll: true });
  held = { piece, keys, at: piece.dataset.at, on: on(), fold: piece.dataset.fold === "true", dx: 0, dy: 0, shown: "", busy: false, back: snapshot() };
  piece.classList.add("grasped");
}

function grasp(event, piece) {
  if (event.button > 0) return;
  if (held) return void (held.keys && putDown());
  event.preventDefault();
  take(piece, false);
  piece.setPointerCapture(event.pointerId);
  held.start = cloth.at(event);
}

function pull(event, piece) {
  if (!held || held.keys || held.piece !== piece) return;
  const now = cloth.at(event);
  held.dx = now.x - held.start.x;
  held.dy = held.fold ? 0 : now.y - held.start.y;
  follow();
}

async function follow() {
  const mine = held;
  mine.piece.setAttribute("transform", `translate(${mine.dx} ${-mine.dy})`);
  measures(mine.at).classList.add("moved");
  if (mine.busy) return;
  mine.busy = true;
  try {
    while (held === mine && mine.shown !== `${mine.dx} ${mine.dy}`) {
      const wanted = `${mine.dx} ${mine.dy}`;
      const answer = await ask("cloth/try", { piece: mine.at, on: mine.on, dx: mine.dx, dy: mine.dy }, { quiet: true });
      await new Promise(requestAnimationFrame);
      mine.shown = wanted;
      if (held === mine) show(answer);
    }
  } catch (problem) {
    if (held === mine) {
      say(problem.message);
      putBack();
    }
  } finally {
    mine.busy = false;
    mine.rested?.();
  }
}

const rest = mine => new Promise(done => { if (mine.busy) mine.rested = done; else done(); });

/** What would be wrong if it was put down here: in colour, and in words. */
function show(answer) {
  document.getElementById("cloth-length").textContent = answer.says;
  for (const piece of pieces()) piece.classList.toggle("faulty", answer.faulty.includes(Number(piece.dataset.at)));
  const faults = document.getElementById("cloth-faults");
  const words = answer.faults.join("\n");
  if (faults.dataset.words === words) return;
  faults.dataset.words = words;
  faults.replaceChildren();
  if (answer.faults.length === 0) return;
  const box = Object.assign(document.createElement("div"), { className: "problem" });
  const list = Object.assign(document.createElement("ul"), { className: "know" });
  list.append(...answer.faults.map(fault => Object.assign(document.createElement("li"), { textContent: fault })));
  box.append(list);
  faults.append(box);
}

function letGo(piece) {
  if (held && !held.keys && held.piece === piece) putDown();
}

async function putDown() {
  const mine = held;
  clearTimeout(mine.timer);
  await rest(mine);
  if (held !== mine) return;
  // A trembling hand or a tap chooses a piece and does not move it.
  if (Math.hypot(mine.dx, mine.dy) < (mine.keys ? 1e-6 : 3 * cloth.pixel)) return void putBack();
  letLoose();
  await post("cloth/put", { piece: mine.at, on: mine.on, dx: mine.dx, dy: mine.dy, by: mine.keys ? "keys" : "pointer" }, mine.back);
}

/** Keeps a change and shows the page anew; the piece has the focus again. */
async function post(what, values, back) {
  const at = values.piece;
  const refused = await window.htmx.ajax("POST", `/p/${project()}/${what}`, { source: document.body, values, target: "#main", select: "#main", selectOOB: "#bar", swap: "outerHTML" }).catch(() => true);
  if (refused || !document.getElementById("notice").hidden) back?.();
  pieceAt(at)?.focus({ preventScroll: true });
}

function putBack() {
  if (!held) return;
  held.back();
  letLoose();
  resume();
}

function letLoose() {
  clearTimeout(held.timer);
  held.piece.classList.remove("grasped");
  held = null;
}

/** The page as it is, to be put back. */
function snapshot() {
  const length = document.getElementById("cloth-length");
  const faults = document.getElementById("cloth-faults");
  const was = { length: length.textContent, faults: faults.innerHTML, faulty: pieces().filter(piece => piece.classList.contains("faulty")) };
  return () => {
    if (!length.isConnected) return;
    length.textContent = was.length;
    faults.innerHTML = was.faults;
    delete faults.dataset.words;
    for (const piece of pieces()) {
      piece.removeAttribute("transform");
      measures(piece.dataset.at).classList.remove("moved");
      piece.classList.toggle("faulty", was.faulty.includes(piece));
    }
  };
}

async function turn(piece, how) {
  if (!piece) return;
  if (held) {
    await putDown();
    piece = pieceAt(chosen);
  }
  pause();
  const values = { piece: piece.dataset.at, on: on(), dx: 0, dy: 0 };
  await (how === "hold" ? post("cloth/hold", values) : post("cloth/put", { ...values, how }));
}

function nudge(piece, x, y, far) {
  if (!piece) return;
  if (!held) take(piece, true);
  const step = (cloth.svg.dataset.inches === "true" ? 25.4 / 8 : 2) * (far ? 8 : 1);
  held.dx += x * step;
  held.dy += held.fold ? 0 : y * step;
  clearTimeout(held.timer);
  held.timer = setTimeout(() => { if (held?.keys) putDown(); }, REST);
  follow();
}

const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
const TURNS = { r: "round", f: "over", "[": "left", "]": "right", h: "hold" };

function key(event, piece) {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const how = TURNS[event.key.toLowerCase()];
  if (event.key === "Escape" && held) {
    putBack();
  } else if (event.key === "Enter" && held?.keys) {
    putDown();
  } else if (ARROWS[event.key] && !(held && !held.keys)) {
    nudge(piece, ...ARROWS[event.key], event.shiftKey);
  } else if (how && !(held && !held.keys)) {
    turn(piece, how);
  } else {
    return;
  }
  event.preventDefault();
}
