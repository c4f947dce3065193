/**
 * Bytes that the page carries in itself: compressed, as base64.
 */

/** What `tools/packed.mjs` makes of a file. */
export async function unpack(packed: string): Promise<Uint8Array<ArrayBuffer>> {
  const compressed = Uint8Array.from(atob(packed), (letter) => letter.charCodeAt(0));
  const stream = new Blob([compressed]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}
