import { expect, it } from "vitest";
import { NO_FILES, withFile } from "../../../src/workbench/state/design-files.js";

const bytes = (...values: number[]) => Uint8Array.from(values);

it("keeps files by name, and finds another name where a different one has it", () => {
  const first = withFile(NO_FILES, "leaf.svg", bytes(1));
  expect(withFile(first.files, "leaf.svg", bytes(1))).toEqual({ files: first.files, name: "leaf.svg" });
  const second = withFile(first.files, "leaf.svg", bytes(2));
  expect(second.name).toBe("leaf-2.svg");
  const third = withFile(second.files, "leaf.svg", bytes(3));
  expect(third.name).toBe("leaf-3.svg");
  expect(withFile(third.files, "leaf.svg", bytes(2)).name).toBe("leaf-2.svg");
  expect([...third.files.keys()]).toEqual(["leaf.svg", "leaf-2.svg", "leaf-3.svg"]);
  expect(first.files.size).toBe(1);
});

it("takes no folder, sign or spelling along that could lead elsewhere", () => {
  const nameOf = (wanted: string) => withFile(NO_FILES, wanted, bytes(1)).name;
  expect(nameOf("../../etc/leaf.svg")).toBe("leaf.svg");
  expect(nameOf("C:\\art\\leaf.svg")).toBe("leaf.svg");
  expect(nameOf("<img src=x onerror=alert(1)>.svg")).toBe("img src=x onerror=alert(1).svg");
  expect(nameOf("a\u0000\nb.svg")).toBe("ab.svg");
  expect(nameOf("__proto__")).toBe("__proto__");
  expect(nameOf("..")).toBe("file");
  expect(nameOf("u\u0308.svg")).toBe("\u00fc.svg");
});
