// Across: opened rings changed step by step
/**
 * Random walks of edits: a ring that is changed step by step and one that is opened anew are the same, byte by byte.
 */
import { describe, expect, it } from "vitest";
import { canonicalText } from "../../src/base/canonical.js";
import { AnnuletError } from "../../src/base/errors.js";
import { type OpenRing, openInside } from "../../src/ring/open-ring.js";

/** 500 have been walked; a run that is one of many takes fewer. */
const WALKS = Number(process.env.ANNULET_WALKS ?? 100);
const SEED = Number(process.env.ANNULET_SEED ?? 20261128);

/** A generator of Park and Miller: 0 to 1. */
function generator(seed: number): () => number {
  let state = seed % 2147483647 || 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

interface Region {
  path?: string;
  svg?: string;
  [field: string]: unknown;
}

interface Document {
  pattern?: { regions: Region[]; fit: Record<string, unknown>; [field: string]: unknown };
  beads: Record<string, unknown>[];
  profile: Record<string, unknown>;
  [field: string]: unknown;
}

interface State {
  readonly document: Document;
  readonly files: Record<string, string>;
}

type Random = () => number;
const among = <Value>(random: Random, values: readonly Value[]): Value => values[Math.floor(random() * values.length)];
const between = (random: Random, low: number, high: number) => Number((low + (high - low) * random()).toFixed(3));

const PATHS = [
  "M 0.1 0 L 0.3 0.15 L 0.45 0 L 0.3 -0.15 Z",
  "M 0.2 0.05 L 0.4 0.25 L 0.45 0.06 Z",
  "M 0.6 -0.1 H 0.9 V 0.1 H 0.6 Z",
  "M 0.3 -0.3 H 0.7 V -0.2 H 0.3 Z",
];
const SYMMETRIES = ["p1", "p11g", "p1m1", "p2", "p11m", "p2mg", "p2mm"];

function region(random: Random): Region {
  const mode = among(random, ["raised", "raised", "raised", "sunk", "pierced"]);
  const drawn: Region =
    random() < 0.15 ? { svg: "a.svg", unit: "mm", place: { fit: [1, 1] } } : { path: among(random, PATHS) };
  if (mode === "pierced") return { ...drawn, mode };
  if (mode === "sunk") return { ...drawn, mode, depth: between(random, 0.1, 0.3) };
  const beads = random() < 0.3 ? { beads: { diameter: between(random, 0.3, 0.45), on: "border" } } : {};
  return { ...drawn, height: between(random, 0.2, 0.5), round: among(random, [0, 0, 0.04]), ...beads };
}

const square = (side: number) =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><rect width="${side}" height="${side}"/></svg>`;

function start(random: Random): State {
  const outside = among(random, [
    { form: "channel", rail: 0.8, depth: 0.6, edge: 0 },
    { form: "flat", edge: 0 },
  ]);
  const document: Document = {
    annulet: 1,
    size: { diameter: 17 },
    tolerance: 0.15,
    profile: { width: 5, thickness: 1.8, bore: { form: "flat", edge: 0 }, outside },
    pattern: { fit: { repeats: 5, hold: "band" }, symmetry: among(random, SYMMETRIES), regions: [region(random)] },
    beads: [],
    proud: true,
  };
  return { document, files: { "a.svg": square(6) } };
}

type Edit = (document: Document, random: Random, files: Record<string, string>) => void;

const onPattern =
  (edit: (pattern: NonNullable<Document["pattern"]>, random: Random) => void): Edit =>
  ({ pattern }, random) => {
    if (pattern !== undefined) edit(pattern, random);
  };

const onRegion = (edit: (region: Region, random: Random) => void): Edit =>
  onPattern(({ regions }, random) => {
    if (regions.length > 0) edit(among(random, regions), random);
  });

const EDITS: Readonly<Record<string, Edit>> = {
  name: (d, random) => (d.name = among(random, ["one", "two"])),
  material: (d, random) => (d.material = among(random, ["ag925", "au750-yellow"])),
  size: (d, random) => (d.size = { diameter: among(random, [17, 17.5]) }),
  tolerance: (d, random) => (d.tolerance = among(random, [0.15, 0.2])),
  thickness: (d, random) => (d.profile.thickness = among(random, [1.8, 2])),
  outside: (d, random) =>
    (d.profile.outside = among(random, [
      { form: "flat", edge: 0 },
      { form: "channel", rail: 0.8, depth: 0.6, edge: 0 },
      { form: "domed", rise: 0.4, edge: 0 },
    ])),
  finishing: (d, random) => (d.casting = among(random, [undefined, { shrinkage: 1.5 }, { finishing: 0.05 }])),
  "height or depth": onRegion((one, random) => {
    if (one.height !== undefined) one.height = between(random, 0.2, 0.5);
    if (one.depth !== undefined) one.depth = between(random, 0.1, 0.3);
  }),
  path: onRegion((one, random) => {
    if (one.path !== undefined) one.path = among(random, PATHS);
  }),
  beads: onRegion((one, random) => {
    if (one.mode === undefined)
      one.beads = random() < 0.3 ? undefined : { diameter: between(random, 0.3, 0.45), on: "border" };
  }),
  "a region more": onPattern(({ regions }, random) => {
    regions.splice(Math.floor(random() * (regions.length + 1)), 0, region(random));
    regions.length = Math.min(regions.length, 3);
  }),
  "a region less": onPattern(({ regions }) => void regions.shift()),
  "another order": onPattern(({ regions }) => void regions.reverse()),
  symmetry: onPattern((pattern, random) => (pattern.symmetry = among(random, SYMMETRIES))),
  repeats: onPattern((pattern, random) => (pattern.fit = { repeats: among(random, [4, 5]), hold: "band" })),
  cover: onPattern((pattern, random) => (pattern.cover = among(random, [undefined, 360, 90]))),
  "a bead run": (d, random) =>
    (d.beads = among(random, [
      [],
      [{ along: "rail", diameter: 0.6 }],
      [{ along: { v: 0.5 }, diameter: 0.5 }],
      [{ along: { path: "M 0 0.3 H 1" }, diameter: 0.4 }],
    ])),
  "no pattern": (d) => (d.pattern = undefined),
  "another design": (d, random) => Object.assign(d, start(random).document),
  "a file": (_, random, files) => (files["a.svg"] = square(among(random, [3, 6]))),
};

/** Every edit, those of one thing in a pattern more often: there parts of a stage's work are taken over. */
const CHOICE = [...Object.keys(EDITS), ...Array.from({ length: 4 }, () => ["height or depth", "path", "beads"]).flat()];

/** What an answer comes to: a text, or the problems that it fails with. */
async function outcome(answer: Promise<unknown>): Promise<string> {
  try {
    return canonicalText(plain(await answer));
  } catch (error) {
    if (error instanceof AnnuletError) return canonicalText(plain(error.problems));
    throw error;
  }
}

/** Meshes and other arrays as lists, functions left out. */
function plain(value: unknown): unknown {
  if (ArrayBuffer.isView(value))
    return Buffer.from(value.buffer, value.byteOffset, value.byteLength).toString("base64");
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== "object" || value === null) return typeof value === "function" ? "function" : value;
  const entries = Object.entries(value).filter(([key]) => key !== "timings");
  return Object.fromEntries(entries.map(([key, inner]) => [key, plain(inner)]));
}

const QUESTIONS: Readonly<Record<string, (ring: OpenRing) => Promise<unknown>>> = {
  "mesh and report": async (ring) => {
    const { mesh, report } = await ring.make({ detail: "draft" });
    return { mesh, report };
  },
  tile: (ring) => ring.tile(),
  beads: (ring) => ring.beads(),
};

describe("a ring that is changed step by step", () => {
  it(`is the same as one opened anew, over ${WALKS} walks from seed ${SEED}`, { timeout: 900_000 }, async () => {
    const random = generator(SEED);
    let ring: OpenRing | undefined;
    const came = { built: 0, refused: 0, worked: 0, anew: 0 };
    let counting: "worked" | "anew" = "worked";
    const onStage = () => came[counting]++;
    for (let walk = 0; walk < WALKS; walk++) {
      const { document, files } = start(random);
      const told: string[] = [JSON.stringify(document)];
      for (let step = 0, steps = 1 + Math.floor(3 * random()); step <= steps; step++) {
        const edit = among(random, CHOICE);
        if (step > 0) EDITS[edit](document, random, files);
        told.push(edit);
        const setup = { files: { ...files }, onStage };
        const next: OpenRing = ring === undefined ? openInside(document, setup) : ring.change(document, setup);
        ring = next;
        // Some steps go by without a question, some are only looked at flat.
        const asked = among(random, [...Object.keys(QUESTIONS), ...(step === 0 ? ["mesh and report"] : ["nothing"])]);
        if (asked !== "nothing") await outcome(QUESTIONS[asked](next));
      }
      for (const [name, question] of Object.entries(QUESTIONS)) {
        counting = "worked";
        const changed = await outcome(question(ring as OpenRing));
        counting = "anew";
        const anew = await outcome(question(openInside(document, { files, onStage })));
        const where = `walk ${walk} of seed ${SEED}, ${name}, after ${told.join(" / ")}: ${JSON.stringify(document)}`;
        if (changed !== anew) throw new Error(`not the same: ${where}`);
        if (name === "mesh and report") came[changed.includes('"mesh":') ? "built" : "refused"]++;
        counting = "worked";
      }
    }
    // Most walks end in a ring, some in a refusal, and much is taken over.
    expect(came.built).toBeGreaterThan(WALKS / 2);
    if (WALKS >= 100) expect(came.refused).toBeGreaterThan(0);
    expect(came.worked).toBeLessThan(came.anew);
    console.info(JSON.stringify(came));
  });
});
