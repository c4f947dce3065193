import { expect, it } from "vitest";
import { type Dropped, isDesignText, takeIn } from "../../../src/workbench/files/take-in.js";
import { NO_FILES } from "../../../src/workbench/state/design-files.js";

const file = (name: string, content: string, size = content.length): Dropped => ({
  name,
  size,
  arrayBuffer: () => new Blob([content]).arrayBuffer(),
});
const DESIGN = '{ "annulet": 1, "name": "a" }';

it("tells designs from art, and says what it does not take", async () => {
  const dropped = [
    file("leaf.svg", "<svg/>"),
    file("ring.JSON", DESIGN),
    file("second.json", DESIGN),
    file("leaf.svg", "<svg />"),
    file("list.json", "[1]"),
    file("package.json", '{ "name": "x" }'),
    file("half.json", '{ "annulet": 1, '),
    file("run.exe", "MZ"),
    file("huge.json", DESIGN, 50e6),
    file("huge.svg", "<svg/>", 5e6 + 1),
    { name: "gone.png", size: 1, arrayBuffer: () => Promise.reject(new Error("gone")) },
  ];
  const { design, files, art, refused } = await takeIn(dropped, NO_FILES);
  expect(design).toEqual({ text: DESIGN, fileName: "ring.JSON" });
  expect(art).toEqual(["leaf.svg", "leaf-2.svg"]);
  expect([...files.keys()]).toEqual(art);
  expect(refused.map(({ name, why }) => `${name} ${why}`)).toEqual([
    "list.json no-design",
    "package.json no-design",
    "half.json no-design",
    "run.exe unknown-kind",
    "huge.json too-large",
    "huge.svg too-large",
    "gone.png unreadable",
  ]);
});

it("takes a design for one though its keys are strange, and nothing of 50 MB", () => {
  expect(isDesignText('{ "__proto__": { "annulet": 1 }, "constructor": 1 }')).toBe(false);
  expect(isDesignText('{ "__proto__": { "x": 1 }, "size": 1 }')).toBe(true);
  expect(isDesignText(`{ "annulet": 1, "name": "${"a".repeat(50e6)}" }`)).toBe(false);
});
