/**
 * Documents and options as a stranger might send them: values of no sense, and designs that are small to write and dear to
 * build.
 */
import fc from "fast-check";

/** Values that fit nowhere, or just not. */
const nonsense: fc.Arbitrary<unknown> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.constantFrom<unknown>(
      null,
      undefined,
      true,
      "",
      "0",
      "\u001b[2J",
      "__proto__",
      Number.NaN,
      Number.POSITIVE_INFINITY,
      -0,
      -1,
      0.5,
      1e-300,
      1e300,
      2 ** 53,
      1n,
      [],
      {},
      [[[[]]]],
      () => undefined,
      Symbol.iterator,
      new Date(0),
      new Map([[1, 2]]),
      new Uint8Array(3),
      /a/,
    ),
  },
  { weight: 1, arbitrary: fc.anything({ maxDepth: 2 }) },
);

/** Names that options have somewhere, and names that none has. */
const optionName = fc.constantFrom(
  ...[
    "signal",
    "onProgress",
    "onStage",
    "warn",
    "files",
    "kernel",
    "maxBeads",
    "decimate",
    "limits",
    "detail",
    "piece",
  ],
  ...[
    "print",
    "rules",
    "geometry",
    "tool",
    "pictureWidth",
    "part",
    "lane",
    "tiles",
    "width",
    "view",
    "zoom",
    "material",
  ],
  ...["peice", "Kernel", "__proto__", "constructor", "toString", "then", ""],
);

/** What options are worth trying with: what is allowed, and what nearly is. */
const nearlyRight = fc.constantFrom<unknown>(
  ...["draft", "drft", "full", "cast", "master", "wax", "bvh", "manifold", "Manifold", "tile", "ornament", "general"],
  ...[0, 1, 2, 640, -640, 0.01, 20_000],
  { triangles: 1 },
  { seconds: "9" },
  { stance: "lying", tilt: 3 },
  { stance: "standing" },
  { name: "mine", union: () => undefined },
  { "a.svg": "<svg/>" },
  { "a.svg": 3 },
  AbortSignal.abort(new Error("stopped")),
  { aborted: false },
);

export const hostileOptions: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 9, arbitrary: fc.dictionary(optionName, fc.oneof(nonsense, nearlyRight), { minKeys: 1, maxKeys: 4 }) },
  { weight: 1, arbitrary: nonsense },
);

