/** Random designs, small and coarse, for tests of what must hold for every ring. */
import fc from "fast-check";

/** Coarse enough for a ring to take a fraction of a second, mm. */
export const COARSE = 0.06;

export const between = (low: number, high: number, decimals = 3) => {
  const scale = 10 ** decimals;
  return fc.integer({ min: Math.round(low * scale), max: Math.round(high * scale) }).map((n) => n / scale);
};

const bore = fc.oneof(
  fc.record({ form: fc.constant("flat"), edge: between(0, 0.3) }),
  fc.record({ form: fc.constant("comfort"), rise: between(0.05, 0.3), edge: between(0, 0.3) }),
);

const outside = fc.oneof(
  fc.record({ form: fc.constant("flat"), edge: between(0, 0.3) }),
  fc.record({ form: fc.constant("domed"), rise: between(0, 1), edge: between(0, 0.3) }),
  fc.record({
    form: fc.constant("channel"),
    rail: between(0.5, 1),
    depth: between(0.3, 0.8),
    crown: between(0, 0.2),
    edge: between(0, 0.2),
  }),
  fc.record({ form: fc.constant("bevelled"), bevel: between(0.3, 1), drop: between(0, 0.5), edge: between(0, 0.2) }),
  fc.record({ form: fc.constant("concave"), dip: between(0, 0.5), edge: between(0, 0.3) }),
  fc.record({ form: fc.constant("knife"), rise: between(0.1, 0.8), ridge: between(0.5, 2), edge: between(0, 0.3) }),
);

export const profile = fc.record({ width: between(4, 8), thickness: between(1.6, 2.6), bore, outside });

/** A star-shaped polygon about a point of the tile. */
export const polygon = (x: fc.Arbitrary<number>, y: fc.Arbitrary<number>, radius: fc.Arbitrary<number>) =>
  fc.tuple(x, y, fc.array(radius, { minLength: 3, maxLength: 7 })).map(([cx, cy, radii]): [number, number][] =>
    radii.map((r, i) => {
      const angle = (2 * Math.PI * i) / radii.length + 0.3;
      return [cx + r * Math.cos(angle), cy + r * Math.sin(angle)];
    }),
  );

export const pathOf = (points: readonly (readonly [number, number])[]) =>
  `M ${points.map(([x, y]) => `${x.toFixed(8)} ${y.toFixed(8)}`).join(" L ")} Z`;

const circle = fc
  .tuple(between(0, 1), between(-0.25, 0.25), between(0.06, 0.2))
  .map(([x, y, r]) => `M ${x - r} ${y} A ${r} ${r} 0 0 1 ${x + r} ${y} A ${r} ${r} 0 0 1 ${x - r} ${y} Z`);

export const curve = fc
  .tuple(between(0, 0.3), between(-0.3, 0.3), between(0, 1), between(-0.3, 0.3), between(0.5, 1), between(-0.3, 0.3))
  .map(([ax, ay, bx, by, cx, cy]) => `M ${ax} ${ay} Q ${bx} ${by} ${cx} ${cy}`);

export const through = between(-0.25, 0.25).map((y) => `M 0 ${y} C 0.3 ${y + 0.1} 0.7 ${y - 0.1} 1 ${y}`);

export const filled = fc.oneof(polygon(between(0, 1), between(-0.2, 0.2), between(0.08, 0.25)).map(pathOf), circle);

const sizes = fc.oneof(
  { arbitrary: fc.constant({}), weight: 2 },
  { arbitrary: between(0.25, 0.5).map((to) => ({ to })), weight: 1 },
  { arbitrary: between(0.25, 0.5).map((alternate) => ({ alternate })), weight: 1 },
);

export const beads = fc
  .tuple(
    fc.record(
      {
        diameter: between(0.3, 0.5),
        pitch: between(0.9, 1.4),
        embed: between(0.3, 0.6),
        corners: fc.constantFrom("pass", "on", "split"),
        cornerAngle: between(15, 90, 0),
        junctions: fc.constantFrom("leave", "share"),
      },
      { requiredKeys: ["diameter"] },
    ),
    sizes,
  )
  .map(([run, size]) => ({ ...run, ...size }));

