/**
 * What the packed types look like to every way of finding them: node .ci/check-types.mjs. Packs what is built.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { checkPackage, createPackageFromTarballData } from "@arethetypeswrong/core";

/** The package is ES modules alone: CommonJS has to `await import` it, and what knows no `exports` finds no other paths. */
const BY_DESIGN = ["CJSResolvesToESM"];
const WITHOUT_EXPORTS = "node10";

/** Paths that are no modules. */
const NO_MODULES = ["./manifold.wasm", "./harfbuzz.wasm"];

const folder = mkdtempSync(join(tmpdir(), "annulet-types-"));
try {
  execFileSync("npm", ["pack", "--ignore-scripts", "--loglevel=error", "--pack-destination", folder], { stdio: "ignore" });
  const tarball = new Uint8Array(readFileSync(join(folder, readdirSync(folder)[0])));
  const { types, problems } = await checkPackage(createPackageFromTarballData(tarball), { excludeEntrypoints: NO_MODULES });
  if (types === false) throw new Error("the package has no types");
  const wrong = problems.filter(
    ({ kind, resolutionKind }) => !BY_DESIGN.includes(kind) && resolutionKind !== WITHOUT_EXPORTS,
  );
  for (const problem of wrong) console.error(JSON.stringify(problem));
  console.log(`${problems.length} remarks, ${wrong.length} of them wrong`);
  process.exitCode = wrong.length === 0 ? 0 : 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
