// Covers: src/design/complain.ts, src/design/explain-problems.ts, src/design/forms.ts, src/design/document-limits.ts
// Covers: src/design/phrases.ts, src/design/place.ts, src/design/plain.ts, src/design/text.ts, src/design/tree.ts
// Covers: src/design/words.ts
import fc from "fast-check";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { AnnuletError, type Problem } from "../../src/base/errors.js";
import { MAX_DESIGN_LENGTH, MAX_DESIGN_VALUES } from "../../src/design/document-limits.js";
import { readDesign } from "../../src/design/read.js";
import { fullDesign, plainBand } from "./documents.js";

const SEED = 20261125;

/** Everything that readDesign complains of. */
function problemsOf(source: unknown): readonly Problem[] {
  try {
    readDesign(source);
  } catch (error) {
    expect(error).toBeInstanceOf(AnnuletError);
    return (error as AnnuletError).problems;
  }
  throw new Error("the document was taken");
}

/** The only problem there is. */
function problemOf(source: unknown): Problem {
  const problems = problemsOf(source);
  expect(problems).toHaveLength(1);
  return problems[0];
}

const withProfile = (change: object) => ({ ...plainBand, profile: { ...plainBand.profile, ...change } });
const withRegion = (region: object) => ({
  ...plainBand,
  pattern: { regions: [{ path: "M0 0", height: 1, ...region }] },
});

describe("a design that is right", () => {
  it.each([
    ["plain", plainBand],
    ["full", fullDesign],
  ])("is the same from text, from an object and from itself: %s", (_, input) => {
    const design = readDesign(input);
    expect(design).toMatchObject(input);
    expect(readDesign(JSON.stringify(input))).toEqual(design);
    expect(readDesign(JSON.stringify(design))).toEqual(design);
    expect(readDesign(design)).toEqual(design);
  });

  it("may leave fields undefined, and begin with a byte order mark", () => {
    expect(readDesign({ ...plainBand, pattern: undefined })).toEqual(readDesign(plainBand));
    expect(readDesign(`\uFEFF${JSON.stringify(plainBand)}`)).toEqual(readDesign(plainBand));
  });

  it("is not changed by later changes of its source", () => {
    const source = structuredClone(fullDesign) as unknown as { profile: { width: number } };
    const design = readDesign(source);
    source.profile.width = 1;
    expect(design.profile.width).toBe(fullDesign.profile.width);
  });
});

