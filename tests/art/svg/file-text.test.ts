// Covers: src/art/svg/gzip.ts
/** Bytes of files: packed, and in other encodings than UTF-8. */
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { fileText } from "../../../src/art/svg/file-text.js";
import { failureOf } from "../../flat/strips.js";

const FILE = '<?xml version="1.0"?><svg id="Blüte é"/>';
const declare = (encoding: string) => FILE.replace("?>", ` encoding="${encoding}"?>`);
const textOf = (bytes: Uint8Array) => fileText(bytes, "r.svg");
const bytes = (text: string, encoding: BufferEncoding = "utf8") => new Uint8Array(Buffer.from(text, encoding));
/** The two bytes of each unit the other way round. */
const swapped = (data: Uint8Array) => new Uint8Array(Buffer.from(data).swap16());

describe("the text of a file", () => {
  it.each<[string, Uint8Array, string?]>([
    ["UTF-8 without a word", bytes(FILE), FILE],
    ["UTF-8 with its mark", bytes(`\uFEFF${declare("UTF-8")}`), declare("UTF-8")],
    ["UTF-16 with its mark, low byte first", bytes(`\uFEFF${declare("UTF-16")}`, "utf16le"), declare("UTF-16")],
    ["UTF-16 with its mark, high byte first", swapped(bytes(`\uFEFF${FILE}`, "utf16le")), FILE],
    ["UTF-16 without a mark", bytes(declare("utf-16le"), "utf16le"), declare("utf-16le")],
    ["UTF-16 without a mark, high byte first", swapped(bytes(FILE, "utf16le")), FILE],
    ["Latin-1", bytes(declare("ISO-8859-1"), "latin1"), declare("ISO-8859-1")],
    ["Latin-1 in single quotes", bytes(`<?xml encoding='latin1'?>é`, "latin1"), `<?xml encoding='latin1'?>é`],
    ["windows-1252", bytes(declare("windows-1252"), "latin1"), declare("windows-1252")],
    ["what says UTF-16 and was converted since", bytes(declare("UTF-16")), declare("UTF-16")],
    ["packed", new Uint8Array(gzipSync(FILE)), FILE],
    ["packed, in Latin-1", new Uint8Array(gzipSync(bytes(declare("iso-8859-1"), "latin1"))), declare("iso-8859-1")],
  ])("%s", (_, data, text) => {
    expect(textOf(data)).toBe(text);
  });

  it("that is text already stays as it is", () => {
    expect(fileText(declare("UTF-16"), "r.svg")).toBe(declare("UTF-16"));
  });

  it.each<[string, Uint8Array, string, RegExp]>([
    ["bytes that are no UTF-8", bytes(FILE, "latin1"), "svg-encoding", /not text in UTF-8/],
    ["an encoding that is not read", bytes(declare("Shift_JIS")), "svg-encoding", /declared to be in shift_jis/],
    ["half a letter of UTF-16", bytes(`\uFEFF${FILE}`, "utf16le").subarray(0, -1), "svg-encoding", /UTF-16LE/],
  ])("is refused by name: %s", (_, data, code, message) => {
    const error = failureOf(() => textOf(data));
    expect(error).toMatchObject({ code, path: "r.svg" });
    expect(error.message).toMatch(message);
  });
});

describe("a packed file", () => {
  const packed = new Uint8Array(gzipSync(FILE));
  const changed = (at: number, by = 1) => packed.map((byte, i) => (i === at ? byte ^ by : byte));

  it("may carry a name, a comment, more and a check of its head", () => {
    const head = [0x1f, 0x8b, 8, 2 + 4 + 8 + 16, 0, 0, 0, 0, 0, 3, 2, 0, 9, 9, 97, 0, 98, 99, 0, 1, 2];
    expect(textOf(new Uint8Array([...head, ...packed.subarray(10)]))).toBe(FILE);
  });

  it.each<[string, Uint8Array]>([
    ["cut short", packed.subarray(0, -12)],
    ["two bytes of it", packed.subarray(0, 2)],
    ["a name without end", new Uint8Array([0x1f, 0x8b, 8, 8, 0, 0, 0, 0, 0, 3, 97, 98])],
    ["a changed check sum", changed(packed.length - 6)],
    ["a changed length", changed(packed.length - 2)],
    ["a changed letter", changed(20, 4)],
    ["two files", new Uint8Array([...packed, ...gzipSync("<svg/>")])],
  ])("is refused: %s", (_, data) => {
    expect(failureOf(() => textOf(data))).toMatchObject({ code: "svg-malformed", path: "r.svg" });
  });

  it("is not unpacked beyond what a file may hold", () => {
    // 12 MB of blanks in 12 kB.
    const bomb = new Uint8Array(gzipSync(Buffer.alloc(12e6, 32)));
    const error = failureOf(() => textOf(bomb));
    expect(error.code).toBe("svg-too-complex");
    expect(error.message).toMatch(/unpacks to more than 5000000/);
  });
});
