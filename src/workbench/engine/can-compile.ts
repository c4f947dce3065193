/**
 * Whether WebAssembly may be compiled here.
 */

/** The least module there is: its mark and its version. */
const EMPTY_MODULE = Uint8Array.of(0, 0x61, 0x73, 0x6d, 1, 0, 0, 0);

export function canCompile(): boolean {
  try {
    return new WebAssembly.Module(EMPTY_MODULE) !== undefined;
  } catch {
    return false;
  }
}
