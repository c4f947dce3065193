/**
 * Runs admesh, an independent mesh checker, on the bytes of an STL file. It exits 0 on a broken mesh, so what counts is
 * what it prints: the state of the mesh as read ("Original"), before the repairs it tries.
 */
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const ADMESH = "/usr/bin/admesh";

/** Whether admesh is installed; tests that need it are skipped where it is not. */
export const hasAdmesh = existsSync(ADMESH);

export interface AdmeshReport {
  readonly fileType: "Binary" | "ASCII";
  readonly header: string;
  /** Facets in the file. */
  readonly facets: number;
  readonly parts: number;
  /** Facets with two equal corners. */
  readonly degenerate: number;
  /** Facets with 1, 2 and 3 edges that no other facet shares exactly. */
  readonly disconnectedEdges: readonly [number, number, number];
  /** Edges that two facets run along in the same direction. */
  readonly backwards: number;
  readonly edgesFixed: number;
  readonly facetsRemoved: number;
  readonly facetsAdded: number;
  readonly facetsReversed: number;
  /** Facets whose normal in the file is not that of their corners. */
  readonly normalsFixed: number;
  /** As printed, six decimals, cubed file units. */
  readonly volume: number;
  readonly min: readonly [number, number, number];
  readonly max: readonly [number, number, number];
}

export function admesh(stlBytes: Uint8Array): AdmeshReport {
  const folder = mkdtempSync(join(tmpdir(), "annulet-admesh-"));
  try {
    const file = join(folder, "mesh.stl");
    writeFileSync(file, stlBytes);
    const run = spawnSync(ADMESH, [file], { encoding: "utf8", maxBuffer: 1 << 24, timeout: 120_000 });
    if (run.status !== 0) throw new Error(`admesh ended with ${run.status}: ${run.stdout}${run.stderr}`);
    return readReport(run.stdout);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function readReport(text: string): AdmeshReport {
  const find = (pattern: RegExp): string => {
    const found = pattern.exec(text);
    if (found === null) throw new Error(`admesh did not print ${pattern}:\n${text}`);
    return found[1];
  };
  const number = (label: string) => Number(find(new RegExp(`${label}\\s*[:=]\\s*(-?[\\d.]+)`)));
  return {
    fileType: find(/File type\s*: (Binary|ASCII)/) as "Binary" | "ASCII",
    header: find(/Header\s*: (.*)/),
    facets: number("Number of facets"),
    parts: number("Number of parts"),
    degenerate: number("Degenerate facets"),
    disconnectedEdges: [
      number("Facets with 1 disconnected edge"),
      number("Facets with 2 disconnected edges"),
      number("Facets with 3 disconnected edges"),
    ],
    backwards: number("Backwards edges"),
    edgesFixed: number("Edges fixed"),
    facetsRemoved: number("Facets removed"),
    facetsAdded: number("Facets added"),
    facetsReversed: number("Facets reversed"),
    normalsFixed: number("Normals fixed"),
    volume: number("Volume"),
    min: [number("Min X"), number("Min Y"), number("Min Z")],
    max: [number("Max X"), number("Max Y"), number("Max Z")],
  };
}
