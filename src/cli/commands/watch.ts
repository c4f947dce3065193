/**
 * annulet watch: a design made, pictured and checked again each time it is saved.
 */
import { AnnuletError, formatForFile, formats, type Problem } from "../../index.js";
import type { Command } from "../command.js";
import { DESIGN_OPTIONS, type DesignOptions } from "../design-options.js";
import { STDIN } from "../files.js";
import { LIMIT_OPTIONS, type LimitOptions, limitsOf } from "../limit-options.js";
import { usage } from "../usage.js";
import { isPicture, watchDesign } from "../watch-design.js";

interface WatchOptions extends LimitOptions, DesignOptions {
  readonly output?: readonly string[];
  readonly draft?: boolean;
}

const ENDINGS = [".png", ...formats.flatMap(({ extensions }) => extensions)];

export const watchCommand: Command<WatchOptions> = {
  name: "watch",
  details: [
    "The files that the design names are watched too. What did not change is not worked out again. Ctrl-C ends it.",
  ],
  examples: [
    { line: "annulet watch ring.json -o ring.png", does: "a picture beside your editor" },
    { line: "annulet watch ring.json -o ring.png -o ring.stl", does: "and the mesh with it" },
  ],
  args: [{ name: "<design>", description: "design document, JSON" }],
  options: [
    {
      flags: "-o, --output <file>",
      description: `picture or mesh to write: ${[...new Set(ENDINGS)].join(", ")}; may be given several times`,
      repeated: true,
    },
    ...DESIGN_OPTIONS,
    ...LIMIT_OPTIONS,
    { flags: "--draft", description: "coarser meshes and pictures of the same ring, in a fraction of the time" },
  ],
  async run({ args: [path], options }, io) {
    const { output = [], draft = false } = options;
    checkUsage(path, output);
    return watchDesign({ path, outputs: output, draft, changes: options, limits: limitsOf(options) }, io);
  },
};

/** Everything that is wrong is said at once. */
function checkUsage(path: string, outputs: readonly string[]): void {
  const problems: Problem[] = [];
  if (path === STDIN) problems.push(usage("Standard input cannot be watched: name a file."));
  for (const output of outputs) {
    try {
      if (!isPicture(output)) formatForFile(output);
    } catch (error) {
      if (!(error instanceof AnnuletError)) throw error;
      problems.push(...error.problems);
    }
  }
  if (problems.length > 0) throw new AnnuletError(problems);
}