const height = between(0.2, 0.7);

export const region = fc.oneof(
  fc.record(
    {
      path: filled,
      height,
      round: fc.constantFrom(0, 0, 0.05, 0.15),
      beads: beads.map((run) => ({ ...run, on: "border" })),
    },
    { requiredKeys: ["path", "height"] },
  ),
  fc.record(
    {
      path: fc.oneof(filled, curve, through),
      ribbon: fc.record(
        { width: between(0.4, 0.8), join: fc.constantFrom("miter", "round"), ends: fc.constantFrom("butt", "round") },
        { requiredKeys: ["width"] },
      ),
      height,
      round: fc.constantFrom(0, 0.05),
      beads,
    },
    { requiredKeys: ["path", "ribbon", "height"] },
  ),
);

const section = fc.oneof(
  fc.record({ form: fc.constant("flat"), height, draft: between(0, 15), bevel: fc.constantFrom(0, 0.05) }),
  fc.record({ form: fc.constant("domed"), height, wall: between(0, 0.15) }),
  fc.record({ form: fc.constant("ridge"), slope: between(15, 60), nose: fc.constantFrom(0, 0.05) }),
  fc.record({ form: fc.constant("hollow"), height, dip: between(0.05, 0.15), round: fc.constantFrom(0, 0.05) }),
);

export const shaped = fc.oneof(
  fc.record({ path: filled, section }),
  fc.record({
    path: fc.oneof(filled, curve, through),
    ribbon: fc.record({ width: between(0.4, 0.8), join: fc.constantFrom("miter", "round") }),
    section,
  }),
);

export const cut = fc.oneof(
  fc.record({ path: filled, mode: fc.constant("pierced"), broken: fc.constantFrom(0, 0.08) }),
  fc.record({ path: filled, mode: fc.constant("sunk"), depth: between(0.1, 0.4), round: fc.constantFrom(0, 0.05) }),
  fc.record({ path: filled, mode: fc.constant("sunk"), section }),
);

export const symmetry = fc.constantFrom("p1", "p11g", "p1m1", "p2", "p11m", "p2mg", "p2mm");

const patternOf = (drawn: fc.Arbitrary<object>) =>
  fc.record({
    fit: fc.record({
      repeats: fc.oneof(fc.constant("auto"), fc.integer({ min: 3, max: 14 })),
      rows: fc.constantFrom(1, 1, 2),
      aspect: between(0.6, 1.5),
      hold: fc.constantFrom("tile", "band", "band"),
    }),
    symmetry,
    cover: fc.oneof({ arbitrary: fc.constant(360), weight: 2 }, { arbitrary: between(60, 330, 0), weight: 1 }),
    regions: fc.array(drawn, { maxLength: 2 }),
  });

const pattern = patternOf(region);

const beadRun = fc
  .tuple(
    fc.oneof(
      fc.constantFrom("rail", "seat-edge"),
      between(-1, 1).map((v) => ({ v })),
    ),
    beads,
  )
  .map(([along, run]) => ({ ...run, along }));

const designWith = (art: typeof pattern) =>
  fc.record(
    {
      annulet: fc.constant(1),
      size: between(15, 21).map((diameter) => ({ diameter })),
      tolerance: fc.constant(COARSE),
      profile,
      pattern: art,
      beads: fc.array(beadRun, { maxLength: 1 }),
      proud: fc.constant(true),
    },
    { requiredKeys: ["annulet", "size", "tolerance", "profile", "proud"] },
  );

/** Most can be built; some cannot. */
export const design = designWith(pattern);

/** With sections of every form, and regions that are sunk or pierced. */
export const carvedDesign = designWith(patternOf(fc.oneof(region, shaped, cut, cut)));
