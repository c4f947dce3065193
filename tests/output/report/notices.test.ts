import { describe, expect, it } from "vitest";
import { buildProfile } from "../../../src/band/profile/profile.js";
import { readDesign } from "../../../src/design/read.js";
import { noticesOf } from "../../../src/output/report/notices.js";
import type { UnionResult } from "../../../src/union/union.js";
import { box } from "../../support/meshes.js";

const narrow = {
  annulet: 1,
  size: { system: "iso", value: 54 },
  profile: { width: 3, thickness: 2, outside: { form: "flat" } },
};
const union: UnionResult = {
  mesh: box(),
  kernel: "manifold",
  road: "whole",
  roadReason: "",
  check: {},
  hollows: [],
  proof: undefined,
  turned: undefined,
};

function notices(document: object, by: UnionResult = union) {
  const design = readDesign(document);
  return noticesOf({
    size: { circumference: 54, diameter: 54 / Math.PI },
    profile: buildProfile(design.profile, 8.6, 0.01),
    union: by,
  });
}

const codes = (document: object, by?: UnionResult) => notices(document, by).map(({ code }) => code);

describe("what a maker is told of a ring", () => {
  it("is nothing of a plain narrow one", () => {
    expect(codes(narrow)).toEqual([]);
    expect(codes({ ...narrow, casting: {} })).toEqual([]);
  });

  it("is how wide the ring is where what is raised leans out beside the band", () => {
    // The box stands on the mid-plane: 1.6 mm on one side of it, where the band has 1.5.
    const [notice] = notices(narrow, { ...union, mesh: box([1, 1, 3], [0, 0, -1.4]) });
    expect(notice).toMatchObject({ code: "wider-than-band", value: 3, path: "profile.width" });
    expect(notice.message).toContain("by 0.1 mm");
    expect(notices(narrow, { ...union, mesh: box([1, 1, 3.02], [0, 0, -1.51]) })).toEqual([]);
  });

  it("is which kernel was replaced by which", () => {
    const [notice] = notices(narrow, { ...union, rejected: "bvh" });
    expect(notice).toMatchObject({ code: "kernel-replaced", value: "bvh" });
    expect(notice.message).toContain("the manifold kernel united the ring");
  });

  it("is that sealed hollows were filled, how many and how large", () => {
    const hollow = { volume: 0.002, place: [8, 0, 0] } as const;
    const [notice] = notices(narrow, { ...union, hollows: [hollow, hollow] });
    expect(notice).toMatchObject({
      code: "hollow-filled",
      value: { hollows: 2, places: [hollow.place, hollow.place] },
    });
    expect(notice.value).toHaveProperty("volume", 0.004);
  });

  it("is advice on the size of a wide one", () => {
    const wide = { ...narrow, profile: { ...narrow.profile, width: 8 } };
    expect(codes(wide)).toHaveLength(1);
  });
});
