/**
 * A dimension's number, to be typed over, with what it measures beneath.
 */
import { useState } from "preact/hooks";
import { useBench } from "../state/bench.js";
import { say, sayNumber } from "../words/language.js";
import { readNumber } from "../words/read-number.js";
import type { DimensionLayout } from "./dimension-layout.js";
import { stepOf, useSetSize } from "./dimension-lines.js";
import type { Dimension } from "./dimensions.js";
import { stepsOfKey } from "./pulled-value.js";
import { sizePath } from "./section-sizes.js";

/** What is typed counts to the tenth of a micrometre. */
const TYPED_STEP = 1e-4;

/** Decimals that a size is shown with: two, or as many as it was given with. */
function shown(value: number): string {
  const given = String(value).split(".")[1]?.length ?? 0;
  return sayNumber(value, Math.min(4, Math.max(2, given)));
}

interface Shown {
  readonly dimension: Dimension;
  readonly number: DimensionLayout["number"];
  /** As it is built, where that is another. */
  readonly built: number | undefined;
  /** Whether it only tells. */
  readonly fixed: boolean;
}

export function DimensionNumber({ dimension, number, built, fixed }: Shown) {
  const [left, top] = number.at;
  return (
    <div class={`dimension-number stands-${number.anchor}`} style={{ left: `${left}px`, top: `${top}px` }}>
      {fixed ? <output>{shown(dimension.value)}</output> : <NumberInput {...{ dimension }} />}
      <span class="caption">{say(dimension.label)}</span>
      {built === undefined ? null : <span class="caption">{say("section.made", { value: sayNumber(built, 2) })}</span>}
    </div>
  );
}

function NumberInput({ dimension }: Pick<Shown, "dimension">) {
  const { document, selected } = useBench();
  const set = useSetSize(dimension);
  const [typed, setTyped] = useState<string>();
  const take = (): void => {
    const value = typed === undefined ? undefined : readNumber(typed);
    setTyped(undefined);
    if (value === undefined || value === dimension.value) return;
    document.rest();
    set(value, TYPED_STEP);
    document.rest();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === "Enter") take();
    if (event.key === "Escape") setTyped(undefined);
    const steps = UPRIGHT_KEYS.test(event.key) ? stepsOfKey(event.key) : 0;
    if (steps === 0) return;
    event.preventDefault();
    setTyped(undefined);
    const step = stepOf(event);
    set(dimension.value + steps * step, step);
  };
  return (
    <input
      type="text"
      inputMode="decimal"
      aria-label={`${say(dimension.label)}, mm`}
      value={typed ?? shown(dimension.value)}
      onInput={({ currentTarget }) => setTyped(currentTarget.value)}
      onFocus={() => {
        selected.value = sizePath(dimension.size);
      }}
      onBlur={take}
      {...{ onKeyDown }}
    />
  );
}

/** Keys that move a number while it is typed; the others move the caret. */
const UPRIGHT_KEYS = /^(?:Arrow(?:Up|Down)|Page(?:Up|Down))$/;
