/**
 * Bytes as base64 (RFC 4648), for addresses that hold their data.
 */

/** Bytes that become characters at once: within what a call takes as arguments. */
const CHUNK = 8190;

export function base64(bytes: Uint8Array): string {
  const parts: string[] = [];
  // Whole triples, so that the parts can be joined.
  for (let at = 0; at < bytes.length; at += CHUNK) {
    parts.push(btoa(String.fromCharCode(...bytes.subarray(at, at + CHUNK))));
  }
  return parts.join("");
}
