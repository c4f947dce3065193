// Covers: src/cli/commands/open.ts, src/cli/workbench-page.ts
import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { openWorkbench } from "../../../src/cli/open/open-workbench.js";
import { readWorkbenchPage } from "../../../src/cli/workbench-page.js";
import { annulet, listen, PLAIN, put, tempFolder } from "../support.js";

const HTML = `<html><head><meta http-equiv="Content-Security-Policy" content="default-src 'none'"></head></html>`;

describe("annulet open", () => {
  it("prints where the page is, and serves it until it is ended", async () => {
    const { io, heard } = listen();
    const stopper = new AbortController();
    const path = put(tempFolder(), "ring.json", PLAIN);
    const ended = openWorkbench(HTML, { path, browser: true }, io, stopper.signal).catch((reason) => reason);
    await expect.poll(() => heard.err).toBe("open this address in a browser; Ctrl-C ends it\n");
    const address = heard.out.trimEnd();
    expect(await (await fetch(address)).text()).toContain('content="ring.json"');
    stopper.abort("told to");
    expect(await ended).toBe("told to");
    await expect(fetch(address)).rejects.toThrow();
  });

  it("says what is wrong with a file before it serves anything", async () => {
    const { io } = listen();
    const open = (path: string) => openWorkbench(HTML, { path, browser: false }, io);
    const folder = tempFolder();
    await expect(open(`${folder}/none.json`)).rejects.toMatchObject({ code: "file-missing" });
    await expect(open(folder)).rejects.toMatchObject({ code: "file-is-folder" });
    await expect(open(put(folder, "ring.svg", "<svg/>"))).rejects.toMatchObject({ code: "not-a-design" });
    const { code, err } = await annulet(["open", "-"]);
    expect({ code, err }).toEqual({ code: 2, err: expect.stringContaining("Standard input cannot be saved to") });
  });

  it("finds its page beside the program, or says how it is made", () => {
    const there = existsSync(new URL("../../../dist/workbench/workbench.html", import.meta.url));
    if (there) expect(readWorkbenchPage()).toMatch(/^<!doctype html>/i);
    else expect(readWorkbenchPage).toThrow(/does not lie beside/);
  });
});
