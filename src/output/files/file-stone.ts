/**
 * A stone as a file tells it: an object of its own beside the metal.
 */
import type { Point3 } from "../../base/math/point.js";
import type { Mesh } from "../../mesh/mesh.js";

/** One stone of a file. Stones that share a mesh are written once and placed. */
export interface FileStone {
  /** Name of its group, and its number on the setter's map: together its name in the file. */
  readonly group: string;
  readonly number: number;
  /** Closed, in the stone's own coordinates, mm. */
  readonly mesh: Mesh;
  /** From there to its place: a 4 × 4 matrix, column after column. */
  readonly map: readonly number[];
  /** Whether its facets stand for a round surface, as a cabochon's do, and not for flat ones. */
  readonly round: boolean;
  readonly gem: FileGem;
}

/** A gem's look as a file tells it. */
export interface FileGem {
  readonly name: string;
  /** Linear red, green, blue, 0 to 1. */
  readonly colour: Point3;
  /** Refractive index, 1 or more. */
  readonly index: number;
  /** Whether light goes through it. */
  readonly clear: boolean;
}

/** How items of 3MF and nodes of GLB say that they are stones, so that readers can judge the metal alone. */
export const STONE_MARK = "annulet-stone";

/** A stone's name in a file. */
export function stoneName({ group, number }: Pick<FileStone, "group" | "number">): string {
  return `${group} ${number}`;
}

/** Each mesh once, with the first stone that has it, in order. */
export function stonesByMesh(stones: readonly FileStone[]): ReadonlyMap<Mesh, FileStone> {
  const found = new Map<Mesh, FileStone>();
  for (const stone of stones) if (!found.has(stone.mesh)) found.set(stone.mesh, stone);
  return found;
}

/** Whether a value is what a file can tell of a stone. */
export function isFileStone(value: unknown): boolean {
  const { group, number, mesh, map, round, gem } = Object(value) as Partial<FileStone>;
  const { positions, triangles } = Object(mesh) as Partial<Mesh>;
  const { name, colour, index, clear } = Object(gem) as Partial<FileGem>;
  return (
    typeof group === "string" &&
    Number.isInteger(number) &&
    positions instanceof Float64Array &&
    triangles instanceof Uint32Array &&
    Array.isArray(map) &&
    map.length === 16 &&
    map.every(Number.isFinite) &&
    typeof round === "boolean" &&
    typeof name === "string" &&
    Array.isArray(colour) &&
    colour.length === 3 &&
    colour.every((share) => share >= 0 && share <= 1) &&
    typeof index === "number" &&
    index >= 1 &&
    typeof clear === "boolean"
  );
}

/** A copy with meshes of its own, shared as before. */
export function copyStones(stones: readonly FileStone[]): readonly FileStone[] {
  const copies = new Map<Mesh, Mesh>();
  return stones.map(({ mesh, map, gem, ...named }) => {
    const copy = copies.get(mesh) ?? { positions: mesh.positions.slice(), triangles: mesh.triangles.slice() };
    copies.set(mesh, copy);
    return { ...named, mesh: copy, map: [...map], gem: { ...gem, colour: [...gem.colour] } };
  });
}
