/**
 * Files that a design names and the page was not given: the default font, which it carries, and those beside the design.
 */
import { unpack } from "../engine/unpack.js";
import type { DiskDesign } from "./disk-design.js";

/** The name by which designs ask for the font where they name none; the library's own. */
export const DEFAULT_FONT = "package:@expo-google-fonts/nunito/800ExtraBold/Nunito_800ExtraBold.ttf";

export class OtherFiles {
  readonly #font: string;
  readonly #disk: Pick<DiskDesign, "file"> | undefined;
  readonly #found = new Map<string, Promise<Uint8Array | undefined>>();

  /** @param font the default font, packed */
  constructor(font: string, disk?: Pick<DiskDesign, "file">) {
    this.#font = font;
    this.#disk = disk;
  }

  /** A file's bytes; each is asked for once. */
  find = (name: string): Promise<Uint8Array | undefined> => {
    const found = this.#found.get(name) ?? this.#look(name);
    this.#found.set(name, found);
    return found;
  };

  /** Files on the disk may have changed: they are asked for anew. */
  forget(): void {
    for (const name of this.#found.keys()) if (name !== DEFAULT_FONT) this.#found.delete(name);
  }

  async #look(name: string): Promise<Uint8Array | undefined> {
    return name === DEFAULT_FONT ? unpack(this.#font) : this.#disk?.file(name);
  }
}
