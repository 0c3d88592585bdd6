// How the cloth is seen: letters and lines keep their size on the screen, names stand where there is room for them.

const NEAREST = 6; // times as large as its room
const LETTER = 13; // pixels

export const cloth = {
  svg: null,
  factor: 1,

  zoom(by) {
    const room = this.svg.parentElement;
    const middle = (room.scrollLeft + room.clientWidth / 2) / room.scrollWidth;
    this.factor = Math.max(1, Math.min(NEAREST, this.factor * by));
    this.fit();
    room.scrollLeft = middle * room.scrollWidth - room.clientWidth / 2;
  },

  fit() {
    this.svg.setAttribute("width", `${100 * this.factor}%`);
    const box = this.svg.viewBox.baseVal;
    const wide = this.svg.getBoundingClientRect().width;
    const pixel = wide > 0 ? box.width / wide : Number(this.svg.dataset.unit);
    this.pixel = pixel;
    names(this.svg, pixel);
    measured(this.svg, pixel);
    for (const pin of this.svg.querySelectorAll(".pin")) pin.setAttribute("transform", `translate(${pin.dataset.x} ${Number(pin.dataset.y) - 1.6 * LETTER * pixel}) scale(${5 * pixel})`);
  },

  /** A place of the window in millimetres of the cloth, y up. */
  at(event) {
    const matrix = this.svg.getScreenCTM().inverse();
    return { x: matrix.a * event.clientX + matrix.c * event.clientY + matrix.e, y: -(matrix.b * event.clientX + matrix.d * event.clientY + matrix.f) };
  },
};

export function draw(svg) {
  cloth.svg = svg;
  cloth.fit();
}

function names(svg, pixel) {
  for (const piece of svg.querySelectorAll(".piece")) {
    const name = piece.querySelector(".piece-name");
    const words = `${name.dataset.number} ${piece.dataset.name}`;
    const room = Number(piece.dataset.wide) / pixel;
    name.setAttribute("font-size", LETTER * 1.1 * pixel);
    const text = words.length * LETTER * 0.62 < room ? words : name.dataset.number;
    if (name.textContent !== text) name.textContent = text;
  }
}

/** Of two measures that would stand on each other the second goes down its line; where there is no room it stays in the table below. */
function measured(svg, pixel) {
  const taken = [...svg.querySelectorAll(".piece-name")].map(name => box(Number(name.getAttribute("x")), Number(name.getAttribute("y")), name.textContent, pixel));
  for (const text of svg.querySelectorAll(".measured")) {
    const x = Number(text.dataset.x);
    const y = Number(text.dataset.y);
    text.setAttribute("font-size", LETTER * 0.95 * pixel);
    const tries = [0, 1.2, -1.2, 2.4, -2.4, 3.6, -3.6];
    const free = tries.map(step => y + step * LETTER * pixel).find(at => !taken.some(other => meet(other, box(x, at, text.textContent, pixel))));
    text.setAttribute("display", free === undefined ? "none" : "inline");
    if (free === undefined) continue;
    text.setAttribute("y", free);
    taken.push(box(x, free, text.textContent, pixel));
  }
}

function box(x, y, words, pixel) {
  const half = words.length * LETTER * 0.3 * pixel;
  return { left: x - half, right: x + half, top: y - LETTER * 0.8 * pixel, bottom: y + LETTER * 0.3 * pixel };
}

function meet(a, b) {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
