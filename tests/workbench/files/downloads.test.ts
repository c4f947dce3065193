import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expose } from "comlink";
import { describe, expect, it, onTestFinished } from "vitest";
import { DEFAULT_FONT } from "../../../src/design/art/text-fields.js";
import { fileSource } from "../../../src/disk/file-source.js";
import { serveRings } from "../../../src/entries/worker.js";
import { startHost } from "../../../src/workbench/engine/ring-host.js";
import { ringLibrary } from "../../../src/workbench/engine/ring-library.js";
import type { Ports } from "../../../src/workbench/engine/worker.js";
import { DOWNLOADS, fileStem, makeDownload } from "../../../src/workbench/files/downloads.js";
import { annulet, put, tempFolder } from "../../cli/support.js";

/** A worker that lives in this thread. */
class NearWorker extends EventTarget {
  postMessage({ rings, library }: Ports): void {
    serveRings(rings);
    expose(ringLibrary, library);
  }
  terminate(): void {}
}

const SQUARE = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path d="M1 1h8v5h-8z"/></svg>';

/** Small, with a drawing, lettering and casting allowances, so that master and finished piece differ. */
const DESIGN = {
  annulet: 1,
  name: "Bench ring",
  size: { system: "iso", value: 54 },
  tolerance: 0.1,
  profile: { width: 5, thickness: 1.8, bore: { form: "flat" }, outside: { form: "flat" } },
  pattern: { regions: [{ svg: "square.svg", height: 0.3 }] },
  casting: { shrinkage: 1.5 },
  lettering: [{ text: "925", at: "bore", height: 1.2 }],
  stones: [{ name: "one, alone", size: 1, place: { form: "single" }, setting: { form: "flush" } }],
};

describe("downloads", () => {
  it("are what the command line writes, byte for byte", async () => {
    const folder = tempFolder();
    const path = put(folder, "ring.json", DESIGN);
    put(folder, "square.svg", SQUARE);
    const out = (ending: string) => join(folder, `out.${ending}`);
    const meshes = ["stl", "obj", "3mf", "glb"];
    const lines = [
      ["make", path, ...meshes.flatMap((ending) => ["-o", out(ending)])],
      ["sheet", path, "-o", out("html")],
      ["picture", path, "-o", out("png")],
      ["tile", path, "-o", out("svg")],
      ["stones", path, "-o", out("csv")],
    ];
    for (const line of lines)
      expect(await annulet(line)).toMatchObject({ code: 0, err: expect.not.stringContaining("error:") });

    const host = startHost(
      () => new NearWorker() as unknown as Worker,
      () => undefined,
    );
    onTestFinished(() => host.end());
    const text = readFileSync(path, "utf8");
    const files = { "square.svg": SQUARE, [DEFAULT_FONT]: fileSource()(DEFAULT_FONT) };
    const source = { text, ring: host.rings.open(text, { files }), library: host.library };
    for (const kind of DOWNLOADS) {
      const own = await makeDownload(kind, source);
      const theirs = readFileSync(kind === "json" ? path : out(kind));
      expect({ kind, isSame: Buffer.compare(own, theirs) === 0 }).toEqual({ kind, isSame: true });
    }
  });

  it("are called like the design", () => {
    expect(fileStem("Saltmarsh  lattice, N½")).toBe("saltmarsh-lattice-n½");
    expect(fileStem("Größe 54")).toBe("größe-54");
    expect(fileStem("../../<script>")).toBe("script");
    for (const none of ["", "///", undefined, 3, {}]) expect(fileStem(none)).toBe("ring");
    expect(fileStem("a".repeat(500))).toHaveLength(60);
  });
});