describe("text that is no JSON", () => {
  const cases: [string, string, number, number, RegExp][] = [
    ["nothing", " \n", 1, 1, /empty/],
    ["a comma too many in an object", '{\n  "annulet": 1,\n}', 2, 15, /comma before the closing }/],
    ["a comma too many in a list", "[1,\n]", 1, 3, /comma before the closing ]/],
    ["a line comment", '{\n  // it isn\'t "so\n  "annulet": 1}', 2, 3, /comments/],
    ["a block comment", '{"annulet": /* 1 */ 1}', 1, 13, /comments/],
    ["single quotes", "{'annulet': 1}", 1, 2, /no quote/],
    ["curly quotes", "{“annulet”: 1}", 1, 2, /no quote/],
    ["a key without quotes", "{annulet: 1}", 1, 2, /annulet is not expected/],
    ["a missing comma", '{"annulet": 1\n "name": "x"}', 2, 2, /not expected/],
    ["NaN", '{"annulet": NaN}', 1, 13, /NaN is not expected/],
    ["a second value", '{"annulet": 1} 5', 1, 16, /5 is not expected/],
    ["a bracket too many", '{"annulet": 1}}', 1, 15, /"}" is not expected/],
    ["a line that ends in a text", '{"name": "a\nb"}', 1, 12, /line ends inside a text/],
    ["a tab in a text", '{"name": "a\tb"}', 1, 12, /control character/],
    ["a wrong escape", '{"name": "a\\qb"}', 1, 12, /not expected/],
    ["Windows line ends", '{\r\n"annulet": 1,\r\n}', 2, 13, /comma/],
  ];
  it.each(cases)("%s is refused with its place", (_, text, line, column, message) => {
    const problem = problemOf(text);
    expect(problem).toMatchObject({ code: "json-malformed", line, column });
    expect(problem.message).toMatch(message);
    expect(problem.hint).toBeTruthy();
  });

  it("says of every beginning of a document that it ends too early, or is empty", () => {
    const text = JSON.stringify(fullDesign);
    for (let end = 0; end < text.length; end++) {
      const problem = problemOf(text.slice(0, end));
      expect(problem.code).toBe("json-malformed");
      expect(problem.line).toBe(1);
    }
    for (const start of ["{", "[", '{"a"', '{"a":', '{"a":1', '{"a":1,', "[1,", '["a', '["a"', "[-", "[1e"]) {
      expect(problemOf(start)).toMatchObject({
        message: "the document ends too early",
        line: 1,
        column: start.length + 1,
      });
    }
  });

  it("names both places of a key that is written twice", () => {
    const text = JSON.stringify(plainBand, null, 2).replace('"width": 5,', '"width": 5,\n    "width": 6,');
    const problem = problemOf(text);
    expect(problem).toMatchObject({ code: "duplicate-key", path: "profile.width", line: 9, column: 5 });
    expect(problem.message).toContain("line 8, column 5 and line 9, column 5");
    expect(problemOf(text.replace('"width": 6', '"\\u0077idth": 6')).code).toBe("duplicate-key");
  });

  it("is not read at all when it is too large", () => {
    const problem = problemOf(" ".repeat(MAX_DESIGN_LENGTH + 1));
    expect(problem.code).toBe("document-too-large");
    expect(problem.message).toContain(String(MAX_DESIGN_LENGTH));
    expect(problemOf(`[${"1,".repeat(MAX_DESIGN_VALUES)}1]`).code).toBe("document-too-large");
  });

  it.each([
    ["lists", "[".repeat(100_000)],
    ["closed lists", "[".repeat(100_000) + "]".repeat(100_000)],
    ["objects", '{"a":'.repeat(100_000)],
  ])("does not crash on deep nesting: %s", (_, text) => {
    expect(problemOf(text)).toMatchObject({ code: "value-invalid", line: 1 });
  });
});

describe("the version", () => {
  it("must be there", () => {
    const { annulet: _, ...rest } = plainBand;
    const problem = problemOf(rest);
    expect(problem).toMatchObject({ code: "document-version", path: "annulet", hint: 'add "annulet": 1' });
  });

  it("must not be a later one, whatever else such a document holds", () => {
    const problem = problemOf('{\n "annulet": 2, "facets": 3}');
    expect(problem).toMatchObject({ code: "document-version", value: 2, line: 2, column: 13 });
    expect(problem.message).toContain("reads version 1");
  });
});

