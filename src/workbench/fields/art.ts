/**
 * What a region is drawn from: one of seven fields that take each other's place.
 */

/** The fields that give a region its art, in the order in which they are offered. */
export const ART = ["motif", "path", "shape", "text", "svg", "image", "texture"] as const;

export type ArtKey = (typeof ART)[number];

type Region = Readonly<Record<string, unknown>>;

/** What each begins with. Chosen; a path needs points to be dragged, a file a name. */
const FIRST: Readonly<Record<ArtKey, unknown>> = {
  motif: { name: "lozenge" },
  path: "M 0.2 0 L 0.5 0.3 L 0.8 0 L 0.5 -0.3 Z",
  shape: { path: "M 0.2 0 L 0.5 0.3 L 0.8 0 L 0.5 -0.3 Z" },
  text: { text: "abc" },
  svg: "drawing.svg",
  image: "heights.png",
  texture: { form: "hammered", size: 1.2 },
};

/** Fields that mean nothing beside another kind of art. */
const ONLY_WITH: Readonly<Record<string, readonly ArtKey[]>> = {
  take: ["svg"],
  map: ["image", "texture"],
  fill: ["path", "svg", "shape"],
  ribbon: ["path", "svg", "shape", "motif"],
};

/** What a region is drawn from now; undefined where nothing says. */
export function artOf(region: Region): ArtKey | undefined {
  return ART.find((key) => region[key] !== undefined);
}

/** The region drawn from something else: what goes with its old art alone goes with it. */
export function changeArt(region: Region, art: ArtKey): Record<string, unknown> {
  const before = artOf(region);
  const kept = Object.entries(region).filter(([key]) => {
    const isOther = (ART as readonly string[]).includes(key);
    return !isOther && (ONLY_WITH[key]?.includes(art) ?? true);
  });
  const isNew = before !== art;
  return { ...Object.fromEntries(kept), [art]: isNew ? FIRST[art] : region[art] };
}

/** Whether an object in the schema is a region, by its place. */
export function isRegion(schema: string): boolean {
  return /(^|\.)regions$/.test(schema);
}
