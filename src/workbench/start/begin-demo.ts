/**
 * A design of the demo's with the files that it names, as the bench takes it.
 */
import { unpack } from "../engine/unpack.js";
import type { Begun, Bench } from "../state/bench.js";

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

/** Leaves a design of the demo's on a bench, unless the maker has put or changed something there since this was called. */
export function unlessChanged({
  begin,
  id,
  document,
}: Pick<Bench, "begin" | "id" | "document">): (coming: Promise<Begun>) => Promise<void> {
  const [before, text] = [id.peek(), document.text.peek()];
  const isAsFound = (): boolean => id.peek() === before && document.text.peek() === text;
  return async (coming) => {
    const begun = await coming;
    if (isAsFound()) begin(begun);
  };
}

/** What the design calls itself, without what stands in brackets. */
export function nameOfDemo(text: string): string {
  const { name } = JSON.parse(text) as { readonly name?: string };
  return (name ?? "").replace(/\s*\(.*\)$/, "");
}
