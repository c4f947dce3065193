/**
 * A region of the pattern as it is drawn on the strip: what the document says of it, with its art completed.
 */
import type { HeightField } from "../art/image/height-field.js";
import type { RegionSpec } from "../design/pattern/region.js";
import type { Art } from "./art.js";

/** A region with its art, completed. */
export interface DrawnRegion {
  readonly spec: RegionSpec;
  /** Where it stands in the document. */
  readonly path: string;
  /** Name for messages and reports. */
  readonly name: string;
  readonly art: Art;
  /** Whether it stands at the ends of a strip and is not cut off there. Default no. */
  readonly atEnds?: boolean;
  /** Its heights, where an image gives them; the art is empty then. */
  readonly field?: HeightField;
}
