// After an answer the page comes anew with the reading in view; whoever goes by key or ear goes on from there, not from the top.
const place = location.hash && document.getElementById(location.hash.slice(1));
if (place) place.focus({ preventScroll: true });

// A form that came back with a fault: to the field that has it.
document.addEventListener("htmx:afterSettle", () => {
  document.querySelector("#pinned [aria-invalid=true]")?.focus();
});
