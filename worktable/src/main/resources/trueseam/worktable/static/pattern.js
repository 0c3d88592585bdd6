// A drawing that is being confirmed: an edge in the picture and its line in the list belong together. Nothing is worked out here.

function chosen(edge) {
  document.querySelectorAll(".brought .chosen").forEach(one => one.classList.remove("chosen"));
  if (edge) document.querySelectorAll(`.brought [data-edge="${edge}"]:not(.edge-hold)`).forEach(one => one.classList.add("chosen"));
}

document.addEventListener("click", event => {
  const held = event.target.closest(".brought [data-edge]");
  if (held) document.getElementById(held.dataset.edge).focus();
});
document.addEventListener("focusin", event => chosen(event.target.closest("select[data-edge]")?.dataset.edge));

// A file may be dropped on its form.
document.addEventListener("dragover", event => {
  const form = event.target.closest?.(".bring");
  if (form) {
    event.preventDefault();
    form.classList.add("over");
  }
});
document.addEventListener("dragleave", event => event.target.closest?.(".bring")?.classList.remove("over"));
document.addEventListener("drop", event => {
  const form = event.target.closest?.(".bring");
  if (!form) return;
  event.preventDefault();
  form.classList.remove("over");
  form.querySelector("input[type=file]").files = event.dataTransfer.files;
  form.requestSubmit();
});
export {};
