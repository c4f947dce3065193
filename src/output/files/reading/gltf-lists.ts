/**
 * Takes from a glTF file's JSON what geometry needs (glTF 2.0, section 5), each list and number proved to be one. All else,
 * materials, cameras, animations, is left out, so nothing of it can do harm.
 */
import type { GLTF } from "@gltf-transform/core";
import { STONE_MARK } from "../file-stone.js";
import { MOST_PARTS } from "./placed.js";
import type { Broken } from "./reader.js";

/** Required extensions that leave the triangles as they are. */
const HARMLESS = /^(KHR_materials_|KHR_texture_|KHR_lights_|EXT_texture_|KHR_xmp)/;

/** The geometry alone: every number that stands for a thing in a list is a whole number, 0 or more. */
export type GltfLists = Required<
  Pick<GLTF.IGLTF, "asset" | "scenes" | "nodes" | "meshes" | "accessors" | "bufferViews" | "buffers">
> &
  Pick<GLTF.IGLTF, "scene">;

/** @throws what `broken` makes, with the place in the JSON */
export function gltfLists(json: unknown, broken: Broken): GltfLists {
  const top = new Reader(broken, "its JSON", json);
  const needed = top.list("extensionsRequired").map((name) => name.text());
  const unread = needed.filter((name) => !HARMLESS.test(name));
  if (unread.length > 0) throw broken(`it needs ${unread.slice(0, 5).join(", ")}, which is not read`);
  let primitives = 0;
  return {
    asset: { version: top.inner("asset").field("version").text() },
    scene: top.field("scene").index(),
    scenes: top.list("scenes").map((scene) => ({ nodes: scene.list("nodes").map((node) => node.need()) })),
    nodes: top.list("nodes").map((node) => ({
      mesh: node.field("mesh").index(),
      children: node.list("children").map((child) => child.need()),
      matrix: node.numbers("matrix", 16) as GLTF.INode["matrix"],
      translation: node.numbers("translation", 3) as GLTF.INode["translation"],
      rotation: node.numbers("rotation", 4) as GLTF.INode["rotation"],
      scale: node.numbers("scale", 3) as GLTF.INode["scale"],
      ...(isMarked(node.field("extras").value) ? { extras: { annulet: STONE_MARK } } : {}),
    })),
    meshes: top.list("meshes").map((mesh) => {
      const list = mesh.list("primitives");
      primitives += list.length;
      if (primitives > MOST_PARTS) throw broken(`it has more than ${MOST_PARTS} primitives, the most that are read`);
      return { primitives: list.map(primitiveOf) };
    }),
    accessors: top.list("accessors").map(accessorOf),
    bufferViews: top.list("bufferViews").map((view) => ({
      buffer: view.field("buffer").need(),
      byteOffset: view.field("byteOffset").index(),
      byteLength: view.field("byteLength").need(),
      byteStride: view.field("byteStride").index(),
    })),
    buffers: top.list("buffers").map((buffer) => ({
      byteLength: buffer.field("byteLength").need(),
      uri: buffer.field("uri").textOrNone(),
    })),
  };
}

/** Whether what a node says beside is that it holds stones; others may say anything there. */
function isMarked(extras: unknown): boolean {
  return (Object(extras) as { readonly annulet?: unknown }).annulet === STONE_MARK;
}

function primitiveOf(primitive: Reader): GLTF.IMeshPrimitive {
  const position = primitive.inner("attributes").field("POSITION").index();
  return {
    attributes: position === undefined ? {} : { POSITION: position },
    indices: primitive.field("indices").index(),
    mode: primitive.field("mode").index() as GLTF.IMeshPrimitive["mode"],
  };
}

function accessorOf(accessor: Reader): GLTF.IAccessor {
  const sparse = accessor.field("sparse");
  return {
    bufferView: accessor.field("bufferView").index(),
    byteOffset: accessor.field("byteOffset").index(),
    componentType: accessor.field("componentType").need() as GLTF.IAccessor["componentType"],
    count: accessor.field("count").need(),
    type: accessor.field("type").text() as GLTF.IAccessor["type"],
    sparse: sparse.value === undefined ? undefined : sparseOf(sparse),
  };
}

function sparseOf(sparse: Reader): NonNullable<GLTF.IAccessor["sparse"]> {
  const [indices, values] = [sparse.inner("indices"), sparse.inner("values")];
  return {
    count: sparse.field("count").need(),
    // The library takes what is not said here from the accessor itself, so all is said.
    indices: {
      bufferView: indices.field("bufferView").need(),
      byteOffset: indices.field("byteOffset").index() ?? 0,
      componentType: indices.field("componentType").need() as GLTF.IAccessor["componentType"],
    },
    values: {
      bufferView: values.field("bufferView").need(),
      byteOffset: values.field("byteOffset").index() ?? 0,
    },
  };
}

/** A value of the JSON with its place. */
class Reader {
  constructor(
    readonly broken: Broken,
    readonly place: string,
    readonly value: unknown,
  ) {}

  /** A field of an object; of no value where it is not there. */
  field(name: string): Reader {
    const { value } = this;
    if (typeof value !== "object" || value === null || Array.isArray(value)) throw this.#wrong("an object");
    const own = Object.hasOwn(value, name) ? (value as Record<string, unknown>)[name] : undefined;
    return new Reader(this.broken, `${this.place}.${name}`, own);
  }

  /** A field that is an object; an empty one where it is not there. */
  inner(name: string): Reader {
    const field = this.field(name);
    return field.value === undefined ? new Reader(this.broken, field.place, {}) : field;
  }

  /** The entries of a field that is a list; none where it is not there. */
  list(name: string): Reader[] {
    const { value, place } = this.field(name);
    if (value === undefined) return [];
    if (!Array.isArray(value)) throw new Reader(this.broken, place, value).#wrong("a list");
    // The library takes 75 s for 900 000 nodes (measured): its time grows with their square.
    if (value.length > MOST_PARTS) throw this.broken(`it has more than ${MOST_PARTS} ${name}, the most that are read`);
    return value.map((entry, i) => new Reader(this.broken, `${place}[${i}]`, entry));
  }

  /** A field of so many finite numbers; undefined where it is not there. */
  numbers(name: string, count: number): number[] | undefined {
    const field = this.field(name);
    const { value } = field;
    if (value === undefined) return undefined;
    if (Array.isArray(value) && value.length === count && value.every(Number.isFinite)) return value;
    throw field.#wrong(`${count} numbers`);
  }

  /** A whole number, 0 or more; undefined where it is not there. */
  index(): number | undefined {
    return this.value === undefined ? undefined : this.need();
  }

  need(): number {
    if (Number.isSafeInteger(this.value) && (this.value as number) >= 0) return this.value as number;
    throw this.#wrong("a whole number");
  }

  text(): string {
    if (typeof this.value === "string") return this.value;
    throw this.#wrong("a text");
  }

  textOrNone(): string | undefined {
    return this.value === undefined ? undefined : this.text();
  }

  #wrong(what: string): Error {
    return this.broken(`${this.place} should be ${what}`);
  }
}
