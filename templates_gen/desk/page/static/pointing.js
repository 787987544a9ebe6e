// An end of the warp and its marks are one thing, wherever it is touched.
import {speak, $, $$} from "./page.js";

const STEPS = {ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageDown: 10, PageUp: -10, Home: -1e6, End: 1e6};
let ends = null, now = 0;

const within = (svg, event) => new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());

export function light(end, {aloud = false} = {}) {
  const count = ends?.passes.length ?? 0;
  if (!count) return;
  now = Math.max(1, Math.min(count, end));
  for (const old of $$(".lit")) old.classList.remove("lit");
  for (const pass of $$(`[data-end="${now}"]`)) pass.classList.add("lit");
  for (const strip of $$("[data-strip]")) spot(strip);
  const said = ends.said[now - 1];
  tell(said);
  if (aloud) speak(said);
}

// What it is stands before the first comma, and is the accent's.
function tell(said) {
  const cut = (said + ",").indexOf(","), bold = document.createElement("b");
  bold.textContent = said.slice(0, cut);
  $("#said").replaceChildren(bold, said.slice(cut));
}

// One line over the mark, and a spot at its end, drawn over the strip.
function spot(strip) {
  const over = $(".hots", strip), [x, top, bottom] = ends.marks[strip.dataset.strip]?.[now - 1] ?? [];
  over.replaceChildren();
  if (x === undefined || x === null) return;
  const ns = "http://www.w3.org/2000/svg", path = document.createElementNS(ns, "path"), dot = document.createElementNS(ns, "circle");
  path.setAttribute("class", "hot");
  path.setAttribute("d", `M${x} ${top}V${bottom}`);
  dot.setAttribute("class", "spot");
  for (const [key, value] of [["cx", x], ["cy", strip.dataset.strip === "near" ? bottom : top], ["r", 1.5]]) dot.setAttribute(key, value);
  over.append(path, dot);
}

// The nearest pass at that height, not only near the bars.
function nearest(x, y) {
  let best = 0, least = Infinity;
  ends.passes.forEach(([x1, y1, x2, y2], k) => {
    const at = y1 === y2 ? x1 : x1 + (x2 - x1) * Math.max(0, Math.min(1, (y - y1) / (y2 - y1)));
    if (Math.abs(at - x) < least) [best, least] = [k + 1, Math.abs(at - x)];
  });
  return best;
}

function onFrame(event) {
  const svg = event.target.closest?.("svg.frame");
  if (!svg || !ends?.passes.length || event.target.closest("[data-dim]")) return;
  const {x, y} = within(svg, event), [left, top, right, bottom] = ends.box;
  if (x >= left && x <= right && y >= top && y <= bottom) light(nearest(x, y));
}

function onStrip(event) {
  const strip = event.target.closest?.("[data-strip]");
  if (!strip || !ends) return;
  const marks = ends.marks[strip.dataset.strip] ?? [], {x} = within($(".hots", strip), event);
  let best = 0, least = Infinity;
  marks.forEach((mark, k) => { if (mark && Math.abs(mark[0] - x) < least) [best, least] = [k + 1, Math.abs(mark[0] - x)]; });
  if (best) light(best);
}

function keys(event) {
  if (!event.target.matches?.("[data-part=frame], svg.frame") || event.ctrlKey || event.altKey || event.metaKey) return;
  const step = STEPS[event.key];
  if (!step) return;
  event.preventDefault();
  light((now || 0) + step, {aloud: true});
}

function read() {
  const from = $("[data-ends]");
  ends = from && from.dataset.ends ? JSON.parse(from.dataset.ends) : null;
}

export function start() {
  read();
  document.addEventListener("pointermove", event => { onFrame(event); onStrip(event); });
  document.addEventListener("pointerdown", event => { onFrame(event); onStrip(event); });
  document.addEventListener("keydown", keys);
  document.addEventListener("answered", event => {
    if (event.detail.said.ends) ends = event.detail.said.ends;
    if (now) light(now);
  });
}
