// Covers: src/band/profile/split.ts, src/base/math/smooth-piece.ts
import { build } from "annulet";
import { describe, expect, test } from "vitest";
import { bandVolume } from "../../../../src/band/profile/moments.js";
import { buildOutline, buildProfile } from "../../../../src/band/profile/profile.js";
import { requireSmoothSeat } from "../../../../src/band/surface/smooth-seat.js";
import { segmentEnd, segmentLength, segmentStart } from "../../../../src/base/math/curve.js";
import { turnBetween } from "../../../../src/base/math/fillet.js";
import { failureOf, spec } from "../specs.js";

const flat = { form: "flat", edge: 0 };
const band = (outside: object, sizes: object = {}) =>
  spec({ width: 6, thickness: 2, bore: flat, ...sizes, outside: { form: "free", ...outside } });

test("a drawn rectangle is the flat band", () => {
  const drawn = buildProfile(
    band({
      points: [
        [-3, 2],
        [3, 2],
      ],
    }),
    8,
    0.01,
  );
  const named = buildProfile(spec({ width: 6, thickness: 2, bore: flat, outside: flat }), 8, 0.01);
  expect(drawn.polyline).toEqual(named.polyline);
  expect(drawn.seatLength).toBe(6);
  expect(drawn.symmetric).toBe(true);
});

test("a drawn arc is the dome, exactly", () => {
  const radius = 9 / (2 * 0.5) + 0.25;
  const drawn = buildOutline(band({ path: `M -3 1.5 A ${radius} ${radius} 0 0 0 3 1.5`, edge: 0.2 }), 8, 1);
  const named = buildOutline(
    spec({ width: 6, thickness: 2, bore: flat, outside: { form: "domed", rise: 0.5, edge: 0.2 } }),
    8,
    1,
  );
  expect(bandVolume(drawn)).toBeCloseTo(bandVolume(named), 9);
  expect(drawn.seatLength).toBeCloseTo(named.seatLength, 9);
});

test("relative commands, points and absolute commands draw the same", () => {
  const drawings = [
    { path: "M -3 1 L -1 2 H 1 L 3 1" },
    { path: "m -3 1 l 2 1 h 2 l 2 -1" },
    {
      points: [
        [-3, 1],
        [-1, 2],
        [1, 2],
        [3, 1],
      ],
    },
  ];
  const [first, ...others] = drawings.map((outside) => buildProfile(band(outside), 8, 0.01).polyline);
  for (const other of others) expect(other).toEqual(first);
});

test("the drawing is stretched along w to the width, heights stay", () => {
  const { polyline } = buildProfile(
    band(
      {
        points: [
          [-1, 1],
          [0, 2],
          [1, 1],
        ],
      },
      { width: 8 },
    ),
    8,
    0.01,
  );
  expect(polyline).toContainEqual([4, 9]);
  expect(polyline).toContainEqual([0, 10]);
});

test("a seat is cut out of the drawing where it says", () => {
  const profile = buildProfile(
    band({
      points: [
        [-3, 1],
        [-1, 2],
        [3, 1],
      ],
      seat: [-2, 1],
    }),
    8,
    0.01,
  );
  expect(segmentStart(profile.seat[0])).toEqual([-2, 9.5]);
  const [w, r] = segmentEnd(profile.seat[profile.seat.length - 1]);
  expect(w).toBeCloseTo(1, 12);
  expect(r).toBeCloseTo(9.5, 12);
  expect(profile.seatLength).toBeCloseTo(Math.hypot(1, 0.5) + Math.hypot(2, 0.5), 12);
  expect(profile.symmetric).toBe(false);
});

test("a seat is cut out of an arc", () => {
  const profile = buildProfile(band({ path: "M -3 1 A 5 5 0 0 0 3 1", seat: [-1.5, 1.5] }), 8, 0.01);
  expect(profile.seat).toHaveLength(1);
  expect(profile.seatLength).toBeCloseTo(10 * Math.asin(0.3), 12);
  expect(profile.symmetric).toBe(true);
});

