/**
 * Asks CGAL, by a small program of ours beside this file, where a closed mesh crosses itself. Compiling takes about 12 s.
 */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdtempSync, readFileSync, renameSync, rmdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Mesh } from "../../src/mesh/mesh.js";

/** Whether the compiler and CGAL are installed; tests that need them are skipped where they are not. */
export const hasCgal = existsSync("/usr/bin/g++") && existsSync("/usr/include/CGAL/Surface_mesh.h");

/** How long the compiler and the program may take, ms. */
export const COMPILE_PATIENCE = 180_000;
const RUN_PATIENCE = 60_000;

export interface SelfIntersections {
  /** Pairs of triangles that cross or lie over each other. */
  readonly count: number;
  /** How far the deepest pair reach through each other's planes, mm; 0 where triangles only lie over each other. */
  readonly deepest: number;
  /** Middles of the first triangles of up to ten pairs, mm. */
  readonly places: readonly string[];
}

export interface Checker {
  /** @throws where the mesh is not closed by index, or the program takes too long */
  check(mesh: Mesh): SelfIntersections;
}

/** The program is kept in the folder for temporary files, under its source's digest, for the next one who asks. */
export function compileChecker(): Checker {
  const source = fileURLToPath(new URL("self-intersections.cpp", import.meta.url));
  const program = join(tmpdir(), `annulet-cgal-${createHash("sha256").update(readFileSync(source)).digest("hex")}`);
  if (!existsSync(program)) {
    const folder = mkdtempSync(join(tmpdir(), "annulet-cgal-"));
    const made = join(folder, "self-intersections");
    run("g++", ["-O2", "-std=c++17", "-o", made, source, "-lgmp", "-lmpfr"], COMPILE_PATIENCE);
    renameSync(made, program);
    rmdirSync(folder);
  }
  return {
    check: (mesh) => {
      const [count, deepest, ...places] = run(program, [], RUN_PATIENCE, binaryOf(mesh)).trim().split("\n");
      return { count: Number(count), deepest: Number(deepest), places };
    },
  };
}

function run(program: string, args: readonly string[], timeout: number, input?: Uint8Array): string {
  const { status, stdout, stderr, error } = spawnSync(program, args, { timeout, input, encoding: "utf8" });
  if (status !== 0) throw new Error(`${program} ended with ${status}: ${error ?? stderr}`);
  return stdout;
}

/** What the program reads; little-endian, as all machines are that it runs on. */
function binaryOf({ positions, triangles }: Mesh): Uint8Array {
  const counts = Uint32Array.of(positions.length / 3, triangles.length / 3);
  return Buffer.concat([counts, positions, triangles].map((part) => bytesOf(part)));
}

function bytesOf({ buffer, byteOffset, byteLength }: Uint32Array | Float64Array): Uint8Array {
  return new Uint8Array(buffer, byteOffset, byteLength);
}
