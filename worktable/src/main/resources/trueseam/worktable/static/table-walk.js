// Walking a seam: the rolling piece touches the standing edge at one place, and that place goes along both edges equally far.

import { say } from "./desk.js";
import { draw, view } from "./table-view.js";
import { fetched, run, still } from "./table-motion.js";

const WALK = 9000; // milliseconds for a seam

let walk = null;
let stop = null;

export function walks() {
  const seam = document.getElementById("seam");
  if (!seam) return;
  seam.addEventListener("change", open);
  document.getElementById("which").addEventListener("change", open);
  document.getElementById("walked").addEventListener("input", event => { halt(); at(Number(event.target.value) / 1000); });
  for (const button of document.querySelectorAll("[data-walk]")) button.addEventListener("click", () => press(button.dataset.walk));
}

export async function open() {
  const seam = document.getElementById("seam");
  if (!seam) return;
  halt();
  try {
    walk = { answer: await fetched("table/walk", { seam: seam.value, which: document.getElementById("which").value }) };
    view.show(walk.answer.box);
    stage();
    numbers();
    at(0);
  } catch (problem) {
    say(problem.message);
  }
}

export function close() {
  halt();
  walk = null;
}

function halt() {
  stop?.();
  stop = null;
  const button = document.querySelector("[data-walk=play]");
  if (button) button.textContent = "Walk";
}

function press(what) {
  if (!walk) return;
  const going = stop !== null;
  halt();
  if (what === "start") at(0);
  else if (what === "end") at(1);
  else if (!going) {
    const from = walk.share >= 1 || still() ? 0 : walk.share;
    document.querySelector("[data-walk=play]").textContent = "Pause";
    stop = run(WALK * (1 - from), false, t => at(from + (1 - from) * t), halt);
  }
}

function stage() {
  const acting = document.getElementById("acting");
  acting.replaceChildren();
  walk.standing = walk.answer.standing.map(one => {
    const g = draw(acting, "g", { class: "standing", transform: `matrix(${one.matrix.join(" ")})` });
    lines(g, one.piece);
    return g;
  });
  walk.rolling = draw(acting, "g", { class: "rolling" });
  walk.piece = "";
  walk.left = draw(acting, "path", { class: "left-over", d: walk.answer.left, visibility: "hidden" });
  walk.answer.landings.forEach(landing => draw(acting, "circle", { class: "landing", cx: landing.x, cy: landing.y, r: 5 / view.scale }));
  walk.touch = draw(acting, "g", { class: "touch" });
  draw(walk.touch, "circle", { r: 8 });
  draw(walk.touch, "circle", { class: "hole", r: 2.5 });
}

function lines(g, name) {
  const piece = walk.answer.pieces.find(one => one.name === name);
  draw(g, "path", { class: "paper", d: piece.stitching });
  for (const what of ["stitching", "darts", "notches", "grain"]) draw(g, "path", { class: what, d: piece[what] });
}

/** Shows the walk at a share of the way. */
function at(share) {
  walk.share = share;
  const contacts = walk.answer.contacts;
  const mm = share * contacts[contacts.length - 1].mm;
  let i = 0;
  while (i < contacts.length - 2 && contacts[i + 1].mm <= mm) i++;
  const a = contacts[i];
  const same = contacts[i + 1].piece === a.piece && contacts[i + 1].mm > a.mm;
  const b = same ? contacts[i + 1] : a;
  const k = same ? Math.min(1, (mm - a.mm) / (b.mm - a.mm)) : 0;
  const mix = name => a[name] + (b[name] - a[name]) * k;
  const turn = a.turn + (((b.turn - a.turn + 540) % 360) - 180) * k;
  if (walk.piece !== a.piece) {
    walk.rolling.replaceChildren();
    lines(walk.rolling, a.piece);
    walk.piece = a.piece;
  }
  walk.rolling.setAttribute("transform", `translate(${mix("x")} ${mix("y")}) rotate(${turn}) translate(${-mix("footX")} ${-mix("footY")})${a.over ? " scale(-1 1)" : ""}`);
  walk.touch.setAttribute("transform", `translate(${mix("x")} ${mix("y")}) scale(${1 / view.scale})`);
  walk.left.setAttribute("visibility", share >= 1 ? "visible" : "hidden");
  document.getElementById("walked").value = Math.round(share * 1000);
  document.getElementById("walked-says").textContent = (k > 0.5 ? b : a).says;
  document.getElementById("table").dataset.walked = mm.toFixed(1);
}

function numbers() {
  const row = cells => {
    const tr = document.createElement("tr");
    cells.forEach((words, i) => {
      const cell = document.createElement(i === 0 ? "th" : "td");
      if (i === 0) cell.scope = "row";
      if (i === 1) cell.className = "number";
      cell.textContent = words;
      tr.append(cell);
    });
    return tr;
  };
  document.getElementById("walk-numbers").replaceChildren(...walk.answer.numbers.map(n => row([n.name, n.value])));
  document.getElementById("landings").replaceChildren(...walk.answer.landings.map(l => row([l.notch, l.at, l.off])));
}

export function rescale() {
  if (!walk?.touch) return;
  for (const circle of document.querySelectorAll("#acting .landing")) circle.setAttribute("r", 5 / view.scale);
  at(walk.share);
}