test("a fillet passes over the pieces of a drawn curve", () => {
  const ellipse = "M -3 0 A 3 2 0 0 0 3 0";
  const rounded = buildProfile(band({ path: ellipse }, { bore: { form: "flat", edge: 0.2 } }), 8, 0.001);
  const sharp = buildProfile(band({ path: ellipse }), 8, 0.001);
  const fillets = rounded.outline.filter((piece) => piece.kind === "arc" && Math.abs(piece.radius - 0.2) < 1e-9);
  expect(fillets).toHaveLength(2);
  expect(bandVolume(rounded)).toBeLessThan(bandVolume(sharp));
  // Two corners of nearly 90°: each loses about (1 − π/4) ρ², at about the bore's radius.
  const lost = 2 * (1 - Math.PI / 4) * 0.2 ** 2 * 2 * Math.PI * 8;
  expect(bandVolume(sharp) - bandVolume(rounded)).toBeLessThan(1.5 * lost);
  expect(bandVolume(sharp) - bandVolume(rounded)).toBeGreaterThan(0.5 * lost);
});

describe("a seat drawn smoothly", () => {
  const WAVE = "M -3 1.2 C -2 1.2 -2 2 -1 2 C 0 2 0 1.5 1 1.5 C 2 1.5 2 1.2 3 1.2";
  const seatOf = (path: string, width: number, thickness: number) =>
    buildOutline(band({ path }, { width, thickness }), 8, 0.01).seat;
  const worstTurn = (seat: ReturnType<typeof seatOf>) =>
    Math.max(0, ...seat.slice(1).map((next, i) => Math.abs(turnBetween(seat[i], next))));

  test.each([
    ["cubics", WAVE, 2],
    ["a circle", "M -3 1 A 5 5 0 0 0 3 1", 2],
    ["an ellipse", "M -3 1 A 4 2 0 0 0 3 1", 1 + 2 - Math.sqrt(4 - 9 / 4)],
    ["lines, arcs and curves", "M -3 1 H -2 A 1 1 0 0 1 -1 2 A 1 1 0 0 0 0 3 C 1 3 1 1 2 1 L 3 1", 3],
  ])("has no corner at any width: %s", (_, path, thickness) => {
    for (const width of [3, 5.9, 6, 6.1, 9]) {
      const seat = seatOf(path, width, thickness);
      expect(worstTurn(seat)).toBeLessThan(1e-9);
      expect(() => requireSmoothSeat(seat, "profile.outside")).not.toThrow();
      expect(segmentStart(seat[0])[0]).toBeCloseTo(-width / 2, 12);
      expect(segmentEnd(seat[seat.length - 1])[0]).toBeCloseTo(width / 2, 12);
    }
  });

  test("is smoothed where rounded numbers left a turn of less than 0.01, and not where a corner was drawn", () => {
    for (const [slip, isSmooth] of [
      [0.005, true],
      [0.02, false],
    ] as const) {
      const arcEnd = 1.5 + 10 - Math.sqrt(84) + 4 * slip;
      for (const [path, thickness] of [
        [`M -3 1.5 H -1 C 0 ${1.5 + slip} 1 2 3 2`, 2],
        [`M -3 1.5 C -2 1.5 -1 ${2 - slip} 0 2 C 1 2 2 1.5 3 1.5`, 2],
        // The circle of radius 10 through (-1, 1.5) that is level there, its chord of about 4 mm tilted by the slip.
        [`M -3 1.5 H -1 A 10 10 0 0 1 3 ${arcEnd}`, arcEnd],
      ] as const) {
        for (const width of [6, 7]) {
          const turn = worstTurn(seatOf(path, width, thickness));
          if (isSmooth) expect(turn).toBeLessThan(1e-9);
          else expect(turn).toBeGreaterThan(0.01);
        }
      }
    }
  });

  test("is its own mirror image where the drawing is", () => {
    const path = "M -3 1.2 C -1 2.4 1 2.4 3 1.2";
    for (const width of [5, 6, 7.3]) {
      expect(buildProfile(band({ path }, { width, thickness: 2.1 }), 8, 0.01).symmetric).toBe(true);
    }
  });

  test("keeps the corners of points, however slight", () => {
    const points: [number, number][] = [
      [-3, 1.999],
      [0, 2],
      [3, 1.999],
    ];
    expect(buildOutline(band({ points }), 8, 0.01).seat.map(({ kind }) => kind)).toEqual(["line", "line"]);
  });

  test("grows without a jump with the width", () => {
    const lengths = Array.from({ length: 120 }, (_, i) =>
      seatOf(WAVE, 5 + i * 0.01, 2).reduce((sum, piece) => sum + segmentLength(piece), 0),
    );
    const steps = lengths.slice(1).map((length, i) => length - lengths[i]);
    for (const step of steps) {
      expect(step).toBeGreaterThan(0);
      expect(step).toBeLessThan(0.0101);
    }
  });

  test("takes a relief, with the tile held and the width solved for", async () => {
    const { report } = await build({
      annulet: 1,
      size: { diameter: 17 },
      tolerance: 0.05,
      profile: {
        width: 6.5,
        thickness: 2.1,
        outside: { form: "free", path: "M -3 1.2 C -1 2.4 1 2.4 3 1.2", edge: 0.2 },
      },
      pattern: {
        symmetry: "p2mm",
        fit: { hold: "tile" },
        regions: [{ name: "leaf", path: "M 0.1 0.16 L 0.4 0.2 L 0.14 0.4 Z", height: 0.3 }],
      },
      proud: true,
    });
    expect(report).toMatchObject({ closed: true, components: 1, genus: 1 });
    expect(report.fit?.hold).toBe("tile");
    expect(report.fit?.stretch).toBe(1);
    expect(Math.abs(report.band.width - 6.5)).toBeGreaterThan(0.01);
  });
});

