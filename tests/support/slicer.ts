/**
 * Asks a slicer, prusa-slicer, what it reads in a mesh file and how much resin it would cure.
 */
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";

const SLICER = "/usr/bin/prusa-slicer";

/** Whether the slicer is installed; tests that need it are skipped where it is not. */
export const hasSlicer = existsSync(SLICER);

/** Slices 0.05 mm thick, nothing added below or beside the ring, and no correction: a machine of its own invention. */
const PRINTER = `printer_technology = SLA
layer_height = 0.05
initial_layer_height = 0.05
supports_enable = 0
pad_enable = 0
hollowing_enable = 0
elefant_foot_compensation = 0
slice_closing_radius = 0.001
display_width = 60
display_height = 60
display_pixels_x = 400
display_pixels_y = 400
`;

export interface SlicerInfo {
  readonly manifold: boolean;
  readonly triangles: number;
  readonly parts: number;
  /** mm³ */
  readonly volume: number;
  /** Lengths of the box, mm. */
  readonly size: readonly number[];
}

export function slicerInfo(bytes: Uint8Array, ending: string): SlicerInfo {
  const text = inFolder((folder) => run(["--info", put(folder, `ring${ending}`, bytes)]));
  const find = (label: string) => {
    const found = new RegExp(`^${label}\\s*=\\s*(\\S+)`, "m").exec(text);
    if (found === null) throw new Error(`the slicer did not print ${label}:\n${text}`);
    return found[1];
  };
  return {
    manifold: find("manifold") === "yes",
    triangles: Number(find("number_of_facets")),
    parts: Number(find("number_of_parts")),
    volume: Number(find("volume")),
    size: ["x", "y", "z"].map((axis) => Number(find(`size_${axis}`))),
  };
}

/** Volume of resin in all slices, mm³. */
export function curedVolume(bytes: Uint8Array, ending: string): number {
  const config = strFromU8(slice(bytes, ending)["config.ini"]);
  const used = /^usedMaterial = (\S+)$/m.exec(config);
  if (used === null) throw new Error(`the slicer did not say what it uses:\n${config}`);
  // Millilitres.
  return 1000 * Number(used[1]);
}

/** Slices of 0.05 mm that it makes: the images of them that it writes. */
export function slicedLayers(bytes: Uint8Array, ending: string): number {
  return Object.keys(slice(bytes, ending)).filter((name) => /^[^/]*\d{5}\.png$/.test(name)).length;
}

/** The slicer's archive, file by file. */
function slice(bytes: Uint8Array, ending: string): Record<string, Uint8Array> {
  return inFolder((folder) => {
    const printer = put(folder, "printer.ini", new TextEncoder().encode(PRINTER));
    const sliced = join(folder, "slices.sl1");
    run(["--export-sla", "--load", printer, "--output", sliced, put(folder, `ring${ending}`, bytes)]);
    return unzipSync(readFileSync(sliced));
  });
}

function inFolder<Result>(work: (folder: string) => Result): Result {
  const folder = mkdtempSync(join(tmpdir(), "annulet-slicer-"));
  try {
    return work(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function put(folder: string, name: string, content: Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

function run(args: readonly string[]): string {
  const { status, stdout, stderr, error } = spawnSync(SLICER, args, { encoding: "utf8", timeout: 120_000 });
  if (status !== 0) throw new Error(`the slicer ended with ${status}: ${error ?? stderr}${stdout}`);
  return stdout;
}
