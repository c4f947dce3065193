/**
 * 3MF, Core specification 1.4 (ISO/IEC 25422): a zip package of parts. One object of triangles by vertex number, in
 * millimetres, with the design's name, its material as a base material and, where there is one, a picture; stones as more.
 */
import { AnnuletError } from "../../../base/errors.js";
import type { Mesh } from "../../../mesh/mesh.js";
import { utf8 } from "../bytes.js";
import type { EncodeOptions, Format } from "../format.js";
import { requireFloat32 } from "./fill-facet.js";
import { modelXml } from "./threemf-model.js";
import { type Part, zipParts } from "./zip.js";

export const threemf: Format = {
  name: "3mf",
  extensions: [".3mf"],
  unit: "millimetres, by the model's unit attribute",
  carriesPicture: true,
  carriesStones: true,
  forPrinters: true,
  write,
};

/** Where the parts stand in the package. The names of the first two are the package format's, those of the others free. */
const MODEL_PART = "3D/3dmodel.model";
const THUMBNAIL_PART = "Metadata/thumbnail.png";

/** The schema wants three vertices at least, and a solid has four triangles. */
const LEAST_TRIANGLES = 4;

function write(mesh: Mesh, options: EncodeOptions): Iterable<Uint8Array> {
  requireIndexed(mesh);
  const { thumbnail } = options;
  if (thumbnail !== undefined) requirePng(thumbnail);
  const parts: Part[] = [
    { name: "[Content_Types].xml", content: [utf8(contentTypes(thumbnail !== undefined))] },
    { name: "_rels/.rels", content: [utf8(relationships(thumbnail !== undefined))] },
    { name: MODEL_PART, content: modelXml(mesh, options) },
  ];
  if (thumbnail !== undefined) parts.push({ name: THUMBNAIL_PART, content: [thumbnail], packed: true });
  return zipParts(parts);
}

/** The specification wants the three vertices of a triangle to differ. */
function requireIndexed(mesh: Mesh): void {
  requireFloat32(mesh);
  const { triangles } = mesh;
  if (triangles.length < 3 * LEAST_TRIANGLES) {
    throw new AnnuletError({
      code: "mesh-malformed",
      message: "a 3MF file holds no mesh of fewer triangles than a solid has",
      value: triangles.length / 3,
      allowed: `at least ${LEAST_TRIANGLES} triangles`,
    });
  }
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t], triangles[t + 1], triangles[t + 2]];
    if (a !== b && b !== c && c !== a) continue;
    throw new AnnuletError({
      code: "mesh-malformed",
      message: `triangle ${t / 3} repeats a vertex, which a 3MF file may not`,
      value: [a, b, c],
      hint: "weldMesh leaves such triangles out",
    });
  }
}

/** The eight bytes every PNG begins with (ISO/IEC 15948, 5.2). */
const PNG_SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

function requirePng(thumbnail: Uint8Array): void {
  if (PNG_SIGNATURE.every((byte, i) => thumbnail[i] === byte)) return;
  throw new AnnuletError({
    code: "option-invalid",
    message: "the thumbnail is no PNG file",
    path: "thumbnail",
    allowed: "the bytes of a PNG",
  });
}

const XML = '<?xml version="1.0" encoding="UTF-8"?>\n';

function contentTypes(withThumbnail: boolean): string {
  const types = [
    ["rels", "application/vnd.openxmlformats-package.relationships+xml"],
    ["model", "application/vnd.ms-package.3dmanufacturing-3dmodel+xml"],
    ...(withThumbnail ? [["png", "image/png"]] : []),
  ];
  const lines = types.map(([ending, type]) => ` <Default Extension="${ending}" ContentType="${type}"/>\n`);
  return `${XML}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">\n${lines.join("")}</Types>\n`;
}

function relationships(withThumbnail: boolean): string {
  const targets = [
    ["model", MODEL_PART, "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"],
    ...(withThumbnail
      ? [
          [
            "thumbnail",
            THUMBNAIL_PART,
            "http://schemas.openxmlformats.org/package/2006/relationships/metadata/thumbnail",
          ],
        ]
      : []),
  ];
  const lines = targets.map(([id, part, type]) => ` <Relationship Target="/${part}" Id="${id}" Type="${type}"/>\n`);
  return `${XML}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">\n${lines.join("")}</Relationships>\n`;
}
