// Covers: src/output/page/ring-facts.ts
import { build } from "annulet";
import { gunzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { lookOf } from "../../../src/entries/view.js";
import { packMesh } from "../../../src/output/files/packed/pack-mesh.js";
import { unpackMesh } from "../../../src/output/files/packed/unpack-mesh.js";
import { type RingFacts, ringFacts } from "../../../src/output/page/ring-facts.js";
import { ringPage } from "../../../src/output/page/ring-page.js";

const EMPTY = `<title>ring</title>
<script type="application/json" id="ring-facts"></script>
<script type="text/plain" id="ring-mesh"></script>`;

/** A name that would end elements, begin scripts, and be taken for a pattern of what is put in. */
const HOSTILE = `</script></title><script>alert(1)</script><!-- " & $& $\` $1`;

async function hostileRing() {
  const { mesh, report } = await build({
    annulet: 1,
    name: HOSTILE,
    size: { system: "uk", value: "N" },
    profile: { width: 4, thickness: 1.6, outside: { form: "flat" } },
    tolerance: 0.05,
    material: "au750-red",
  });
  const { grid, bytes } = packMesh(mesh, 0.05);
  return {
    mesh,
    report,
    facts: ringFacts(report, { material: "au750-red", grid, stones: { bodies: [], stones: [] } }),
    bytes,
  };
}

/** What stands in an element of the page. */
const within = (page: string, id: string) => new RegExp(`id="${id}">([^<]*)</script>`).exec(page)?.[1] ?? "";

describe("a page of one ring", () => {
  test("holds the ring's very triangles within half a micrometre, and what is told of it", async () => {
    const { mesh, report, facts, bytes } = await hostileRing();
    const page = ringPage(EMPTY, facts, bytes);
    const told = JSON.parse(within(page, "ring-facts")) as RingFacts;
    expect(told).toEqual(facts);
    const held = unpackMesh(told.grid, gunzipSync(Buffer.from(within(page, "ring-mesh"), "base64")));
    expect(held.triangles.length).toBe(mesh.triangles.length);
    const sum = (positions: Float64Array) => positions.reduce((total, value) => total + value, 0);
    expect(Math.abs(sum(held.positions) - sum(mesh.positions))).toBeLessThan(0.0005 * mesh.positions.length);
    expect(told.sizes).toMatchObject({ diameter: report.size.diameter, width: 4, thickness: 1.6 });
    expect(told.size).toEqual({ system: "uk", label: "N" });
    const red = told.metals.find(({ symbol }) => symbol === "au750-red");
    expect(red?.colour).toEqual(lookOf("au750-red").colour);
    const { finished } = report.weights.rows.find(({ symbol }) => symbol === "au750-red") ?? { finished: 0 };
    expect(red?.grams[0]).toBeLessThanOrEqual(finished);
    expect(red?.grams[1]).toBeGreaterThanOrEqual(finished);
  });

  test("runs nothing that stands in a name, and shows the name as it is", async () => {
    const { facts, bytes } = await hostileRing();
    const page = ringPage(EMPTY, facts, bytes);
    expect(page.match(/<script/g)).toHaveLength(2);
    expect(page.match(/<\/script>/g)).toHaveLength(2);
    expect(page).toContain("<title>&lt;/script&gt;&lt;/title&gt;&lt;script&gt;alert(1)");
    expect((JSON.parse(within(page, "ring-facts")) as RingFacts).name).toBe(facts.name);
    expect(facts.name).toContain("</script>");
  });

  test("is refused by a page of another version", async () => {
    const { facts, bytes } = await hostileRing();
    expect(() => ringPage("<title>other</title>", facts, bytes)).toThrow(RangeError);
  });
});
