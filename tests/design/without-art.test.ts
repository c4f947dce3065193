import { describe, expect, it } from "vitest";
import { readDesign } from "../../src/design/read.js";
import { withoutArt } from "../../src/design/without-art.js";
import { plainBand } from "./documents.js";

const region = { path: "M 0 0 L 0.5 0.4 L 0.5 0 Z", height: 0.4 };
const read = (pattern: object) =>
  readDesign({ ...plainBand, pattern }).pattern as NonNullable<ReturnType<typeof readDesign>["pattern"]>;

describe("a pattern without its art", () => {
  it("keeps tiles, symmetry, shapes and ends, and is the same whatever is drawn", () => {
    const more = { symmetry: "p2mm", cover: 120, shapes: { leaf: { path: "M 0 0 H 1 V 1 Z" } } };
    const ornament = (height: number) => ({ form: "ornament", regions: [{ ...region, height }] });
    const one = withoutArt(read({ ...more, regions: [region], ends: ornament(0.3) }));
    const other = withoutArt(read({ ...more, regions: [{ ...region, height: 0.2 }, region], ends: ornament(0.2) }));
    expect(one).toEqual(other);
    expect(one).toMatchObject({ symmetry: "p2mm", cover: 120, regions: [], ends: { form: "ornament", regions: [] } });
    expect(one.shapes).toHaveProperty("leaf");
  });

  it("keeps lanes and medallions, without theirs", () => {
    const bare = withoutArt(
      read({ lanes: [{ regions: [region], medallion: { tiles: 2, regions: [region] } }, { regions: [] }] }),
    );
    expect(bare.lanes).toHaveLength(2);
    expect(bare.lanes?.[0]).toMatchObject({ regions: [], medallion: { tiles: 2, regions: [] } });
  });
});
