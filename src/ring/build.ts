/**
 * A ring from a design, once: what `openRing` gives for its master, with its report.
 */
import type { FileSource } from "../base/files.js";
import { LIMITS, type Limits } from "../base/limits.js";
import type { Timings } from "../base/phases.js";
import type { WasmPlaces } from "../base/wasm-places.js";
import type { PieceTime } from "../casting/piece.js";
import type { PrintSettings } from "../design/print-settings.js";
import type { Design } from "../design/schema.js";
import type { Mesh } from "../mesh/mesh.js";
import type { Buffers } from "../mesh/normals.js";
import { toBuffers } from "../output/files/buffers.js";
import type { FileStone } from "../output/files/file-stone.js";
import type { Report } from "../output/report/report.js";
import type { Detail } from "../solids/detail.js";
import type { KernelName } from "../union/kernels/catalogue.js";
import type { Kernel } from "../union/kernels/kernel.js";
import type { Asker } from "./asker.js";
import { openRing, RING_DEFAULTS } from "./open-ring.js";
import { readQuestion } from "./options/questions.js";

export interface BuildOptions extends Asker {
  /**
   * Boolean library: a built-in one by its name, or your own. Default manifold. It is also the fallback where another
   * kernel's result does not close.
   */
  readonly kernel?: Kernel | KernelName | undefined;
  /**
   * Where the WebAssembly files of uniting and lettering are, as addresses or bytes, where they do not lie beside the
   * library. Each is loaded once a process. Default beside it.
   */
  readonly wasm?: WasmPlaces | undefined;
  /** Most beads that are built. Default 20 000. */
  readonly maxBeads?: number | undefined;
  /** The files that the design names, drawings and fonts: name → text or bytes, or a function that gives one. Default: none. */
  readonly files?: FileSource | undefined;
  /** Which piece the mesh is: the master with all casting allowances, the casting, or the finished piece. Default master. */
  readonly piece?: PieceTime | undefined;
  /**
   * How far the surface may lie from what was built, mm, 0 or more, so that it takes fewer triangles. Default 0: it stays
   * as it was built.
   */
  readonly decimate?: number | undefined;
  /** `draft` for looking at a design while it changes: a coarser mesh of the same ring, closed too. Default full. */
  readonly detail?: Detail | undefined;
  /** How the mesh is turned for the printer, and what it is judged by, in place of the document's `print`. Default: that. */
  readonly print?: Partial<PrintSettings> | undefined;
  /**
   * What the build may cost: seconds, triangles, corners; beyond it AnnuletError `too-long`, `too-many-triangles` or
   * `too-many-corners` names the part of the document. Default 1 800 s, 5 million triangles, 4 million corners.
   */
  readonly limits?: Partial<Limits> | undefined;
  /** Whether the result carries the mesh as buffers for a viewer too, with normals. Default false. */
  readonly geometry?: boolean | undefined;
}

/** Defaults of a build. */
export const BUILD_DEFAULTS = {
  kernel: RING_DEFAULTS.kernel,
  maxBeads: RING_DEFAULTS.maxBeads,
  piece: RING_DEFAULTS.piece,
  decimate: RING_DEFAULTS.decimate,
  detail: RING_DEFAULTS.detail,
  geometry: false,
  limits: LIMITS,
} as const;

/** A built ring. */
export interface BuildResult {
  /** The ring: one closed solid, mm. Without casting allowances master, casting and finished piece are one. */
  readonly mesh: Mesh;
  /**
   * Of the finished piece; what the mesh measures is in its `allowances`. Equal designs and options give equal reports, to
   * the byte as JSON.
   */
  readonly report: Report;
  /** Phase of the build → milliseconds. */
  readonly timings: Timings;
  /** The document with its defaults filled in. */
  readonly design: Design;
  /** Where the stones stand in the mesh, which holds none of them: one entry a stone. */
  readonly stones: readonly FileStone[];
  /** Only where asked for. */
  readonly geometry?: Buffers | undefined;
}

/**
 * Builds a ring from a design. Document and options are read before anything is waited for, so they may change afterwards.
 *
 * @param document the design document: an object, or JSON text
 * @throws AnnuletError with everything that is wrong in the options, or in the document; `not-closed` where the ring fails
 *   the gate; the signal's reason where it was aborted; what a function of yours throws, as it is
 *
 * @example
 * const { mesh, report } = await build(document);
 * console.log(report.closed, report.volume, report.mass); // mm³, g
 */
export async function build(document: unknown, options: BuildOptions = {}): Promise<BuildResult> {
  const { geometry = BUILD_DEFAULTS.geometry, ...asked } = readQuestion("build", options);
  const { files, kernel, wasm, maxBeads, decimate, limits, ...asking } = asked;
  const made = await openRing(document, { files, kernel, wasm, maxBeads, decimate, limits }).make(asking);
  asking.onProgress?.({ stage: "done", share: 1 });
  return geometry ? { ...made, geometry: toBuffers(made.mesh) } : made;
}
