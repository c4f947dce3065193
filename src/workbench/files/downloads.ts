/**
 * What the page makes to be downloaded: the bytes that the command line writes for the same design.
 */
import type { WorkerRing } from "../../entries/worker.js";
import type { Progress } from "../../index.js";
import type { RingHost } from "../engine/ring-host.js";

/** Endings: the design, meshes, the bench sheet, the picture, the drawing of the tile, the table of stones to order. */
export const DOWNLOADS = ["json", "stl", "obj", "3mf", "glb", "html", "png", "svg", "csv"] as const;

export type DownloadKind = (typeof DOWNLOADS)[number];

/** What a download is made of. */
export interface DownloadSource {
  /** The design as written. */
  readonly text: string;
  /** Undefined while no worker makes rings: then the design alone can be had. */
  readonly ring: WorkerRing | undefined;
  readonly library: RingHost["library"];
}

export interface DownloadAsking {
  readonly signal?: AbortSignal | undefined;
  readonly onProgress?: ((progress: Progress) => void) | undefined;
}

/** @throws AnnuletError as the questions of the ring */
export async function makeDownload(
  kind: DownloadKind,
  { text, ring, library }: DownloadSource,
  asking: DownloadAsking = {},
): Promise<Uint8Array> {
  if (kind === "json") return new TextEncoder().encode(text);
  if (ring === undefined) throw new Error("no worker makes rings now");
  switch (kind) {
    case "html":
      return new TextEncoder().encode((await ring.sheet({ ...asking, tool: await library.tool() })).html);
    case "png":
      return library.png(await ring.picture({}, asking));
    case "svg":
      return new TextEncoder().encode(await library.tileDrawing(await ring.tile({}, asking)));
    case "csv":
      return new TextEncoder().encode(await library.orderCsv((await ring.stones(asking)).orders));
    default:
      return ring.file(`ring.${kind}`, asking);
  }
}

/** The file's name without its ending, made of the design's: letters and digits of any script, with - between. */
export function fileStem(name: unknown): string {
  if (typeof name !== "string") return "ring";
  const stem = name
    .normalize("NFC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "");
  return stem.slice(0, 60) || "ring";
}
