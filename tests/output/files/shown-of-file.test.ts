import { describe, expect, test } from "vitest";
import { glb } from "../../../src/output/files/formats/glb.js";
import { threemf } from "../../../src/output/files/formats/threemf.js";
import { shownOfFile } from "../../../src/output/files/shown-of-file.js";
import { shownStones } from "../../../src/output/stones/shown-stone.js";
import { fileOptionsOf } from "../../../src/ring/made-file.js";
import { openInside, openRing } from "../../../src/ring/open-ring.js";
import { FLAT_BAND } from "../../support/set-stones.js";

const DOCUMENT = {
  ...FLAT_BAND,
  stones: [
    {
      size: 1.5,
      gem: "sapphire",
      place: { form: "row", count: 3, over: { from: 70, to: 110 } },
      setting: { form: "flush" },
    },
  ],
};

describe("stones of files", () => {
  test("are shown with the facets and places that they have", async () => {
    const { stones } = await openRing(DOCUMENT).make({ detail: "draft", piece: "finished" });
    const shown = shownOfFile(stones);
    const wanted = shownStones((await openInside(DOCUMENT).ask(["stones"], { detail: "draft" })).answers.stones);
    expect(new Set(shown.map(({ body }) => body)).size).toBe(1);
    shown.forEach(({ body, frame, group, number }, i) => {
      // A brilliant: 33 facets of the crown, 24 of the pavilion without a culet, and the girdle's.
      expect(body.planes.length).toBe(wanted[i].body.planes.length);
      expect(body.width).toBeCloseTo(wanted[i].body.width, 6);
      expect(body.gem).toEqual(wanted[i].body.gem);
      expect([group, number]).toEqual([wanted[i].group, wanted[i].number]);
      for (const [k, x] of frame.at.entries()) expect(x).toBeCloseTo(wanted[i].frame.at[k], 9);
      for (const [k, x] of frame.out.entries()) expect(x).toBeCloseTo(wanted[i].frame.out[k], 9);
    });
  });

  test("stand in a 3MF and in its picture, but not in that of a master, which is printed; in GLB always", async () => {
    const ring = openRing(DOCUMENT);
    const [finished, master] = [
      await ring.make({ detail: "draft", piece: "finished" }),
      await ring.make({ detail: "draft", piece: "master" }),
    ];
    const whole = fileOptionsOf(finished, threemf);
    expect(whole.stones?.length).toBe(3);
    expect(fileOptionsOf(master, threemf).stones).toEqual([]);
    expect(fileOptionsOf(master, glb).stones?.length).toBe(3);
    const bare = fileOptionsOf({ ...finished, stones: [] }, threemf);
    expect(whole.thumbnail).not.toEqual(bare.thumbnail);
  });
});
