// The slip as a kit file, made in the page: for when the desk is closed before the kit was kept.
import {$$} from "./page.js";

const NUMBER = /^[-+]?(\d+([.,]\d+)?|[.,]\d+)$/;

export const quoted = text => `"${[...text].map(c => {
  if (c === "\\" || c === '"') return `\\${c}`;
  return c < " " || c === "\u007f" ? `\\u${c.codePointAt(0).toString(16).padStart(4, "0")}` : c;
}).join("")}"`;

function value(text, write) {
  const trimmed = text.trim();
  if (write === "flag") return trimmed === "yes" ? "true" : trimmed === "no" ? "false" : quoted(trimmed);
  if (write === "texts") {
    const lines = trimmed.split(/\r?\n/).map(line => line.trim()).filter(Boolean);
    return lines.length === 1 && lines[0].toLowerCase() === "none" ? "[]" : `[${lines.map(quoted).join(", ")}]`;
  }
  if (write === "number" && NUMBER.test(trimmed)) {
    const number = trimmed.replace(",", ".").replace(/^([-+]?)\./, "$10.").replace(/^([-+]?)0+(?=\d)/, "$1");
    return number;
  }
  return quoted(trimmed);
}

// Every filled line of the file itself: what is of the stock file stands in a file of its own, which the kit does not hold.
function filled(form) {
  const ways = new Map($$("[name$='.how']", form).map(way => [way.name.slice(0, -4), way.value]));
  const found = new Map();
  for (const field of $$("[data-write]", form)) {
    if (field.name.startsWith("stock/") || (field.type === "radio" && !field.checked)) continue;
    if (field.type === "checkbox") { if (field.checked) found.set(field.name, [(found.get(field.name)?.[0] ?? "") + `\n${field.value}`, "texts"]); continue; }
    if (!field.value.trim() || /^sett\.readings\[\d+\]\.how$/.test(field.name)) continue;
    const over = /^(sett\.readings\[\d+\])\.over$/.exec(field.name);
    found.set(over ? `${over[1]}.${ways.get(over[1]) || "window"}` : field.name.replace(/^run\//, ""), [field.value, field.dataset.write]);
  }
  return found;
}

export function kitFile(form) {
  const tree = new Map();
  for (const [name, [text, write]] of filled(form)) {
    const path = name.split(".").map(key => /^([^[]+)(?:\[(\d+)\])?$/.exec(key));
    let at = tree;
    for (const [, key, row] of path.slice(0, -1)) {
      if (!at.has(key)) at.set(key, new Map());
      at = at.get(key);
      if (row) { if (!at.has(`[${row}]`)) at.set(`[${row}]`, new Map()); at = at.get(`[${row}]`); }
    }
    at.set(path.at(-1)[1], value(text, write));
  }
  return `version = 1\n${table(tree, "").join("\n")}\n`;
}

const isList = map => [...map.keys()].every(key => /^\[\d+\]$/.test(key));

function table(map, prefix) {
  const own = [], inner = [];
  for (const [key, held] of map) {
    if (!(held instanceof Map)) own.push(`${key} = ${held}`);
    else if (isList(held)) for (const row of held.values()) inner.push("", `[[${prefix}${key}]]`, ...table(row, `${prefix}${key}.`));
    else inner.push("", `[${prefix}${key}]`, ...table(held, `${prefix}${key}.`));
  }
  return [...own, ...inner];
}
