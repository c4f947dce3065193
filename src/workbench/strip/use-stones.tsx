/**
 * The ring's stones as the strip shows and takes them: where they lie, which is pressed, and a new one where it is wanted.
 */
import { useMemo } from "preact/hooks";
import { type Bench, useBench } from "../state/bench.js";
import { withStone } from "./add-stone.js";
import type { ArtEntry } from "./art-entries.js";
import { dragged, ownPlace } from "./drag-art.js";
import type { FlatPoint } from "./flat-view.js";
import { sharedView } from "./shared-view.js";
import type { Guide } from "./snapping.js";
import { stoneAt, stoneSpots } from "./stone-spots.js";
import { SNAP_REACH } from "./strip-handle.js";
import type { StripLayout } from "./strip-layout.js";

export function useStones(layout: StripLayout, entries: readonly ArtEntry[]) {
  const { answers, selected } = useBench();
  const stones = answers.of.stones.value?.value;
  const spots = useMemo(() => (stones === undefined ? [] : stoneSpots(layout, stones)), [layout, stones]);
  const repeated = new Set(
    entries.flatMap(({ kind, path, value }) => (isRepeated(kind, value) ? [Number(path[1])] : [])),
  );
  const press = (at: FlatPoint): boolean => {
    const stone = stones === undefined ? undefined : stoneAt(spots, stones, at);
    if (stone !== undefined) selected.value = ["stones", stone.group];
    return stone !== undefined;
  };
  const [key, group] = selected.value ?? [];
  return { stones, spots, repeated, press, chosen: key === "stones" ? Number(group) : undefined };
}

function isRepeated(kind: ArtEntry["kind"], { place }: ArtEntry["value"]): boolean {
  const { form } = Object(place) as { readonly form?: unknown };
  return kind === "stones" && (form === "tile" || form === "line");
}

/** Puts a stone at a place of the strip, snapped to what is near, and chooses it. */
export function addStone(
  bench: Bench,
  place: FlatPoint,
  { layout, guides, lane }: { readonly layout: StripLayout; readonly guides: readonly Guide[]; readonly lane: string },
): void {
  const { document, selected } = bench;
  const shared = sharedView(bench);
  const reach = SNAP_REACH / shared.view.peek().scale;
  const { point: at } = dragged(layout, "tile", ownPlace(layout, place), { guides, reach });
  const groups = withStone(document.value.peek(), { at, lane, selected: selected.peek() });
  document.rest();
  document.set(["stones"], groups);
  document.rest();
  shared.addsStone.value = false;
  selected.value = ["stones", groups.length - 1];
}
