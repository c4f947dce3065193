// Covers: src/relief/take-ribbon.ts
import { describe, expect, it } from "vitest";
import { clipAlong, ringArea } from "../../src/flat/polygons.js";
import type { Strip } from "../../src/flat/strip.js";
import { completeArt, completeLines } from "../../src/relief/art.js";
import { areaOf, circle, collector, failureOf, region, type StripInput, stripOf } from "../flat/strips.js";

const PENTAGRAM = "M 0.5 0.4 L 0.265 -0.324 L 0.88 0.124 L 0.12 0.124 L 0.735 -0.324 Z";

/** A region's art, its area in one period, mm², and the warnings' codes. */
function complete(spec: Readonly<Record<string, unknown>>, input: StripInput = {}) {
  const strip = stripOf(input);
  const { codes, warnings, warn } = collector();
  const art = completeArt(strip, region(spec), "pattern.regions[0]", warn);
  return { strip, art, area: periodArea(strip, art.region), codes, warnings };
}

function periodArea(strip: Strip, rings: Parameters<typeof areaOf>[1]): number {
  return areaOf(strip, clipAlong(rings, 0, strip.grid.tile, 4 * strip.halfSeat));
}

describe("filled regions", () => {
  it("fill a star by either rule, and say that it crosses itself", () => {
    const full = complete({ path: PENTAGRAM });
    const hollow = complete({ path: PENTAGRAM, fill: "evenodd" });
    expect(full.codes).toEqual(["path-crosses-itself"]);
    expect(hollow.codes).toContain("path-crosses-itself");
    // A pentagram's pentagon is φ⁻² of the outer one in size; its area with R = 0.4: 5/2 R² φ⁻⁴ sin 72°.
    const phi = (1 + Math.sqrt(5)) / 2;
    const pentagon = 2.5 * 0.4 ** 2 * phi ** -4 * Math.sin((2 * Math.PI) / 5) * 36;
    expect(full.area - hollow.area).toBeGreaterThan(0.97 * pentagon);
    expect(full.area - hollow.area).toBeLessThan(1.03 * pentagon);
  });

  it("cut holes by direction or by evenodd", () => {
    const outer = circle(0.5, 0, 0.4);
    const inner = circle(0.5, 0, 0.2);
    const disc = Math.PI * (0.4 * 6) ** 2;
    expect(complete({ path: `${outer} ${inner}` }).area).toBeCloseTo(disc, 0);
    const ring = complete({ path: `${outer} ${inner}`, fill: "evenodd" });
    expect(ring.area).toBeGreaterThan(0.99 * disc * 0.75);
    expect(ring.area).toBeLessThan(disc * 0.75 * 1.01);
    expect(ring.codes).toEqual([]);
  });

  it("close open lines whose images meet", () => {
    const quarter = complete({ path: "M 0.3 0 A 0.3 0.3 0 0 1 0 0.3" }, { symmetry: "p2mm" });
    const whole = complete({ path: circle(0, 0, 0.3) });
    expect(quarter.codes).toEqual([]);
    expect(quarter.area).toBeCloseTo(whole.area, 3);
    expect(quarter.art.border.every((ring) => ringArea(ring) > 0)).toBe(true);
  });

  it("refuse what stays open", () => {
    const open = failureOf(() => complete({ path: "M 0 0 H 0.5" }));
    expect([open.code, open.path]).toEqual(["path-open", "pattern.regions[0].path"]);
    const sided = failureOf(() => complete({ path: "M 0 0 H 0.5", ribbon: { width: 0.3, side: "outside" } }));
    expect(sided.message).toMatch(/has no outside/);
    expect(sided.hint).toMatch(/centre/);
  });

  it("are the same in tile widths and in millimetres", () => {
    const tile = complete({ path: "M 0.1 0.1 H 0.6 V 0.3 Z" }, { aspect: 0.8 });
    const mm = complete({ path: "M 0.6 0.6 H 3.6 V 1.8 Z", unit: "mm" }, { aspect: 0.8 });
    expect(tile.art.region).toEqual(mm.art.region);
    expect(tile.area).toBeCloseTo(0.5 * 3 * 1.2, 6);
  });

  it("take art that reaches over the tile's border once", () => {
    expect(complete({ path: "M -0.2 -0.1 H 0.2 V 0.1 H -0.2 Z" }).area).toBeCloseTo(0.4 * 0.2 * 36, 6);
    expect(complete({ path: "M 1.5 -0.1 H 1.9 V 0.1 H 1.5 Z" }, { symmetry: "p1m1" }).area).toBeCloseTo(
      2 * 0.4 * 0.2 * 36,
      6,
    );
  });
});

