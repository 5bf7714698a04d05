// The shaft can be dragged on the drawing, or moved with the arrow keys. The number fields beside it do the same.
"use strict";
(() => {
  const SVG = "http://www.w3.org/2000/svg";
  const STEP = 5, LEAP = 50; // mm for an arrow key, and with Shift
  const QUIET = 350; // ms after the last key before the drawing is made anew
  let waiting = null, busy = false, again = false, refocus = null;

  // Who presses a button does not want what the keys were about to ask for any more.
  document.addEventListener("click", (event) => { if (event.target.closest?.("button, a")) clearTimeout(waiting); });

  const field = (name) => document.querySelector(`#place [name=${name}]`);
  const value = (name) => Number(field(name)?.value) || 0;
  const element = (name, attributes) => {
    const made = document.createElementNS(SVG, name);
    for (const [key, text] of Object.entries(attributes)) made.setAttribute(key, text);
    return made;
  };

  // How the margins stand where it is now; the drawing waits until it is let go.
  function look() {
    if (busy) { again = true; return; }
    busy = true;
    const form = document.getElementById("place");
    window.htmx.ajax("POST", form.action, { source: document.getElementById("margins"), target: "#margins", swap: "innerHTML",
      values: { ...Object.fromEntries(new FormData(form)), quick: "1" } })
      .finally(() => { busy = false; if (again) { again = false; look(); } });
  }

  function settle(view) {
    refocus = view;
    const form = document.getElementById("place");
    if (form) window.htmx.trigger(form, "change");
  }

  function arm(figure) {
    const drawing = figure.querySelector("svg"), form = document.getElementById("place");
    if (!drawing || !form || !window.htmx || figure.querySelector(".handle")) return;
    const stern = figure.dataset.view === "stern", across = stern ? "offset_mm" : "shaft_aft_mm";
    const x0 = Number(figure.dataset.x0), y0 = Number(figure.dataset.y0), scale = Number(figure.dataset.scale);
    const top = value("upper_height_mm") + 150, low = value("shaft_bottom_mm") - 30, start = value(across);
    const x = x0 + start * scale, y = y0 - top * scale, high = (top - low) * scale;
    const handle = element("g", { class: "handle", tabindex: "0", role: "slider", "aria-orientation": "horizontal" });
    handle.setAttribute("aria-label", stern ? "Shaft, offset to starboard" : "Shaft, aft of the top edge");
    handle.append(
      element("rect", { class: "grip", x: x - 5, y, width: 10, height: high }),
      element("path", { class: "axis", d: `M${x} ${y}V${y + high}` }),
    );
    drawing.setAttribute("role", "group");
    drawing.append(handle);

    function show() {
      const moved = value(across) - start, up = value("up_mm");
      handle.setAttribute("transform", `translate(${moved * scale} ${-up * scale})`);
      handle.setAttribute("aria-valuenow", value(across));
      handle.setAttribute("aria-valuemin", stern ? field(across).min : -20000);
      handle.setAttribute("aria-valuemax", stern ? field(across).max : 20000);
      const side = value(across) < 0 ? (stern ? "to port" : "forward") : stern ? "to starboard" : "aft";
      handle.setAttribute("aria-valuetext", `${Math.abs(value(across))} mm ${side}, raised ${up} mm`);
    }
    function put(mm, up) {
      const widest = stern ? Number(field(across).max) : Infinity;
      field(across).value = Math.round(Math.min(Math.max(mm, -widest), widest) * 10) / 10;
      field("up_mm").value = Math.round(up * 10) / 10;
      show();
      look();
    }
    show();

    let from = null;
    const at = (event) => new DOMPoint(event.clientX, event.clientY).matrixTransform(drawing.getScreenCTM().inverse());
    handle.addEventListener("pointerdown", (event) => {
      handle.setPointerCapture(event.pointerId);
      handle.classList.add("moving");
      from = { at: at(event), mm: value(across), up: value("up_mm") };
      event.preventDefault();
      handle.focus();
    });
    handle.addEventListener("pointermove", (event) => {
      if (!from) return;
      const now = at(event);
      put(from.mm + (now.x - from.at.x) / scale, from.up - (now.y - from.at.y) / scale);
    });
    for (const end of ["pointerup", "pointercancel"]) {
      handle.addEventListener(end, () => {
        if (!from) return;
        from = null;
        handle.classList.remove("moving");
        settle(figure.dataset.view);
      });
    }
    handle.addEventListener("keydown", (event) => {
      const by = event.shiftKey ? LEAP : STEP;
      const [dx, dz] = { ArrowLeft: [-by, 0], ArrowRight: [by, 0], ArrowUp: [0, by], ArrowDown: [0, -by] }[event.key] ?? [0, 0];
      if (!dx && !dz) return;
      event.preventDefault();
      put(value(across) + dx, value("up_mm") + dz);
      clearTimeout(waiting);
      waiting = setTimeout(() => settle(figure.dataset.view), QUIET);
    });
    if (refocus === figure.dataset.view) { refocus = null; handle.focus({ preventScroll: true }); }
  }

  const armAll = () => document.querySelectorAll("#outcome figure[data-view]").forEach(arm);
  document.addEventListener("DOMContentLoaded", armAll);
  document.addEventListener("htmx:afterSettle", armAll);
  // A file that is asked for leaves the page as it is: its form may be sent again.
  document.addEventListener("submit", (event) => {
    if (event.submitter?.hasAttribute("data-file")) {
      setTimeout(() => { delete event.target.dataset.sent; event.target.removeAttribute("aria-busy"); }, 500);
    }
  });
  armAll();
})();
