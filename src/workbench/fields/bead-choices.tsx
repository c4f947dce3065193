/**
 * How many beads a run may have: a step fewer, as made, a step more.
 */
import { useBench } from "../state/bench.js";
import { nameOf, type Path } from "../state/json-text.js";
import { say, sayNumber } from "../words/language.js";
import { beadValues } from "./bead-values.js";

export function BeadChoices({ path }: { readonly path: Path }) {
  const { answers, document } = useBench();
  const name = nameOf(path);
  const run = answers.of.beads.value?.value?.find((one) => one.path === name);
  if (run === undefined || run.choices.length === 0) return null;
  return (
    <div class="choices">
      <p class="caption">{say("choice.beads")}</p>
      <div>
        {run.choices.map((choice) => (
          <button
            type="button"
            key={choice.count}
            aria-pressed={choice.made}
            onClick={() => document.setAll(beadValues(path, choice))}
          >
            <strong>{choice.count}</strong>
            <span class="caption">
              {say("choice.spacing", { spacing: sayNumber(choice.spacing, 3), ratio: sayNumber(choice.ratio, 2) })}
            </span>
          </button>
        ))}
      </div>
    </div>
  );
}
