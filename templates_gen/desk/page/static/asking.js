// One question under way. A newer one drops the older, and an answer that comes late is thrown away.
import {closed} from "./closed.js";
import {form, put, $, $$} from "./page.js";
import * as fields from "./fields.js";
import * as pile from "./pile.js";
import * as units from "./units.js";

const PAUSE = 120, SLOW = 300, REST = 1000;
const PAGE = String(crypto.getRandomValues(new Uint32Array(2)).join("-")); // the desk may lie in several tabs
let nr = 0, answered = 0, under = null, timer = 0, slow = 0, rest = 0;
const touched = new Set();

export const touch = name => { if (name) touched.add(name); };
export function soon() { clearTimeout(timer); timer = setTimeout(now, PAUSE); }
export const due = () => timer !== 0;
export function stop() { clearTimeout(timer); timer = 0; under?.abort(); }

function question() {
  const asked = new FormData(form());
  asked.delete("do");
  asked.set("nr", ++nr);
  asked.set("page", PAGE);
  asked.set("yours", [...touched].join(","));
  asked.set("shapes", $$("[data-shape]").map(e => `${e.dataset.part}=${e.dataset.shape}`).join(","));
  return new URLSearchParams(asked);
}

export async function now(more = {}) {
  clearTimeout(timer);
  timer = 0;
  if (!form()) return;
  under?.abort();
  pile.stop();
  const mine = under = new AbortController();
  const body = question(), number = nr, sent = performance.now();
  for (const [key, value] of Object.entries(more)) body.set(key, value);
  clearTimeout(slow);
  $("#desk-sheet").setAttribute("aria-busy", "true");
  slow = setTimeout(() => document.body.classList.add("working-on"), SLOW);
  try {
    const answer = await fetch(form().dataset.look, {method: "POST", body, signal: mine.signal, headers: {accept: "application/json"}});
    if (answer.status === 403 || answer.status === 401) return closed();
    const said = await answer.json();
    if (number < answered || (said.nr ?? number) < nr) return;
    answered = number;
    if (!answer.ok) return fields.refused(said.say ?? "");
    touched.clear();
    closed(false);
    take(said);
    document.dispatchEvent(new CustomEvent("answered", {detail: {nr: number, sent, came: performance.now(), said}}));
  } catch (error) {
    if (error.name !== "AbortError") closed();
  } finally {
    if (under === mine) {
      clearTimeout(slow);
      $("#desk-sheet").removeAttribute("aria-busy");
      document.body.classList.remove("working-on");
    }
  }
}

function take(said) {
  const parts = said.parts ?? {};
  for (const name of Object.keys(parts)) if (name.startsWith("step-")) step(name, parts[name]);
  fields.refused(said.refused ?? "");
  fields.take(said);
  for (const [name, html] of Object.entries(parts)) if (name === "pile") pile.lay(html);
    else if (!name.startsWith("step-") && !fields.holds(name, html)) put(name, html);
  clearTimeout(rest);
  if (!parts.pile) rest = setTimeout(() => now({rest: "yes"}), REST);
}

// A step is replaced when its lines are others than before; it brings its new shape along.
function step(name, {shape, html}) {
  const part = $(`[data-part="${name}"]`);
  if (!part || part.dataset.shape === shape) return;
  part.dataset.shape = shape;
  put(name, html);
}

export function start() {
  if (!form()) return;
  const slip = form();
  slip.addEventListener("input", event => {
    const field = event.target;
    touch(field.name);
    fields.typed();
    if (field.matches("input:not([type=radio],[type=checkbox]),textarea")) soon(); else now();
  });
  slip.addEventListener("change", event => { if (event.target.matches("input:not([type=radio],[type=checkbox]),textarea")) { units.settle(event.target); now(); } });
  for (const radio of $$("[name=unit]")) radio.addEventListener("change", () => now());
  slip.addEventListener("submit", event => {
    if (event.submitter && event.submitter.value !== "draw") return;
    event.preventDefault();
    if (document.activeElement?.name) units.settle(document.activeElement);
    fields.release();
    now();
  });
}
