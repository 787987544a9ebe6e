// A plain number takes the unit of the switch when its line is left, so that it is seen. No line is ever rewritten later.
import {$} from "./page.js";

const PLAIN = /^\s*(\d+([.,]\d+)?(\s+\d+\/\d+)?|\d+\/\d+|[.,]\d+)\s*$/;

export function settle(input) {
  if (!input.dataset.units || !PLAIN.test(input.value)) return;
  const [metric, inches] = input.dataset.units.split(" ");
  input.value = `${input.value.trim()} ${$("[name=unit]:checked")?.value === "in" ? inches : metric}`;
}
