// Across: every public function, with arguments that are none
import * as annulet from "annulet";
import * as fit from "annulet/fit";
import * as node from "annulet/node";
import * as stones from "annulet/stones";
import * as three from "annulet/three";
import * as worker from "annulet/worker";
import { describe, expect, it } from "vitest";

const { AnnuletError, build, flatTile, formats, openRing, openStudio, readDesign, scaleSystem, sizeSystems } = annulet;

const document = {
  annulet: 1,
  size: { diameter: 15 },
  tolerance: 0.2,
  profile: { width: 4, thickness: 1.6, outside: { form: "flat", edge: 0 } },
};

const decorated = {
  ...document,
  pattern: { regions: [{ path: "M 0.3 -0.2 H 0.7 V 0.2 H 0.3 Z", height: 0.4 }] },
  beads: [{ along: "seat-edge", diameter: 0.6 }],
};

const scale: annulet.Scale = {
  name: "mm",
  title: "inner diameter",
  source: "ours",
  labels: "10 to 30",
  example: "17.5",
  first: 10,
  last: 30,
  steps: 10,
  read: Number,
  write: String,
  toCircumference: (place) => Math.PI * place,
  toPlace: (circumference) => circumference / Math.PI,
  charts: [{ source: "ours", entries: [[10, 31] as const, [30, 94] as const] }],
};

const { mesh } = await build(document, { detail: "draft" });
const stone = stones.stoneOf({ cut: "oval", size: 5 });
const tile = await flatTile(decorated);
const ring = openRing(document);
const small = { width: 8, height: 8 };
const takeSmall = openStudio(mesh) as Call;
const bytes = await annulet.encodeMesh(formats[0], mesh, { name: "ring" });

type Call = (...given: readonly unknown[]) => unknown;

/** Arguments that each function takes. */
const TAKEN: Readonly<Record<string, readonly unknown[]>> = {
  benchSheet: [document],
  build: [document, { detail: "draft" }],
  buildProfile: [readDesign(document).profile, 7.5, 0.05],
  bvhKernel: [],
  checkDesign: [document],
  checkSolid: [mesh, {}],
  checkWalls: [mesh, {}],
  connectRings: [new MessageChannel().port1],
  decimate: [mesh, { deviation: 0.01 }],
  defaultFont: [],
  designJsonSchema: [],
  drawTile: [tile, {}],
  encodeMesh: [formats[0], mesh, { name: "ring" }],
  encodePng: [{ width: 1, height: 1, pixels: new Uint8Array(4) }],
  explainField: ["size"],
  fileSource: ["."],
  findBore: [mesh, {}],
  findUndersides: [mesh, {}],
  fitDesign: [document, {}],
  flatTile: [document, {}],
  formatForFile: ["ring.stl", "stl", formats],
  layDown: [mesh, { stance: "lying", tilt: 45 }],
  listMotifs: [],
  manifoldKernel: [],
  massOf: [100, { density: 15.5 }],
  measureMesh: [mesh],
  openRing: [document, {}],
  stoneMesh: [stone, {}],
  stoneOf: [{ size: 3 }, {}],
  openStudio: [mesh],
  ownAlloy: [{ symbol: "own", density: 10 }, "alloys"],
  planBeads: [document, {}],
  readDesign: [document],
  readMesh: [bytes, "ring.stl"],
  reportJsonSchema: [],
  resolveSize: [{ system: "iso", value: 54 }, {}],
  revolvedSurface: [{ radius: 8, halfWidth: 2 }],
  scaleSystem: [scale],
  serveRings: [new MessageChannel().port1],
  sizeTable: [54, {}],
  studio: [undefined],
  takePicture: [mesh],
  toBufferGeometry: [mesh, {}],
  toBuffers: [mesh, {}],
  turntable: [annulet.views.lying, 2],
  "ring.change": [document, {}],
  "ring.tile": [{}, {}],
};

const systems = [...sizeSystems, scaleSystem(scale)].flatMap(({ name, circumferenceOf, spanOf, labelOf }) => [
  [`${name}.circumferenceOf`, circumferenceOf],
  [`${name}.spanOf`, spanOf ?? (() => undefined)],
  [`${name}.labelOf`, labelOf],
]) as readonly (readonly [string, Call])[];

const QUESTIONS = ["change", "size", "fit", "profile", "beads", "tile", "solid", "warnings"] as const;

const FUNCTIONS: readonly (readonly [string, Call])[] = [
  ...Object.entries({ ...annulet, ...fit, ...node, ...three, ...stones, ...worker }).filter(
    (entry): entry is [string, Call] => typeof entry[1] === "function" && entry[1] !== AnnuletError,
  ),
  ...systems,
  ...QUESTIONS.map(
    (name) => [`ring.${name}`, (...given: readonly unknown[]) => (ring[name] as Call)(...given)] as const,
  ),
  [
    "studio",
    (options = small) => takeSmall(typeof options === "object" && options ? { ...small, ...options } : options),
  ],
];

/** Of each kind of value one or two; strings and objects that stand where others belong. */
const WRONG: readonly unknown[] = [
  undefined,
  null,
  Number.NaN,
  -1,
  1e9,
  "x",
  "",
  true,
  {},
  [],
  [null],
  Symbol("x"),
  10n,
  Object.create(null),
  new Map(),
  () => 0,
];

/** What a caller is told, or undefined where the argument is taken. */
async function toldOf(call: () => unknown): Promise<unknown> {
  try {
    await call();
    return undefined;
  } catch (error) {
    return error;
  }
}

/**
 * The arguments with one of them wrong, and with one field of one of them wrong, but of documents, which have a test of their
 * own.
 */
function wrongly(taken: readonly unknown[]): readonly (readonly unknown[])[] {
  return taken.flatMap((right, at) => {
    const whole = Object.prototype.toString.call(right) !== "[object Object]" || right === document;
    const fields = whole ? [] : Object.keys(right as object);
    const put = (value: unknown) => taken.with(at, value);
    return WRONG.flatMap((wrong) => [
      put(wrong),
      ...fields.map((name) => put({ ...(right as object), [name]: wrong })),
    ]);
  });
}

/** What tells of nothing at once: a ring and a source of files when they are asked, a label by having none. */
const LATER = /^(ring\.|openRing|fileSource|layDown|.*\.(spanOf|labelOf))/;

describe("arguments that are none", () => {
  it.each(FUNCTIONS)("are told by %s", async (name, call) => {
    const known = Object.hasOwn(TAKEN, name) ? TAKEN[name] : [54];
    expect(Object.hasOwn(TAKEN, name) || name.includes(".")).toBe(true);
    const told = new Set<string>();
    for (const given of [[], ...wrongly(known)]) {
      const error = await toldOf(() => call(...given));
      if (error === undefined) continue;
      if (!(error instanceof AnnuletError)) throw error;
      expect(error.code).not.toBe("internal");
      told.add(error.code);
    }
    if (known.length > 0 && !LATER.test(name)) expect([...told]).not.toEqual([]);
  });
});
