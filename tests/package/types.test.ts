// Across: the types as they ship
/**
 * The types of the package in an app that has neither the libraries that annulet is made of nor types of three. Skipped
 * where it is not built: `npm run build`.
 */
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { installPackage } from "../support/installed.js";
import { problemsIn } from "../support/type-check.js";

const TYPES = fileURLToPath(new URL("../../dist/types/", import.meta.url));

/** What an app writes, with what it must not. */
const APP = `
import { type BuildOptions, build, type DesignInput, type MotifName, type Phase, type ProblemCode, AnnuletError } from "annulet";
import { resolveSize, type SizeSystemName } from "annulet/sizes";

const design: DesignInput = {
  annulet: 1,
  size: { system: "iso", value: 54 },
  profile: { width: 5, thickness: 1.8, outside: { form: "domed", rise: undefined } },
  material: "my-own",
};
const left: BuildOptions = { kernel: undefined, signal: undefined, detail: undefined, files: undefined, wasm: undefined };
export async function make(): Promise<Float32Array | undefined> {
  const { geometry, report, design: filled } = await build(design, { ...left, geometry: true, kernel: "bvh" });
  const width: number = filled.profile.width + report.band.width;
  resolveSize({ system: "mine", value: width });
  return geometry?.normals;
}
export const names: [SizeSystemName, MotifName, ProblemCode, Phase] = ["uk", "fan", "not-closed", "union"];
export const told = (error: unknown) => error instanceof AnnuletError && error.code === "mine";
// @ts-expect-error there is no such system
export const system: SizeSystemName = "mars";
// @ts-expect-error there is no such form
export const outside: DesignInput["profile"]["outside"] = { form: "flatt" };
// @ts-expect-error a width is a number
export const width: DesignInput["profile"]["width"] = "5";
// @ts-expect-error nobody reads it
export const options: BuildOptions = { swirl: 1 };
`;

let folder: string;

beforeAll(() => {
  if (!existsSync(TYPES)) return;
  folder = mkdtempSync(join(tmpdir(), "annulet-typed-"));
  installPackage(folder);
});

afterAll(() => {
  if (folder !== undefined) rmSync(folder, { recursive: true, force: true });
});

/** Every file of types that ships. */
function shipped(): string[] {
  return readdirSync(TYPES, { recursive: true, encoding: "utf8" }).filter((path) => path.endsWith(".d.ts"));
}

describe.skipIf(!existsSync(TYPES))("types as they ship", () => {
  it.each(["bundler", "nodenext"] as const)(
    "are clean in an app that checks libraries too, found by %s",
    (resolution) => {
      expect(problemsIn(APP, { folder, resolution, libraries: true })).toEqual([]);
    },
  );

  it("name no package, but three in the paths for it, and are nowhere any", () => {
    const named = new Map<string, string[]>();
    for (const path of shipped()) {
      const text = readFileSync(join(TYPES, path), "utf8");
      const packages = ts.preProcessFile(text).importedFiles.map(({ fileName }) => fileName);
      for (const name of packages.filter((one) => !one.startsWith(".")))
        named.set(name, [...(named.get(name) ?? []), path]);
      const visit = (node: ts.Node): void => {
        expect(node.kind === ts.SyntaxKind.AnyKeyword, `any in ${path}`).toBe(false);
        ts.forEachChild(node, visit);
      };
      visit(ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true));
    }
    expect([...named.keys()]).toEqual(["three"]);
    const others = named.get("three")?.filter((path) => !path.startsWith("view/"));
    expect(others).toEqual(["output/files/geometry.d.ts"]);
  });

  it("tell what every field of the filled document means, of its shapes too", () => {
    const bare: string[] = [];
    const look = (path: string) => {
      const source = ts.createSourceFile(path, readFileSync(join(TYPES, path), "utf8"), ts.ScriptTarget.Latest, true);
      let fields = 0;
      const visit = (node: ts.Node): void => {
        if (ts.isPropertySignature(node)) {
          fields++;
          if (!ts.getJSDocCommentsAndTags(node).some(({ comment }) => comment))
            bare.push(`${path} ${node.name.getText()}`);
        }
        ts.forEachChild(node, visit);
      };
      visit(source);
      return fields;
    };
    expect(look("design/schema.d.ts")).toBeGreaterThan(400);
    for (const path of shipped().filter((one) => one.startsWith("design/shapes/"))) look(path);
    expect(bare).toEqual([]);
  });

  it("tell in editors what a field of a design means", () => {
    const text = readFileSync(join(TYPES, "design/design-input.d.ts"), "utf8");
    expect(text).toMatch(/\/\*\* Width along the finger axis, mm[^*]*\*\/\s+readonly width: number;/);
  });
});
