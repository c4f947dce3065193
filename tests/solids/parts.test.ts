import { describe, expect, it } from "vitest";
import { checkSolid } from "../../src/judge/gate.js";
import { failureOf } from "../band/profile/specs.js";
import { bodiesOf } from "../support/stages.js";

const channelBand = {
  annulet: 1,
  size: { system: "iso", value: 54 },
  tolerance: 0.02,
  profile: { width: 6, thickness: 2, outside: { form: "channel", rail: 1, depth: 0.6 } },
};

const withBeads = (...beads: object[]) => bodiesOf({ ...channelBand, beads });
const codes = (warnings: readonly { code: string }[]) => warnings.map(({ code }) => code);

describe("the bodies of a ring", () => {
  it("are a band alone where nothing else is drawn", () => {
    const { parts } = bodiesOf(channelBand);
    expect(parts).toMatchObject({ reliefs: [], beads: [], spheres: [], runs: [] });
    expect(parts.reliefRadius).toBeUndefined();
    expect(checkSolid(parts.band)).toMatchObject({ closed: true, genus: 1 });
  });

  it("have beads on both rails' middles, at their top", () => {
    const { parts, profile } = withBeads({ along: "rail", diameter: 0.5 });
    const [run] = parts.runs;
    expect(run).toMatchObject({
      run: "rail",
      path: "beads[0]",
      onRail: true,
      diameter: 0.5,
      count: parts.beads.length,
    });
    for (const { centre } of parts.spheres) {
      expect(Math.hypot(centre[0], centre[1])).toBeCloseTo(profile.outsideRadius, 9);
      expect(Math.abs(centre[2])).toBeGreaterThan(2);
    }
    expect(parts.spheres.filter(({ centre }) => centre[2] > 0)).toHaveLength(parts.beads.length / 2);
    expect(run.spacing * (run.count / 2)).toBeCloseTo(2 * Math.PI * profile.outsideRadius, 9);
    expect(run.ratio).toBeCloseTo(run.spacing / 0.5, 12);
    // What stands on the rails does not count against the headroom.
    expect(parts.reliefRadius).toBeUndefined();
  });

  it("are as high against the rails as at the place where the band is thinnest: relief that stands at the back alone", () => {
    // Nowhere may relief stand above the rails: at the back the seat is 0.4 mm nearer to the axis, and so are its rails.
    const taper = { thickness: channelBand.profile.thickness - 0.4 };
    const square = { path: "M 0.3 -0.2 H 0.7 V 0.2 H 0.3 Z", height: 0.5 };
    const proud = (tiles: readonly number[]) => {
      const pattern = { fit: { repeats: 8, hold: "band" }, cycle: "round", regions: [{ ...square, tiles }] };
      const { parts, profile } = bodiesOf({ ...channelBand, profile: { ...channelBand.profile, taper }, pattern });
      return (parts.reliefRadius ?? Number.NaN) - (profile.rails?.top ?? Number.NaN);
    };
    // Relief of 0.5 mm in a channel of 0.6 mm.
    const all = [0, 1, 2, 3, 4, 5, 6, 7].map((tile) => proud([tile]));
    for (const one of all) expect(one).toBeCloseTo(-0.1, 2);
  });

  it("have beads along the seat's edges that bite into the rails' walls", () => {
    const { parts, wrap } = withBeads({ along: "seat-edge", diameter: 0.4 });
    for (const { centre } of parts.spheres) {
      const gap = wrap.seatLength / 2 - Math.abs(wrap.inverse(...centre)[1]);
      expect(gap).toBeCloseTo(0.45 * 0.4, 9);
    }
    const set = withBeads({ along: "seat-edge", diameter: 0.4, inset: 0.7 });
    expect(set.wrap.seatLength / 2 - Math.abs(set.wrap.inverse(...set.parts.spheres[0].centre)[1])).toBeCloseTo(0.7, 9);
  });

  it("have beads on a circle at v, as high as asked", () => {
    const { parts, wrap } = withBeads({ along: { v: 0.8 }, diameter: 0.4, height: 0.1, embed: 0.25, count: 40 });
    expect(parts.spheres).toHaveLength(40);
    for (const { centre } of parts.spheres) {
      const [, v, h] = wrap.inverse(...centre);
      expect(v).toBeCloseTo(0.8, 9);
      expect(h).toBeCloseTo(0.1 + 0.25 * 0.4, 9);
    }
    const reach = Math.max(...parts.spheres.map(({ centre }) => Math.hypot(centre[0], centre[1]) + 0.2));
    expect(parts.reliefRadius).toBeCloseTo(reach, 12);
  });

  it("have beads along a path of the tile, in every tile", () => {
    const { parts, fit } = bodiesOf({
      ...channelBand,
      pattern: {},
      beads: [{ along: { path: "M 0 0.2 H 1" }, diameter: 0.4 }],
    });
    expect(parts.spheres.length % (fit?.repeats as number)).toBe(0);
    expect(new Set(parts.spheres.map(({ centre }) => centre[2].toFixed(6))).size).toBe(1);
  });

  it("share one mesh of a sphere for one size", () => {
    const { parts } = withBeads({ along: "rail", diameter: 1.6 }, { along: { v: 0 }, diameter: 0.3 });
    const sizes = new Set(parts.beads.map(({ triangles }) => triangles.length));
    expect(sizes.size).toBe(2);
    for (const bead of [parts.beads[0], parts.beads[parts.beads.length - 1]]) {
      expect(checkSolid(bead)).toMatchObject({ closed: true, genus: 0 });
    }
  });

  it("stand with relief deeper in the band than its facets, at most half way to the bore", () => {
    for (const [thickness, tolerance, sink] of [
      [2, 0.02, 0.08],
      [2, 0.005, 0.05],
      [0.3, 0.1, 0.15],
    ]) {
      const { parts, wrap } = bodiesOf({
        ...channelBand,
        tolerance,
        profile: { width: 6, thickness, bore: { form: "flat", edge: 0 }, outside: { form: "flat", edge: 0 } },
        pattern: { regions: [{ path: "M 0.2 -0.2 H 0.6 V 0.2 Z", height: 0.4 }] },
      });
      const { positions } = parts.reliefs[0];
      let least = 0;
      for (let i = 0; i < positions.length; i += 3) {
        least = Math.min(least, wrap.inverse(positions[i], positions[i + 1], positions[i + 2])[2]);
      }
      expect(-least).toBeCloseTo(sink, 9);
    }
  });
});

