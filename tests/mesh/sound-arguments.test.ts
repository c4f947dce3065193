// Across: tools that take meshes, asked with what is none
import {
  checkSolid,
  checkWalls,
  decimate,
  encodeMesh,
  findBore,
  findUndersides,
  formats,
  layDown,
  type Mesh,
  measureMesh,
  openStudio,
  readMesh,
  takePicture,
  toBuffers,
} from "annulet";
import { describe, expect, it } from "vitest";
import { box } from "../support/meshes.js";

/** Each with the options that it may be given; of the others it takes none. */
const tools: Readonly<Record<string, (mesh: Mesh, options?: never) => unknown>> = {
  checkSolid,
  checkWalls,
  findBore,
  findUndersides,
  measureMesh,
  openStudio,
  takePicture,
  toBuffers,
  decimate: (mesh, options) => decimate(mesh, options === undefined ? { deviation: 0.01 } : options),
  encodeMesh: (mesh, options) => encodeMesh(formats[0], mesh, options === undefined ? { name: "box" } : options),
  layDown: (mesh) => layDown(mesh, { stance: "lying", tilt: 0 }),
};

const TAKE_OPTIONS = Object.keys(tools).filter((name) => !["measureMesh", "openStudio", "layDown"].includes(name));

const outcome = (run: () => unknown): Promise<unknown> =>
  Promise.resolve()
    .then(run)
    .catch((error: unknown) => error);

const noMeshes: readonly [string, unknown][] = [
  ["nothing", undefined],
  ["null", null],
  ["text", "box"],
  ["plain lists", { positions: [0, 0, 0], triangles: [0, 0, 0] }],
  ["half of one", { positions: new Float64Array(3) }],
  ["pairs", { positions: new Float64Array(4), triangles: new Uint32Array() }],
];

describe.each(Object.entries(tools))("%s", (_, tool) => {
  it.each(noMeshes)("refuses %s for a mesh", async (_name, mesh) => {
    expect(await outcome(() => tool(mesh as Mesh))).toMatchObject({ name: "AnnuletError", code: "mesh-malformed" });
  });
});

describe.each(TAKE_OPTIONS)("%s", (name) => {
  it.each([null, 3, "x"])("refuses %s for options", async (options) => {
    expect(await outcome(() => tools[name](box(), options as never))).toMatchObject({ code: "option-invalid" });
  });

  it("refuses an option that nobody reads", async () => {
    // A bore is looked for with what was measured, whatever else that has.
    if (name === "findBore") return;
    const error = await outcome(() => tools[name](box(), { swirl: 1, deviation: 1, name: "box" } as never));
    expect(error).toMatchObject({ name: "AnnuletError" });
    const problems = (error as { problems: readonly { code: string; path?: string }[] }).problems;
    expect(problems).toContainEqual(expect.objectContaining({ code: "option-unknown", path: "swirl" }));
  });
});

describe("what belongs beside a mesh", () => {
  it("is a format to write and bytes to read", async () => {
    const options = { name: "box" };
    expect(await outcome(() => encodeMesh("stl" as never, box(), options))).toMatchObject({ code: "format-unknown" });
    expect(await outcome(() => readMesh("solid" as never, "a.stl"))).toMatchObject({ code: "mesh-file-broken" });
    expect(await outcome(() => readMesh(new Uint8Array(9), 3 as never))).toMatchObject({ code: "format-unknown" });
    const material = { name: "ours", colour: [2, 0, 0], metal: true } as never;
    const wrong = await outcome(() => encodeMesh(formats[0], box(), { name: "box", material }));
    expect(wrong).toMatchObject({ code: "option-invalid", path: "material" });
  });

  it("is how a ring is laid down", async () => {
    expect(await outcome(() => layDown(box(), {} as never))).toMatchObject({ code: "option-missing", path: "stance" });
    const wrong = { stance: "leaning", tilt: 100 } as never;
    expect(await outcome(() => layDown(box(), wrong))).toMatchObject({
      problems: [{ path: "stance" }, { path: "tilt" }],
    });
    expect(await outcome(() => layDown(box(), null as never))).toMatchObject({ code: "option-missing" });
  });

  it("is what a finding of the bore is helped by", async () => {
    expect(await outcome(() => findBore(box(), { inertia: [1, 2, 3] as never }))).toMatchObject({ path: "inertia" });
  });
});
