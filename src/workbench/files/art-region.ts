/**
 * A region made of a file that came in.
 */

/** How far art stands out that nobody has given a height yet, mm. Chosen: seen at once, and castable. */
const FIRST_HEIGHT = 0.3;

/** The field that names a drawing or an image. */
export function artField(name: string): "svg" | "image" {
  return /\.png$/i.test(name) ? "image" : "svg";
}

/** A document's regions with one more; undefined where its pattern is such that it has no list of them. */
export function regionsWith(document: Readonly<Record<string, unknown>>, name: string): readonly unknown[] | undefined {
  const { pattern = {} } = document;
  if (typeof pattern !== "object" || pattern === null || Array.isArray(pattern) || "lanes" in pattern) return undefined;
  const { regions = [] } = pattern as { readonly regions?: unknown };
  return Array.isArray(regions) ? [...regions, { [artField(name)]: name, height: FIRST_HEIGHT }] : undefined;
}
