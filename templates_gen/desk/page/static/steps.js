// Which step the hand is in, on the rule; and the measure of the touched line, in the drawing.
import {form, $, $$} from "./page.js";

let step = "", key = "";

export function mark() {
  for (const tick of $$(".rule li")) {
    const link = $("a", tick), on = link.hash === `#${step}`;
    tick.classList.toggle("here", on);
    if (on) link.setAttribute("aria-current", "step"); else link.removeAttribute("aria-current");
  }
  for (const measure of $$("[data-dim]")) measure.classList.toggle("lit-g", measure.dataset.dim === key);
}

function go(name) {
  const f = $(`.f[data-key="${CSS.escape(name)}"]`);
  if (!f) return;
  f.closest("details")?.setAttribute("open", "");
  const input = $("input,select,textarea", f);
  input?.focus();
  input?.select?.();
}

export function start() {
  if (!form()) return;
  step = $(".rule li.here a")?.hash.slice(1) ?? "";
  document.addEventListener("focusin", event => {
    if (!event.target.closest("#slip")) return;
    key = event.target.closest(".f")?.dataset.key ?? "";
    step = (event.target.closest(".step") ?? $(".step")).id;
    mark();
  });
  document.addEventListener("click", event => {
    const measure = event.target.closest?.("[data-dim]");
    if (measure) return go(measure.dataset.dim);
    const link = event.target.closest?.("a[data-line]");
    if (!link) return;
    event.preventDefault();
    go(link.dataset.line);
  });
  document.addEventListener("answered", mark);
  mark();
}
