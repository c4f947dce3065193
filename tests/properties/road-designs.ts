/**
 * Random designs that come again round the ring, as many of them as can be: every frieze group, every form of outside, and
 * all that a pattern can hold.
 */
import fc from "fast-check";
import { motifs } from "../../src/art/motifs/index.js";
import { sampleRegion } from "../../src/art/motifs/sample.js";
import { greyPng } from "../art/image/pngs.js";
import { beads, between, COARSE, curve, cut, filled, profile, region, shaped, symmetry, through } from "./designs.js";

/** An image that meets itself at its sides, for height maps. */
export const FILES = {
  "swell.png": greyPng(
    24,
    24,
    (x, y) => 0.5 + 0.25 * Math.cos(2 * Math.PI * x) + 0.2 * Math.sin(2 * Math.PI * (x + y)),
  ),
};

/** Bands of every form; those drawn freely are mostly not symmetric. */
const band = fc.oneof(
  { arbitrary: profile, weight: 8 },
  {
    arbitrary: fc.tuple(profile, fc.constantFrom(0, 0.1, 0.3), fc.boolean()).map(([{ width, bore }, lean, domed]) => ({
      width,
      thickness: 2,
      bore,
      outside: {
        form: "free",
        path: domed ? "M -3 1.5 C -2 2.1 -1 2 0 2 C 1 2 2 2 3 1.6" : `M -3 ${2 - lean} L -2 2 L 2 2 L 3 2`,
        seat: [-2, 2],
      },
    })),
    weight: 1,
  },
);

const woven = fc
  .tuple(fc.constantFrom("p11m", "p2mm", "p1", "p2"), between(0.1, 0.35), between(0.4, 0.7), fc.boolean())
  .map(([group, y, width, domed]) => ({
    symmetry: group,
    regions: [
      {
        path: `M 0 ${y} C 0.3 ${y} 0.7 ${-y} 1 ${-y} M 0 ${-y} C 0.3 ${-y} 0.7 ${y} 1 ${y}`,
        ribbon: { width, join: "round", weave: { lift: 0.2 } },
        ...(domed ? { section: { form: "domed", height: 0.4 } } : { height: 0.4, round: 0.05 }),
      },
    ],
  }));

const motif = fc.constantFrom(...motifs).map((one) => ({
  symmetry: "p1",
  aspect: one.aspect.natural,
  regions: [sampleRegion(one, 4)],
}));

const image = fc.tuple(fc.constantFrom("raised", "sunk"), symmetry, between(0.15, 0.4)).map(([mode, group, size]) => ({
  symmetry: group,
  regions: [
    {
      image: "swell.png",
      mode,
      ...(mode === "sunk" ? { depth: size } : { height: size }),
      map: { resolution: 0.4, seam: { blend: 0.5 } },
    },
  ],
}));

const drawn = fc.record({
  symmetry,
  regions: fc.array(fc.oneof(region, region, shaped, cut), { minLength: 0, maxLength: 2 }),
});

const art = fc.oneof(
  { arbitrary: drawn, weight: 14 },
  { arbitrary: woven, weight: 1 },
  { arbitrary: motif, weight: 2 },
  { arbitrary: image, weight: 1 },
);

const fit = fc.record({
  repeats: fc.oneof(fc.integer({ min: 3, max: 14 }), fc.integer({ min: 3, max: 40 })),
  rows: fc.constantFrom(1, 1, 1, 2),
  aspect: between(0.6, 1.5),
});

const cover = fc.oneof({ arbitrary: fc.constant(360), weight: 12 }, { arbitrary: between(60, 330, 0), weight: 1 });

const single = fc.tuple(fit, art, cover, fc.constantFrom("band", "band", "tile")).map(([how, what, covered, hold]) => ({
  fit: { ...how, hold, ...("aspect" in what ? { aspect: what.aspect } : {}) },
  symmetry: what.symmetry,
  cover: covered,
  regions: what.regions,
}));

const lanes = fc
  .tuple(fc.array(fc.tuple(fit, drawn), { minLength: 2, maxLength: 2 }), between(0.2, 0.6))
  .map(([list, gap]) => ({
    fit: { hold: "band" },
    gap,
    lanes: list.map(([how, what]) => ({ fit: { ...how, rows: 1 }, ...what })),
  }));

const run = fc
  .tuple(
    fc.oneof(
      fc.constantFrom("rail", "seat-edge"),
      between(-1, 1).map((v) => ({ v })),
      fc.oneof(filled, curve, through).map((path) => ({ path })),
    ),
    beads,
  )
  .map(([along, one]) => ({ ...one, along }));

/** Most can be built; some cannot. */
export const roadDesign = fc
  .record(
    {
      annulet: fc.constant(1),
      size: between(15, 21).map((diameter) => ({ diameter })),
      tolerance: fc.constantFrom(COARSE, COARSE, COARSE / 2),
      profile: band,
      pattern: fc.oneof({ arbitrary: single, weight: 12 }, { arbitrary: lanes, weight: 1 }),
      beads: fc.oneof(fc.constant([]), fc.array(run, { maxLength: 2 })),
      hallmark: fc.oneof({ arbitrary: fc.constant(undefined), weight: 25 }, { arbitrary: fc.constant({}), weight: 1 }),
      proud: fc.constant(true),
    },
    { requiredKeys: ["annulet", "size", "tolerance", "profile", "pattern", "proud"] },
  )
  .map(({ hallmark, ...rest }) => (hallmark === undefined ? rest : { ...rest, hallmark }));
