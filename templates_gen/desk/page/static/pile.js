// The small pictures of the pile come when the slip rests, one after the other; an old one stays until the new one is there.
import {put, wait, $$} from "./page.js";

const REST = 1000;
let turn = 0;

export function stop() { turn++; }

export async function fill() {
  const mine = ++turn;
  for (const spot of $$(".pile img[data-of]")) {
    if (spot.dataset.shown === spot.dataset.of) continue;
    const picture = new Image();
    Object.assign(picture.dataset, spot.dataset, {shown: spot.dataset.of});
    picture.alt = "";
    picture.src = spot.dataset.of;
    try { await picture.decode(); } catch { continue; /* a sheet that cannot be drawn just now */ }
    if (mine !== turn) return;
    spot.replaceWith(picture);
  }
}

export function lay(html) {
  const old = new Map($$(".pile img[data-shown]").map(picture => [picture.dataset.file, picture]));
  if (put("pile", html))
    for (const spot of $$(".pile img[data-file]")) {
      const was = old.get(spot.dataset.file);
      if (!was) continue;
      was.dataset.of = spot.dataset.of;
      spot.replaceWith(was);
    }
  fill();
}

export async function start() {
  const mine = turn;
  await wait(REST);
  if (mine === turn) fill();
}