/** A path that crosses itself again and again. */
const scribble = fc.tuple(fc.integer({ min: 3, max: 900 }), fc.integer({ min: 1, max: 1e6 })).map(([corners, seed]) => {
  let state = seed;
  const next = () => {
    // Lehmer's generator (Park and Miller, 1988).
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  const points = Array.from({ length: corners }, () => `${next().toFixed(3)} ${(next() - 0.5).toFixed(3)}`);
  return `M ${points.join(" L ")} Z`;
});

/** Paths that are dear, thin, far off or nothing. */
const path = fc.oneof(
  { weight: 3, arbitrary: scribble },
  {
    weight: 4,
    arbitrary: fc.constantFrom(
      "M 0.2 -0.3 H 0.8 V 0.3 H 0.2 Z",
      "M 0.1 0 C 0.3 0.6 0.7 0.6 0.9 0 C 0.7 -0.6 0.3 -0.6 0.1 0 Z",
      "M 0.1 0 L 0.9 0",
      "M 0 0 A 1e9 1e-9 45 1 0 1 0 Z",
      "M 0.5 0 L 0.5 0.00000001 L 0.50000001 0 Z",
      "M -1 -0.5 H 2 V 0.5 H -1 Z",
      `M 0 0 ${"h 0.001 v 0.001 ".repeat(400)} Z`,
    ),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom("M 0 0 Z", "M 0 0", "M 0 0 C 1e308 1e308 -1e308 1e308 1 0 Z", "M 1e-320 0 L NaN 0 Z"),
  },
  { weight: 1, arbitrary: fc.string({ unit: fc.constantFrom(..."MLHVCSQTAZmz 0123456789.-+e,"), maxLength: 60 }) },
);

const shape = fc.letrec<{ shape: unknown }>((tie) => ({
  shape: fc.oneof(
    { maxDepth: 25, depthSize: "large" },
    path.map((d) => ({ path: d })),
    fc.record({ turns: fc.constantFrom(2, 7, 360), of: tie("shape") }),
    fc.record({
      lattice: fc.record({ columns: fc.constantFrom(1, 8, 60), rows: fc.constantFrom(1, 60) }),
      of: tie("shape"),
    }),
    fc.record({
      glide: fc.constant([
        [0, 0],
        [1, 0],
      ]),
      by: fc.constantFrom(0, 0.5, 1000),
      of: tie("shape"),
    }),
    fc.record({ union: fc.array(tie("shape"), { minLength: 1, maxLength: 4 }) }),
    fc.record({ difference: fc.array(tie("shape"), { minLength: 2, maxLength: 3 }) }),
    fc.record({ shape: fc.constantFrom("a", "b", "\u001b[31m") }),
  ),
})).shape;

const art = fc.oneof(
  { weight: 3, arbitrary: path.map((d): object => ({ path: d })) },
  { weight: 1, arbitrary: shape.map((drawn): object => ({ shape: drawn })) },
);

const height = fc.constantFrom(0.01, 0.2, 0.5, 10);

const ribbon = fc.record({ width: fc.constantFrom(0.01, 0.3, 5), side: fc.constantFrom("centre", "inside") });

const more = fc.record(
  {
    name: fc.constantFrom("a", "\u001b]0;mine\u0007", "a".repeat(200)),
    ribbon,
    offset: fc.constantFrom(-0.3, 0.3),
  },
  { requiredKeys: [], noNullPrototype: true },
);

const region = fc.oneof(
  fc
    .tuple(
      art,
      fc.record({ height, round: fc.constantFrom(0, 0.05, 5) }, { requiredKeys: ["height"] }),
      more,
      fc.boolean(),
    )
    .map(([drawn, stands, rest, upright]) => ({ ...drawn, ...stands, ...rest, upright })),
  fc
    .tuple(art, height, more, fc.record({ diameter: fc.constantFrom(0.1, 0.5), pitch: fc.constantFrom(0.5, 1.1) }))
    .map(([drawn, high, rest, beads]) => ({ ...drawn, height: high, ...rest, beads })),
  fc.tuple(art, height, more).map(([drawn, depth, rest]) => ({ ...drawn, mode: "sunk", depth, ...rest })),
  fc.tuple(art, more).map(([drawn, rest]) => ({ ...drawn, mode: "pierced", ...rest })),
);

/** One of a few small bands, so that what is built is soon built. */
const band = {
  annulet: 1,
  size: { diameter: 15 },
  tolerance: 0.2,
  profile: { width: 4, thickness: 1.6, outside: { form: "flat", edge: 0 } },
  proud: true,
};

const pattern = fc.record(
  {
    fit: fc.record(
      {
        repeats: fc.constantFrom<unknown>("auto", 1, 2, 5, 40, 300, 1000),
        rows: fc.constantFrom(1, 2, 50),
        aspect: fc.constantFrom(0.05, 1, 20),
        hold: fc.constantFrom("tile", "band"),
      },
      { requiredKeys: [] },
    ),
    symmetry: fc.constantFrom("p1", "p11g", "p1m1", "p2", "p11m", "p2mg", "p2mm"),
    cover: fc.constantFrom(360, 359, 90, 10),
    cycle: fc.constantFrom(1, 2, 12),
    regions: fc.array(region, { minLength: 1, maxLength: 3 }),
  },
  { requiredKeys: ["regions"] },
);

const run = fc.record({
  along: fc.oneof(
    fc.constantFrom<unknown>("rail", "seat-edge", { v: 0 }, { v: 3 }),
    path.map((d) => ({ path: d })),
  ),
  diameter: fc.constantFrom(0.1, 0.3, 2),
  pitch: fc.constantFrom(0.5, 1.1, 3),
});

/** Sound by the schema, as a rule, and dear. */
const dear = fc
  .record(
    {
      pattern,
      beads: fc.array(run, { maxLength: 2 }),
      size: fc.constantFrom<unknown>({ diameter: 5 }, { system: "uk", value: "Z" }, { circumference: 180 }),
      name: fc.constantFrom("\u009b31m", "ring"),
      profile: fc.record({
        width: fc.constantFrom(0.5, 3, 40),
        thickness: fc.constantFrom(0.5, 2, 10),
        outside: fc.oneof(
          fc.record({ form: fc.constantFrom("flat", "domed", "channel", "knife", "bevelled", "concave") }),
          path.map((d) => ({ form: "free", path: d })),
        ),
      }),
      casting: fc.record({ shrinkage: fc.constantFrom(0, 2, 10), finishing: fc.constantFrom(0, 0.05, 0.5) }),
    },
    { requiredKeys: ["pattern"] },
  )
  .map((parts) => ({ ...band, ...parts }));

/** The same with one value of no sense somewhere. */
const spoilt = fc
  .tuple(dear, fc.array(fc.nat(), { minLength: 1, maxLength: 5 }), nonsense)
  .map(([document, way, value]) => {
    const copy: object = structuredClone(document);
    let at = copy;
    for (const [i, step] of way.entries()) {
      const keys = Object.keys(at);
      if (keys.length === 0) break;
      const key = keys[step % keys.length];
      const inner: unknown = Reflect.get(at, key);
      if (i === way.length - 1 || typeof inner !== "object" || inner === null) {
        Reflect.set(at, key, value);
        break;
      }
      at = inner;
    }
    return copy;
  });

/** Small rings that may well come out, with at most one thing dear or odd in each. */
const fair = fc
  .record({
    repeats: fc.constantFrom<unknown>("auto", 3, 7, 12, 300),
    d: fc.oneof(
      { weight: 3, arbitrary: fc.constant("M 0.2 -0.3 H 0.8 V 0.3 H 0.2 Z") },
      { weight: 1, arbitrary: path },
    ),
    stands: fc.constantFrom<object>(
      { height: 0.3 },
      { height: 0.2, round: 0.1 },
      { mode: "sunk", depth: 0.3 },
      { mode: "pierced" },
    ),
    beads: fc.array(run, { maxLength: 1 }),
    casting: fc.constantFrom<object>({}, { casting: { finishing: 0.05 } }),
    name: fc.constantFrom("ring", "\u001b[31m"),
  })
  .map(({ repeats, d, stands, beads, casting, name }) => ({
    ...band,
    ...casting,
    name,
    beads,
    pattern: { fit: { repeats, hold: "band" }, regions: [{ path: d, ...stands }] },
  }));

export const hostileDocument: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 3, arbitrary: fair },
  { weight: 5, arbitrary: dear },
  { weight: 4, arbitrary: spoilt },
  { weight: 1, arbitrary: fc.string({ unit: fc.constantFrom(...'{}[]":,0123456789ae. \\nu'), maxLength: 80 }) },
  { weight: 1, arbitrary: nonsense },
);
