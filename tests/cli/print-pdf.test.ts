import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import { findChromium, printPdf } from "../../src/cli/print-pdf.js";
import { namesIn, tempFolder } from "./support.js";

const PAGE = "<!doctype html><style></style><title>page</title><p>page";

/** Lets the running test have its temporary files in a folder of its own. */
function useTemporaryFolder(path: string): void {
  const before = process.env.TMPDIR;
  process.env.TMPDIR = path;
  onTestFinished(() => {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
  });
}

/** Whether a process runs whose command line has this text in it. */
function isRunning(text: string): boolean {
  return readdirSync("/proc").some((pid) => {
    try {
      return /^\d+$/.test(pid) && readFileSync(`/proc/${pid}/cmdline`).includes(text);
    } catch {
      return false;
    }
  });
}

describe.skipIf(findChromium() === undefined || !existsSync("/proc/self/cmdline"))("printing a page", () => {
  it("is interrupted at once, and neither the browser nor its folder stays", async () => {
    const folder = tempFolder();
    useTemporaryFolder(folder);
    const printed = printPdf(PAGE, "a4").catch((error) => error);
    const profile = () => namesIn(folder).some((name) => existsSync(join(folder, name, "profile")));
    for (let i = 0; i < 2000 && !profile(); i++) await new Promise((resolve) => setTimeout(resolve, 5));
    process.kill(process.pid, "SIGINT");
    expect(await printed).toMatchObject({ name: "Interrupted", exitCode: 130 });
    expect(namesIn(folder)).toEqual([]);
    expect(isRunning(folder)).toBe(false);
  });

  it("says that there is no folder for temporary files", async () => {
    useTemporaryFolder(join(tempFolder(), "none"));
    await expect(printPdf(PAGE, "a4")).rejects.toMatchObject({
      code: "pdf-not-printed",
      message: expect.stringMatching(/no folder for temporary files at \S+none: it is not there/),
      hint: expect.stringMatching(/TMPDIR/),
    });
  });
});
