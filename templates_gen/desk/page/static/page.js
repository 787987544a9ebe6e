// The page as the other files see it: its parts, its words, and putting a new part where an old one was.
export const $ = (selector, within = document) => within.querySelector(selector);
export const $$ = (selector, within = document) => [...within.querySelectorAll(selector)];
export const form = () => document.getElementById("slip");
export const word = name => document.body.dataset[name] ?? "";

const shown = new Map(); // what stands in each part, so that nothing is replaced by its like

// Where the hand is, in words that outlive the element: its name, and the place of the cursor.
function hand(within) {
  const at = document.activeElement;
  if (!at || !within.contains(at)) return () => {};
  const kept = {id: at.id, name: at.name, value: at.value, mark: at.dataset.keep, from: at.selectionStart, to: at.selectionEnd};
  return () => {
    const same = (kept.id && document.getElementById(kept.id))
      || (kept.mark && $(`[data-keep="${CSS.escape(kept.mark)}"]`, within))
      || (kept.name && $$(`[name="${CSS.escape(kept.name)}"]`, within).find(e => e.type !== "radio" || e.value === kept.value));
    if (!same) return;
    for (let d = same.closest("details:not([open])"); d && d.firstElementChild !== same; d = d.parentElement.closest("details:not([open])")) d.open = true;
    same.focus({preventScroll: true});
    if (kept.from !== null && kept.from !== undefined && same.setSelectionRange) {
      try { same.setSelectionRange(kept.from, kept.to); } catch { /* a kind of field without a cursor */ }
    }
  };
}

export function put(name, html) {
  if (shown.get(name) === html) return false;
  shown.set(name, html);
  for (const part of $$(`[data-part="${name}"]`)) {
    const back = hand(part);
    const open = new Set($$("details[open][data-keep]", part).map(d => d.dataset.keep));
    const side = $(".scrolls", part)?.scrollLeft;
    part.innerHTML = html;
    for (const d of $$("details[data-keep]", part)) if (open.has(d.dataset.keep)) d.open = true;
    if (side) $(".scrolls", part).scrollLeft = side;
    back();
  }
  return true;
}

// The status region speaks at most once a second, the last sentence always.
let last = 0, waiting = 0;
export function speak(text) {
  clearTimeout(waiting);
  const rest = Math.max(0, 1000 - (Date.now() - last));
  waiting = setTimeout(() => { last = Date.now(); $("#status").textContent = text; }, rest);
}

export const wait = ms => new Promise(done => setTimeout(done, ms));
