import { existsSync, readFileSync, statSync } from "node:fs";
import { dirname } from "node:path";
import { expect, it, onTestFinished } from "vitest";
import { writeLeadingPage } from "../../../src/cli/open/leading-page.js";

it("leads to the address, is its owner's alone, and goes without a trace", () => {
  const address = "http://127.0.0.1:40123/a-token_of-base64url/";
  const { path, remove } = writeLeadingPage(address);
  onTestFinished(remove);
  const text = readFileSync(path, "utf8");
  expect(text).toContain(`content="0; url=${address}"`);
  expect(text).toContain('content="no-referrer"');
  expect(path).not.toContain("a-token");
  if (process.platform !== "win32") {
    expect(statSync(path).mode & 0o777).toBe(0o600);
    expect(statSync(dirname(path)).mode & 0o777).toBe(0o700);
  }
  remove();
  remove();
  expect(existsSync(dirname(path))).toBe(false);
});

it("is another file each time", () => {
  const [one, other] = [writeLeadingPage("http://127.0.0.1:1/a/"), writeLeadingPage("http://127.0.0.1:1/a/")];
  onTestFinished(one.remove);
  onTestFinished(other.remove);
  expect(one.path).not.toBe(other.path);
});
