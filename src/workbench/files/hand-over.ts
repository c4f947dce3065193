/**
 * Hands bytes to the maker as a download.
 */

/** How long the browser may take to begin, ms, before its copy is let go. Chosen. */
const BEGUN_WITHIN = 60_000;

export function handOver(name: string, bytes: Uint8Array): void {
  const address = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>]));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), BEGUN_WITHIN);
}
