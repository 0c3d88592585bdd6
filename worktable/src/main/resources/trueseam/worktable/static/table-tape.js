// A tape between two places of a piece: clicked, or chosen by name.

import { say } from "./desk.js";
import { draw, lies, pieceOf, view } from "./table-view.js";
import { fetched } from "./table-motion.js";

let first = null;
let laid = null;

export function tapes() {
  const form = document.getElementById("tape-form");
  if (!form) return;
  document.getElementById("tape-piece").addEventListener("change", offer);
  form.addEventListener("submit", event => {
    event.preventDefault();
    const from = document.getElementById("tape-from").selectedOptions[0];
    const to = document.getElementById("tape-to").selectedOptions[0];
    lay(document.getElementById("tape-piece").value, { fromEdge: from.dataset.edge, fromAlong: from.value, toEdge: to.dataset.edge, toAlong: to.value });
  });
  offer();
}

/** Only the places of the chosen piece. */
function offer() {
  const piece = document.getElementById("tape-piece").value;
  ["tape-from", "tape-to"].forEach((id, second) => {
    const options = [...document.getElementById(id).options];
    options.forEach(option => { option.hidden = option.disabled = option.dataset.of !== piece; });
    const own = options.filter(option => !option.disabled);
    if (own.length) own[Math.min(second, own.length - 1)].selected = true;
  });
}

export function close() {
  first = laid = null;
}

/** A click on the table, in millimetres. */
export function clicked(at) {
  const name = first ? first.name : nearest(at);
  if (!name) return;
  const home = lies(name);
  const spot = { name, x: at.x - home.x, y: at.y - home.y };
  if (!first) {
    first = spot;
    laid = null;
    paint();
    return;
  }
  lay(name, { fromX: first.x, fromY: first.y, toX: spot.x, toY: spot.y });
  first = null;
}

function nearest(at) {
  let best = "";
  let least = Infinity;
  for (const piece of document.querySelectorAll("#lying .piece")) {
    const box = piece.querySelector(".stitching").getBBox();
    const home = lies(piece.dataset.piece);
    const dx = Math.max(0, box.x - (at.x - home.x), at.x - home.x - box.x - box.width);
    const dy = Math.max(0, box.y - (at.y - home.y), at.y - home.y - box.y - box.height);
    if (dx + dy < least) {
      least = dx + dy;
      best = piece.dataset.piece;
    }
  }
  return least < 80 ? best : "";
}

async function lay(piece, ends) {
  try {
    laid = { piece, answer: await fetched("table/tape", { piece, ...ends }) };
    paint();
    document.getElementById("tape-numbers").hidden = false;
    document.getElementById("tape-says").textContent = `${piece}: from ${laid.answer.from} to ${laid.answer.to}`;
    for (const cell of document.querySelectorAll("[data-tape]")) cell.textContent = laid.answer[cell.dataset.tape];
    document.getElementById("table-says").textContent = `${laid.answer.shorter} along the edge, ${laid.answer.straight} straight.`;
  } catch (problem) {
    say(problem.message);
  }
}

export function paint() {
  const acting = document.getElementById("acting");
  acting.replaceChildren();
  const name = laid ? laid.piece : first?.name;
  if (!name || !pieceOf(name)) return;
  const home = lies(name);
  const g = draw(acting, "g", { class: "tape", transform: `translate(${home.x} ${home.y})` });
  const end = (x, y) => draw(g, "circle", { class: "end", cx: x, cy: y, r: 6 / view.scale });
  if (!laid) return void end(first.x, first.y);
  const a = laid.answer;
  draw(g, "path", { class: "ruler", d: `M${a.fromX} ${a.fromY}L${a.toX} ${a.toY}` });
  draw(g, "path", { class: "along", d: a.line });
  end(a.fromX, a.fromY);
  end(a.toX, a.toY);
}
