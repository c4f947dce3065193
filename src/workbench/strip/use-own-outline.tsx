/**
 * The lines of the placed drawing that is chosen, asked of the worker once for each drawing.
 */
import { useEffect, useState } from "preact/hooks";
import { useBench } from "../state/bench.js";
import type { ArtEntry } from "./art-entries.js";
import type { PointPart } from "./art-parts.js";
import { placedIn } from "./chosen-art.js";
import { type ArtRings, aloneDocument, movedRings, ownRings } from "./own-outline.js";
import type { PlacedArt } from "./placed-art.js";
import { sharedView } from "./shared-view.js";
import type { StripLayout } from "./strip-layout.js";

interface Known {
  readonly key: string;
  readonly rings: ArtRings;
  readonly placed: PlacedArt;
}

/** Most corners that are moved while something is dragged. Chosen: path data of them is written anew each time. */
const MOST_CORNERS = 2000;

/** Path data of the drawing where the document has it now; undefined until it is known. @param part undefined for none */
export function useOwnOutline(entry: ArtEntry, part: PointPart | undefined, layout: StripLayout): string | undefined {
  const { answers, document } = useBench();
  const { lane, part: shown } = sharedView(useBench());
  const [known, know] = useState<Known | undefined>(undefined);
  const now = document.value.value;
  const alone = part === undefined ? undefined : aloneDocument(now, entry.path);
  // The place aside: the lines follow it without being asked for again.
  const { place: _, ...drawing } = entry.value;
  const key = alone === undefined ? "" : JSON.stringify([entry.path, drawing, now.size, now.profile, shown.value]);
  useEffect(() => {
    const ring = answers.ring;
    if (part === undefined || alone === undefined || ring === undefined) return;
    let stands = true;
    const asked = ring.change(JSON.stringify(alone));
    const placed = placedIn(now, part, layout);
    asked
      .tile({ lane: lane.peek(), part: shown.peek() })
      .then((tile) => {
        const rings = ownRings(tile, placed, part.unit);
        const corners = rings.reduce((sum, { length }) => sum + length, 0);
        if (stands && corners > 0 && corners <= MOST_CORNERS) know({ key, rings, placed });
      })
      // What is wrong with the drawing is told by the ring's own answers; its box is shown in any case.
      .catch(() => undefined)
      .finally(() => asked.close());
    return () => {
      stands = false;
    };
  }, [key]);
  if (part === undefined || known?.key !== key) return undefined;
  return movedRings(known.rings, known.placed, placedIn(now, part, layout));
}
