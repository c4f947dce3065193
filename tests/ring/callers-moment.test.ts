// Across: documents, options, files and meshes that their caller changes while a question is worked
/** What is asked belongs to the moment in which it was asked: what is changed right after the call changes nothing. */
import {
  type BuildOptions,
  benchSheet,
  build,
  checkDesign,
  decimate,
  encodeMesh,
  encodePng,
  fitDesign,
  flatTile,
  formats,
  type Mesh,
  openRing,
  planBeads,
  type Ring,
  type RingSetup,
  readMesh,
  ruleSets,
} from "annulet";
import { describe, expect, it } from "vitest";
import { box } from "../support/meshes.js";

/** The finished piece and the casting are other designs, so the document was read twice; its art comes from bytes. */
const documentOf = () => ({
  annulet: 1,
  name: "before",
  size: { diameter: 17 },
  tolerance: 0.1,
  profile: { width: 4, thickness: 1.8, outside: { form: "flat", edge: 0 } },
  pattern: {
    fit: { repeats: 6, hold: "band" },
    regions: [{ name: "block", svg: "block.svg", height: 0.4 }],
  },
  beads: [{ along: { v: 1.4 }, diameter: 0.5 }],
  casting: { shrinkage: 2, finishing: 0.05 },
  proud: true,
});

const filesOf = () => ({
  "block.svg": new TextEncoder().encode(
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 4"><path d="M1 1H3V3H1Z"/></svg>',
  ),
});

type Point = [number, number, number];

interface Asked {
  readonly document: ReturnType<typeof documentOf>;
  readonly setup: RingSetup & { files: ReturnType<typeof filesOf> };
  readonly asking: Pick<BuildOptions, "detail" | "onProgress">;
  readonly print: { stance: "lying" | "standing" };
  readonly place: { point: Point; normal: Point };
  readonly part: { path: string; names: string[] };
  readonly rules: (typeof ruleSets)[number];
  readonly picture: { width: number; height: number; view: { stance: "lying"; azimuth: number; elevation: number } };
}

const asked = (): Asked => ({
  document: documentOf(),
  setup: { files: filesOf(), limits: { seconds: 600 }, maxBeads: 500 },
  asking: { detail: "draft", onProgress: () => undefined },
  print: { stance: "lying" },
  place: { point: [0, 10, 1], normal: [0, 1, 0] },
  part: { path: "profile.outside", names: [] },
  rules: structuredClone(ruleSets[0]),
  picture: { width: 40, height: 30, view: { stance: "lying", azimuth: 30, elevation: 20 } },
});

/** Changes everything at every depth, in place: bytes, numbers, texts; functions fail if they are called. */
function spoil(value: unknown): void {
  if (value instanceof Uint8Array || value instanceof Float64Array || value instanceof Uint32Array) value.fill(7);
  else if (typeof value === "object" && value !== null) {
    for (const [key, inner] of Object.entries(value)) {
      spoil(inner);
      if (typeof inner === "object") continue;
      if (typeof inner === "function") Reflect.set(value, key, () => expect.unreachable("called what came later"));
      else Reflect.set(value, key, typeof inner === "number" ? inner * 3 : "spoilt");
    }
    Reflect.set(value, "added", true);
  }
}

function freeze<Value>(value: Value): Value {
  if (typeof value !== "object" || value === null || ArrayBuffer.isView(value)) return value;
  Object.values(value).forEach(freeze);
  return Object.freeze(value);
}

const question = (ask: (ring: Ring, given: Asked) => unknown) => (given: Asked) =>
  ask(openRing(given.document, given.setup), given);

