// Which step the hand is in, on the rule; and the measure of the touched line, in the drawing.
import {form, $, $$} from "./page.js";

let step = "", key = "", down = false, next = null;

// The help of a touched line opens once the pointer is up again: nothing moves away from under a finger.
function touch(line) {
  next = line;
  if (down) return;
  for (const old of $$(".f.touched")) if (old !== line) old.classList.remove("touched");
  line?.classList.add("touched");
}

function pointer() {
  addEventListener("pointerdown", () => { down = true; }, true);
  for (const up of ["pointerup", "pointercancel"]) addEventListener(up, () => setTimeout(() => { down = false; if (next) touch(next); }), true);
}

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
  const at = $$(".rule a").find(link => link.hash === location.hash);
  step = (at || $(".rule li.here a"))?.hash.slice(1) ?? "";
  document.addEventListener("focusin", event => {
    if (!event.target.closest("#slip")) return;
    const line = event.target.closest(".f");
    if (line) touch(line);
    key = line?.dataset.key ?? "";
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
  document.addEventListener("answered", () => { mark(); touch(document.activeElement?.closest?.(".f") ?? next); });
  pointer();
  touch(document.activeElement?.closest?.(".f"));
  mark();
}
