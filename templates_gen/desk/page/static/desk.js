// Everything here is a comfort: without it the slip is a plain form, and the server draws the page anew.
import * as asking from "./asking.js";
import * as closed from "./closed.js";
import * as fields from "./fields.js";
import * as kits from "./kits.js";
import * as leaving from "./leaving.js";
import * as making from "./making.js";
import * as pile from "./pile.js";
import * as pointing from "./pointing.js";
import * as sizes from "./sizes.js";
import * as steps from "./steps.js";
import * as views from "./views.js";

for (const part of [steps, fields, asking, pointing, views, sizes, pile, making, leaving, closed, kits]) part.start();
document.documentElement.dataset.ready = "yes";
