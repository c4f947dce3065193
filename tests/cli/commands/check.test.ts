import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { annulet, namesIn, PLAIN, put, tempFolder } from "../support.js";

const THIN = { ...PLAIN, profile: { ...PLAIN.profile, thickness: 0.45 } };

describe("annulet check", () => {
  it("prints every rule and ends with 0 where all limits are kept", async () => {
    const round = { ...PLAIN.profile, bore: { form: "flat", edge: 0.2 }, outside: { form: "flat", edge: 0.2 } };
    const path = put(tempFolder(), "ring.json", { ...PLAIN, profile: round });
    const { code, out } = await annulet(["check", path]);
    expect(code).toBe(0);
    expect(out).toMatch(/shank +1\.(59\d|600) +0\.500 +kept/);
    expect(out).toContain("Every limit is kept.");
    expect(out).toContain("morrisandwatson.com");
    expect(out).toContain("  corner: the feet of relief, letters and beads\n");
  });

  it("ends with 1 where a finding is an error, with its place", async () => {
    const { code, out } = await annulet(["check", "-"], { stdin: JSON.stringify(THIN) });
    expect(code).toBe(1);
    expect(out).toMatch(/error: the metal over the bore is down to 0\.45 mm; the rule asks for at least 0\.5 mm/);
    expect(out).toMatch(/at \d+\.\d°, v -?\d\.\d\d/);
  });

  it("ends with 0 where findings are warnings and notes, which it tells", async () => {
    const limits = { shank: { limit: 3, severity: "warning" }, wall: { limit: 3, severity: "note" } };
    const { code, out } = await annulet(["check", "-"], { stdin: JSON.stringify({ ...PLAIN, rules: { limits } }) });
    expect(out).toMatch(/warning: the metal over the bore/);
    expect(out).toContain("not kept, errors among them: 0.");
    expect(code).toBe(0);
  });

  it("takes another set of rules", async () => {
    const { code, out } = await annulet(["check", "-", "--rules", "conservative"], { stdin: JSON.stringify(PLAIN) });
    expect(code).toBe(0);
    expect(out).toContain("Rules: conservative");
    const { code: fine } = await annulet(["check", "-", "--rules", "fine-resin-print"], {
      stdin: JSON.stringify(THIN),
    });
    expect(fine).toBe(0);
  });

  it("prints JSON and draws the findings", async () => {
    const folder = tempFolder();
    const path = put(folder, "ring.json", THIN);
    const drawing = join(folder, "findings.svg");
    const { code, out, err } = await annulet(["check", path, "--json", "-o", drawing]);
    expect(code).toBe(1);
    const json = JSON.parse(out);
    expect(json.findings[0]).toMatchObject({ rule: "shank", severity: "error", limit: 0.5 });
    expect(json.results.map(({ rule }: { rule: string }) => rule)).toContain("groove-depth");
    expect(readFileSync(drawing, "utf8")).toContain("<svg");
    expect(err).toContain("written: ");
  });

  it("refuses what it cannot do before any work", async () => {
    const folder = tempFolder();
    const path = put(folder, "ring.json", PLAIN);
    const { code, err } = await annulet(["check", path, "-o", join(folder, "findings.png")]);
    expect(code).toBe(2);
    expect(err).toContain("ends in .svg");
    expect(namesIn(folder)).toEqual(["ring.json"]);
    expect((await annulet(["check", path, "--rules", "sloppy"])).code).toBe(2);
  });
});
