// Across: every format, damaged
/** Files that are damaged anywhere are read or refused, never anything else. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../../../src/base/errors.js";
import { formats } from "../../../../src/output/files/catalogue.js";
import { encodeMesh } from "../../../../src/output/files/format.js";
import { readMesh } from "../../../../src/output/files/read-mesh.js";
import { box } from "../../../support/meshes.js";

describe.each(formats.map((format) => [format.name, format] as const))("%s", (_, format) => {
  it("is read or refused with bytes changed, cut out, or cut off", async () => {
    const whole = await encodeMesh(format, box(), { name: "box" });
    const name = `a${format.extensions[0]}`;
    const place = fc.integer({ min: 0, max: whole.length - 1 });
    const change = fc.record({ at: place, byte: fc.integer({ min: 0, max: 255 }) });
    const cut = fc.record({ at: place, length: fc.integer({ min: 0, max: 40 }), end: fc.boolean() });
    let refused = 0;
    await fc.assert(
      fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 8 }), fc.option(cut), async (changes, out) => {
        let bytes = whole.slice();
        for (const { at, byte } of changes) bytes[at] = byte;
        if (out !== null) {
          const rest = out.end ? [] : bytes.subarray(out.at + out.length);
          bytes = Uint8Array.from([...bytes.subarray(0, out.at), ...rest]);
        }
        try {
          const { positions, triangles } = await readMesh(bytes, name);
          expect(positions.every(Number.isFinite)).toBe(true);
          expect(triangles.every((vertex) => vertex < positions.length / 3)).toBe(true);
        } catch (error) {
          if (!(error instanceof AnnuletError)) throw error;
          expect(error.code).toBe("mesh-file-broken");
          expect(error.message.length).toBeLessThan(400);
          refused++;
        }
      }),
      { seed: 20261127, numRuns: 400 },
    );
    expect(refused).toBeGreaterThan(20);
  });
});
