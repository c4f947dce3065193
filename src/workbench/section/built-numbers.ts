/**
 * The numbers of a cross-section as it is built: its width follows the tiles, and where the band tapers both sizes follow the angle.
 */
import type { Profile } from "../../index.js";
import { type ReadProfile, type SectionNumbers, sectionNumbers } from "./section-sizes.js";

/** What a cross-section was built from, and what came of it. */
export interface BuiltSection {
  /** `profile` as it was written. */
  readonly written: unknown;
  readonly profile: Pick<Profile, "width" | "thickness" | "boreRadius" | "polyline">;
  /** With its defaults filled in. */
  readonly read: ReadProfile;
}

/** As built, and as it will be built from what is written now: whatever width and thickness change by, they change by. */
export function builtNumbers(
  { written, profile, read }: BuiltSection,
  now: unknown,
): { readonly before: SectionNumbers; readonly after: SectionNumbers } {
  const [then, next] = [sectionNumbers(written, read), sectionNumbers(now, read)];
  const { width, thickness } = profile;
  const changed = (name: "width" | "thickness"): number =>
    profile[name] + (next.sizes[name] ?? 0) - (then.sizes[name] ?? 0);
  return {
    before: { ...then, sizes: { ...then.sizes, width, thickness } },
    after: { ...next, sizes: { ...next.sizes, width: changed("width"), thickness: changed("thickness") } },
  };
}
