/**
 * Findings at their place on the strip: a number in a ring, the sentence for those who point at it or come to it by keys.
 */
import { useBench } from "../state/bench.js";
import { sayText } from "../words/say-text.js";
import { toScreen } from "./flat-view.js";
import { sharedView } from "./shared-view.js";
import { placeOfAngle, type StripLayout } from "./strip-layout.js";

/** Most places that are marked, the worst first. Chosen. */
const MOST_PLACES = 60;

/** Radius of a ring, CSS pixels. */
const RING = 9;

export function FindingMarks({ layout }: { readonly layout: StripLayout }) {
  const bench = useBench();
  const findings = bench.answers.of.check.value?.value.findings ?? [];
  const shared = sharedView(bench);
  const places = findings
    .flatMap((finding, i) => finding.places.map((place) => ({ finding, place, number: i + 1 })))
    .slice(0, MOST_PLACES);
  return (
    <g class="finding-marks">
      {places.map(({ finding, place, number }) => {
        const [x, y] = toScreen(shared.view.value, shared.size.value, [placeOfAngle(layout, place.angle), place.v]);
        return (
          <g
            key={`${number} ${place.angle} ${place.v}`}
            class={`finding-mark finding-${finding.severity}`}
            transform={`translate(${x} ${y})`}
          >
            <title>{sayText(finding.message)}</title>
            <circle r={RING} />
            <text x={RING + 2} y={-RING + 4}>
              {number}
            </text>
          </g>
        );
      })}
    </g>
  );
}