describe("hairlines", () => {
  it.each([
    ["tips that touch on the tile's border", "M 0 0 L 0.5 0.3 L 1 0 L 0.5 -0.3 Z"],
    ["tips that touch within the tile", "M 0.1 -0.2 L 0.5 0 L 0.1 0.2 Z M 0.9 -0.2 L 0.9 0.2 L 0.5 0 Z"],
    ["a gap of 2 µm", "M 0.1 -0.2 H 0.5 V 0.2 H 0.1 Z M 0.5003 -0.2 H 0.9 V 0.2 H 0.5003 Z"],
    ["a neck of 3 µm", "M 0.1 -0.2 H 0.4 V -0.0003 H 0.6 V -0.2 H 0.9 V 0.2 H 0.6 V 0.0002 H 0.4 V 0.2 H 0.1 Z"],
    // Two edges cross on a corner: a hole of 4 µm hangs on the outline by one point, so growing and shrinking show nothing.
    [
      "a hole that hangs on the outline",
      "M 0.670672 -0.265742 L 0.854 -0.022 L 0.549481 -0.181872 L 0.549622 -0.182539 L 0.549011 -0.182119 L 0.549481 -0.181872 L 0.537 -0.123 L 0.3 -0.4 Z",
    ],
  ])("warn of %s and clean it", (_, path) => {
    const { codes, strip, art } = complete({ path });
    expect(codes).toContain("hairline");
    const places = art.region.flat().map(({ x, y }) => `${x} ${y}`);
    expect(new Set(places).size).toBe(places.length);
    const again = collector();
    const whole = completeArt(strip, region({ path }), "again", again.warn);
    expect(whole.region).toEqual(art.region);
  });

  it.each(["p1", "p11g", "p1m1", "p2", "p11m", "p2mg", "p2mm"] as const)(
    "are not seen in a clear drawing under %s",
    (symmetry) => {
      for (const x of [0, 0.05, 0.1, 0.2, 0.3, 0.37]) {
        const path = `M ${0.02 + x} 0.05 H ${0.12 + x} V 0.3 H ${0.02 + x} Z`;
        expect(complete({ path }, { symmetry }).codes).toEqual([]);
      }
    },
  );
});

describe("ribbons on a border", () => {
  const radius = 1.8;
  const path = circle(0.5, 0, 0.3);
  const ring = (inner: number, outer: number) => Math.PI * (outer ** 2 - inner ** 2);
  /** Chords within 5 µm of two circles. */
  const bound = 2 * Math.PI * 2 * radius * 0.0075 * 2;

  it.each([
    ["inside", ring(radius - 0.5, radius), radius - 0.25],
    ["outside", ring(radius, radius + 0.5), radius + 0.25],
    ["centre", ring(radius - 0.25, radius + 0.25), radius],
  ] as const)("lie %s with the width asked for", (side, wanted, middle) => {
    for (const join of ["miter", "round"]) {
      const { area, art, strip, codes } = complete({ path, ribbon: { width: 0.5, side, join } });
      expect(Math.abs(area - wanted)).toBeLessThan(bound);
      expect(codes).toEqual([]);
      const [first] = art.centre.filter(({ points }) => points.every(({ x }) => x > 0 && x < strip.grid.tile));
      for (const { x, y } of first.points) {
        const distance = Math.hypot(x - strip.grid.tile / 2, y) / strip.grid.scale;
        expect(Math.abs(distance - middle)).toBeLessThan(0.011);
      }
    }
  });

  it("keep holes, and go round both borders", () => {
    const { area } = complete({
      path: `${circle(0.5, 0, 0.4)} ${circle(0.5, 0, 0.1)}`,
      fill: "evenodd",
      ribbon: { width: 0.3 },
    });
    expect(Math.abs(area - ring(2.1, 2.4) - ring(0.6, 0.9))).toBeLessThan(bound);
  });

  it("are turned away when they fill the region, naming the largest that works, and it works", () => {
    const error = failureOf(() => complete({ path, ribbon: { width: 2 } }));
    expect([error.code, error.path]).toEqual(["ribbon-too-wide", "pattern.regions[0].ribbon.width"]);
    const largest = Number(/at most ([\d.]+) mm/.exec(error.allowed ?? "")?.[1]);
    expect(largest).toBeGreaterThan(radius - 0.02);
    expect(largest).toBeLessThanOrEqual(radius);
    expect(complete({ path, ribbon: { width: largest } }).area).toBeGreaterThan(0);
    expect(failureOf(() => complete({ path, ribbon: { width: largest + 0.02 } })).code).toBe("ribbon-too-wide");
  });

  it("name a width that works for every region at once", () => {
    for (const y of [-0.45, -0.05, 0.35]) {
      const two = `M 0.3 -0.3 H 0.9 V 0.3 H 0.3 Z M 0.05 ${y} H 0.15 V ${y + 0.1} H 0.05 Z`;
      const error = failureOf(() => complete({ path: two, ribbon: { width: 2 } }));
      const largest = Number(/at most ([\d.]+) mm/.exec(error.allowed ?? "")?.[1]);
      expect(largest).toBeCloseTo(0.3, 2);
      expect(complete({ path: two, ribbon: { width: largest } }).area).toBeGreaterThan(0);
    }
  });
});

