/**
 * Reads 3MF (Core 1.4): the objects that the build places, components within components, in the model's unit; parts of
 * models in other files of the package too (Production extension 1.1).
 */
import type { ReadonlyMat4 } from "gl-matrix";
import { Package } from "./package.js";
import { compose, PlacedMeshes, scaleBy } from "./placed.js";
import type { Broken, FileMesh } from "./reader.js";
import { type Model, type Placement, readModel } from "./threemf-model.js";
import { readXml } from "./xml.js";

const MODEL_RELATIONSHIP = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";

/** Components may lie so deep in each other. */
const MOST_DEPTH = 64;

/** @throws what `broken` makes */
export function readThreemf(bytes: Uint8Array, broken: Broken): FileMesh {
  const files = new Package(bytes, broken);
  const start = startPart(files, broken);
  const models = new Map<string, Model>();
  const modelAt = (path: string): Model => {
    const known = models.get(path);
    if (known !== undefined) return known;
    const content = files.part(path);
    if (content === undefined) throw broken(`there is no ${path} in its package`);
    const model = readModel(content, path, broken);
    models.set(path, model);
    return model;
  };
  const placed = new PlacedMeshes(broken);
  const place = ({ object: id, path, map }: Placement, within: string, outer: ReadonlyMat4, depth: number): void => {
    placed.enter();
    if (depth > MOST_DEPTH)
      throw broken(`its components lie more than ${MOST_DEPTH} deep in each other, or in themselves`);
    const home = path ?? within;
    const object = modelAt(home).objects.get(id);
    if (object === undefined) throw broken(`there is no object ${id} in ${home}`);
    const inner = compose(outer, map);
    if (object.mesh !== undefined) placed.add(object.mesh, inner);
    for (const component of object.components) place(component, home, inner, depth + 1);
  };
  const model = modelAt(start);
  for (const item of model.items) place(item, start, scaleBy(model.unit), 0);
  return { ...placed.join(), stones: model.stones };
}

/** The part that the package says it begins with. */
function startPart(files: Package, broken: Broken): string {
  const relationships = files.part("_rels/.rels");
  if (relationships === undefined) throw broken("it is no 3MF file: its package has no _rels/.rels");
  let target: string | undefined;
  readXml(
    relationships,
    "_rels/.rels",
    {
      open: (tag) => {
        if (tag.attribute("Type") === MODEL_RELATIONSHIP) target ??= tag.attribute("Target");
      },
      close: () => {},
    },
    broken,
  );
  if (target === undefined) throw broken("it is no 3MF file: its package names no model");
  return target;
}
