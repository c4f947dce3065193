/**
 * A texture as a region's art: a height map that is worked out from a seed instead of read from a file.
 */
import { z } from "zod";

/** Every texture. A new one is a name here and its file in art/texture. */
const textureNames = ["hammered", "bark", "brushed", "stippled"] as const;

export type TextureName = (typeof textureNames)[number];

/** Textures with a grain, and how many sizes a plate or a line of theirs is long where nothing is said. Chosen by eye. */
export const GRAIN_LENGTHS: Readonly<Partial<Record<TextureName, number>>> = { bark: 4, brushed: 12 };

const TEXTURE_DEFAULTS = { along: "band", irregular: 1, seed: 1 } as const;

const LARGEST_SEED = 2 ** 32 - 1;

export const textureSchema = z
  .strictObject({
    form: z
      .enum(textureNames)
      .describe(
        "hammered (facets), bark (plates), brushed (fine lines), stippled (round pits; raised dots by map.invert)",
      ),
    size: z
      .number()
      .min(0.1)
      .max(20)
      .describe("mm from one facet, plate, line or pit to the next, 0.1 to 20; the nearest that comes out even"),
    length: z
      .number()
      .min(0.1)
      .max(50)
      .optional()
      .describe("bark, brushed: length of a plate or line, mm, 0.1 to 50; default 4 sizes (bark), 12 (brushed)"),
    along: z.enum(["band", "across"]).optional().describe("bark, brushed: which way the grain runs; default band"),
    irregular: z.number().min(0).max(1).default(TEXTURE_DEFAULTS.irregular).describe("0 (evenly set) to 1; default 1"),
    seed: z
      .int()
      .min(0)
      .max(LARGEST_SEED)
      .default(TEXTURE_DEFAULTS.seed)
      .describe("another gives another of the same kind, 0 to 4294967295; default 1"),
  })
  .superRefine(({ form, size, length, along }, context) => {
    const complain = (path: string, message: string) => context.addIssue({ code: "custom", path: [path], message });
    if (GRAIN_LENGTHS[form] === undefined) {
      if (length !== undefined) complain("length", `does not belong to a ${form} texture, which has no grain`);
      if (along !== undefined) complain("along", `does not belong to a ${form} texture, which has no grain`);
    } else if (length !== undefined && length < size) complain("length", "is below the size: the grain runs along it");
  })
  .describe(
    "a height map from a seed, the same on every machine; height or depth is from its lowest to its highest place",
  )
  .meta({ id: "texture" });

export type TextureSpec = z.infer<typeof textureSchema>;

/** mm from one to the next along the band, or along the band's width. */
export function textureUnits({ form, size, length, along = TEXTURE_DEFAULTS.along }: TextureSpec): {
  readonly along: number;
  readonly across: number;
} {
  const long = length ?? size * (GRAIN_LENGTHS[form] ?? 1);
  return along === "across" ? { along: size, across: long } : { along: long, across: size };
}
