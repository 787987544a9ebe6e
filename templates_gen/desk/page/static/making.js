// Making the files: begun, asked how far it is, stopped; what the step shows comes from the server each time.
import * as asking from "./asking.js";
import {closed} from "./closed.js";
import * as fields from "./fields.js";
import {form, put, speak, wait, $} from "./page.js";

const EVERY = 300;
const PARTS = new Set(["make", "strips", "stop"]);

async function ask(address, body) {
  try {
    const answer = await fetch(address, {method: body ? "POST" : "GET", body, headers: {accept: "application/json"}});
    return await answer.json();
  } catch {
    closed();
    return null;
  }
}

function take(said) {
  if (!said) return false;
  if (said.away !== undefined) put("away", said.away);
  if (said.refused ?? said.say) fields.refused(said.refused ?? said.say);
  return Boolean(said.running);
}

async function follow() {
  for (;;) {
    const job = $("[data-job]")?.dataset.job;
    if (!job) return;
    await wait(EVERY);
    const said = await ask(`${form().dataset.make}/${job}?k=${encodeURIComponent(form().elements.k.value)}`);
    if (!take(said)) {
      if (said) speak(said.said ?? "");
      return;
    }
  }
}

export function start() {
  if (!form()) return;
  form().addEventListener("submit", async event => {
    const button = event.submitter;
    if (button?.name !== "do" || !PARTS.has(button.value)) return;
    event.preventDefault();
    fields.release();
    const body = new URLSearchParams(new FormData(form(), button));
    const job = button.value === "stop" ? `/${button.dataset.job}/stop` : "";
    asking.stop();
    const said = await ask(form().dataset.make + job, body);
    const running = take(said);
    const asked = $(".asked");
    asked?.focus({preventScroll: true});
    asked?.scrollIntoView({block: "start"});
    if (said?.wrong) document.dispatchEvent(new Event("first-wrong"));
    if (running) await follow();
  });
  if ($("[data-job]")) follow();
}
