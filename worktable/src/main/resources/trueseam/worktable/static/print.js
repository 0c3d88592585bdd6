// The Print screen: says that a page is being drawn when it takes longer than half a second.
import { say } from "./desk.js";
import "./take.js";

const LONG = 500;

function watch() {
  const page = document.getElementById("page");
  const words = document.querySelector(".drawing-it");
  if (!page || !words || page.complete) return;
  const timer = setTimeout(() => { words.hidden = false; }, LONG);
  const done = () => { clearTimeout(timer); words.hidden = true; };
  page.addEventListener("load", done, { once: true });
  page.addEventListener("error", () => {
    done();
    say("The page could not be drawn; make your last change again, or undo it.");
  }, { once: true });
}

document.addEventListener("htmx:afterSettle", watch);
watch();
