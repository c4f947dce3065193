/**
 * Makes, pictures and checks a design again each time it or one of its files is saved.
 */

import { showBytes } from "../disk/read-file.js";
import {
  AnnuletError,
  type DesignCheck,
  encodePng,
  type Finding,
  formatForFile,
  type Limits,
  openRing,
  type Report,
  type Ring,
} from "../index.js";
import { densitySpan, fileOptionsOf, showGrams } from "../toolbox/index.js";
import { filesBeside, pathsBeside } from "./design-folder.js";
import type { DesignOptions } from "./design-options.js";
import { type Io, print, say } from "./io.js";
import { namesIn, openDesign } from "./open-design.js";
import { type Output, writeOutputs } from "./output-files.js";
import { sayProblems } from "./say-problems.js";
import { fixed } from "./show.js";
import { startProgress } from "./show-progress.js";
import { stampOf, waitForChange } from "./wait-for-change.js";
import { sayWarnings } from "./warnings.js";

/** What is made at each save. */
export interface Watched {
  /** Of the design. */
  readonly path: string;
  /** Meshes and pictures. */
  readonly outputs: readonly string[];
  readonly draft: boolean;
  /** What is put into the design first. */
  readonly changes?: DesignOptions;
  /** What each making may cost. Default: as the library's. */
  readonly limits?: Partial<Limits>;
}

/**
 * Works until the signal comes; a design with errors is told of, and looked at again when it is saved.
 *
 * @throws the signal's reason
 */
export async function watchDesign(watched: Watched, io: Io, signal?: AbortSignal): Promise<never> {
  const { path } = watched;
  let ring: Ring | undefined;
  let paths: readonly string[] = [path];
  for (;;) {
    let seen = stampOf(paths);
    try {
      const { document, targets } = await openDesign(path, watched.outputs, io, watched.changes ?? {});
      paths = [path, ...pathsBeside(namesIn(document), path).values()];
      seen = stampOf(paths);
      ring = ring?.change(document) ?? openRing(document, { files: filesBeside(path), limits: watched.limits });
      await makeOnce(ring, targets, watched, io, signal);
    } catch (error) {
      if (!(error instanceof AnnuletError)) throw error;
      sayProblems(io, error);
    }
    say(io, `watching ${path}; Ctrl-C ends it`);
    await waitForChange(paths, seen, signal);
  }
}

/** Whether an output is a picture. */
export function isPicture(output: string): boolean {
  return output.toLowerCase().endsWith(".png");
}

type Targets = Awaited<ReturnType<typeof openDesign>>["targets"];

async function makeOnce(ring: Ring, targets: Targets, watched: Watched, io: Io, signal?: AbortSignal): Promise<void> {
  const start = performance.now();
  const progress = startProgress(io, false);
  const asking = {
    signal,
    detail: watched.draft ? "draft" : "full",
    onProgress: ({ stage, share }: { stage: string; share: number }) => progress.update(stage, share),
  } as const;
  try {
    const made = await ring.make(asking);
    const picture = targets.some(({ path }) => isPicture(path)) ? await ring.picture({}, asking) : undefined;
    const check = await ring.check(asking);
    progress.stop();
    const outputs = targets.map((target): Output => {
      if (picture !== undefined && isPicture(target.path)) return { target, chunks: () => [encodePng(picture)] };
      const format = formatForFile(target.path);
      return { target, chunks: () => format.write(made.mesh, fileOptionsOf(made, format)) };
    });
    const written = await writeOutputs(outputs);
    sayWarnings(io, made.report.warnings);
    print(io, `${describe(made.report, check)}; ${fixed((performance.now() - start) / 1000, 1)} s`);
    for (const { severity, message } of check.findings) print(io, `  ${severity}: ${message}`);
    for (const { path, size } of written) print(io, `  written: ${path} (${showBytes(size)})`);
  } finally {
    progress.stop();
  }
}

function describe({ name, closed, triangles, volume, mass, weights }: Report, { findings }: DesignCheck): string {
  const masses = Object.entries(mass).map(
    ([symbol, g]) => `${showGrams(g, densitySpan(weights, symbol))} g in ${symbol}`,
  );
  return [
    `${name}: ${closed ? "closed" : "NOT closed"}, ${triangles} triangles, ${fixed(volume)} mm³`,
    ...masses,
    `check: ${findings.length === 0 ? "every limit kept" : count(findings)}`,
  ].join(", ");
}

/** `1 error, 2 notes`. */
function count(findings: readonly Finding[]): string {
  return (["error", "warning", "note"] as const)
    .map((severity) => ({ severity, many: findings.filter((finding) => finding.severity === severity).length }))
    .filter(({ many }) => many > 0)
    .map(({ severity, many }) => `${many} ${severity}${many === 1 ? "" : "s"}`)
    .join(", ");
}
