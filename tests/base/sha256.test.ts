// Covers: src/base/version.ts
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { sha256 } from "../../src/base/sha256.js";
import { VERSION } from "../../src/base/version.js";

it("is that of the standard's examples (NIST, SHA-256 test vectors, one and two blocks)", () => {
  expect(sha256("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  expect(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq")).toBe(
    "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
  );
});

it("is what Node computes, for every length about a block's end and for letters beyond ASCII", () => {
  const texts = [...Array.from({ length: 140 }, (_, n) => "x".repeat(n)), "Ærø – 銀 🜚", "y".repeat(70_000)];
  for (const text of texts) expect(sha256(text)).toBe(createHash("sha256").update(text).digest("hex"));
});

it("stands beside the package's version, told in one place", () => {
  const { version } = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8"));
  expect(VERSION).toBe(version);
});
