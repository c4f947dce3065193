/**
 * What a worker of a pool does for `many.ts` and `server.ts`: it makes one ring. A build keeps its thread busy for a few
 * tenths of a second up to seconds, so a program that has other things to do leaves it to workers.
 */
import { AnnuletError, build, encodeMesh, formatForFile, type Limits } from "annulet";
import { defaultFont } from "annulet/node";

/** One ring to make. */
export interface RingTask {
  /** The design, as JSON. */
  readonly document: string;
  readonly limits?: Partial<Limits>;
}

/** What became of it; plain data, as all that workers post. */
export type RingAnswer =
  | {
      readonly stl: Uint8Array;
      readonly closed: boolean;
      readonly volume: number;
      readonly repeats: number | undefined;
    }
  | { readonly error: ReturnType<AnnuletError["toJSON"]> };

// Designs from strangers may name files: they get the font for lettering and nothing else.
const font = defaultFont();

export async function makeRing({ document, limits }: RingTask): Promise<RingAnswer> {
  try {
    const { mesh, report } = await build(document, { limits, files: { [font.name]: font.bytes } });
    const stl = await encodeMesh(formatForFile("ring.stl"), mesh, { name: report.name });
    return { stl, closed: report.closed, volume: report.volume, repeats: report.fit?.repeats };
  } catch (error) {
    return { error: AnnuletError.from(error).toJSON() };
  }
}