/** Every public function that is asked about a design, with whatever it may be asked with. */
const functions: Readonly<Record<string, (given: Asked) => unknown>> = {
  build: ({ document, setup, asking, print }) => build(document, { ...setup, ...asking, print, piece: "master" }),
  checkDesign: ({ document, setup, asking, rules }) => checkDesign(document, { ...setup, ...asking, rules }),
  benchSheet: ({ document, setup, asking }) => benchSheet(document, { ...setup, ...asking, pictureWidth: 0 }),
  flatTile: ({ document, setup }) => flatTile(document, { ...setup, tiles: 2 }),
  planBeads: ({ document, setup }) => planBeads(document, setup),
  fitDesign: ({ document, setup: { limits } }) => fitDesign(document, limits === undefined ? {} : { limits }),
  "ring.design": question((ring) => ring.design()),
  "ring.size": question((ring) => ring.size()),
  "ring.fit": question((ring) => ring.fit()),
  "ring.profile": question((ring) => ring.profile()),
  "ring.beads": question((ring) => ring.beads()),
  "ring.stones": question((ring) => ring.stones()),
  "ring.tile": question((ring) => ring.tile({ tiles: 2 })),
  "ring.solid": question((ring, { asking }) => ring.solid({ ...asking, piece: "cast" })),
  "ring.warnings": question((ring, { asking }) => ring.warnings(asking)),
  "ring.report": question((ring, { asking, print }) => ring.report({ ...asking, print })),
  "ring.check": question((ring, { asking, rules }) => ring.check({ ...asking, rules })),
  "ring.allowances": question((ring, { asking }) => ring.allowances(asking)),
  "ring.weights": question((ring, { asking }) => ring.weights(asking)),
  "ring.partAt": question((ring, { asking, place }) => ring.partAt(place, asking)),
  "ring.partLines": question((ring, { asking, part }) => ring.partLines(part, asking)),
  "ring.sprue": question((ring, { asking }) => ring.sprue(asking)),
  "ring.printFigures": question((ring, { asking, print }) => ring.printFigures({ ...asking, print })),
  "ring.picture": question((ring, { asking, picture }) => ring.picture(picture, asking)),
  "ring.studio": question(async (ring, { asking }) => (await ring.studio(asking))({ width: 20, height: 15 })),
  "ring.change": question((ring, { document, setup }) => ring.change({ ...document, name: "after" }, setup).design()),
};

/** What came of it as text; what tells of functions, and how long it took, left out. */
const asText = (value: unknown) =>
  JSON.stringify(value, (key, inner) => {
    if (key === "timings") return undefined;
    return ArrayBuffer.isView(inner) ? [...(inner as Uint8Array)].join() : inner;
  }).replace(/<!--[\s\S]*?-->/g, "");

describe.each(Object.entries(functions))("%s", (_, ask) => {
  it("is of its caller's moment, and takes what is frozen", async () => {
    const given = asked();
    const spoilt = ask(given);
    spoil(given);
    const [late, frozen] = [asText(await spoilt), asText(await ask(freeze(asked())))];
    expect(late).not.toContain("spoilt");
    expect(late).toBe(frozen);
  });
});

describe("meshes and bytes", () => {
  const png = () => encodePng({ width: 1, height: 1, pixels: new Uint8Array(4) });
  const meshOf = (): Mesh => structuredClone(box());

  it.each(formats.map((format) => [format.name, format] as const))(
    "are written as %s as they were",
    async (_, format) => {
      const [mesh, options] = [meshOf(), { name: "before", thumbnail: png() }];
      const written = encodeMesh(format, mesh, options);
      spoil(mesh);
      spoil(options);
      const given = { name: "before", thumbnail: png() };
      expect(await written).toEqual(await encodeMesh(format, meshOf(), given));
      const ending = format.extensions[0];
      const bytes = await encodeMesh(format, meshOf(), given);
      const read = readMesh(bytes, `ring${ending}`);
      spoil(bytes);
      expect((await read).triangles).toHaveLength(meshOf().triangles.length);
    },
  );

  it("are thinned as they were", async () => {
    const [mesh, options] = [meshOf(), { deviation: 0.01 }];
    const thinned = decimate(mesh, options);
    spoil(mesh);
    spoil(options);
    expect(await thinned).toEqual(await decimate(meshOf(), { deviation: 0.01 }));
  });
});
