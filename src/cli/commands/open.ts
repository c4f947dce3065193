/**
 * annulet open: a design on the workbench, in the browser.
 */
import { AnnuletError } from "../../index.js";
import type { Command } from "../command.js";
import { STDIN } from "../files.js";
import { openWorkbench } from "../open/open-workbench.js";
import { usage } from "../usage.js";
import { readWorkbenchPage } from "../workbench-page.js";

interface OpenOptions {
  /** False with --no-browser. */
  readonly browser?: boolean;
}

export const openCommand: Command<OpenOptions> = {
  name: "open",
  details: [
    "The page is served on this machine alone, under an address that is new each time; nothing is sent anywhere.",
    "Saving writes the design's own file, unless it has changed on disk: then the page asks. Ctrl-C ends it.",
  ],
  examples: [
    { line: "annulet open ring.json", does: "shape the ring, see it at once, save it" },
    { line: "annulet open", does: "begin a new one" },
  ],
  args: [{ name: "[design]", description: "design document, JSON" }],
  options: [{ flags: "--no-browser", description: "print the address and open no browser" }],
  async run({ args: [path], options }, io) {
    if (path === STDIN) throw new AnnuletError(usage("Standard input cannot be saved to: name a file."));
    return openWorkbench(readWorkbenchPage(), { path, browser: options.browser !== false }, io);
  },
};
