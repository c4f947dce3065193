// Across: braids of the catalogue, woven
import { describe, expect, it } from "vitest";
import { friezeGroups } from "../../../src/base/frieze/symmetry.js";
import { AnnuletError, flatTile, listMotifs } from "../../../src/index.js";

const braid = (strands: number, symmetry: string) => ({
  annulet: 1,
  size: { diameter: 17 },
  tolerance: 0.06,
  profile: { width: 6, thickness: 2, outside: { form: "flat", edge: 0 } },
  pattern: {
    fit: { repeats: 8, hold: "band", aspect: 0.7 },
    symmetry,
    regions: [
      {
        motif: { name: "braid", strands },
        ribbon: { width: 0.7, join: "round", weave: { lift: 0.25 } },
        height: 0.4,
      },
    ],
  },
});

const problemOf = async (document: object) => {
  try {
    await flatTile(document);
    return undefined;
  } catch (error) {
    if (error instanceof AnnuletError) return error;
    throw error;
  }
};

describe("a braid of the catalogue", () => {
  const cases = [2, 3].flatMap((strands) =>
    friezeGroups.map(({ name, operations }) => ({ strands, name, operations })),
  );
  it.each(cases)("of $strands strands under $name: is woven, or advised to what weaves", async (asked) => {
    const { strands, name, operations } = asked;
    const error = await problemOf(braid(strands, name));
    // A mirror across the band brings a region between the strands on to itself, and so turns the order over.
    if (operations.some(({ flipX, flipY }) => flipX && !flipY)) expect(error).toBeDefined();
    if (error === undefined) return;
    expect(error).toMatchObject({ code: "weave-mirror", value: name });
    const advised = [...(error.allowed ?? "").matchAll(/"(\w+)"/g)].map(([, group]) => group);
    expect(advised.length).toBeGreaterThan(0);
    expect(error.hint).toContain(`"symmetry": "${advised[advised.length - 1]}"`);
    for (const group of advised) expect(await problemOf(braid(strands, group))).toBeUndefined();
  });

  it("weaves under the groups that the catalogue tells", async () => {
    const [{ woven = "" }] = listMotifs().filter(({ name }) => name === "braid");
    const told = [...woven.matchAll(/(p\w+) with (two|three) strands?|(p\w+) with three/g)];
    expect(told.map(([, group, , other]) => group ?? other)).toEqual(["p2", "p11g"]);
    expect(await problemOf(braid(2, "p2"))).toBeUndefined();
    expect(await problemOf(braid(3, "p11g"))).toBeUndefined();
  });
});
