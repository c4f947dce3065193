import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openerOf, showInBrowser } from "../../../src/cli/open/show-in-browser.js";
import { tempFolder } from "../support.js";

describe("showing an address", () => {
  it("needs a desktop", () => {
    expect(openerOf("linux", {})).toBeUndefined();
    expect(openerOf("linux", { DISPLAY: "" })).toBeUndefined();
    expect(openerOf("linux", { WAYLAND_DISPLAY: "wayland-0" })).toEqual(["xdg-open"]);
    expect(openerOf("darwin", {})?.[0]).toBe("open");
    expect(openerOf("win32", {})?.[0]).toBe("cmd");
  });

  it("hands the address to a program, and tells where there is none", async () => {
    const heard = join(tempFolder(), "heard");
    const write = `require("node:fs").writeFileSync(${JSON.stringify(heard)}, process.argv[1])`;
    expect(await showInBrowser("http://127.0.0.1:1/a/", [process.execPath, "-e", write])).toBe(true);
    await expect
      .poll(() => existsSync(heard) && readFileSync(heard, "utf8"), { timeout: 10_000 })
      .toBe("http://127.0.0.1:1/a/");
    expect(await showInBrowser("http://127.0.0.1:1/a/", ["no-such-program-here"])).toBe(false);
    expect(await showInBrowser("http://127.0.0.1:1/a/", undefined)).toBe(false);
  });
});
