/**
 * How many stones a row may have: fewer by one, as made, more by one; and what the group comes to.
 */
import { useBench } from "../state/bench.js";
import { nameOf, type Path } from "../state/json-text.js";
import { say, sayNumber } from "../words/language.js";
import { stoneValues } from "./stone-values.js";

export function StoneChoices({ path }: { readonly path: Path }) {
  const { answers, document } = useBench();
  const name = nameOf(path);
  const group = answers.of.stones.value?.value.report?.groups.find((one) => one.path === name);
  if (group === undefined) return null;
  const total = say("choice.stonesTotal", { count: group.count, carats: sayNumber(group.carats, 3) });
  // A count is that of every row: where rows came out differently it is chosen by the first, the others follow.
  const [row] = group.rows;
  if (row === undefined) return <p class="caption">{total}</p>;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset's frame is not wanted
    <div class="choices" role="group" aria-label={say("choice.stones")}>
      <p class="caption">
        {total} {say("choice.stones")}
      </p>
      <div>
        {row.choices.map(({ count, gap, made }) => (
          <button
            type="button"
            key={count}
            aria-pressed={made}
            onClick={() => document.setAll(stoneValues(path, count))}
          >
            <strong>{count}</strong>
            <span class="caption">{gap === null ? "" : say("choice.gap", { gap: sayNumber(gap, 3) })}</span>
          </button>
        ))}
      </div>
    </div>
  );
}
