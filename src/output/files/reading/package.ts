/**
 * Opens the zip package of a 3MF file, with a limit on what it unpacks to.
 */
import { strFromU8, unzipSync } from "fflate";
import type { Broken } from "./reader.js";

/** Most bytes that one part may unpack to: five times the model of a ring with a million triangles. */
const MOST_PART_BYTES = 400e6;

export class Package {
  constructor(
    private readonly bytes: Uint8Array,
    private readonly broken: Broken,
  ) {}

  /**
   * A part's bytes; undefined where it is not there. No more than the limit is ever unpacked.
   *
   * @param name path in the package, with or without a slash before it; letters' size does not matter
   */
  part(name: string): Uint8Array | undefined {
    const wanted = plain(name);
    let size = 0;
    try {
      const parts = unzipSync(this.bytes, {
        filter: (file) => {
          if (plain(file.name) !== wanted || size > 0) return false;
          size = file.originalSize;
          if (size > MOST_PART_BYTES)
            throw this.broken(`${name} unpacks to ${Math.round(size / 1e6)} MB, at most 400 are read`);
          return true;
        },
      });
      const [content] = Object.values(parts);
      if (content !== undefined && content.length !== size)
        throw new Error("a part is not as long as the package says");
      return content;
    } catch (cause) {
      if (cause instanceof Error && cause.name === "AnnuletError") throw cause;
      throw this.broken(`its zip package cannot be read: ${cause instanceof Error ? cause.message : cause}`, cause);
    }
  }

  /** A part as text. */
  text(name: string): string | undefined {
    const content = this.part(name);
    return content && strFromU8(content);
  }
}

function plain(name: string): string {
  return name.replace(/^\//, "").toLowerCase();
}
