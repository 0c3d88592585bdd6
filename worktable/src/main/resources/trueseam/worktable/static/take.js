// Files to take away: says that one is being made when it takes longer than half a second, and why it is not.
import { say } from "./desk.js";

const LONG = 500;

/** Fetches a file, so that its making can be waited for and a refusal be said; the link works without this too. */
async function take(link) {
  const words = document.getElementById("making");
  const timer = setTimeout(() => { words.textContent = `Making ${link.download} ...`; }, LONG);
  try {
    const answer = await fetch(link.href);
    if (!answer.ok) throw new Error(await answer.text());
    const address = URL.createObjectURL(await answer.blob());
    const away = document.createElement("a");
    away.href = address;
    away.download = link.download;
    away.click();
    setTimeout(() => URL.revokeObjectURL(address), 60000);
    clearTimeout(timer);
    words.textContent = `${link.download} is in your downloads.`;
  } catch (problem) {
    clearTimeout(timer);
    words.textContent = "";
    say(problem.message === "Failed to fetch" ? "Trueseam does not answer; is it still running? Start it again, then take the file once more." : problem.message);
  }
}

document.addEventListener("click", event => {
  const link = event.target.closest("a[data-file]");
  if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
  event.preventDefault();
  take(link);
});
