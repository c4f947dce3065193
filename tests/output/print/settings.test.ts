// Covers: src/design/print-settings.ts, src/design/print.ts
import { describe, expect, it } from "vitest";
import { PRINT_DEFAULTS } from "../../../src/design/print-settings.js";
import { readDesign } from "../../../src/design/read.js";
import { printSettings } from "../../../src/output/print/settings.js";
import { plainBand } from "../../design/documents.js";
import { failureOf } from "../../support/failure-of.js";

describe("print settings", () => {
  it("are those given, then those of the document, then the defaults", () => {
    expect(printSettings()).toEqual(PRINT_DEFAULTS);
    const base = printSettings({ stance: "tilted", tilt: 40, layer: 0.025 });
    expect(printSettings({ stance: undefined, support: 50 }, base)).toEqual({ ...base, support: 50 });
    expect(printSettings({ stance: "lying" }, base)).toEqual({ ...base, stance: "lying" });
  });

  it("say all that is wrong at once, with what is allowed", () => {
    const { problems } = failureOf(() => printSettings({ tilt: 91, layer: 0, support: Number.NaN }));
    expect(problems.map(({ path, allowed }) => [path, allowed])).toEqual([
      ["print.tilt", "0 to 90 degrees"],
      ["print.layer", "0.001 to 1 mm"],
      ["print.support", "0 to 89 degrees"],
    ]);
    expect(failureOf(() => printSettings({ tilt: 20 })).problems).toMatchObject([{ path: "print.tilt", value: 20 }]);
  });
});

describe("the document's print", () => {
  const read = (print: object) => readDesign({ ...plainBand, print }).print;

  it("fills in defaults", () => {
    expect(printSettings(read({}))).toEqual(PRINT_DEFAULTS);
    expect(printSettings(read({ stance: "tilted" }))).toEqual({ ...PRINT_DEFAULTS, stance: "tilted" });
    expect(readDesign(plainBand).print).toBeUndefined();
  });

  it.each([
    [{ stance: "sideways" }, "print.stance", "value-invalid"],
    [{ stance: "lying", tilt: 20 }, "print.tilt", "value-invalid"],
    [{ layer: 2 }, "print.layer", "value-invalid"],
    [{ layers: 0.05 }, "print.layers", "unknown-key"],
  ])("refuses %j", (print, path, code) => {
    expect(failureOf(() => read(print)).problems).toMatchObject([{ path, code }]);
  });
});
