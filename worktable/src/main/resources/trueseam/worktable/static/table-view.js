// The table itself: what part of it is seen, how large, where the pieces lie, and the squares of the board.

const NS = "http://www.w3.org/2000/svg";

/** Draws an element of the drawing. */
export function draw(parent, name, attributes = {}) {
  const element = document.createElementNS(NS, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  parent.append(element);
  return element;
}

const NEAREST = 12; // pixels for a millimetre
const heard = new Set();

export const view = {
  svg: null,
  box: [0, 0, 1, 1],
  scale: 1,
  all: [0, 0, 1, 1],
  kept: null,

  /** Everything, with room for the knobs at the rim. */
  whole() {
    const { width, height } = this.svg.getBoundingClientRect();
    const [x, y, w, h] = this.all;
    const room = 44 / (Math.min((width - 88) / w, (height - 88) / h) || 1);
    return [x - room, y - room, w + 2 * room, h + 2 * room];
  },

  /** Takes up the drawing of the page; what was seen before it came anew is seen again. */
  begin(svg) {
    this.svg = svg;
    this.all = svg.dataset.box.split(" ").map(Number);
    board(svg);
    if (this.kept && this.kept.of === pieces()) this.show(this.kept.box);
    else this.show(this.whole());
  },

  show(box) {
    this.box = box;
    this.kept = { box, of: pieces() };
    this.svg.setAttribute("viewBox", box.map(n => n.toFixed(3)).join(" "));
    const { width, height } = this.svg.getBoundingClientRect();
    this.scale = Math.min(width / box[2], height / box[3]) || 1;
    squares(this.svg, this.scale);
    heard.forEach(hear => hear(this.scale));
  },

  /** Calls whenever the scale may have changed. */
  onScale(hear) {
    heard.add(hear);
  },

  /** A place of the window in millimetres of the table. */
  at(event) {
    const matrix = this.svg.getScreenCTM().inverse();
    return { x: matrix.a * event.clientX + matrix.c * event.clientY + matrix.e, y: matrix.b * event.clientX + matrix.d * event.clientY + matrix.f };
  },

  zoom(factor, about) {
    const [x, y, w, h] = this.box;
    const centre = about || { x: x + w / 2, y: y + h / 2 };
    const least = this.svg.getBoundingClientRect().width / NEAREST;
    const k = Math.max(least / w, Math.min(4 * Math.max(this.all[2], this.all[3]) / Math.max(w, h), 1 / factor));
    this.show([centre.x - (centre.x - x) * k, centre.y - (centre.y - y) * k, w * k, h * k]);
  },

  pan(dx, dy) {
    const [x, y, w, h] = this.box;
    this.show([x + dx, y + dy, w, h]);
  },
};

const pieces = () => [...document.querySelectorAll("#lying .piece")].map(piece => piece.dataset.piece).join();

function board(svg) {
  const side = Number(svg.dataset.square);
  const first = svg.firstChild;
  const defs = document.createElementNS(NS, "defs");
  svg.insertBefore(defs, first);
  const pattern = draw(defs, "pattern", { id: "squares", width: side, height: side, patternUnits: "userSpaceOnUse" });
  draw(pattern, "path", { class: "square", d: `M0 0H${side}M0 0V${side}`, "stroke-width": 0.4 });
  const rect = document.createElementNS(NS, "rect");
  for (const [key, value] of Object.entries({ class: "board", x: -20000, y: -20000, width: 40000, height: 40000, fill: "url(#squares)" })) rect.setAttribute(key, value);
  svg.insertBefore(rect, first);
}

function squares(svg, scale) {
  svg.querySelector(".square")?.setAttribute("stroke-width", 1 / scale);
}

/** Where a piece lies now. */
export function lies(name) {
  const piece = pieceOf(name);
  return piece ? { x: Number(piece.dataset.nowX ?? piece.dataset.x), y: Number(piece.dataset.nowY ?? piece.dataset.y) } : { x: 0, y: 0 };
}

export function pieceOf(name) {
  return [...document.querySelectorAll("#lying .piece")].find(piece => piece.dataset.piece === name);
}

/** Lays the backs on the fronts, matched at a place, or side by side again. */
export function overlay(where) {
  const pieces = [...document.querySelectorAll("#lying .piece")];
  const fronts = pieces.filter(piece => piece.dataset.face === "front" && piece.dataset[where || "centre"]);
  let pair = 0;
  for (const piece of pieces) {
    let x = Number(piece.dataset.x);
    let y = Number(piece.dataset.y);
    const laid = where !== "" && piece.dataset.face === "back" && piece.dataset[where] && fronts.length > 0;
    if (laid) {
      const front = fronts[Math.min(pair++, fronts.length - 1)];
      const [fx, fy] = front.dataset[where].split(" ").map(Number);
      const [bx, by] = piece.dataset[where].split(" ").map(Number);
      x = Number(front.dataset.x) + fx - bx;
      y = Number(front.dataset.y) + fy - by;
    }
    piece.classList.toggle("over", Boolean(laid));
    piece.dataset.nowX = x;
    piece.dataset.nowY = y;
    piece.setAttribute("transform", `translate(${x} ${y})`);
  }
}

/** Wheel, drag of the board, two fingers, buttons and keys. */
export function moving(svg, { clicked }) {
  const down = new Map();
  let moved = 0;
  let spread = 0;
  svg.addEventListener("wheel", event => {
    event.preventDefault();
    view.zoom(Math.exp(-event.deltaY * (event.deltaMode === 1 ? 0.05 : 0.0015)), view.at(event));
  }, { passive: false });
  svg.addEventListener("pointerdown", event => {
    if (event.target.closest(".handle")) return;
    down.set(event.pointerId, event);
    moved = 0;
    spread = 0;
    svg.setPointerCapture(event.pointerId);
  });
  svg.addEventListener("pointermove", event => {
    const last = down.get(event.pointerId);
    if (!last) return;
    if (down.size === 1) {
      moved += Math.hypot(event.clientX - last.clientX, event.clientY - last.clientY);
      if (moved > 4) view.pan((last.clientX - event.clientX) / view.scale, (last.clientY - event.clientY) / view.scale);
    } else {
      moved = 100;
      const other = [...down.entries()].find(([id]) => id !== event.pointerId)[1];
      const apart = Math.hypot(event.clientX - other.clientX, event.clientY - other.clientY);
      if (spread > 0) view.zoom(apart / spread, view.at({ clientX: (event.clientX + other.clientX) / 2, clientY: (event.clientY + other.clientY) / 2 }));
      spread = apart;
    }
    down.set(event.pointerId, event);
  });
  const up = event => {
    const first = down.get(event.pointerId);
    down.delete(event.pointerId);
    spread = 0;
    if (first && event.type === "pointerup" && moved <= 4) clicked(view.at(event));
  };
  svg.addEventListener("pointerup", up);
  svg.addEventListener("pointercancel", up);
  svg.addEventListener("keydown", event => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const step = 60 / view.scale;
    const pans = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] };
    if (event.key === "+" || event.key === "=") view.zoom(1.25);
    else if (event.key === "-") view.zoom(0.8);
    else if (event.key === "0") view.show(view.whole());
    else if (event.target === svg && pans[event.key]) view.pan(...pans[event.key]);
    else return;
    event.preventDefault();
  });
}
