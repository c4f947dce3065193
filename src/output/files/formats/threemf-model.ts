/**
 * The model part of a 3MF package as XML. Coordinates are the shortest decimals that read back as the same float32, the
 * precision that the gate has checked and that readers keep.
 */
import type { Point3 } from "../../../base/math/point.js";
import type { Mesh } from "../../../mesh/mesh.js";
import { ChunkBuffer, utf8 } from "../bytes.js";
import type { EncodeOptions } from "../format.js";
import { xmlText } from "../names.js";
import { FLOAT32_BYTES, INTEGER_BYTES, writeFloat32, writeInteger } from "../write-numbers.js";
import { componentObjects, stoneItems, stoneObjects } from "./threemf-stones.js";

/** Part of a line that is the same for all, with the place of one number behind each piece but the last. */
const VERTEX = [' <vertex x="', '" y="', '" z="', '"/>\n'].map(utf8);
const TRIANGLE = [' <triangle v1="', '" v2="', '" v3="', '"/>\n'].map(utf8);

const VERTEX_BYTES = lengthOf(VERTEX) + 3 * FLOAT32_BYTES;
const TRIANGLE_BYTES = lengthOf(TRIANGLE) + 3 * INTEGER_BYTES;

/** What the packer takes at once without growing. */
const PIECE_BYTES = 1 << 16;

const OBJECT_ID = 1;
const MATERIALS_ID = 2;

export function* modelXml(mesh: Mesh, options: EncodeOptions): Iterable<Uint8Array> {
  const { name, material, stones = [] } = options;
  const others = stoneObjects(stones, MATERIALS_ID + 1, material === undefined ? 0 : 1);
  const gems = others.gems.map((gem) => ({ name: gem.name, colour: gem.colour }));
  yield utf8(head(options, gems));
  yield utf8(objectHead({ id: OBJECT_ID, name, base: material === undefined ? undefined : 0 }));
  yield* meshXml(mesh);
  for (const [stone, { id, stone: first, base }] of others.meshes) {
    yield utf8(objectHead({ id, name: first.gem.name, base }));
    yield* meshXml(stone);
  }
  yield utf8(componentObjects(others));
  yield utf8(`</resources>\n<build>\n <item objectid="${OBJECT_ID}"/>\n${stoneItems(others)}</build>\n</model>\n`);
}

/** The points and triangles of one object, and its end. */
function* meshXml({ positions, triangles }: Mesh): Iterable<Uint8Array> {
  const buffer = new ChunkBuffer(PIECE_BYTES);
  for (let i = 0; i < positions.length; i += 3) {
    if (!buffer.hasRoomFor(VERTEX_BYTES)) yield buffer.take();
    for (let k = 0; k < 3; k++) {
      buffer.add(VERTEX[k]);
      buffer.at = writeFloat32(buffer.bytes, buffer.at, positions[i + k]);
    }
    buffer.add(VERTEX[3]);
  }
  yield buffer.take();
  yield utf8("</vertices>\n<triangles>\n");
  for (let t = 0; t < triangles.length; t += 3) {
    if (!buffer.hasRoomFor(TRIANGLE_BYTES)) yield buffer.take();
    for (let k = 0; k < 3; k++) {
      buffer.add(TRIANGLE[k]);
      buffer.at = writeInteger(buffer.bytes, buffer.at, triangles[t + k]);
    }
    buffer.add(TRIANGLE[3]);
  }
  yield buffer.take();
  yield utf8("</triangles>\n</mesh>\n</object>\n");
}

interface Base {
  readonly name: string;
  readonly colour: Point3;
}

function head({ name, material }: EncodeOptions, gems: readonly Base[]): string {
  const title = xmlText(name);
  const lines = [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<model unit="millimeter" xml:lang="en" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">',
    ...(title === "" ? [] : [`<metadata name="Title">${title}</metadata>`]),
    '<metadata name="Application">annulet</metadata>',
    "<resources>",
  ];
  const bases: readonly Base[] = material === undefined ? gems : [material, ...gems];
  if (bases.length > 0) {
    lines.push(
      `<basematerials id="${MATERIALS_ID}">`,
      ...bases.map((base) => ` <base name="${xmlText(base.name)}" displaycolor="${toHex(base.colour)}"/>`),
      "</basematerials>",
    );
  }
  lines.push("");
  return lines.join("\n");
}

/** How an object with points begins; `base` is the number of its material. */
function objectHead({
  id,
  name,
  base,
}: {
  readonly id: number;
  readonly name: string;
  readonly base: number | undefined;
}) {
  const title = xmlText(name);
  const label = title === "" ? "" : ` name="${title}"`;
  const made = base === undefined ? "" : ` pid="${MATERIALS_ID}" pindex="${base}"`;
  return `<object id="${id}" type="model"${label}${made}>\n<mesh>\n<vertices>\n`;
}

/** A linear colour as sRGB, #RRGGBB (IEC 61966-2-1). */
function toHex(colour: Point3): string {
  const bytes = colour.map((value) =>
    Math.round(255 * (value <= 0.0031308 ? 12.92 * value : 1.055 * value ** (1 / 2.4) - 0.055)),
  );
  return `#${bytes.map((byte) => byte.toString(16).toUpperCase().padStart(2, "0")).join("")}`;
}

function lengthOf(pieces: readonly Uint8Array[]): number {
  return pieces.reduce((sum, piece) => sum + piece.length, 0);
}
