// The table of kits: a chosen file is opened at once, and comparing waits for two to four.
import {$, $$} from "./page.js";

const AGAIN = 1000;

export function start() {
  for (const chooser of $$("input[type=file][data-at-once]"))
    chooser.addEventListener("change", () => { if (chooser.files.length) chooser.form.requestSubmit(); });
  for (const button of $$("[data-chooser]"))
    button.addEventListener("click", event => { event.preventDefault(); $(`#${button.dataset.chooser}`).click(); });
  if ($("main [data-job]") && !$("#slip")) setTimeout(() => location.reload(), AGAIN); // how far the making of all is
  const ticks = $$("[name=compare]"), compare = $("#compare");
  if (!compare) return;
  const count = () => { const ticked = ticks.filter(t => t.checked).length; compare.disabled = ticked < 2 || ticked > 4; };
  for (const tick of ticks) tick.addEventListener("change", count);
  count();
}
