/**
 * A switch, and a choice of one of several ways: words, a number of one's own, forms.
 */
import { useBench } from "../state/bench.js";
import { sayChoice } from "../words/fields/say-field.js";
import { say } from "../words/language.js";
import type { ControlProps } from "./control-props.js";
import { changeForm } from "./new-value.js";
import { useBook, useValue } from "./use-fields.js";
import { type Way, wayOf } from "./ways.js";

export function SwitchField({ place, reference, id, describedBy }: ControlProps) {
  const { document } = useBench();
  const value = useValue(place) ?? reference.default ?? false;
  return (
    <input
      id={id}
      type="checkbox"
      checked={value === true}
      aria-describedby={describedBy}
      onChange={(event) => {
        const next = event.currentTarget.checked;
        document.set(place.path, next === (reference.default ?? false) ? undefined : next);
      }}
    />
  );
}

interface ChoiceProps extends ControlProps {
  readonly ways: readonly Way[];
}

/** The way that holds: that of the value, else that of the default. */
export function chosenWay(value: unknown, preset: unknown, ways: readonly Way[]): number {
  return value === undefined ? wayOf(preset, ways) : wayOf(value, ways);
}

export function ChoiceField({ place, reference, id, describedBy, isWrong, ways }: ChoiceProps) {
  const { document } = useBench();
  const book = useBook();
  const value = useValue(place);
  const chosen = chosenWay(value, reference.default, ways);
  const choose = async (at: number): Promise<void> => {
    if (at === chosen && value !== undefined) return;
    if (at < 0) return document.set(place.path, undefined);
    const next = await changeForm(value, place, ways[at], book);
    document.set(place.path, next === reference.default ? undefined : next);
  };
  const isOptional = !reference.required && reference.default === undefined;
  return (
    <select
      id={id}
      value={String(chosen)}
      aria-describedby={describedBy}
      aria-invalid={isWrong}
      onChange={(event) => void choose(Number(event.currentTarget.value))}
    >
      {(isOptional || chosen < 0) && (
        <option value="-1" disabled={!isOptional}>
          {value === undefined ? say("field.unset") : say("field.other")}
        </option>
      )}
      {ways.map((way, at) => (
        <option key={nameOfWay(place.schema, way)} value={String(at)}>
          {nameOfWay(place.schema, way)}
        </option>
      ))}
    </select>
  );
}

function nameOfWay(schema: string, way: Way): string {
  if (way.kind === "word") return sayChoice(schema, way.word);
  if (way.kind === "object" && way.form !== undefined) return sayChoice(schema, way.form.name);
  return say(`field.way.${way.kind}`);
}
