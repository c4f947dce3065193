/**
 * Opens the zip package of a 3MF file, with a limit on what it unpacks to. The zip's directory is walked a few times at
 * most, however many parts are asked for: all models are unpacked at once.
 */
import { type UnzipFileInfo, unzipSync } from "fflate";
import type { Broken } from "./reader.js";

/** Most bytes that all models may unpack to: five times the model of a ring with a million triangles. */
const MOST_BYTES = 400e6;

/** Bytes of an entry in a zip's directory beside its name (APPNOTE 6.3.10, section 4.3.12). */
const ENTRY_BYTES = 46;

/** How models are called where writers keep to the Core specification's example; others are looked for one by one. */
const MODEL_ENDING = ".model";

/** Most parts of other names that are looked for. Chosen. */
const MOST_OTHERS = 16;

export class Package {
  private readonly others = new Map<string, Uint8Array | undefined>();
  private models: ReadonlyMap<string, Uint8Array> | undefined;

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
    if (wanted.endsWith(MODEL_ENDING)) {
      this.models ??= this.unpack((part) => part.endsWith(MODEL_ENDING));
      return this.models.get(wanted);
    }
    if (!this.others.has(wanted)) {
      if (this.others.size === MOST_OTHERS) {
        throw this.broken(`more than ${MOST_OTHERS} of its models have names that do not end in ${MODEL_ENDING}`);
      }
      this.others.set(wanted, this.unpack((part) => part === wanted).get(wanted));
    }
    return this.others.get(wanted);
  }

  /** The parts with such names; of two with one name the first. */
  private unpack(wants: (part: string) => boolean): ReadonlyMap<string, Uint8Array> {
    const sizes = new Map<string, number>();
    let entries = 0;
    let total = 0;
    const filter = ({ name, originalSize }: UnzipFileInfo): boolean => {
      entries++;
      if (entries * ENTRY_BYTES > this.bytes.length) throw new Error("it announces more parts than it has room for");
      const part = plain(name);
      if (!wants(part) || sizes.has(part)) return false;
      sizes.set(part, originalSize);
      total += originalSize;
      if (total > MOST_BYTES)
        throw this.broken(
          `${name} and what is read with it unpack to ${Math.round(total / 1e6)} MB, at most 400 are read`,
        );
      return true;
    };
    try {
      const parts = new Map(
        Object.entries(unzipSync(this.bytes, { filter })).map(([name, part]) => [plain(name), part]),
      );
      for (const [name, size] of sizes) {
        if (parts.get(name)?.length !== size) throw new Error("a part is not as long as the package says");
      }
      return parts;
    } catch (cause) {
      if (cause instanceof Error && cause.name === "AnnuletError") throw cause;
      throw this.broken(`its zip package cannot be read: ${cause instanceof Error ? cause.message : cause}`, cause);
    }
  }
}

function plain(name: string): string {
  return name.replace(/^\//, "").toLowerCase();
}
