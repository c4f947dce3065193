/**
 * Reads one model part of a 3MF package: its objects and what its build places.
 */
import type { ReadonlyMat4 } from "gl-matrix";
import type { Mesh } from "../../../mesh/mesh.js";
import { STONE_MARK } from "../file-stone.js";
import { FloatList, IndexList } from "./lists.js";
import { IDENTITY, MOST_PARTS } from "./placed.js";
import { type Broken, requireFewTriangles } from "./reader.js";
import { readXml, type Tag } from "./xml.js";

export interface Placement {
  /** Number of the object. */
  readonly object: string;
  /** The part of the package that has it; undefined for the same. */
  readonly path: string | undefined;
  readonly map: ReadonlyMat4;
}

export interface ModelObject {
  mesh: Mesh | undefined;
  readonly components: Placement[];
}

export interface Model {
  /** mm in the model's unit. */
  unit: number;
  readonly objects: Map<string, ModelObject>;
  readonly items: Placement[];
  /** How many of its items are stones, and left out. */
  stones: number;
}

const CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
const PRODUCTION = "http://schemas.microsoft.com/3dmanufacturing/production/2015/06";
const MATERIALS = "http://schemas.microsoft.com/3dmanufacturing/material/2015/02";

/** Units of the Core specification, mm. */
const UNITS: Readonly<Record<string, number>> = {
  micron: 0.001,
  millimeter: 1,
  centimeter: 10,
  inch: 25.4,
  foot: 304.8,
  meter: 1000,
};

/** Elements that make or place something, beside points and triangles. */
const PARTS: ReadonlySet<string> = new Set(["object", "mesh", "component", "item"]);

export function readModel(bytes: Uint8Array, path: string, broken: Broken): Model {
  const model: Model = { unit: 1, objects: new Map(), items: [], stones: 0 };
  const inModel: Broken = (what, cause) => broken(`${path}: ${what}`, cause);
  let object: ModelObject | undefined;
  const positions = new FloatList();
  const triangles = new IndexList();
  let parts = 0;
  readXml(
    bytes,
    path,
    {
      open: (tag) => {
        if (tag.namespace !== CORE) return;
        if (PARTS.has(tag.name)) parts++;
        if (parts > MOST_PARTS) throw inModel(`it has more than ${MOST_PARTS} parts, the most that are read`);
        switch (tag.name) {
          case "model":
            model.unit = unitOf(tag, inModel);
            break;
          case "object":
            object = { mesh: undefined, components: [] };
            model.objects.set(need(tag, "id", inModel), object);
            break;
          case "mesh":
            positions.take();
            triangles.take();
            break;
          case "vertex":
            positions.push(number(tag, "x", inModel), number(tag, "y", inModel), number(tag, "z", inModel));
            break;
          case "triangle":
            triangles.push(index(tag, "v1", inModel), index(tag, "v2", inModel), index(tag, "v3", inModel));
            requireFewTriangles(triangles.length / 3, inModel);
            break;
          case "component":
            object?.components.push(placement(tag, inModel));
            break;
          case "item":
            // The metal is what a mesh file is read for.
            if (tag.attribute("partnumber") === STONE_MARK) model.stones++;
            else model.items.push(placement(tag, inModel));
        }
      },
      close: (name) => {
        if (name === "mesh" && object !== undefined) object.mesh = finish(positions, triangles, inModel);
      },
    },
    broken,
  );
  return model;
}

function finish(positions: FloatList, triangles: IndexList, broken: Broken): Mesh {
  const wrong = triangles.values.findIndex((vertex) => vertex >= positions.length / 3);
  if (wrong !== -1) {
    throw broken(`triangle ${Math.floor(wrong / 3)} has vertex ${triangles.values[wrong]}, which is not there`);
  }
  return { positions: positions.take(), triangles: triangles.take() };
}

/** Also refuses extensions that the file needs and that could change the geometry. */
function unitOf(tag: Tag, broken: Broken): number {
  for (const prefix of (tag.attribute("requiredextensions") ?? "").split(/\s+/).filter(Boolean)) {
    const namespace = tag.namespaceOf(prefix);
    if (namespace !== PRODUCTION && namespace !== MATERIALS) {
      throw broken(`it needs the extension ${namespace ?? prefix}, which is not read`);
    }
  }
  const unit = tag.attribute("unit") ?? "millimeter";
  const millimetres = Object.hasOwn(UNITS, unit) ? UNITS[unit] : undefined;
  if (millimetres === undefined) throw broken(`there is no unit ${unit}`);
  return millimetres;
}

function placement(tag: Tag, broken: Broken): Placement {
  const transform = tag.attribute("transform");
  return {
    object: need(tag, "objectid", broken),
    path: tag.attributeOf(PRODUCTION, "path"),
    map: transform === undefined ? IDENTITY : mapOf(transform, broken),
  };
}

/** Twelve numbers, four rows of three: x, y, z of a point stand before the matrix. */
function mapOf(transform: string, broken: Broken): ReadonlyMat4 {
  const m = transform.trim().split(/\s+/).map(Number);
  if (m.length !== 12 || !m.every(Number.isFinite)) throw broken(`this is no transform: ${transform.slice(0, 80)}`);
  return [m[0], m[1], m[2], 0, m[3], m[4], m[5], 0, m[6], m[7], m[8], 0, m[9], m[10], m[11], 1];
}

function need(tag: Tag, name: string, broken: Broken): string {
  const value = tag.attribute(name);
  if (value === undefined) throw broken(`a ${tag.name} has no ${name}`);
  return value;
}

function number(tag: Tag, name: string, broken: Broken): number {
  const text = need(tag, name, broken);
  const value = text.trim() === "" ? Number.NaN : Number(text);
  if (!Number.isFinite(value)) throw broken(`a ${tag.name} has ${name} = ${text.slice(0, 40)}, which is no number`);
  return value;
}

function index(tag: Tag, name: string, broken: Broken): number {
  const value = number(tag, name, broken);
  if (!Number.isInteger(value) || value < 0 || value > 0xffffffff) {
    throw broken(`a ${tag.name} has ${name} = ${value}, which is no vertex`);
  }
  return value;
}