describe("what is told of bead runs", () => {
  it("is nothing where they are as usual", () => {
    expect(withBeads({ along: "rail", diameter: 0.4 }).warnings).toEqual([]);
  });

  it("names beads that overlap by more than 15 % or leave gaps of more than 25 %", () => {
    expect(codes(withBeads({ along: "rail", diameter: 0.4, pitch: 0.8 }).warnings)).toEqual(["beads-overlap"]);
    expect(codes(withBeads({ along: "rail", diameter: 0.4, pitch: 0.88 }).warnings)).toEqual([]);
    expect(codes(withBeads({ along: "rail", diameter: 0.4, pitch: 1.2 }).warnings)).toEqual([]);
    const [gap] = withBeads({ along: "rail", diameter: 0.4, pitch: 1.4 }).warnings;
    expect(gap).toMatchObject({ code: "beads-gap", path: "beads[0]" });
    expect(gap.value as number).toBeCloseTo(1.4, 1);
  });

  it("names runs that crowd each other", () => {
    const { warnings, parts } = withBeads({ along: { v: 0 }, diameter: 0.4 }, { along: { v: 0.15 }, diameter: 0.4 });
    expect(codes(warnings)).toEqual(["beads-crowded"]);
    expect(warnings[0].value).toBe(parts.runs[1].count);
  });

  it("counts beads that two runs share once", () => {
    const run = { along: { v: 0.3 }, diameter: 0.4 };
    const { parts, warnings } = withBeads(run, run);
    expect(parts.runs[1].count).toBe(0);
    expect(parts.beads).toHaveLength(parts.runs[0].count);
    expect(warnings).toEqual([]);
  });
});

describe("bead runs that cannot be", () => {
  it("are refused on rails that are not there", () => {
    const flat = { ...channelBand, profile: { width: 6, thickness: 2, outside: { form: "flat" } } };
    const failure = failureOf(() => bodiesOf({ ...flat, beads: [{ along: "rail", diameter: 0.4 }] }));
    expect(failure).toMatchObject({ code: "no-rails", path: "beads[0].along" });
  });

  it("are refused beyond the seat, with its half", () => {
    const failure = failureOf(() => withBeads({ along: { v: 2.5 }, diameter: 0.4 }));
    expect(failure).toMatchObject({ code: "beads-off-seat", value: 2.5, allowed: "within ±2 mm" });
    expect(failureOf(() => withBeads({ along: "seat-edge", diameter: 0.4, inset: 2.1 }))).toMatchObject({
      code: "beads-off-seat",
      path: "beads[0].inset",
      allowed: "0 to 2 mm, half the seat",
    });
  });

  it("are refused along a path without a pattern", () => {
    expect(failureOf(() => withBeads({ along: { path: "M 0 0 H 1" }, diameter: 0.4 })).code).toBe("no-pattern");
  });

  it("are refused in numbers beyond the limit, over all runs", () => {
    const runs = [
      { along: { v: 1 }, diameter: 0.4, count: 60 },
      { along: { v: -1 }, diameter: 0.4, count: 60 },
    ];
    expect(failureOf(() => bodiesOf({ ...channelBand, beads: runs }, 119))).toMatchObject({
      code: "too-many-beads",
      value: 120,
    });
    expect(bodiesOf({ ...channelBand, beads: runs }, 120).parts.beads).toHaveLength(120);
  });
});

describe("neighbouring beads", () => {
  it("keep apart at the default pitch, however coarse the tolerance", () => {
    const { parts } = bodiesOf({ ...channelBand, tolerance: 0.2, beads: [{ along: { v: 0 }, diameter: 0.3 }] });
    const reach = Math.max(
      ...parts.beads.map(({ positions }, i) => {
        const { centre } = parts.spheres[i];
        let most = 0;
        for (let k = 0; k < positions.length; k += 3) {
          most = Math.max(most, Math.hypot(...centre.map((value, axis) => positions[k + axis] - value)));
        }
        return most;
      }),
    );
    const [a, b] = parts.spheres;
    expect(2 * reach).toBeLessThan(Math.hypot(...a.centre.map((value, axis) => value - b.centre[axis])));
  });
});
