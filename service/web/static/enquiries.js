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
