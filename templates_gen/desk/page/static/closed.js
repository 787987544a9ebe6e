// The desk is gone: what was typed is still in this page, and can be saved from it.
import {form, $} from "./page.js";
import {kitFile} from "./toml.js";

export function closed(gone = true) {
  const note = $("#closed");
  if (note) note.hidden = !gone;
}

export function start() {
  $("#save-here")?.addEventListener("click", () => {
    const file = new Blob([kitFile(form())], {type: "application/toml"});
    const link = document.createElement("a");
    link.href = URL.createObjectURL(file);
    link.download = form().dataset.file;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10000);
  });
}
