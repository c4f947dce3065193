/**
 * The cross-section.
 */
import { useBench } from "../state/bench.js";

export function SectionView() {
  const { answers } = useBench();
  const profile = answers.of.profile.value?.value;
  if (profile === undefined) return <p>…</p>;
  const points = profile.polyline.map(([w, r]) => `${w},${-r}`).join(" ");
  const heights = profile.polyline.map(([, r]) => r);
  const widths = profile.polyline.map(([w]) => w);
  const [left, top] = [Math.min(...widths), -Math.max(...heights)];
  const box = `${left - 1} ${top - 1} ${Math.max(...widths) - left + 2} ${Math.max(...heights) - Math.min(...heights) + 2}`;
  return (
    <svg viewBox={box} role="img" aria-hidden="true">
      <polygon class="cut" points={points} />
    </svg>
  );
}
