/**
 * The symmetry's elements, asked of the library once.
 */
import { useEffect, useState } from "preact/hooks";
import { useBench } from "../state/bench.js";
import type { GroupElements } from "./snapping.js";

const NONE: GroupElements = { mirrors: [], middle: "none", centres: [] };

/**
 * The elements of a group by its name; none until they are known.
 *
 * @param varied whether tiles vary: operations then act within each tile, so its borders are no elements
 */
export function useElements(group: string, varied: boolean): GroupElements {
  const { host } = useBench();
  const [known, setKnown] = useState<Readonly<Record<string, GroupElements>>>({});
  useEffect(() => {
    let stands = true;
    const take = (elements: Readonly<Record<string, GroupElements>>): void => {
      if (stands) setKnown(elements);
    };
    // A worker that died is started anew, and asked again.
    host.value.library.symmetryElements().then(take, () => undefined);
    return () => {
      stands = false;
    };
  }, [host.value]);
  const elements = known[group] ?? NONE;
  if (!varied) return elements;
  const inside = (places: readonly number[]): number[] => places.filter((x) => x > 0);
  return { ...elements, mirrors: inside(elements.mirrors), centres: inside(elements.centres) };
}
