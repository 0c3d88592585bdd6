// What every screen shares: each change names the version that it was made from and the tab that made it; what goes wrong is said in the
// notice; what takes longer than half a second is said to be under way.

const bar = () => document.getElementById("bar");
const secret = () => document.querySelector('meta[name="secret"]').content;

/** This page's own mark: a reload shows what is kept now and gets a new one, and no other tab has it. */
const tab = crypto.getRandomValues(new Uint32Array(4)).join("-"); // randomUUID is not there without TLS

export function say(sentence) {
  const notice = document.getElementById("notice");
  notice.querySelector("p").textContent = sentence;
  notice.hidden = sentence === "";
}

let waiting = 0;
let timer = 0;

function begun() {
  waiting += 1;
  document.documentElement.dataset.waiting = waiting;
  if (waiting === 1) timer = setTimeout(() => { document.getElementById("busy").textContent = "Working it out ..."; }, 500);
}

function ended() {
  waiting = Math.max(0, waiting - 1);
  document.documentElement.dataset.waiting = waiting;
  if (waiting === 0) {
    clearTimeout(timer);
    document.getElementById("busy").textContent = "";
  }
}

function shownVersion(headers) {
  const version = headers("Trueseam-Version");
  if (version && bar()) bar().dataset.version = version;
}

/** Fetches a part of a page; the page counts as unsettled until it is there. */
export async function part(what, signal) {
  begun();
  try {
    const answer = await fetch(`/p/${bar().dataset.project}/${what}`, { signal });
    if (!answer.ok) throw new Error(await answer.text());
    return await answer.text();
  } finally {
    ended();
  }
}

/**
 * Asks the server from a script. Fields are a plain object; the answer is JSON.
 * Throws with the server's sentence when it is refused; unless quiet, the notice says it too.
 */
export async function ask(what, fields = {}, { quiet = false, signal, keepalive = false } = {}) {
  const body = new URLSearchParams(fields);
  body.set("version", bar().dataset.version);
  body.set("tab", tab);
  if (!quiet) begun();
  try {
    const answer = await fetch(`/p/${bar().dataset.project}/${what}`, { method: "POST", body, signal, keepalive, headers: { "Trueseam-Secret": secret() } });
    shownVersion(name => answer.headers.get(name));
    if (!answer.ok) throw new Error(await answer.text());
    return await answer.json();
  } catch (problem) {
    if (problem.name !== "AbortError" && !quiet) say(problem.message === "Failed to fetch" ? "Trueseam does not answer; is it still running? Nothing is lost: start it again, then repeat your last change." : problem.message);
    throw problem;
  } finally {
    if (!quiet) ended();
  }
}

document.addEventListener("htmx:configRequest", event => {
  event.detail.headers["Trueseam-Secret"] = secret();
  if (event.detail.verb !== "get") {
    event.detail.parameters.delete?.("version");
    event.detail.parameters.set("version", bar().dataset.version);
    event.detail.parameters.set("tab", tab);
  }
});
// A field that was drawn anew while its question was under way hears no answer any more, so the question itself is watched.
document.addEventListener("htmx:beforeRequest", event => {
  begun();
  event.detail.xhr.addEventListener("loadend", ended);
});
document.addEventListener("htmx:afterRequest", event => {
  if (event.detail.xhr) shownVersion(name => event.detail.xhr.getResponseHeader(name));
  if (event.detail.successful) say("");
});
document.addEventListener("htmx:responseError", event => say(event.detail.xhr.responseText));
document.addEventListener("htmx:sendError", () => say("Trueseam does not answer; is it still running? Nothing is lost: start it again, then repeat your last change."));

// While an answer comes in she may be typing in another field already: what stands there now goes before what the answer has.
let typing = null;
document.addEventListener("htmx:beforeSwap", () => {
  const field = document.activeElement;
  typing = field && field.id && field.matches("input:not([type=checkbox]):not([type=radio]):not([type=file]), textarea") ? { id: field.id, value: field.value } : null;
});
document.addEventListener("htmx:afterSwap", () => {
  const field = typing && document.getElementById(typing.id);
  if (field && field === document.activeElement && field.value !== typing.value) {
    const at = typing.value.length;
    field.value = typing.value;
    try { field.setSelectionRange(at, at); } catch { /* numbers have no selection */ }
  }
});

document.addEventListener("click", event => {
  if (event.target.closest("[data-close]")) say("");
});

// Undo and redo by key, outside of fields, where the browser's own undo is wanted.
document.addEventListener("keydown", event => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || event.target.closest("input, textarea, select")) return;
  const key = event.key.toLowerCase();
  const button = key === "z" && !event.shiftKey ? "undo" : key === "y" || key === "z" && event.shiftKey ? "redo" : "";
  const found = button && document.getElementById(button);
  if (found && !found.disabled) {
    event.preventDefault();
    found.click();
  }
});
