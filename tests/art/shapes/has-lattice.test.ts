import { describe, expect, it } from "vitest";
import { hasLattice } from "../../../src/art/shapes/has-lattice.js";

const leaf = { path: "M 0 0 H 1 V 1 Z" };
const lattice = { lattice: { columns: 2, rows: 1 }, of: leaf } as never;

describe("a lattice in a shape", () => {
  it("is found at the top, within, and behind a name", () => {
    expect(hasLattice(lattice)).toBe(true);
    expect(hasLattice({ union: [leaf, lattice] } as never)).toBe(true);
    expect(hasLattice({ shape: "net" }, { net: lattice })).toBe(true);
  });

  it("is not where none is, nor behind a name that is not there or leads back", () => {
    expect(hasLattice(leaf as never)).toBe(false);
    expect(hasLattice({ shape: "net" })).toBe(false);
    expect(hasLattice({ shape: "a" }, { a: { shape: "b" }, b: { shape: "a" } })).toBe(false);
  });
});