describe("unknown keys", () => {
  const cases: [string, object, string, string | undefined, string][] = [
    ["at the top", { ...plainBand, sise: 1 }, "sise", "size", "material"],
    ["behind a default", withProfile({ bore: { form: "comfort", rice: 1 } }), "profile.bore.rice", "rise", "edge"],
    [
      "in a form",
      withProfile({ outside: { form: "channel", rail: 1, depth: 0.4, crwon: 0 } }),
      "profile.outside.crwon",
      "crown",
      "rail",
    ],
    [
      "in an optional part of a list",
      withRegion({ ribbon: { width: 1, sied: "inside" } }),
      "pattern.regions[0].ribbon.sied",
      "side",
      "ends",
    ],
    [
      "in none of the ways to give a size",
      { ...plainBand, size: { diametre: 17 } },
      "size.diametre",
      "diameter",
      "system",
    ],
    [
      "in one of the ways to give a size",
      { ...plainBand, size: { diameter: 17, unit: "mm" } },
      "size.unit",
      undefined,
      "diameter",
    ],
    ["with nothing near", withRegion({ engraving: "leaf.png" }), "pattern.regions[0].engraving", undefined, "path"],
    ["that every object inherits", { ...plainBand, constructor: 1 }, "constructor", undefined, "size"],
    ["that would set a prototype", JSON.parse('{"__proto__": {"proud": true}}'), "__proto__", undefined, "size"],
    ["that is no plain word", { ...plainBand, "my key": 1 }, '["my key"]', undefined, "size"],
  ];
  it.each(cases)("%s", (_, document, path, near, allowed) => {
    const problem = problemsOf(document).find(({ code }) => code === "unknown-key");
    expect(problem?.path).toBe(path);
    expect(problem?.hint).toBe(near === undefined ? undefined : `did you mean "${near}"?`);
    expect(problem?.allowed?.split(", ")).toContain(allowed);
  });

  it("are placed at the key", () => {
    const text = JSON.stringify({ ...plainBand, sise: 3 }, null, 2);
    expect(problemOf(text)).toMatchObject({ path: "sise", line: text.split("\n").length - 1, column: 3 });
  });

  it("leave prototypes alone", () => {
    problemsOf('{"annulet": 1, "__proto__": {"polluted": true}, "constructor": {"prototype": {"polluted": true}}}');
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });
});

describe("missing values", () => {
  const cases: [string, object, string, RegExp][] = [
    [
      "a field",
      { ...plainBand, profile: { width: 5, outside: { form: "flat" } } },
      "profile.thickness",
      /number above 0/,
    ],
    ["a union", { annulet: 1, profile: plainBand.profile }, "size", /{system, value} or {diameter}/],
    ["a discriminated union", { ...plainBand, profile: { width: 5, thickness: 2 } }, "profile.outside", /"channel"/],
    ["its discriminator", withProfile({ outside: {} }), "profile.outside.form", /"channel"/],
    ["the other half of a size", { ...plainBand, size: { value: 55 } }, "size.system", /"iso"/],
    ["any way to give a size", { ...plainBand, size: {} }, "size", /{circumference}/],
    [
      "a run's place",
      { ...plainBand, beads: [{ diameter: 0.4 }] },
      "beads[0].along",
      /"rail".*{path, unit\?, tiles\?, lane\?}/,
    ],
  ];
  it.each(cases)("%s", (_, document, path, allowed) => {
    const problem = problemOf(document);
    expect(problem).toMatchObject({ code: "value-missing", path });
    expect(problem.allowed).toMatch(allowed);
  });
});

