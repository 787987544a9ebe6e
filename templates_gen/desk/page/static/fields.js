// What stands at a line: where its value is from, its help, and why it cannot be read, with what can be clicked instead.
import * as asking from "./asking.js";
import {form, put, speak, word, $, $$} from "./page.js";

const PATIENCE = 1200; // an unfinished word is no error
let last = 0, timer = 0, wrong = new Map();
const held = new Map();
const OF_TROUBLES = new Set(["rule", "notes", "away"]);

export const line = name => $(`.f[data-key="${CSS.escape(name)}"]`);
export const typed = () => { last = Date.now(); };
const busy = () => Date.now() - last < PATIENCE && document.activeElement?.closest(".in");

// Parts that say what is wrong wait as long as the refusals do.
export function holds(name, html) {
  if (!OF_TROUBLES.has(name) || !timer) return false;
  held.set(name, html);
  return true;
}

export function release() {
  clearTimeout(timer);
  timer = 0;
  last = 0;
  for (const [name, html] of held) put(name, html);
  held.clear();
  for (const [name, said] of wrong) show(name, said);
  if (wrong.size) speak([...wrong.values()][0].say);
}

export function take({lines = {}, ok}) {
  clearTimeout(timer);
  timer = 0;
  held.clear();
  wrong = new Map(Object.entries(lines).filter(([, said]) => said.say));
  for (const f of $$(".f[data-key]")) {
    const said = lines[f.dataset.key];
    if (said) settle(f, said);
    if (!said?.say) clear(f);
  }
  if (!wrong.size) return;
  const fresh = [...wrong.keys()].some(name => !line(name)?.classList.contains("wrong"));
  if (fresh && busy()) timer = setTimeout(release, PATIENCE - (Date.now() - last));
  else for (const [name, said] of wrong) show(name, said);
}

function settle(f, {source, help, also}) {
  const row = f.closest(".cells") ?? f;
  if (source) {
    for (const other of ["yours", "example", "assumed"]) f.classList.toggle(other, other === source);
    if (row !== f) for (const other of ["yours", "example", "assumed"]) row.classList.toggle(other, !!$(`.f.${other}`, row) && other === first(row));
    const said = word(`source-${source}`.replace(/-(.)/g, (_, c) => c.toUpperCase()));
    const dot = $(":scope > .src", f);
    if (dot) dot.title = said;
    const spoken = $(".srcword", f);
    if (spoken) spoken.textContent = said;
  }
  if (help !== undefined && $(".help", f)) $(".help", f).textContent = help;
  if (also !== undefined && $(".also", f)) $(".also", f).textContent = also;
}

const first = row => ["example", "yours", "assumed"].find(source => $(`.f.${source}`, row));

function clear(f) {
  if (!f.classList.contains("wrong")) return;
  f.classList.remove("wrong");
  $(".why", f).replaceChildren();
  delete $(".why", f).dataset.said;
  for (const input of $$("input,select,textarea", f)) input.removeAttribute("aria-invalid");
}

function show(name, {say, use = []}) {
  const f = line(name);
  if (!f) return;
  f.classList.add("wrong");
  for (const input of $$("input,select,textarea", f)) input.setAttribute("aria-invalid", "true");
  f.closest("details.more")?.setAttribute("open", "");
  const why = $(".why", f), same = JSON.stringify([say, use]);
  if (why.dataset.said === same) return; // so that nothing goes from under a finger
  why.dataset.said = same;
  const text = document.createElement("span"), before = $$(".chip", why).indexOf(document.activeElement);
  text.className = "say";
  text.textContent = say;
  const chips = use.map(({field, text: value, say: label}) => {
    const chip = document.createElement("button");
    Object.assign(chip, {type: "submit", className: "chip", name: "use", value: `${field}=${value}`, textContent: label});
    return chip;
  });
  why.replaceChildren(text, document.createElement("br"), ...chips);
  if (f.contains(document.activeElement)) why.scrollIntoView({block: "nearest"});
  if (before >= 0) (chips[before] ?? $("input,select,textarea", f)).focus({preventScroll: true});
}

export function refused(say) { if (say) speak(say); const at = $("#refused"); if (at) { at.textContent = say; at.hidden = !say; } }

// A chip puts its value into its line; a line that is not on the page is left to the server.
function use(event) {
  const chip = event.target.closest("button[name=use]");
  if (!chip) return;
  const cut = chip.value.indexOf("="), names = chip.value.slice(0, cut).split(" "), value = chip.value.slice(cut + 1);
  const inputs = names.map(name => $$(`[name="${CSS.escape(name)}"]`, form()).find(i => i.type !== "radio" || i.value === value));
  if (inputs.some(input => !input || input.type === "checkbox")) return;
  event.preventDefault();
  for (const input of inputs) {
    if (input.type === "radio") input.checked = true; else input.value = value;
    asking.touch(input.name);
  }
  const [input] = inputs;
  last = 0;
  input.closest("details.more")?.setAttribute("open", "");
  input.focus();
  asking.now();
}

export function start() {
  if (!form()) return;
  form().addEventListener("click", use);
  form().addEventListener("focusout", () => { if (timer) release(); if (asking.due()) asking.now(); });
  document.addEventListener("first-wrong", () => {
    const f = $(".f.wrong");
    f?.closest("details.more")?.setAttribute("open", "");
    $("input,select,textarea", f ?? undefined)?.focus();
  });
}
