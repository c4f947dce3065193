/**
 * The file of a design that is shaped in the browser: read, and written where nobody else has written it meanwhile.
 */
import { createHash } from "node:crypto";
import { readFile } from "../../disk/read-file.js";
import { AnnuletError } from "../../index.js";
import { MAX_DESIGN_BYTES } from "../design-file.js";
import { writeOutputs } from "../output-files.js";
import { checkTargets } from "../targets.js";

/** What stands in the file. */
export interface OnDisk {
  readonly bytes: Uint8Array;
  /** SHA-256 (FIPS 180-4), 64 hexadecimal digits. */
  readonly digest: string;
}

/** What came of writing: the new digest, or that of what somebody else wrote; undefined where the file is gone. */
export type Saved = { readonly digest: string } | { readonly changedTo: string | undefined };

/** Thrown where the file is another than expected. */
class Changed extends Error {
  readonly digest: string | undefined;

  constructor(digest: string | undefined) {
    super("changed on disk");
    this.digest = digest;
  }
}

export class DesignOnDisk {
  readonly #path: string;
  /** One is written after the other, so that of two who expect the same the second is told. */
  #last: Promise<unknown> = Promise.resolve();

  constructor(path: string) {
    this.#path = path;
  }

  /** @throws AnnuletError as `readFile` */
  read(): OnDisk {
    const bytes = readFile(this.#path, MAX_DESIGN_BYTES, "file");
    return { bytes, digest: createHash("sha256").update(bytes).digest("hex") };
  }

  /**
   * Writes the file whole or not at all, with the permissions that it had. It is looked at again once the new bytes are on the
   * disk beside it, so nothing that another program wrote is lost but in the moment of the renaming.
   *
   * @param expected digest of what may be replaced; undefined where no file may stand there
   * @throws AnnuletError as `checkTargets` and `writeOutputs`; Interrupted
   */
  write(bytes: Uint8Array, expected: string | undefined): Promise<Saved> {
    const written = this.#last.then(() => this.#write(bytes, expected));
    this.#last = written.catch(() => undefined);
    return written;
  }

  async #write(bytes: Uint8Array, expected: string | undefined): Promise<Saved> {
    const hold = (): void => {
      const digest = this.#digest();
      if (digest !== expected) throw new Changed(digest);
    };
    try {
      hold();
      const [target] = await checkTargets([this.#path]);
      const chunks = function* () {
        yield bytes;
        hold();
      };
      const [{ sha256 }] = await writeOutputs([{ target, chunks }]);
      return { digest: sha256 };
    } catch (error) {
      if (error instanceof Changed) return { changedTo: error.digest };
      throw error;
    }
  }

  /** Of what stands there now; undefined where nothing does. */
  #digest(): string | undefined {
    try {
      return this.read().digest;
    } catch (error) {
      if (error instanceof AnnuletError && error.code === "file-missing") return undefined;
      throw error;
    }
  }
}
