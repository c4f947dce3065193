// Covers: src/stones/settings/channel-parts.ts, src/stones/settings/across-row.ts, src/stones/settings/swept.ts, src/stones/settings/stations.ts, src/stones/settings/sweep-rows.ts, src/stones/settings/rows.ts
import { describe, expect, test } from "vitest";
import { polygonArea } from "../../../src/base/math/polygon.js";
import { TURN } from "../../../src/base/units.js";
import { checkSolid } from "../../../src/judge/gate.js";
import { signedVolume } from "../../../src/mesh/volume.js";
import { acrossRow } from "../../../src/stones/settings/across-row.js";
import { grooveOf, grooveSection } from "../../../src/stones/settings/channel.js";
import { ROOM } from "../../../src/stones/settings/hollow.js";
import { FACETS, setOnFlat } from "../../support/set-group.js";

describe("a channel all round", () => {
  const { set, parts } = setOnFlat({ size: 1.8, setting: { form: "channel" } }, { count: 30 });
  const [{ shape, around, frame }] = set;
  const groove = grooveOf(
    shape,
    { way: [1, 0], radius: Math.hypot(frame.at[0], frame.at[1]) },
    { ready: "full", cover: 0.06, bearing: (75 * Math.PI) / 180, rise: 0, wall: 0.8 },
    0.01,
  );
  const section = grooveSection(groove, around.above, true);

  test("is its section turned round the finger, in closed form", () => {
    const [mesh] = parts("hollows", { from: 0, to: TURN });
    expect(checkSolid(mesh)).toMatchObject({ closed: true, genus: 1 });
    // Pappus: a section in a half plane, turned by chords, sweeps its area times its middle's radius times the sine of each step.
    const radius = Math.hypot(frame.at[0], frame.at[1]);
    const area = polygonArea(section);
    const moment = momentOf(section.map(([y, z]) => [y, radius + z]));
    expect(area).toBeGreaterThan(0);
    expect(signedVolume(mesh)).toBeCloseTo(moment * FACETS * Math.sin(TURN / FACETS), 6);
  });

  test("has walls over 6 % of the stone on either side, and a notch as wide as the stone and its room", () => {
    const ys = section.map(([y]) => y);
    expect(Math.max(...ys)).toBeCloseTo(0.9 + ROOM, 3);
    expect(groove.half).toBeCloseTo(0.9 * 0.88, 3);
  });

  test("holds the stone's edge in the notch, with its room to every face", () => {
    const [, lower, upper, end] = [0, 1, 2, 3].map((i) => section[i]);
    const faces = [
      [section[0], lower],
      [lower, upper],
      [upper, end],
    ] as const;
    const held = shape.corners.filter(([, y]) => y > groove.half);
    expect(held.length).toBeGreaterThan(4);
    for (const [, y, z] of held) {
      for (const [[ay, az], [by, bz]] of faces) {
        const inside = ((by - ay) * (z - az) - (bz - az) * (y - ay)) / Math.hypot(by - ay, bz - az);
        expect(inside).toBeGreaterThan(ROOM - 1e-6);
      }
    }
  });

  test("is made over a sector as it is all round", () => {
    const [whole] = parts("hollows");
    const [part] = parts("hollows", { from: 1, to: 1.5 });
    expect(checkSolid(part)).toMatchObject({ closed: true, genus: 0 });
    const places = new Set(pointsOf(whole).map(String));
    expect(pointsOf(part).every((point) => places.has(String(point)))).toBe(true);
    expect(part.positions.length).toBeLessThan(whole.positions.length / 4);
  });
});

test("stones of a channel that are set across their row widen it by their length", () => {
  const { set } = setOnFlat(
    { cut: "baguette", size: 3, width: 1.5, setting: { form: "channel" } },
    { count: 5, from: 60, to: 120 },
  );
  expect(acrossRow(set[0].shape, [1, 0]).half).toBeCloseTo(0.75, 6);
  expect(acrossRow(set[0].shape, [0, 1]).half).toBeCloseTo(1.5, 6);
});

test("a part row ends with flat faces, and raised walls stand round it", () => {
  const { parts } = setOnFlat(
    { size: 1.5, level: 0.5, setting: { form: "channel", rise: 0.6, wall: 0.5 } },
    { count: 5, from: 70, to: 110 },
  );
  const [wall] = parts("walls");
  const [groove] = parts("hollows");
  expect(checkSolid(wall)).toMatchObject({ closed: true, genus: 0 });
  expect(checkSolid(groove)).toMatchObject({ closed: true, genus: 0 });
  expect(signedVolume(wall)).toBeGreaterThan(signedVolume(groove) / 4);
});

test("only the pilots are cut where the setter cuts the groove", () => {
  const { parts } = setOnFlat(
    { size: 1.5, setting: { form: "channel", ready: "pilot" } },
    { count: 5, from: 70, to: 110 },
  );
  expect(parts("hollows").length).toBe(5);
});

/** First moment of a polygon about the axis r = 0: area times the middle's radius. */
function momentOf(section: readonly (readonly [number, number])[]): number {
  return section.reduce((sum, [aw, ar], i) => {
    const [bw, br] = section[(i + 1) % section.length];
    return sum + ((aw * br - bw * ar) * (ar + br)) / 6;
  }, 0);
}

function pointsOf({ positions }: { readonly positions: Float64Array }): number[][] {
  return Array.from({ length: positions.length / 3 }, (_, i) => [...positions.subarray(3 * i, 3 * i + 3)]);
}
