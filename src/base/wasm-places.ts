/**
 * Where the WebAssembly files of the two libraries that need one are taken from. Each library is loaded once a process, so
 * what is told here counts until it has been.
 */
/** A file as an address or as its bytes. */
export type WasmPlace = string | URL | Uint8Array | ArrayBuffer;

/** Where the files are, where they do not lie beside the library. */
export interface WasmPlaces {
  /** Of the library that unites solids: `annulet/manifold.wasm`. Default beside the library's own file. */
  readonly manifold?: WasmPlace | undefined;
  /** Of the library that sets lettering: `annulet/harfbuzz.wasm`. Default beside the library's own file. */
  readonly harfbuzz?: WasmPlace | undefined;
}

const WASM_LIBRARIES = ["manifold", "harfbuzz"] as const;

type WasmLibrary = (typeof WASM_LIBRARIES)[number];

/** What Emscripten's modules take: the file's address, or its bytes. */
export interface WasmStart {
  readonly locateFile?: () => string;
  readonly wasmBinary?: Uint8Array<ArrayBuffer>;
}

const told = new Map<WasmLibrary, WasmStart>();

/** Takes note of where files are. */
export function tellWasm(places: WasmPlaces = {}): void {
  for (const library of WASM_LIBRARIES) {
    const place = places[library];
    if (place !== undefined) told.set(library, startOf(place));
  }
}

/** Whether it names a file. */
export function isWasmPlace(given: unknown): given is WasmPlace {
  if (typeof given === "string") return given !== "";
  return [URL, Uint8Array, ArrayBuffer].some((kind) => given instanceof kind);
}

/** How a library is to be started. */
export function wasmStart(library: WasmLibrary): WasmStart {
  return told.get(library) ?? {};
}

function startOf(place: WasmPlace): WasmStart {
  if (typeof place === "string") return { locateFile: () => place };
  if (place instanceof URL) return { locateFile: () => place.href };
  // A copy: the bytes are read when the library is first needed, which may be later.
  return { wasmBinary: new Uint8Array(place) };
}

/** What to do where a library could not be loaded. */
export function mendWasm(library: WasmLibrary): string {
  return typeof WebAssembly === "undefined"
    ? "WebAssembly is switched off here"
    : `let the page compile WebAssembly (script-src 'wasm-unsafe-eval'), and say where annulet/${library}.wasm is: wasm: { ${library}: address or bytes }`;
}
