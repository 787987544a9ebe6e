// What lies on the right: the working sheet, or one printed sheet of the pile.
import * as asking from "./asking.js";
import {form, $, $$} from "./page.js";

const field = () => $("[name=view]", form());

function lay(view) {
  field().value = view;
  return asking.now();
}

function shown() {
  const working = field().value === "working";
  document.body.classList.toggle("shows-working", working);
  document.body.classList.toggle("shows-one", !working);
  for (const link of $$(".pile a"))
    if (link.dataset.view.split(":")[0] === field().value.split(":")[0]) link.setAttribute("aria-current", "page");
    else link.removeAttribute("aria-current");
}

export function start() {
  if (!form()) return;
  document.addEventListener("click", event => {
    const link = event.target.closest?.("a[data-view]");
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    history.pushState({view: link.dataset.view}, "", link.href);
    lay(link.dataset.view).then(() => { if (link.closest(".tools")) $$(".pile a")[0]?.focus({preventScroll: true}); });
  });
  addEventListener("popstate", () => lay(new URLSearchParams(location.search).get("view") ?? "working"));
  document.addEventListener("answered", shown);
}
