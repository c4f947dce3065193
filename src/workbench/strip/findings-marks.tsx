/**
 * Findings at their place on the strip: a number in a ring, the sentence for those who point at it or come to it by keys.
 */
import { useBench } from "../state/bench.js";
import { sayText } from "../words/say-text.js";
import { layOutFindings } from "./finding-layout.js";
import { toScreen } from "./flat-view.js";
import { lettersSize } from "./letters-size.js";
import { sharedView } from "./shared-view.js";
import { placeOfAngle, type StripLayout } from "./strip-layout.js";

/** Most places that are marked, the worst first. Chosen. */
const MOST_PLACES = 60;

/** Radius of a ring where letters are 16 CSS pixels high. */
const RING = 9;

export function FindingMarks({ layout }: { readonly layout: StripLayout }) {
  const bench = useBench();
  const findings = bench.answers.of.check.value?.value.findings ?? [];
  const { view, size } = sharedView(bench);
  const ring = RING * lettersSize();
  const spots = findings
    .flatMap(({ places, severity, message }, i) =>
      places.map(({ angle, v }) => {
        const at = toScreen(view.value, size.value, [placeOfAngle(layout, angle), v]);
        return { at, severity, message, number: i + 1 };
      }),
    )
    .slice(0, MOST_PLACES);
  return (
    <g class="finding-marks">
      {layOutFindings(spots, 2 * ring).map(({ at: [x, y], numbers, severity, messages }) => (
        <g key={`${x} ${y}`} class={`finding-mark finding-${severity}`} transform={`translate(${x} ${y})`}>
          <title>{messages.map(sayText).join("\n")}</title>
          <circle r={ring} />
          <text x={ring + 2} y={4 - ring}>
            {numbers.join(" ")}
          </text>
        </g>
      ))}
    </g>
  );
}
