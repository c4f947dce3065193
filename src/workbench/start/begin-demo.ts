/**
 * A design of the demo's with the files that it names, as the bench takes it.
 */
import { unpack } from "../engine/unpack.js";
import type { Begun } from "../state/bench.js";

/** As the page carries it. */
export interface CarriedDesign {
  readonly text: string;
  /** Name → bytes, gzip, as base64. */
  readonly packed: Readonly<Record<string, string>>;
}

export async function begunWith({ text, packed }: CarriedDesign): Promise<Begun> {
  const files = Object.entries(packed).map(async ([name, bytes]) => [name, await unpack(bytes)] as const);
  return { text, files: new Map(await Promise.all(files)) };
}

/** What the design calls itself, without what stands in brackets. */
export function nameOfDemo(text: string): string {
  const { name } = JSON.parse(text) as { readonly name?: string };
  return (name ?? "").replace(/\s*\(.*\)$/, "");
}
