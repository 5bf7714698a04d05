// What is typed into the form of a fitter stays on the telephone until it is sent: a lost connection loses nothing.
"use strict";

const LONGEST = 14 * 24 * 3600 * 1000;
for (const form of document.querySelectorAll("form[data-draft]")) {
  const key = `draft ${form.dataset.draft}`;
  const fields = () => [...form.elements].filter((one) => one.name && !["hidden", "file", "submit"].includes(one.type));
  const keep = () => {
    const said = {};
    for (const one of fields()) {
      if (one.type !== "radio" || one.checked) said[one.name] = one.value;
    }
    try { localStorage.setItem(key, JSON.stringify({ at: Date.now(), said })); } catch { /* full or forbidden: it is only a help */ }
  };
  const back = () => {
    let kept = null;
    try { kept = JSON.parse(localStorage.getItem(key)); } catch { return; }
    if (!kept || Date.now() - kept.at > LONGEST) return;
    for (const one of fields()) {
      if (!(one.name in kept.said)) continue;
      if (one.type === "radio") one.checked = one.value === kept.said[one.name];
      else one.value = kept.said[one.name];
    }
  };
  if (!("returned" in form.dataset)) back();
  form.addEventListener("input", keep);
  form.addEventListener("change", keep);
}
