// The search runs on the server; this asks how far it is, shows each shorter layout, and shows the page anew when it has ended.

import { ask, say } from "./desk.js";

const EVERY = 600; // milliseconds

let timer = 0;
let paused = false;
let mine = false; // began on this page: leaving it ends the search
let shown = () => {};

export function watch(whenShown) {
  clearTimeout(timer);
  shown = whenShown;
  paused = false;
  if (!running()) {
    mine = false;
    return;
  }
  mine = true;
  timer = setTimeout(look, EVERY);
}

/** A piece is in the hand: what is found from now on is not shown, so that nothing moves under it. */
export function pause() {
  paused = true;
  clearTimeout(timer);
}

/** It lies as it lay. */
export function resume() {
  paused = false;
  if (running()) timer = setTimeout(look, EVERY);
}

const progress = () => document.getElementById("progress");
const running = () => progress()?.dataset.running === "true";
const address = what => `/p/${document.getElementById("bar").dataset.project}/${what}`;

async function part(what) {
  const answer = await fetch(address(what), { headers: { "HX-Request": "true" } });
  if (!answer.ok) throw new Error(await answer.text());
  return new DOMParser().parseFromString(await answer.text(), "text/html").body.firstElementChild;
}

async function look() {
  try {
    const news = await part("cloth/news");
    if (paused || !progress()) return;
    progress().replaceWith(news);
    if (!running()) return void ended();
    const laid = document.getElementById("laid");
    if (news.dataset.on !== laid.dataset.on) {
      const fresh = await part("cloth/laid");
      if (paused || !laid.isConnected) return;
      const focused = laid.contains(document.activeElement) ? document.activeElement.id : "";
      const scrolled = laid.querySelector(".cloth-scroll").scrollLeft;
      laid.replaceWith(fresh);
      shown();
      fresh.querySelector(".cloth-scroll").scrollLeft = scrolled;
      if (focused) document.getElementById(focused)?.focus({ preventScroll: true });
    }
    timer = setTimeout(look, EVERY);
  } catch (problem) {
    say(problem.message === "Failed to fetch" ? "Trueseam does not answer; is it still running? The best layout is kept: start it again, then reload this page." : problem.message);
    timer = setTimeout(look, 10 * EVERY);
  }
}

function ended() {
  mine = false;
  const focused = document.activeElement?.id;
  window.htmx.ajax("GET", address("cloth"), { source: document.body, target: "#main", select: "#main", selectOOB: "#bar", swap: "outerHTML" })
    .then(() => { (document.getElementById(focused) || (focused === "stop" && document.getElementById("search")))?.focus?.({ preventScroll: true }); });
}

window.addEventListener("pagehide", () => {
  if (mine && running()) ask("cloth/stop", {}, { quiet: true, keepalive: true }).catch(() => {});
});
