// What makes plain forms smoother. Every page works without it.
"use strict";

// A file dropped on a form with data-drop goes into its file field, and the form is sent.
document.addEventListener("dragover", (event) => {
  const form = event.target.closest?.("[data-drop]");
  if (form) { event.preventDefault(); form.classList.add("over"); }
});
document.addEventListener("dragleave", (event) => {
  event.target.closest?.("[data-drop]")?.classList.remove("over");
});
document.addEventListener("drop", (event) => {
  const form = event.target.closest?.("[data-drop]");
  const field = form?.querySelector("input[type=file]");
  if (!field || !event.dataTransfer.files.length) return;
  event.preventDefault();
  form.classList.remove("over");
  field.files = event.dataTransfer.files;
  form.requestSubmit();
});

// A form that is being sent says so, and is not sent twice.
document.addEventListener("submit", (event) => {
  const form = event.target;
  if (form.method === "dialog" || form.hasAttribute("hx-post") || form.hasAttribute("hx-get")) return;
  if (form.dataset.sent) { event.preventDefault(); return; }
  form.dataset.sent = "1";
  form.setAttribute("aria-busy", "true");
});
window.addEventListener("pageshow", () => {
  for (const form of document.querySelectorAll("form[data-sent]")) {
    delete form.dataset.sent;
    form.removeAttribute("aria-busy");
  }
});
