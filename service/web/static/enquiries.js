// The letter and its form point at each other. Without this the links still lead there.
"use strict";

function light(link) {
  const target = document.getElementById(link.hash.slice(1));
  if (!target) return;
  for (const lit of document.querySelectorAll(".lit")) lit.classList.remove("lit");
  target.closest("details:not([open])")?.setAttribute("open", "");
  for (let above = target.closest("details"); above; above = above.parentElement.closest("details")) above.open = true;
  target.classList.add("lit");
  return target;
}
document.addEventListener("click", (event) => {
  const link = event.target.closest?.("a.ref, a.ref-word");
  const target = link && light(link);
  if (!target) return;
  event.preventDefault();
  target.scrollIntoView({ block: "center" });
  target.focus({ preventScroll: true });
  history.replaceState(null, "", link.hash);
});

// What is being written in a unit of its own is read back in the form's, before it is saved.
const QUIET = 250; // ms after the last key
let waiting = null;
document.addEventListener("input", (event) => {
  const field = event.target, sort = field.dataset?.sort;
  if (!["mm", "deg", "kg"].includes(sort)) return;
  clearTimeout(waiting);
  waiting = setTimeout(() => echo(field, sort), QUIET);
});
async function echo(field, sort) {
  const text = field.value.trim(), line = field.closest(".line") ?? field.closest(".cell");
  const said = line.nextElementSibling?.matches("output.echo") ? line.nextElementSibling : document.createElement("output");
  said.remove();
  if (!text || /^-?\d+(\.\d+)?$/.test(text)) return;
  const answer = await fetch(`/desk/help/value/${sort}?text=${encodeURIComponent(text)}`);
  if (!answer.ok || field.value.trim() !== text) return;
  const read = await answer.json();
  said.className = read.wrong ? "echo wrong" : "echo";
  said.textContent = read.said;
  line.after(said);
}
