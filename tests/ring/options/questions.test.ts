// Covers: src/ring/options/*, src/design/rule-set-schema.ts, src/union/kernels/catalogue.ts
/** Every public function about a ring refuses options that it does not know, in the same words. */
import {
  type AnnuletError,
  benchSheet,
  build,
  bvhKernel,
  checkDesign,
  fitDesign,
  flatTile,
  type Kernel,
  manifoldKernel,
  openRing,
  planBeads,
  ruleSets,
} from "annulet";
import { describe, expect, it } from "vitest";
import { readQuestion } from "../../../src/ring/options/questions.js";

const document = {
  annulet: 1,
  size: { diameter: 16 },
  tolerance: 0.1,
  profile: { width: 4, thickness: 2, outside: { form: "flat" } },
  pattern: {},
};

/** Each with whatever it is asked with. */
const functions: Readonly<Record<string, (options: never) => unknown>> = {
  build: (options) => build(document, options),
  checkDesign: (options) => checkDesign(document, options),
  benchSheet: (options) => benchSheet(document, options),
  fitDesign: (options) => fitDesign(document, options),
  flatTile: (options) => flatTile(document, options),
  planBeads: (options) => planBeads(document, options),
  openRing: (options) => openRing(document, options).design(),
  change: (options) => openRing(document).change(document, options).fit(),
};

for (const question of [
  "size",
  "fit",
  "profile",
  "beads",
  "stones",
  "tile",
  "solid",
  "warnings",
  "make",
  "report",
  "check",
  "allowances",
  "weights",
  "sprue",
  "printFigures",
  "sheet",
  "picture",
  "studio",
] as const) {
  Object.assign(functions, { [question]: (options: never) => openRing(document)[question](options) });
}
Object.assign(functions, {
  "partAt's asker": (options: never) => openRing(document).partAt({ point: [9, 0, 0], normal: [1, 0, 0] }, options),
  "partLines' asker": (options: never) => openRing(document).partLines({ path: "profile.bore" }, options),
  "tile's asker": (options: never) => openRing(document).tile({}, options),
  "picture's asker": (options: never) => openRing(document).picture({}, options),
});

const failureOf = async (question: () => unknown): Promise<AnnuletError> => {
  const settled = Promise.resolve().then(question);
  return settled.then(
    () => expect.unreachable("nothing was thrown"),
    (error) => error,
  );
};

describe.each(Object.entries(functions))("%s", (_, ask) => {
  it.each([null, 3, "draft", [], () => undefined])("takes no options that are no object: %s", async (options) => {
    const error = await failureOf(() => ask(options as never));
    expect(error).toMatchObject({ name: "AnnuletError", code: "option-invalid" });
  });

  it("takes no option that nobody reads", async () => {
    const error = await failureOf(() => ask({ swirl: 1 } as never));
    expect(error).toMatchObject({ name: "AnnuletError", code: "option-unknown", path: "swirl", value: 1 });
    expect(error.allowed?.length).toBeGreaterThan(3);
  });
});

describe("an option", () => {
  it.each<[object, object]>([
    [{ piece: "wax" }, { path: "piece", allowed: '"master", "cast", "finished"' }],
    [{ detail: "drft" }, { path: "detail", hint: 'did you mean "draft"?' }],
    [{ kernel: "manifld" }, { path: "kernel", hint: 'did you mean "manifold"?' }],
    [{ kernel: { name: "mine", union: () => undefined } }, { path: "kernel", message: /subtract, cut is missing/ }],
    [{ kernel: 3 }, { path: "kernel", value: 3 }],
    [{ wasm: { manifold: 7 } }, { path: "wasm.manifold", value: 7, allowed: expect.stringMatching(/address.*bytes/) }],
    [{ wasm: { manifld: "a.wasm" } }, { code: "option-unknown", path: "wasm.manifld" }],
    [{ maxBeads: Number.NaN }, { path: "maxBeads" }],
    [{ maxBeads: "many" }, { path: "maxBeads" }],
    [{ decimate: -1 }, { path: "decimate", allowed: "a number of at least 0" }],
    [{ print: { stance: "lieing" } }, { path: "print.stance", hint: 'did you mean "lying"?' }],
    [{ print: { lean: 3 } }, { code: "option-unknown", path: "print.lean" }],
    [{ files: "leaf.svg" }, { path: "files" }],
    [{ files: new Uint8Array(3) }, { path: "files" }],
    [{ files: { "leaf.svg": 3 } }, { path: 'files["leaf.svg"]', value: 3 }],
    [{ geometry: "yes" }, { path: "geometry", allowed: "true or false" }],
    [{ signal: true }, { path: "signal" }],
    [{ onProgress: {} }, { path: "onProgress", allowed: "a function" }],
    [{ limits: 3 }, { path: "limits" }],
    [{ peice: "cast" }, { code: "option-unknown", path: "peice", hint: 'did you mean "piece"?' }],
  ])(
    "of build that is wrong is told with its place: %o",
    async (options, { message, ...problem }: { message?: RegExp }) => {
      const error = await failureOf(() => build(document, options));
      expect(error).toMatchObject({ code: "option-invalid", ...problem });
      expect(error.message).toMatch(message ?? /./);
    },
  );

  it("is read with all others, before the document", async () => {
    const error = await failureOf(() => build("{", { piece: "wax", detail: "drft" } as object));
    expect(error.problems.map(({ path }) => path)).toEqual(["detail", "piece"]);
  });

  it("that is wrong in a setup is told by every question, and by the rings that it is changed into", async () => {
    const ring = openRing(document, { kernel: "bhv" as "bvh" });
    for (const ask of [() => ring.design(), () => ring.solid(), () => ring.change(document).fit()]) {
      expect((await failureOf(ask)).path).toBe("kernel");
    }
  });
});

describe("a kernel", () => {
  it("is named, or is one", () => {
    expect(readQuestion("setup", { kernel: "manifold" }).kernel).toBe(manifoldKernel);
    expect(readQuestion("setup", { kernel: "bvh" }).kernel).toBe(bvhKernel);
    const mine: Kernel = { ...manifoldKernel, name: "mine" };
    expect(readQuestion("setup", { kernel: mine }).kernel).toBe(mine);
  });
});

describe("rules", () => {
  it("may be a set of one's own with a limit for every rule", async () => {
    const [set] = ruleSets;
    expect(readQuestion("rules", { rules: set }).rules).toEqual(set);
    const { wall: _, ...others } = set.limits;
    const error = await failureOf(() => checkDesign(document, { rules: { ...set, limits: others } as never }));
    expect(error).toMatchObject({ code: "option-missing", path: "rules.limits.wall" });
    const named = await failureOf(() => checkDesign(document, { rules: "strict" }));
    expect(named).toMatchObject({ code: "rules-unknown" });
  });
});
