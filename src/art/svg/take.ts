/**
 * Which paints of a file count: by colour, by the id of an element, by the name of a layer.
 */
import { AnnuletError } from "../../base/errors.js";
import type { TakeSpec } from "../../design/art/svg-take.js";
import { colourKey } from "./colour.js";

/** Most parts that an error lists. */
const LISTED = 20;

/** What of a drawing is taken. All of it where nothing is asked for. */
export class Take {
  readonly #only: ReadonlySet<string> | undefined;
  readonly #without: ReadonlySet<string>;
  readonly #asked: readonly string[];
  /** All that could have been asked for, as the document would write it. */
  readonly #seen = new Set<string>();

  constructor({ only, without = [] }: TakeSpec = {}) {
    this.#only = only === undefined ? undefined : new Set(only.map(partKey));
    this.#without = new Set(without.map(partKey));
    this.#asked = [...(only ?? []), ...without];
  }

  /** Told of every colour, and every `id:` and `layer:` that is met. */
  see(part: string): void {
    if (this.#asked.length > 0) this.#seen.add(part);
  }

  /** Whether a paint counts: its colour, undefined where it has none of its own, and what it lies within. */
  takes(colour: string | undefined, within: ReadonlySet<string>): boolean {
    const among = (parts: ReadonlySet<string>) =>
      (colour !== undefined && parts.has(colour)) || [...parts].some((part) => within.has(part));
    return !among(this.#without) && (this.#only === undefined || among(this.#only));
  }

  /** @throws AnnuletError `svg-part-unknown` for what was asked for and is nowhere in the file */
  requireAll(name: string, where: string): void {
    const unknown = this.#asked.filter((part) => !this.#seen.has(partKey(part)));
    if (unknown.length === 0) return;
    const seen = [...this.#seen];
    throw new AnnuletError({
      code: "svg-part-unknown",
      message: `nothing that ${name} draws is ${unknown.map((part) => JSON.stringify(part)).join(" or ")}`,
      path: where,
      value: unknown,
      allowed: `${seen.slice(0, LISTED).join(", ")}${seen.length > LISTED ? ", …" : ""}` || undefined,
      hint: "write a colour as CSS does, an element as id:NAME, a layer as layer:NAME",
    });
  }
}

/** A part as it is looked for. */
function partKey(part: string): string {
  return /^(?:id|layer):/.test(part) ? part : colourKey(part);
}