describe("drawings that are none", () => {
  const cases: readonly [name: string, outside: object, code: string, path: string][] = [
    ["malformed", { path: "M -3 2 L" }, "path-malformed", "profile.outside.path"],
    ["closed", { path: "M -3 2 H 3 Z" }, "path-malformed", "profile.outside.path"],
    ["two runs", { path: "M -3 2 H 0 M 1 2 H 3" }, "path-malformed", "profile.outside.path"],
    [
      "off centre",
      {
        points: [
          [-2, 2],
          [3, 2],
        ],
      },
      "profile-off-centre",
      "profile.outside.points",
    ],
    [
      "from right to left",
      {
        points: [
          [3, 2],
          [-3, 2],
        ],
      },
      "profile-off-centre",
      "profile.outside.points",
    ],
    [
      "overhanging",
      {
        points: [
          [-3, 1],
          [-4, 2],
          [3, 2],
        ],
      },
      "profile-outside-width",
      "profile.outside.points",
    ],
    [
      "into the bore",
      {
        points: [
          [-3, 2],
          [0, -1],
          [3, 2],
        ],
      },
      "bore-larger-than-outside",
      "profile.outside.points",
    ],
    [
      "onto the bore",
      {
        points: [
          [-3, 2],
          [0, 0],
          [3, 2],
        ],
      },
      "bore-larger-than-outside",
      "profile.outside.points",
    ],
    [
      "crossing itself",
      {
        points: [
          [-3, 2],
          [1, 1],
          [1, 2],
          [-1, 1],
          [3, 2],
        ],
      },
      "profile-crosses-itself",
      "profile",
    ],
    [
      "seat off the drawing",
      {
        points: [
          [-3, 2],
          [3, 2],
        ],
        seat: [-4, 1],
      },
      "seat-off-profile",
      "profile.outside.seat",
    ],
    [
      "seat reversed",
      {
        points: [
          [-3, 2],
          [3, 2],
        ],
        seat: [1, -1],
      },
      "seat-off-profile",
      "profile.outside.seat",
    ],
    [
      "lower than the thickness",
      {
        points: [
          [-3, 1.5],
          [3, 1.5],
        ],
      },
      "thickness-differs",
      "profile.thickness",
    ],
    [
      "edge where there is no wall",
      { path: "M -3 0 A 3 2 0 0 0 3 0", edge: 0.2 },
      "fillet-too-large",
      "profile.outside.edge",
    ],
  ];

  test.each(cases)("%s", (_, outside, code, path) => {
    expect(failureOf(() => buildProfile(band(outside), 8, 0.01))).toMatchObject({ code, path });
  });

  test("a crossing is named with its place", () => {
    const outside = {
      points: [
        [-3, 2],
        [1, 1],
        [1, 2],
        [-1, 1],
        [3, 2],
      ],
    };
    const { message, value } = failureOf(() => buildProfile(band(outside), 8, 0.01));
    expect(message).toMatch(/w = -?\d/);
    expect(value).toHaveProperty("w");
  });
});

test("where the outside meets the bore, the seat's ends are points of the polyline all the same", () => {
  const { polyline, seatSpan } = buildProfile(band({ path: "M -3 0 A 3 2 0 0 0 3 0" }), 8, 0.01);
  expect(seatSpan).toEqual([0, polyline.length - 1]);
  expect(polyline[seatSpan[0]][0]).toBeCloseTo(3, 12);
  expect(polyline[seatSpan[1]][0]).toBeCloseTo(-3, 12);
});