describe("values that are not allowed", () => {
  const cases: [string, object, string, string, RegExp][] = [
    ["NaN", withProfile({ width: Number.NaN }), "profile.width", "is not a number", /number above 0/],
    ["infinity", withProfile({ width: Number.POSITIVE_INFINITY }), "profile.width", "is too large a number", /above 0/],
    ["text", withProfile({ width: "5" }), "profile.width", "is not a number, but text", /above 0/],
    ["null", withProfile({ width: null }), "profile.width", "is not a number, but null", /above 0/],
    ["zero", withProfile({ width: 0 }), "profile.width", "must be above 0", /above 0/],
    ["negative", withProfile({ width: -1 }), "profile.width", "must be above 0", /above 0/],
    ["too fine", { ...plainBand, tolerance: 0 }, "tolerance", "must be at least 0.001", /^a number from 0.001 to 0.2$/],
    ["too coarse", { ...plainBand, tolerance: 1 }, "tolerance", "must be at most 0.2", /0.001 to 0.2/],
    ["no name", { ...plainBand, name: "" }, "name", "must not be empty", /text of 1 to 200 characters/],
    ["a long name", { ...plainBand, name: "x".repeat(201) }, "name", "must have at most 200 characters", /200/],
    [
      "too many stones",
      { ...plainBand, stones: Array(201).fill(fullDesign.stones[0]) },
      "stones",
      "must have at most 200 entries",
      /200/,
    ],
    [
      "a list for an object",
      { ...plainBand, casting: [] },
      "casting",
      "must be an object {…}, not a list",
      /shrinkage\?/,
    ],
    [
      "a word for a switch",
      { ...plainBand, proud: "yes" },
      "proud",
      "must be true or false, not text",
      /true or false/,
    ],
    [
      "half a row",
      { ...plainBand, pattern: { fit: { rows: 1.5 } } },
      "pattern.fit.rows",
      "must be a whole number",
      /whole number from 1 to 50/,
    ],
    [
      "half a repeat",
      { ...plainBand, pattern: { fit: { repeats: 1.5 } } },
      "pattern.fit.repeats",
      "must be a whole number",
      /"auto" or a whole number from 1 to 1000/,
    ],
    [
      "no repeats",
      { ...plainBand, pattern: { fit: { repeats: 0 } } },
      "pattern.fit.repeats",
      "must be at least 1",
      /"auto"/,
    ],
    [
      "a size too small",
      { ...plainBand, size: { diameter: -3 } },
      "size.diameter",
      "must be at least 5",
      /number from 5 to 60/,
    ],
    [
      "a bare size",
      { ...plainBand, size: 54 },
      "size",
      "must be {system, value} or {diameter} or {circumference}, not a number",
      /{diameter}/,
    ],
    [
      "two sizes",
      { ...plainBand, size: { diameter: 17, circumference: 55 } },
      "size",
      "is given in 2 ways at once, {diameter} and {circumference}",
      /{system, value}/,
    ],
    [
      "two halves of sizes",
      { ...plainBand, size: { system: "iso", diameter: 17 } },
      "size",
      "is given in 2 ways at once, {system, value} and {diameter}",
      /{diameter}/,
    ],
    [
      "two places of a run",
      { ...plainBand, beads: [{ diameter: 1, along: { v: 1, path: "M0 0" } }] },
      "beads[0].along",
      "is given in 2 ways at once, {v} and {path, unit?, tiles?, lane?}",
      /"rail"/,
    ],
    [
      "a place out of reach",
      { ...plainBand, beads: [{ diameter: 1, along: { v: 99 } }] },
      "beads[0].along.v",
      "must be at most 50",
      /-50 to 50/,
    ],
    [
      "beads outside",
      withRegion({ beads: { diameter: 1, on: -3 } }),
      "pattern.regions[0].beads.on",
      "must be at least 0",
      /"centre", "border" or a number from 0 to 50/,
    ],
    [
      "a mode that is not there yet",
      withRegion({ mode: "inlaid" }),
      "pattern.regions[0].mode",
      'must be one of "raised", "sunk", "pierced"',
      /^"raised", "sunk", "pierced"$/,
    ],
    [
      "half a point",
      withProfile({ outside: { form: "free", points: [[0, 1], [1]] } }),
      "profile.outside.points[1]",
      "must have at least 2 entries",
      /\[a number, a number\]/,
    ],
  ];
  it.each(cases)("%s", (_, document, path, message, allowed) => {
    const problem = problemOf(document);
    expect(problem).toMatchObject({ code: "value-invalid", path, message });
    expect(problem.allowed).toMatch(allowed);
  });

  it("names the nearest of a list", () => {
    expect(problemOf({ ...plainBand, material: "ag952" }).hint).toBe('did you mean "ag925"?');
    expect(problemOf(withProfile({ outside: { form: "chanel" } }))).toMatchObject({
      path: "profile.outside.form",
      value: "chanel",
      hint: 'did you mean "channel"?',
    });
    expect(problemOf({ ...plainBand, beads: [{ diameter: 1, along: "rial" }] })).toMatchObject({
      path: "beads[0].along",
      hint: 'did you mean "rail"?',
    });
    expect(problemOf({ ...plainBand, size: { system: "ISO", value: 5 } }).hint).toBe('did you mean "iso"?');
  });

  it("passes on what refinements say", () => {
    expect(problemOf(withProfile({ outside: { form: "free" } })).message).toContain("either path or points");
  });

  it("places a number beyond all numbers", () => {
    const text =
      '{"annulet": 1, "size": {"diameter": 1e999},\n "profile": {"width": -1e999, "thickness": 2, "outside": {"form": "flat"}}}';
    expect(problemsOf(text)).toMatchObject([
      { path: "size.diameter", message: "is too large a number", line: 1, column: 37 },
      { path: "profile.width", message: "is too far below 0", line: 2, column: 23 },
    ]);
  });
});

