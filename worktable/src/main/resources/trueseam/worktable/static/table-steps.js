// Playing the tissue steps: the paper turns about the pin, the pen follows its edge. The poses are the engine's; here a turn and a slide are
// shown a share at a time.

import { say } from "./desk.js";
import { draw, view } from "./table-view.js";
import { fetched, hand, run, still } from "./table-motion.js";

const LONG = { pivot: 2600, spread: 2600, slide: 2200, layback: 1800, trace: 2200, traceover: 2200, join: 1600, straighten: 1400 };
const SHORT = 1100;
const READ = 2500; // with less motion, a step is left standing so long

let play = null; // the answer, how many steps are done, what is on the table
let stop = null;
let playing = false;

export function steps() {
  const chapter = document.getElementById("chapter");
  if (!chapter) return;
  chapter.addEventListener("change", open);
  for (const button of document.querySelectorAll("[data-play]")) button.addEventListener("click", () => press(button.dataset.play));
}

export async function open() {
  const chapter = document.getElementById("chapter");
  if (!chapter) return;
  halt();
  try {
    const answer = await fetched("table/steps", { chapter: chapter.value });
    play = { answer, done: 0 };
    view.show(answer.box);
    list();
    stage(0, 0);
  } catch (problem) {
    say(problem.message);
  }
}

export function close() {
  halt();
  play = null;
}

function halt() {
  stop?.();
  stop = null;
  playing = false;
  label();
}

function label() {
  const button = document.querySelector("[data-play=play]");
  if (button) button.textContent = playing ? "Pause" : "Play";
}

function list() {
  const ol = document.getElementById("step-list");
  ol.replaceChildren(...play.answer.scenes.map((scene, i) => {
    const li = document.createElement("li");
    const button = document.createElement("button");
    button.type = "button";
    button.className = "quiet step-words";
    button.textContent = scene.words;
    button.addEventListener("click", () => { halt(); play.done = i + 1; stage(i, 1); });
    li.append(button);
    return li;
  }));
}

function press(what) {
  if (!play) return;
  const was = playing;
  halt();
  if (what === "next") forward();
  else if (what === "back") backward();
  else if (!was) {
    if (play.done >= play.answer.scenes.length) { play.done = 0; stage(0, 0); }
    playing = true;
    label();
    forward();
  }
}

const milliseconds = scene => (LONG[scene.kind] || SHORT) / Number(document.getElementById("pace").value);

function forward() {
  const i = play.done;
  if (i >= play.answer.scenes.length) return void halt();
  // Paused in the middle of a step, it goes on from there.
  const from = play.rest?.i === i ? play.rest.t : 0;
  stage(i, from);
  stop = run(milliseconds(play.answer.scenes[i]) * (1 - from), false, t => frame(i, from + (1 - from) * t), () => {
    stop = null;
    play.done = i + 1;
    mark(i);
    if (!playing) return;
    if (play.done >= play.answer.scenes.length) return void halt();
    const timer = setTimeout(() => { if (playing) forward(); }, still() ? READ : 450);
    stop = () => clearTimeout(timer);
  });
}

function backward() {
  const i = play.done - 1;
  if (i < 0) return;
  stage(i, 1);
  stop = run(milliseconds(play.answer.scenes[i]), true, t => frame(i, t), () => {
    stop = null;
    play.done = i;
    if (i > 0) stage(i - 1, 1);
    mark(i - 1);
  });
}

function mark(i) {
  document.querySelectorAll("#step-list li").forEach((li, at) => {
    const button = li.firstChild;
    li.classList.toggle("past", at < i);
    if (at === i) {
      button.setAttribute("aria-current", "step");
      li.parentElement.scrollTo?.({ top: li.offsetTop - li.parentElement.offsetTop - 40 });
    } else button.removeAttribute("aria-current");
  });
}

