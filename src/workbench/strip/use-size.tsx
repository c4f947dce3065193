/**
 * The size of an element as it changes.
 */
import type { RefObject } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { ScreenPoint } from "./flat-view.js";

/** A reference for the element, and its size, CSS pixels. */
export function useSize(): readonly [RefObject<HTMLDivElement | null>, ScreenPoint] {
  const frame = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState<ScreenPoint>([0, 0]);
  useEffect(() => {
    if (frame.current === null) return;
    const observer = new ResizeObserver(([{ contentRect }]) => setSize([contentRect.width, contentRect.height]));
    observer.observe(frame.current);
    return () => observer.disconnect();
  }, []);
  return [frame, size];
}
