/**
 * Stones in a GLB file: one node each, all of one kind sharing a mesh, with a material that lets light through
 * (KHR_materials_transmission, KHR_materials_ior). Loaded with the library for glTF alone.
 */
import type { Buffer, Document, Material, Node, WriterContext } from "@gltf-transform/core";
import { creasedNormals, DEFAULT_CREASE } from "../../../mesh/normals.js";
import { type FileGem, type FileStone, STONE_MARK, stoneName, stonesByMesh } from "../file-stone.js";
import { Extension } from "../gltf-library.js";
import { shadedPrimitive } from "./shaded-primitive.js";

/** What an extension says of each material that has it. */
abstract class MaterialExtension extends Extension {
  readonly values = new Map<Material, object>();

  read(): this {
    return this;
  }

  write({ jsonDoc, materialIndexMap }: WriterContext): this {
    for (const [material, value] of this.values) {
      const written = jsonDoc.json.materials?.[materialIndexMap.get(material) ?? -1];
      if (written === undefined) continue;
      written.extensions = { ...written.extensions, [this.extensionName]: value };
    }
    return this;
  }
}

class Transmission extends MaterialExtension {
  static override readonly EXTENSION_NAME = "KHR_materials_transmission";
  override readonly extensionName = Transmission.EXTENSION_NAME;
}

class Refraction extends MaterialExtension {
  static override readonly EXTENSION_NAME = "KHR_materials_ior";
  override readonly extensionName = Refraction.EXTENSION_NAME;
}

export const stoneExtensions = [Transmission, Refraction];

/** How rough a dense gem looks, 0 to 1; a clear one is not. Chosen by eye. */
const DENSE_ROUGHNESS = 0.15;

/** A node that holds all stones, in mm, marked so that readers can leave them out. */
export function stonesNode(document: Document, buffer: Buffer, stones: readonly FileStone[]): Node {
  const transmission = document.createExtension(Transmission);
  const refraction = document.createExtension(Refraction);
  const materials = new Map<string, Material>();
  const meshes = new Map([...stonesByMesh(stones)].map(([mesh, stone]) => [mesh, meshOf(stone)]));
  const all = document.createNode("stones").setExtras({ annulet: STONE_MARK });
  for (const stone of stones) {
    const map = [...stone.map] as Parameters<typeof all.setMatrix>[0];
    const node = document.createNode(stoneName(stone)).setMatrix(map);
    all.addChild(node.setMesh(meshes.get(stone.mesh) ?? null));
  }
  return all;

  function meshOf({ mesh, round, gem }: FileStone) {
    // Neighbouring facets of a brilliant turn by less than metal's crease, and must not be smoothed.
    const shaded = creasedNormals(mesh, round ? DEFAULT_CREASE : 0);
    const primitive = shadedPrimitive(document, buffer, shaded).setMaterial(materialOf(gem));
    return document.createMesh(gem.name).addPrimitive(primitive);
  }

  function materialOf(gem: FileGem): Material {
    const { name, colour, index, clear } = gem;
    const known = materials.get(name);
    if (known !== undefined) return known;
    const made = document
      .createMaterial(name)
      .setBaseColorFactor([...colour, 1])
      .setMetallicFactor(0)
      .setRoughnessFactor(clear ? 0 : DENSE_ROUGHNESS);
    materials.set(name, made);
    refraction.values.set(made, { ior: index });
    if (clear) transmission.values.set(made, { transmissionFactor: 1 });
    return made;
  }
}