/** Lays out a step: the lines that are there, the sheets, the lines that it draws. */
function stage(i, t) {
  const acting = document.getElementById("acting");
  const scene = play.answer.scenes[i];
  acting.replaceChildren();
  const sheets = draw(acting, "g");
  const whole = scene.sheets.length === 1;
  play.sheets = scene.sheets.map(sheet => {
    const g = draw(sheets, "g", { class: sheet.inHand ? "sheet-paper in-hand" : "sheet-paper" });
    sheet.lines.forEach(line => draw(g, "path", { class: "tissue-paper", d: line + "Z" }));
    if (whole) {
      for (const what of ["darts", "notches", "grain", "levels", "marks"]) draw(g, "path", { class: `on-paper ${what}`, d: play.answer.paper[what] });
    }
    return g;
  });
  const tissue = draw(acting, "g");
  scene.before.forEach(line => draw(tissue, "path", { class: `traced ${line.kind}`, d: line.line }));
  play.fresh = scene.fresh.map(line => {
    const path = draw(tissue, "path", { class: `traced fresh ${line.kind}`, d: line.line });
    return { path, mm: path.getTotalLength() };
  });
  play.pen = draw(tissue, "circle", { class: "pen", r: 5 / view.scale });
  const earlier = i > 0 ? new Set(play.answer.scenes[i - 1].marks.map(m => m.name)) : new Set();
  play.newMarks = [];
  for (const m of scene.marks) {
    const g = draw(acting, "g", { class: "mark", transform: `translate(${m.x} ${m.y}) scale(${1 / view.scale})` });
    draw(g, "path", { d: "M-9 0H9M0 -9V9" });
    draw(g, "text", { x: 12, y: -6 }).textContent = m.name;
    if (!earlier.has(m.name)) play.newMarks.push(g);
  }
  play.pin = null;
  if (scene.pin.length) {
    play.pin = draw(acting, "g", { class: "pin" });
    draw(play.pin, "path", { d: "M0 0L9 -22" });
    draw(play.pin, "circle", { cx: 9, cy: -22, r: 6 });
    draw(play.pin, "circle", { class: "hole", r: 2.5 });
  }
  frame(i, t);
  mark(t === 0 && i === 0 && play.done === 0 ? 0 : i);
}

function frame(i, t) {
  play.rest = t > 0 && t < 1 ? { i, t } : null;
  const scene = play.answer.scenes[i];
  const eased = hand(t);
  scene.sheets.forEach((sheet, at) => {
    const [sx, sy] = sheet.slide;
    const [ax, ay] = sheet.about;
    play.sheets[at].setAttribute("transform", `translate(${sx * eased} ${sy * eased}) rotate(${sheet.turn * eased} ${ax} ${ay}) matrix(${sheet.from.join(" ")})`);
  });
  trace(t);
  play.newMarks.forEach(g => g.setAttribute("opacity", t));
  if (play.pin) {
    const [x, y] = scene.pin;
    const drop = scene.kind === "pin" ? 30 * (1 - eased) : 0;
    play.pin.setAttribute("transform", `translate(${x} ${y}) scale(${1 / view.scale}) translate(${drop} ${-drop})`);
  }
  document.getElementById("table").dataset.step = `${i + 1} ${t.toFixed(2)}`;
}

/** The pen goes along one line after the other, at one pace. */
function trace(t) {
  const all = play.fresh.reduce((sum, line) => sum + line.mm, 0);
  let drawn = t * all;
  let tip = null;
  for (const line of play.fresh) {
    const mm = Math.max(0, Math.min(line.mm, drawn));
    drawn -= line.mm;
    line.path.setAttribute("stroke-width", 2.6 / view.scale);
    if (t >= 1) line.path.removeAttribute("stroke-dasharray");
    else line.path.setAttribute("stroke-dasharray", `${mm} ${line.mm + 10}`);
    line.path.setAttribute("visibility", mm > 0 ? "visible" : "hidden");
    if (mm > 0) tip = line.path.getPointAtLength(mm);
  }
  const seen = tip && t > 0 && t < 1;
  play.pen.setAttribute("visibility", seen ? "visible" : "hidden");
  if (seen) {
    play.pen.setAttribute("cx", tip.x);
    play.pen.setAttribute("cy", tip.y);
  }
}

/** After a change of scale everything that keeps its size on the screen is drawn anew. */
export function rescale() {
  if (play?.sheets && !stop) stage(Math.max(0, play.done - 1), play.done > 0 ? 1 : 0);
}
