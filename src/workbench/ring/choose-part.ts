/**
 * What is chosen on the metal: asked of the ring in the worker, which knows what made each face; and marked there.
 */
import { effect } from "@preact/signals";
import {
  type Buffers,
  cornersOf,
  type DrawnStone,
  type RayHit,
  type StoneInView,
  type StonesInView,
} from "../../entries/view.js";
import { nameOfPart } from "../changes/change-words.js";
import type { Bench } from "../state/bench.js";
import { nameOf, type Path, pathOf, valueAt } from "../state/json-text.js";

/** What of the bench is chosen on. */
export type ChoosingBench = Pick<Bench, "answers" | "selected">;

/** Chooses in all views what made a face of the ring that is shown; nothing changes where that is not known. */
export async function choosePart({ answers, selected }: ChoosingBench, buffers: Buffers, hit: RayHit): Promise<void> {
  const detail = answers.of.buffers.peek()?.detail ?? "draft";
  try {
    const part = await answers.ring?.partAt({ point: hit.point, normal: normalOf(buffers, hit) }, { detail });
    if (part !== undefined) selected.value = pathOf(part.path);
  } catch {
    // What is wrong with the ring is told by other questions.
  }
}

/** Chooses the group of a stone in all views. */
export function chooseStone(
  { selected }: Pick<ChoosingBench, "selected">,
  stone: DrawnStone & Partial<Pick<StoneInView, "group">>,
): void {
  if (stone.group !== undefined) selected.value = ["stones", stone.group];
}

/** Away from the metal, as long as the triangle is wide. */
function normalOf(buffers: Buffers, { triangle }: RayHit): [number, number, number] {
  const [a, b, c] = cornersOf(buffers, triangle);
  const [e, f] = [b, c].map((corner) => corner.map((x, k) => x - a[k]));
  return [e[1] * f[2] - e[2] * f[1], e[2] * f[0] - e[0] * f[2], e[0] * f[1] - e[1] * f[0]];
}

/** What marks a part, or takes the marks away. */
export interface PartMarker {
  drawPart(segments: Float32Array): void;
}

/** How long what is chosen, and the ring, must stay as they are before lines are asked for, ms: a drag goes first. Chosen. */
const STILL = 120;

const NOTHING = new Float32Array();

/** The girdles of a group's stones, six numbers a segment, mm. */
export function girdleLines({ bodies, stones }: StonesInView, group: number): Float32Array {
  const own = stones.filter((stone) => stone.group === group);
  return Float32Array.from(
    own.flatMap(({ body, at, out, along }) => {
      const [ox, oy, oz] = out;
      const [ax, ay, az] = along;
      const across = [oy * az - oz * ay, oz * ax - ox * az, ox * ay - oy * ax];
      const ring = bodies[body].outline.map(([x, y]) => at.map((value, k) => value + x * along[k] + y * across[k]));
      return ring.flatMap((corner, i) => [...corner, ...ring[(i + 1) % ring.length]]);
    }),
  );
}

/** Marks on the ring what is chosen in any view. @returns what ends it */
export function markChosen({ answers, selected }: ChoosingBench, marker: PartMarker): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let stop = new AbortController();
  const ask = async (path: Path, { signal }: AbortController): Promise<void> => {
    const detail = answers.of.buffers.peek()?.detail ?? "draft";
    const lines = await answers.ring?.partLines({ path: nameOf(path) }, { detail, signal }).catch(() => undefined);
    if (!signal.aborted && lines !== undefined) marker.drawPart(lines);
  };
  const unfollow = effect(() => {
    const path = selected.value;
    const shown = answers.of.buffers.value;
    stop.abort();
    clearTimeout(timer);
    if (path === undefined) {
      marker.drawPart(NOTHING);
      return;
    }
    if (shown === undefined) return;
    if (path[0] === "stones") {
      const stones = answers.of.stones.value?.value;
      marker.drawPart(stones === undefined ? NOTHING : girdleLines(stones, Number(path[1])));
      return;
    }
    const next = new AbortController();
    stop = next;
    timer = setTimeout(() => void ask(path, next), STILL);
  });
  return () => {
    unfollow();
    stop.abort();
    clearTimeout(timer);
  };
}

/** What is chosen, in words: by its own name, or as a field is called. */
export function sayChosen(document: unknown, path: Path): string {
  for (let length = path.length; length > 0; length--) {
    const name = valueAt(document, [...path.slice(0, length), "name"]);
    if (typeof path[length - 1] === "number" && typeof name === "string" && name !== "") return name;
  }
  return nameOfPart(path);
}