describe("ribbons along lines", () => {
  it.each([
    ["butt", 0],
    ["square", 0.25],
    ["round", (Math.PI * 0.25) / 4],
  ] as const)("end %s", (ends, more) => {
    const { area, art } = complete({ path: "M 0.2 0.1 H 0.7", ribbon: { width: 0.5, ends } });
    expect(Math.abs(area - 3 * 0.5 - more)).toBeLessThan(0.01);
    expect(art.border).toEqual([]);
  });

  it("have no notch where images meet on a mirror", () => {
    const { area } = complete({ path: "M 0 0.2 H 0.5", ribbon: { width: 0.5 } }, { symmetry: "p1m1" });
    expect(area).toBeCloseTo(6 * 0.5, 4);
  });

  it.each(["miter", "round"] as const)("turn corners with a %s", (join) => {
    const { area } = complete({ path: "M 0.2 -0.2 H 0.6 V 0.2", ribbon: { width: 0.6, join } });
    const corner = join === "miter" ? 0.09 : (Math.PI / 4) * 0.09;
    expect(Math.abs(area - (2.4 * 0.6 * 2 - 0.09 + corner))).toBeLessThan(0.005);
  });

  it("wider than the tile still come out alike in every tile", () => {
    const strip = stripOf({ tileWidth: 2, aspect: 4 });
    const { warn } = collector();
    const { region: wide } = completeArt(
      strip,
      region({ path: circle(0.5, 0, 0.2), ribbon: { width: 3.1, side: "outside" } }),
      "r",
      warn,
    );
    const at = (tile: number) =>
      areaOf(strip, clipAlong(wide, tile * strip.grid.tile, (tile + 1) * strip.grid.tile, 1e8));
    expect(at(1)).toBeCloseTo(at(0), 6);
    expect(at(-1)).toBeCloseTo(at(0), 6);
  });
});

describe("lines along a shape that a lattice cuts off", () => {
  const of = { path: circle(0.25, 0, 0.2) };
  const lattice = { lattice: { columns: 2, rows: 1, set: "half-drop" }, of } as never;
  const sidesAlongEdge = (shape: never) => {
    const strip = stripOf({ aspect: 0.5 });
    const chains = completeLines(strip, { shape, unit: "tile" }, "beads[0].along");
    const onEdge = ({ y }: { readonly y: number }) => Math.abs(y) >= strip.halfSeat - 2;
    const sides = chains.map(({ points, closed }) => {
      const after = (i: number) => points[(i + 1) % points.length];
      return points.filter((a, i) => (closed || i + 1 < points.length) && onEdge(a) && onEdge(after(i))).length;
    });
    return { chains, sides: sides.reduce((sum, count) => sum + count, 0) };
  };

  it("follow what is drawn and not the cut", () => {
    const { chains, sides } = sidesAlongEdge(lattice);
    expect(sides).toBe(0);
    expect(chains.some(({ closed }) => closed)).toBe(true);
    expect(chains.some(({ closed }) => !closed)).toBe(true);
  });

  it("follow a side that is drawn along the edge", () => {
    expect(sidesAlongEdge({ path: "M 0.2 -0.25 H 0.8 V 0 H 0.2 Z" } as never).sides).toBeGreaterThan(0);
  });
});
