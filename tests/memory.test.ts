/**
 * Memory that many rings leave behind, in a process of their own. Skipped where the library is not built: `npm run build`.
 */
import { execFile } from "node:child_process";
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { describe, expect, it } from "vitest";

const LIBRARY = fileURLToPath(new URL("../dist/index.js", import.meta.url));
const MANY_RINGS = fileURLToPath(new URL("support/many-rings.mjs", import.meta.url));

const RINGS = 300;
const FIRST = 50;

interface Outcome {
  readonly counts: Readonly<Record<string, number>>;
  readonly memory: readonly { readonly ring: number; readonly rss: number }[];
}

/** Twenty-five seconds of work; a machine with much else to do may take long over it, ms. */
const PATIENCE = 600_000;

describe.skipIf(!existsSync(LIBRARY))("300 rings in one process", () => {
  it(
    "hold at the last what they held at the 50th, within a tenth, though some fail and some are stopped",
    async () => {
      const words = ["--expose-gc", MANY_RINGS, `${RINGS}`, `${FIRST}`];
      const { stdout } = await promisify(execFile)(process.execPath, words);
      const { counts, memory }: Outcome = JSON.parse(stdout);
      expect(counts).toEqual({
        // Those of a kernel that fails are united by the other one.
        closed: RINGS + RINGS / 20,
        AbortError: RINGS / 5,
        "value-invalid": RINGS / 15,
        headroom: RINGS / 15,
        "font-file-missing": RINGS / 15,
      });
      const [first, last] = [memory[0], memory[memory.length - 1]];
      expect([first.ring, last.ring]).toEqual([FIRST, RINGS]);
      expect(Math.abs(last.rss / first.rss - 1), JSON.stringify(memory)).toBeLessThan(0.1);
    },
    PATIENCE,
  );
});
