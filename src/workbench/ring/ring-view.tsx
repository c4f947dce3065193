/**
 * The ring in metal.
 */
import { useBench } from "../state/bench.js";

export function RingView() {
  const { answers } = useBench();
  const buffers = answers.of.buffers.value;
  return <p>{buffers === undefined ? "…" : `${buffers.value.triangles.length / 3} triangles, ${buffers.detail}`}</p>;
}
