/**
 * The ring's size: as it was asked for, and in every other system.
 */
import { useState } from "preact/hooks";
import { sizeTable } from "../../entries/sizes.js";
import { useBench } from "../state/bench.js";
import { say, sayNumber } from "../words/language.js";
import { sayText } from "../words/say-text.js";

export function SizeCell() {
  const size = useBench().answers.of.size.value?.value;
  const [open, show] = useState(false);
  if (size === undefined) return <div class="title-cell title-size" />;
  const rows = sizeTable(size.circumference).filter(({ label }) => label !== undefined);
  const own = rows.find(({ system }) => system === size.system);
  return (
    <div class="title-cell title-size" data-open={open}>
      <button type="button" class="title-size-own" aria-expanded={open} onClick={() => show(!open)}>
        <span class="caption">{say("title.size")}</span>
        <span class="figure">
          {own === undefined ? "" : `${sayText(own.title)} ${size.label ?? own.label} · `}Ø{" "}
          {sayNumber(size.diameter, 2)} mm
        </span>
      </button>
      <ul class="title-systems" aria-label={say("title.systems")}>
        {rows.map(({ system, title, label }) => (
          <li key={system}>
            <span class="caption">{sayText(title)}</span> {label}
          </li>
        ))}
      </ul>
    </div>
  );
}
