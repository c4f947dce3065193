// Across: all of src and tests
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { findUnmirrored, holdsCode, matches, readHead, valuesImported } from "./support/mirrors.js";

const ROOT = new URL("../", import.meta.url);

function filesUnder(folder: string): [string, string][] {
  return readdirSync(new URL(`${folder}/`, ROOT), { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts") && !path.endsWith(".d.ts"))
    .map((path) => `${folder}/${path.replaceAll("\\", "/")}`)
    .sort()
    .map((path) => [path, readFileSync(new URL(path, ROOT), "utf8")]);
}

describe("tests of src", () => {
  it("stand at the mirrored path of each file, or say that they cover it", () => {
    expect(findUnmirrored(new Map([...filesUnder("src"), ...filesUnder("tests")]))).toEqual([]);
  });
});

describe("the finder of files without a test", () => {
  const code = "export const a = 1;";
  const find = (files: Record<string, string>) => findUnmirrored(new Map(Object.entries(files)));
  const fooled: [string, Record<string, string>, RegExp[]][] = [
    ["a file with its mirrored test", { "src/a/b.ts": code, "tests/a/b.test.ts": "" }, []],
    ["a file without", { "src/a/b.ts": code }, [/^src\/a\/b\.ts has no test/]],
    [
      "a test of the same name in another folder",
      { "src/a/b.ts": code, "tests/b.test.ts": "// Across: b" },
      [/^src\/a\/b\.ts has no test/],
    ],
    [
      "a file covered through two others",
      {
        "src/a/b.ts": code,
        "src/a/index.ts": 'export * from "./b.js";',
        "tests/help.ts": 'import { a } from "../src/a/index.js";',
        "tests/a/all.test.ts": '// Covers: src/a/*\nimport "../help.js";',
      },
      [],
    ],
    [
      "a file that the test knows by its types alone",
      {
        "src/a/b.ts": code,
        "tests/a/all.test.ts": '// Covers: src/a/b.ts\nimport type { B } from "../../src/a/b.js";',
      },
      [/covers src\/a\/b\.ts, which it does not import/, /^src\/a\/b\.ts has no test/],
    ],
    [
      "a late import",
      { "src/a/b.ts": code, "tests/a/all.test.ts": '// Covers: src/a/b.ts\nawait import("../../src/a/b.js");' },
      [],
    ],
    [
      "the library by its name",
      {
        "src/index.ts": 'export { a } from "./a/b.js";',
        "src/a/b.ts": code,
        "tests/a/all.test.ts": '// Covers: src/a/b.ts\nimport { a } from "annulet";',
      },
      [],
    ],
    [
      "a pattern whose files have their own tests",
      {
        "src/a/b.ts": code,
        "tests/a/b.test.ts": "",
        "tests/a/all.test.ts": '// Covers: src/a/*\nimport "../../src/a/b.js";',
      },
      [/covers src\/a\/\*, where no file is without/],
    ],
    [
      "a pattern that goes one folder too far",
      { "src/a/b/c.ts": code, "tests/a/all.test.ts": '// Covers: src/a/*\nimport "../../src/a/b/c.js";' },
      [/where no file is without/, /^src\/a\/b\/c\.ts has no test/],
    ],
    [
      "a line that is not in the head",
      { "src/a/b.ts": code, "tests/a/all.test.ts": 'import "../../src/a/b.js";\n// Covers: src/a/*' },
      [/^tests\/a\/all\.test\.ts mirrors no file/, /^src\/a\/b\.ts has no test/],
    ],
    ["a test whose file is gone", { "tests/a/gone.test.ts": "" }, [/gone\.test\.ts mirrors no file/]],
    ["a file of types only", { "src/a/b.ts": "export interface B { readonly c: number }" }, []],
  ];
  for (const [name, files, expected] of fooled) {
    it(`judges ${name}`, () => {
      const found = find(files);
      expect(found).toHaveLength(expected.length);
      expected.forEach((pattern, i) => {
        expect(found[i]).toMatch(pattern);
      });
    });
  }

  it("reads several lines and patterns of a head, and no other comment", () => {
    const text =
      "/** Covers: src/no.ts */\n// Covers: src/a.ts, src/b/*\n// Covers: src/c/**\nimport 'd';\n// Covers: e";
    expect(readHead(text)).toEqual({ covers: ["src/a.ts", "src/b/*", "src/c/**"], across: undefined });
    expect(readHead("// Across: rooms at once\n")).toEqual({ covers: [], across: "rooms at once" });
  });

  it("takes a dot in a pattern as a dot, and one star for one folder", () => {
    expect(matches("src/a.ts", "src/axts")).toBe(false);
    expect(matches("src/a/*", "src/a/b.ts")).toBe(true);
    expect(matches("src/a/*", "src/a/b/c.ts")).toBe(false);
    expect(matches("src/a/**", "src/a/b/c.ts")).toBe(true);
    expect(matches("src/a/**", "src/ab.ts")).toBe(false);
  });

  it("tells code from lists of exports and types", () => {
    expect(holdsCode("a.ts", 'import { b } from "c";\nexport { b };\nexport * from "d";\nexport type E = 1;')).toBe(
      false,
    );
    expect(holdsCode("a.ts", 'import { b } from "c";\nexport const all = [b];')).toBe(true);
  });

  it("follows values and leaves types, whichever way they are written", () => {
    const files = new Set(["b", "c", "d", "e", "f", "g"].map((name) => `src/${name}.ts`));
    const text = [
      'import { type B } from "./b.js";',
      'import { type T, c } from "./c.js";',
      'export type { D } from "./d.js";',
      'export { type E } from "./e.js";',
      'import "./f.js";',
      'type G = import("./g.js").G;',
    ].join("\n");
    expect(valuesImported("src/a.ts", text, files)).toEqual(["src/c.ts", "src/f.ts"]);
  });
});
