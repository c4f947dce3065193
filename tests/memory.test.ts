// Across: the built library, in a process of its own
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
/** By then the kernel has as many triangles of earlier sums as it keeps (`union/kernels/kept-sums.ts`). */
const FIRST = 150;

/** Rings from one look at the memory to the next, and looks of which the middle one counts: single ones scatter by 2 %. */
const EVERY = 10;
const LOOKS = 5;

/**
 * Without these the engine's own young generation grows by up to 30 MB when it likes, on a loaded machine another time than
 * on a quiet one, and hides what is asked here: what rings leave behind. What is not deleted grows beyond that all the same.
 */
const FLAGS = ["--expose-gc", "--max-semi-space-size=1"];

interface Outcome {
  readonly counts: Readonly<Record<string, number>>;
  readonly memory: readonly { readonly ring: number; readonly rss: number }[];
}

/** Twenty-five seconds of work; a machine with much else to do may take long over it, ms. */
const PATIENCE = 600_000;

describe.skipIf(!existsSync(LIBRARY))("300 rings in one process", () => {
  it(
    "hold at the last what they held half way, within a tenth, though some fail and some are stopped",
    async () => {
      const words = [...FLAGS, MANY_RINGS, `${RINGS}`, `${EVERY}`];
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
      expect(memory.map(({ ring }) => ring)).toEqual(Array.from({ length: RINGS / EVERY }, (_, i) => (i + 1) * EVERY));
      const around = memory.findIndex(({ ring }) => ring === FIRST) - (LOOKS - 1) / 2;
      const [first, last] = [memory.slice(around, around + LOOKS), memory.slice(-LOOKS)].map(middle);
      expect(Math.abs(last / first - 1), JSON.stringify(memory)).toBeLessThan(0.1);
    },
    PATIENCE,
  );
});

function middle(looks: Outcome["memory"]): number {
  return looks.map(({ rss }) => rss).sort((a, b) => a - b)[(looks.length - 1) / 2];
}
