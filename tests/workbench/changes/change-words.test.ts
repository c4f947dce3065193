import { afterEach, describe, expect, it } from "vitest";
import { sayChange } from "../../../src/workbench/changes/change-words.js";
import { DesignDocument } from "../../../src/workbench/state/document.js";
import type { Path } from "../../../src/workbench/state/json-text.js";
import { language } from "../../../src/workbench/words/language.js";

afterEach(() => {
  language.value = "en";
});

const START =
  '{"size": {"system": "iso", "value": "54"}, "profile": {"width": 6, "outside": {"form": "flat"}}, "beads": [{}]}';

function saying(change: (document: DesignDocument) => void, unit?: string) {
  const document = new DesignDocument(START);
  change(document);
  const [before, last] = document.changes.value.slice(-2);
  return sayChange(last ?? before, last && before, () => unit);
}

const set = (path: Path, value: unknown) => (document: DesignDocument) => document.set(path, value);

describe("a change in words", () => {
  it("tells numbers from and to, with their unit", () => {
    expect(saying(set(["profile", "width"], 6.5), "mm")).toBe("band width 6 → 6.5 mm");
    expect(saying(set(["profile", "outside", "rail"], 0.8), "mm")).toBe("rail width – → 0.8 mm");
    language.value = "de";
    expect(saying(set(["profile", "width"], 6.5), "mm")).toBe("Ringbreite 6 → 6,5 mm");
  });

  it("tells forms, sizes and switches by their word", () => {
    expect(saying(set(["profile", "outside"], { form: "channel" }))).toBe("outside flat → channel");
    expect(saying(set(["size"], { system: "us", value: "7" }))).toBe("size iso 54 → us 7");
    expect(saying(set(["proud"], true))).toBe("relief above the rails – → yes");
  });

  it("tells what was added, taken away or is too long to tell", () => {
    expect(saying(set(["beads"], [{}, {}]))).toBe("beads changed");
    expect(saying(set(["lettering"], []))).toBe("lettering added");
    expect(saying(set(["profile", "width"], undefined))).toBe("band width taken away");
    expect(saying(set(["beads", 0, "pitch"], 1.1))).toBe("spacing over diameter (1) – → 1.1");
    expect(saying(set(["name"], "n".repeat(30)))).toBe("name added");
  });

  it("tells what was done to the whole", () => {
    expect(saying(() => undefined)).toBe("opened");
    expect(saying((document) => document.type("{}"))).toBe("typed");
    expect(saying((document) => document.replace("{}"))).toBe("another design");
  });
});
