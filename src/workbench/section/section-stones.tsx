/**
 * Rows of stones in the cross-section, to be seen and chosen there.
 */
import { useBench } from "../state/bench.js";
import { cutAngle } from "./cut-choice.js";
import type { SectionPlace } from "./dimension-layout.js";
import { stoneSilhouettes } from "./stone-silhouettes.js";

export function SectionStones({ place, boreRadius }: { readonly place: SectionPlace; readonly boreRadius: number }) {
  const { answers, document, selected } = useBench();
  const stones = answers.of.stones.value?.value;
  if (stones === undefined) return null;
  const [key, chosen] = selected.value ?? [];
  return (
    <g class="section-stones">
      {stoneSilhouettes(stones, document.value.value, cutAngle.value).map(({ group, outline, colour }, i) => (
        // biome-ignore lint/a11y/noStaticElementInteractions: by keys a group is chosen in the form
        <polygon
          key={`${group} ${i}`}
          class={key === "stones" && chosen === group ? "stone-girdle stone-chosen" : "stone-girdle"}
          style={{ "--gem": `color(srgb-linear ${colour.join(" ")})` }}
          points={outline.map(([w, r]) => place.at([w, r - boreRadius]).join(",")).join(" ")}
          onClick={() => {
            selected.value = ["stones", group];
          }}
        />
      ))}
    </g>
  );
}
