/**
 * Lets the longest test files begin first, so that no core waits at the end for the last of them.
 */
import { BaseSequencer } from "vitest/node";

/** Files and folders of over 20 s, the longest first: measured in whole runs on two cores. Everything else comes as it did. */
const LONGEST = [
  "examples.test.ts",
  "workbench/browser/",
  "memory.test.ts",
  "ring/walks.test.ts",
  "package/",
  "output/picture/picture.test.ts",
  "outside/real-art.test.ts",
  "workbench/files/downloads.test.ts",
  "art/motifs/catalogue.test.ts",
  "ring/check-design.test.ts",
  "browser.test.ts",
  "properties/",
  "readme.test.ts",
  "output/sheet/sheet.test.ts",
  "ring/",
  "cli/",
];

export class LongestFirst extends BaseSequencer {
  async sort(files) {
    const rank = ({ moduleId }) => {
      const at = LONGEST.findIndex((path) => moduleId.includes(`/tests/${path}`));
      return at === -1 ? LONGEST.length : at;
    };
    return (await super.sort(files)).sort((a, b) => rank(a) - rank(b));
  }
}
