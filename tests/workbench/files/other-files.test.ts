import { gzipSync } from "node:zlib";
import { expect, it } from "vitest";
import { DEFAULT_FONT as OWN } from "../../../src/design/art/text-fields.js";
import { DEFAULT_FONT, OtherFiles } from "../../../src/workbench/files/other-files.js";

it("finds the default font in the page, all others on the disk, and asks for each once until it may have changed", async () => {
  expect(DEFAULT_FONT).toBe(OWN);
  const asked: string[] = [];
  const file = async (name: string) => {
    asked.push(name);
    return name === "leaf.svg" ? Uint8Array.of(1) : undefined;
  };
  const others = new OtherFiles(gzipSync(Uint8Array.of(7, 8)).toString("base64"), { file });
  expect(await others.find(DEFAULT_FONT)).toEqual(Uint8Array.of(7, 8));
  expect(await others.find("leaf.svg")).toEqual(Uint8Array.of(1));
  expect(await others.find("leaf.svg")).toEqual(Uint8Array.of(1));
  expect(await others.find("none.svg")).toBeUndefined();
  expect(asked).toEqual(["leaf.svg", "none.svg"]);
  others.forget();
  await others.find("leaf.svg");
  expect(asked).toHaveLength(3);
  expect(await new OtherFiles("").find("leaf.svg")).toBeUndefined();
});