describe("several problems", () => {
  it("are told together, in the order of the text", () => {
    const text =
      '{\n"annulet": 1,\n"name": "",\n"sise": 3,\n"profile": {\n"width": -1,\n"thickness": 2, "outside": {"form": "x"}}}';
    expect(problemsOf(text).map(({ code, path, line }) => [code, path, line])).toEqual([
      ["value-missing", "size", 1],
      ["value-invalid", "name", 3],
      ["unknown-key", "sise", 4],
      ["value-invalid", "profile.width", 6],
      ["value-invalid", "profile.outside.form", 7],
    ]);
  });

  const last = { code: "more-problems", message: "there are more than these 200 problems" };

  it.each([
    [200, { code: "unknown-key", path: "key199" }],
    [201, last],
    [150_000, last],
  ])("are cut short where they are too many to list: %i", (count, end) => {
    const keys = Object.fromEntries(Array.from({ length: count }, (_, i) => [`key${i}`, i]));
    const problems = problemsOf({ ...plainBand, ...keys });
    expect(problems).toHaveLength(Math.min(count, 201));
    expect(problems.at(-1)).toMatchObject(end);
  });

  it("are cut short in long lists, too", () => {
    const points = Array.from({ length: 50_000 }, () => ["x", "y"]);
    const problems = problemsOf(JSON.stringify(withProfile({ outside: { form: "free", points } })));
    expect(problems).toHaveLength(201);
    expect(problems.at(-1)).toMatchObject(last);
  });
});

describe("objects that are no documents", () => {
  const cyclic: Record<string, unknown> = { ...plainBand };
  cyclic.casting = cyclic;
  const deep = Array.from({ length: 100_000 }).reduce<unknown>((inner) => [inner], 0);
  const throwing = {
    get size(): never {
      throw new TypeError("no");
    },
  };
  const proxy = new Proxy(
    {},
    {
      ownKeys: () => {
        throw new TypeError("no");
      },
    },
  );
  const { proxy: revoked, revoke } = Proxy.revocable({}, {});
  revoke();
  const cases: [string, unknown, RegExp][] = [
    ["undefined", undefined, /undefined/],
    ["null", null, /an object/],
    ["a number", 5, /an object/],
    ["a list", [plainBand], /an object/],
    ["a function", () => plainBand, /a function/],
    ["a function inside", { ...plainBand, name: () => "x" }, /a function/],
    ["a symbol inside", { ...plainBand, name: Symbol("x") }, /a symbol/],
    ["a big integer inside", { ...plainBand, annulet: 1n }, /a big integer/],
    ["a date", { ...plainBand, name: new Date(0) }, /not a plain object/],
    ["a map", new Map(), /not a plain object/],
    ["a cycle", cyclic, /holds itself/],
    ["great depth", { ...plainBand, stones: deep }, /nested/],
    ["a getter that throws", throwing, /cannot be read/],
    ["a proxy that throws", proxy, /cannot be read/],
    ["a revoked proxy", revoked, /cannot be read/],
    ["a sparse list", { ...plainBand, beads: new Array(3) }, /undefined/],
    ["a list without end", { ...plainBand, beads: new Array(2 ** 32 - 1) }, /values/],
    ["a text without end", { ...plainBand, name: "x".repeat(MAX_DESIGN_LENGTH + 1) }, /characters/],
  ];
  it.each(cases)("%s", (_, source, message) => {
    const problems = problemsOf(source);
    expect(problems.map((problem) => problem.message).join("\n")).toMatch(message);
  });

  it("takes objects without a prototype", () => {
    expect(readDesign(Object.assign(Object.create(null), plainBand))).toEqual(readDesign(plainBand));
  });
});

