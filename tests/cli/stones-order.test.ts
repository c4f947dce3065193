// Covers: src/cli/stones/order-for.ts
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { flatBand } from "../support/place-stones.js";
import { annulet, tempFolder } from "./support.js";

const stones = [{ name: "row", size: 1.5, place: { form: "row" }, setting: { form: "flush" } }];

function written(document: object): string {
  const path = join(tempFolder(), "ring.json");
  writeFileSync(path, JSON.stringify(document));
  return path;
}

describe("annulet stones with a design", () => {
  it("prints the numbers that rows could have, and what to order", async () => {
    const { code, out } = await annulet(["stones", written({ ...flatBand, stones }), "--spares", "10"]);
    expect(code).toBe(0);
    expect(out).toMatch(/^row +40 +0\.165\n +\* +41 +0\.124\n +42 +0\.085$/m);
    expect(out).toMatch(/^ *1 +Round brilliant +Diamond +1\.50 +41 +\d\.\d+ +5 +46$/m);
    expect(out).toContain("keep to the rules where you work");
  });

  it("writes the order as CSV", async () => {
    const path = written({ ...flatBand, stones });
    const csv = join(path, "..", "order.csv");
    expect((await annulet(["stones", path, "-o", csv])).code).toBe(0);
    expect(readFileSync(csv, "utf8")).toMatch(/^no,cut,gem,.*\r\n1,round,diamond,1\.50,1\.50,41,/);
  });

  it("refuses what belongs to a stone by itself, and other files", async () => {
    const path = written({ ...flatBand, stones });
    for (const more of [
      ["--size", "3"],
      ["-o", "x.stl"],
      ["--spares", "-1"],
    ]) {
      expect((await annulet(["stones", path, ...more])).code, more.join(" ")).not.toBe(0);
    }
    expect((await annulet(["stones", "--spares", "3"])).code).not.toBe(0);
    expect((await annulet(["stones", written(flatBand)])).out).toContain("The design has no stones.");
  });
});
