import { Readable } from "node:stream";
import { expect, it } from "vitest";
import type { Io, TextStream } from "../../src/cli/io.js";
import { plainText } from "../../src/cli/plain-text.js";
import { tint } from "../../src/cli/tint.js";

const stream = (isTTY?: boolean) => ({ isTTY, write: () => true }) as unknown as TextStream;

function ioOf(env: Io["env"]): Io {
  return { stdin: Readable.from([]), stdout: stream(true), stderr: stream(true), env };
}

it("colours text for somebody who watches (ECMA-48: 31 is red, 1 bold)", () => {
  expect(plainText(tint(ioOf({}), stream(true), "red", "no"))).toBe("\u001b[31mno\u001b[39m");
  expect(plainText(tint(ioOf({}), stream(true), "bold", "no"))).toBe("\u001b[1mno\u001b[22m");
});

it("leaves it plain for a file, and where NO_COLOR is set to anything (no-color.org); empty is not set", () => {
  expect(tint(ioOf({}), stream(false), "red", "no")).toBe("no");
  expect(tint(ioOf({}), stream(), "red", "no")).toBe("no");
  expect(tint(ioOf({ NO_COLOR: "0" }), stream(true), "red", "no")).toBe("no");
  expect(tint(ioOf({ NO_COLOR: "" }), stream(true), "red", "no")).not.toBe("no");
});
