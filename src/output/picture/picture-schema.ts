/**
 * What each option of a picture may be.
 */
import { z } from "zod";
import { isBytes } from "../../design/option-fields.js";
import type { Look } from "../../measure/alloys/look.js";
import type { View } from "./camera.js";
import type { ViewName } from "./views.js";

/** Longest side of a picture, pixels. Chosen: four bytes a sample are held several times over. */
export const LONGEST_SIDE = 8192;

/** Most samples along each side of a pixel. */
const MOST_SUPERSAMPLES = 4;

const side = z.int().min(1).max(LONGEST_SIDE);

const factor = z.number().positive();

const share = z.number().min(0).max(1);

const view: z.ZodType<View> = z.strictObject({
  stance: z.enum(["standing", "lying"]).describe("how the ring stands"),
  azimuth: z.number().describe("degrees about the upright axis"),
  elevation: z.number().min(-90).max(90).describe("degrees above the ground, -90 to 90"),
});

/** Any text: names are looked up when a picture is taken. */
const viewName = z.string() as unknown as z.ZodType<ViewName>;

const look: z.ZodType<Look> = z.strictObject({
  name: z.string().describe("the material's name"),
  colour: z.tuple([share, share, share]).describe("linear red, green, blue, 0 to 1"),
  metal: z.boolean().describe("whether it mirrors"),
});

const fields = {
  width: side.optional().describe(`pixels, 1 to ${LONGEST_SIDE}; default 1600`),
  height: side.optional().describe(`pixels, 1 to ${LONGEST_SIDE}; default 1200`),
  view: z.union([viewName, view]).optional().describe("a view by name, or {stance, azimuth, elevation}"),
  lookAt: z
    .strictObject({
      angle: z.number().describe("degrees round the ring: 90 is its top"),
      from: z.enum(["outside", "inside"]).optional().describe("default outside"),
    })
    .optional()
    .describe("the place that is in the middle"),
  zoom: factor.optional().describe("enlargement, above 0; default 1"),
  material: z.union([z.string(), look]).optional().describe("a built-in material's symbol, or a look of your own"),
  finish: z.enum(["polished", "satin"]).optional().describe("surface of metal; default polished"),
  ground: z.enum(["shadow", "plain", "clear"]).optional().describe("what is behind the ring; default shadow"),
  exposure: factor.optional().describe("factor on all light, above 0; default 1"),
  supersample: z
    .int()
    .min(1)
    .max(MOST_SUPERSAMPLES)
    .optional()
    .describe("samples along a pixel's side, 1 to 4; default 2"),
  crease: z
    .number()
    .min(0)
    .max(180)
    .optional()
    .describe("edges that turn by more stay sharp, degrees, 0 to 180; default 42"),
  backs: z.enum(["hidden", "magenta"]).optional().describe("what is seen of triangles from behind; default hidden"),
} as const;

/** Of a picture of a ring, whose triangles nobody can name beforehand. */
export const pictureSchema = z.strictObject(fields);

export const markedPictureSchema = z.strictObject({
  ...fields,
  marked: z
    .custom<Uint8Array>(isBytes, { error: "are no bytes", params: { allowed: "a Uint8Array, one entry a triangle" } })
    .optional(),
});
