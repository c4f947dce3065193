/**
 * A number: typed with comma or point, moved by arrow keys and wheel. What is refused stays as it was typed and changes nothing.
 */
import { useSignal } from "@preact/signals";
import { useBench } from "../state/bench.js";
import { nameOf } from "../state/json-text.js";
import { sayRange } from "../words/fields/say-field.js";
import { language, say } from "../words/language.js";
import type { ControlProps } from "./control-props.js";
import { readNumber, type TypedNumber, writeNumber } from "./read-number.js";
import { sayUnit } from "./say-unit.js";
import { stepOf, stepped } from "./step-number.js";
import { useValue } from "./use-fields.js";
import type { Way } from "./ways.js";

interface NumberProps extends ControlProps {
  readonly way: Way & { readonly kind: "number" };
}

export function NumberField(props: NumberProps) {
  const { place, reference, way, id, describedBy, isWrong } = props;
  const value = useValue(place);
  const typing = useTyping(props, value);
  const refused = typing.refused.value;
  return (
    <>
      <span class="field-number">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={typing.shown}
          placeholder={typeof reference.default === "number" ? writeNumber(reference.default, language.value) : ""}
          aria-invalid={isWrong || refused !== undefined}
          aria-describedby={refused === undefined ? describedBy : `${describedBy} ${id}-refused`}
          onInput={(event) => typing.type(event.currentTarget.value)}
          onKeyDown={typing.key}
          onWheel={typing.wheel}
          onBlur={typing.leave}
        />
        {reference.unit !== undefined && <span class="field-unit">{sayUnit(reference.unit)}</span>}
      </span>
      {refused !== undefined && (
        <p class="field-problem" id={`${id}-refused`}>
          {sayRefused(refused, way, reference.range)}
        </p>
      )}
    </>
  );
}

type Refused = Exclude<TypedNumber, { readonly value: number }>;

function sayRefused(refused: Refused, { whole }: NumberProps["way"], range = ""): string {
  if (refused === "out of range") return say("field.range", { range: sayRange(range) });
  if (refused === "not whole") return say("field.whole");
  if (refused === "nothing") return say("field.needed");
  return say(whole ? "field.whole" : "field.number");
}

/** What is typed but not taken, and the ways in which a number moves. */
function useTyping({ place, reference, way }: NumberProps, value: unknown) {
  const { document } = useBench();
  const typed = useSignal<{ readonly text: string; readonly beside: unknown } | undefined>(undefined);
  const refused = useSignal<Refused | undefined>(undefined);
  const name = nameOf(place.path);
  const forget = (): void => {
    typed.value = undefined;
    refused.value = undefined;
  };
  // The document went on without what was typed: by another view, or by undo.
  if (typed.value !== undefined && typed.value.beside !== value) queueMicrotask(forget);
  const put = (next: number | undefined): void => document.set(place.path, next, name);
  const type = (text: string): void => {
    const read = readNumber(text, way, reference.unit);
    const isEmpty = read === "nothing" && !reference.required;
    refused.value = typeof read === "object" || isEmpty ? undefined : (read as Refused);
    if (refused.value === undefined) put(typeof read === "object" ? read.value : undefined);
    const beside = refused.value !== undefined ? value : typeof read === "object" ? read.value : undefined;
    typed.value = { text, beside };
  };
  const move = (count: number): void => {
    const from = [value, reference.default, way.limits.least].find((one) => typeof one === "number") as number;
    forget();
    put(stepped(from ?? 0, count, way, stepOf(way, reference.unit)));
  };
  const key = (event: KeyboardEvent): void => {
    if (event.key === "Escape" && typed.value !== undefined) forget();
    const count = STEPS_OF_KEY[event.key];
    if (count === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    move(event.shiftKey ? count * 10 : count);
  };
  const wheel = (event: WheelEvent): void => {
    if (event.currentTarget !== globalThis.document.activeElement || event.deltaY === 0) return;
    event.preventDefault();
    move(event.deltaY < 0 ? 1 : -1);
  };
  const leave = (): void => {
    if (refused.value === undefined) forget();
    document.rest();
  };
  const written = typeof value === "number" ? writeNumber(value, language.value) : "";
  return { shown: typed.value?.text ?? written, refused, type, key, wheel, leave };
}

/** Steps by key; with Shift ten times as many. */
const STEPS_OF_KEY: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 };