describe("whatever is read", () => {
  /** A design, or an AnnuletError with codes and messages; a design reads back as itself. */
  function holds(source: unknown): void {
    tried++;
    let design: unknown;
    try {
      design = readDesign(source);
    } catch (error) {
      if (!(error instanceof AnnuletError)) throw error;
      expect(error.problems.length).toBeGreaterThan(0);
      for (const { code, message } of error.problems) {
        expect(code).toMatch(/^[a-z-]+$/);
        expect(message).not.toMatch(/undefined$|\[object/);
      }
      return;
    }
    taken++;
    expect(readDesign(JSON.stringify(design))).toEqual(design);
  }

  let tried = 0;
  let taken = 0;
  beforeEach(() => {
    tried = 0;
    taken = 0;
  });
  /** Both outcomes were met. */
  afterEach(() => {
    expect(taken).toBeGreaterThan(0);
    expect(tried).toBeGreaterThan(taken);
  });

  const odd = fc.oneof(
    fc.constantFrom<unknown>(
      Number.NaN,
      Number.POSITIVE_INFINITY,
      -0,
      1e300,
      "",
      "auto",
      "path",
      null,
      undefined,
      {},
      [],
    ),
    fc.double(),
    fc.jsonValue(),
    fc.anything({ withBigInt: true, withDate: true, withMap: true, withNullPrototype: true, withSparseArray: true }),
  );

  it("random values", () => {
    fc.assert(fc.property(odd, holds), { seed: SEED, numRuns: 300 });
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...Object.keys(fullDesign)), odd), (part) =>
        holds({ ...plainBand, ...part }),
      ),
      { seed: SEED, numRuns: 300 },
    );
  });

  it("random changes of a design", () => {
    const paths = [...pathsOf(fullDesign)];
    const change = fc.record({
      path: fc.constantFrom(...paths),
      how: fc.constantFrom("replace", "remove", "add", "copy"),
      key: fc.oneof(fc.constantFrom("__proto__", "constructor", "widht", "v", "path", "form"), fc.string()),
      from: fc.constantFrom(...paths),
      value: odd,
    });
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
        const document = structuredClone(fullDesign) as unknown as Container;
        for (const { path, how, key, from, value } of changes) {
          const owner = at(document, path.slice(0, -1));
          if (!isContainer(owner)) continue;
          const last = path[path.length - 1];
          if (how === "remove") delete owner[last];
          else if (how === "replace") owner[last] = value;
          else if (how === "copy") owner[last] = at(document, from);
          else Object.defineProperty(owner, key, { value, enumerable: true, configurable: true, writable: true });
        }
        holds(document);
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });

  it("random changes of its text", () => {
    const text = JSON.stringify(fullDesign, null, 1);
    const cut = fc.record({
      from: fc.nat(text.length),
      length: fc.nat(12),
      insert: fc.oneof(fc.constantFrom("", ",", "{", "]", '"', "/*", "'", "1e999", "-", "\n", "\\u00"), fc.string()),
    });
    fc.assert(
      fc.property(fc.array(cut, { minLength: 1, maxLength: 3 }), (cuts) => {
        holds(cuts.reduce((t, { from, length, insert }) => t.slice(0, from) + insert + t.slice(from + length), text));
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });

  type Container = Record<string | number, unknown>;

  function isContainer(value: unknown): value is Container {
    return typeof value === "object" && value !== null && !Object.isFrozen(value);
  }

  function at(document: unknown, path: readonly (string | number)[]): unknown {
    return path.reduce<unknown>((value, key) => (isContainer(value) ? value[key] : undefined), document);
  }

  function* pathsOf(value: object, path: readonly (string | number)[] = []): Generator<readonly (string | number)[]> {
    for (const [key, inner] of Object.entries(value)) {
      const here = [...path, Array.isArray(value) ? Number(key) : key];
      yield here;
      if (typeof inner === "object" && inner !== null) yield* pathsOf(inner, here);
    }
  }
});
