// Leaving asks only where something was typed since the kit was last kept.
import {form, $} from "./page.js";

let typed = false, ours = false;

export const going = () => { ours = true; setTimeout(() => { ours = false; }, 1500); };

export function start() {
  if (!form()) return;
  typed = form().dataset.typed === "yes";
  form().addEventListener("input", () => { typed = true; });
  form().addEventListener("submit", going);
  document.addEventListener("click", event => { if (event.target.closest?.("a[href]")?.origin === location.origin) going(); });
  addEventListener("beforeunload", event => { if (typed && !ours) event.preventDefault(); });
}
