/**
 * Stones in a 3MF model: each mesh once, and each stone an object of its own with it as its one component.
 */
import type { ReadonlyMat4 } from "gl-matrix";
import type { Mesh } from "../../../mesh/mesh.js";
import { type FileStone, STONE_MARK, stoneName, stonesByMesh } from "../file-stone.js";
import { xmlText } from "../names.js";

/** Numbers of objects in the file, and the names of the gems as its base materials. */
export interface StoneObjects {
  /** Of each mesh: the object that has it. */
  readonly meshes: ReadonlyMap<Mesh, { readonly id: number; readonly stone: FileStone; readonly base: number }>;
  readonly gems: readonly FileStone["gem"][];
  readonly items: readonly { readonly id: number; readonly of: number; readonly stone: FileStone }[];
}

/**
 * @param first number of the first object
 * @param bases how many base materials there are before the gems'
 */
export function stoneObjects(stones: readonly FileStone[], first: number, bases: number): StoneObjects {
  const gems = new Map<string, FileStone["gem"]>();
  for (const { gem } of stones) if (!gems.has(gem.name)) gems.set(gem.name, gem);
  const names = [...gems.keys()];
  const meshes = new Map(
    [...stonesByMesh(stones)].map(([mesh, stone], i) => [
      mesh,
      { id: first + i, stone, base: bases + names.indexOf(stone.gem.name) },
    ]),
  );
  const items = stones.map((stone, i) => ({
    id: first + meshes.size + i,
    of: meshes.get(stone.mesh)?.id ?? first,
    stone,
  }));
  return { meshes, gems: [...gems.values()], items };
}

/** The objects that place a mesh, one a stone. */
export function componentObjects({ items }: StoneObjects): string {
  const lines = items.flatMap(({ id, of, stone }) => [
    `<object id="${id}" type="model" name="${xmlText(stoneName(stone))}">`,
    ` <components><component objectid="${of}" transform="${transformText(stone.map as unknown as ReadonlyMat4)}"/></components>`,
    "</object>\n",
  ]);
  return lines.join("\n");
}

/** Their lines in the build. */
export function stoneItems({ items }: StoneObjects): string {
  return items.map(({ id }) => ` <item objectid="${id}" partnumber="${STONE_MARK}"/>\n`).join("");
}

/** Twelve numbers, four rows of three, since x, y, z of a point stand before the matrix. */
function transformText(m: ReadonlyMat4): string {
  return [0, 4, 8, 12]
    .flatMap((at) => [m[at], m[at + 1], m[at + 2]])
    .map((value) => Math.fround(value) + 0)
    .join(" ");
}
