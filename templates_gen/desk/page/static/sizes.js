// True millimetres: a screen is measured by a bank card, once for each zoom of the browser.
import {form, word, $, $$} from "./page.js";

const CARD = 85.6, CSS_MM = 96 / 25.4;
const key = () => `px-per-mm@${devicePixelRatio}`;
let scale = CSS_MM, measured = false, width = 0;

function known() {
  let kept = 0;
  try { kept = Number(localStorage.getItem(key())); } catch { /* a browser that keeps nothing */ }
  measured = kept > 1;
  scale = measured ? kept : CSS_MM;
}

const svg = () => $(".glass svg");
const mm = () => Number(svg()?.dataset.mm?.split(" ")[0] ?? svg()?.viewBox.baseVal.width ?? 0);
const whole = () => { const box = $(".glass"), at = svg()?.viewBox.baseVal; return Math.min(box.clientWidth - 34, (box.clientHeight - 34) * at.width / at.height); };

function sized(px) {
  if (!svg() || px < 20) return;
  width = px;
  svg().style.width = `${px}px`;
  const percent = Math.round(px / scale / mm() * 100);
  $("#zoom-now").textContent = word("percent").replace("{percent}", percent);
}

export function words() {
  const real = measured ? word("real") : word("aboutReal");
  for (const at of $$(".real-word")) at.textContent = real;
  const said = $("#calibrated");
  if (said) said.textContent = measured ? word("measured").replace("{dots}", scale.toFixed(2).replace(".", word("decimal") || ".")) : word("unmeasured");
  for (const strip of $$("#strip-box .strip")) {
    strip.style.width = `${strip.dataset.mm.split(" ")[0] * scale}px`;
    strip.classList.add("sized");
  }
}

function zoom(by) {
  if (!svg()) return;
  if (by === "whole") sized(whole());
  else if (by === "real") sized(mm() * scale);
  else sized((width || svg().getBoundingClientRect().width) * Number(by));
}

function card() {
  const dialog = $("#card"), slider = $("#card-width");
  const draw = () => { $(".card", dialog).style.width = `${slider.value}px`; };
  document.addEventListener("click", event => { if (!event.target.closest?.("#calibrate")) return; slider.value = CARD * scale; draw(); dialog.showModal(); });
  slider.addEventListener("input", draw);
  dialog.addEventListener("close", () => {
    if (dialog.returnValue !== "fits") return;
    try { localStorage.setItem(key(), slider.value / CARD); } catch { /* then for this page alone */ }
    measured = true;
    scale = slider.value / CARD;
    words();
    zoom("real");
  });
}

export function shown() { known(); words(); if (svg()) sized(width || whole()); }

export function start() {
  if (!form()) return;
  shown();
  card();
  document.addEventListener("click", event => { const by = event.target.closest?.("[data-zoom]"); if (by) zoom(by.dataset.zoom); });
  const box = $("#strip-box");
  for (const radio of $$("[name=size-of-strip]")) radio.addEventListener("change", () => box.classList.toggle("fit", radio.value === "fit"));
  for (const radio of $$("[name=which-strip]")) radio.addEventListener("change", () => { const link = $("#strip-pdf"); link.href = link.dataset[radio.value] ?? link.href; });
  document.addEventListener("answered", shown);
  addEventListener("resize", () => { known(); words(); });
}
