/**
 * What stones are of, by name: the document's own gems, then those that are built in.
 */
import { useBench } from "../state/bench.js";
import { sayText } from "../words/say-text.js";
import { asked } from "./asked.js";
import type { ControlProps } from "./control-props.js";
import { useValue } from "./use-fields.js";
import { isObject } from "./ways.js";

export function GemField({ place, reference, id, describedBy, isWrong }: ControlProps) {
  const { document, host } = useBench();
  const value = useValue(place) ?? reference.default;
  const built = asked("gems", () => host.peek().library.gems()).value ?? [];
  const { gems } = document.value.value;
  const own = (Array.isArray(gems) ? gems : []).filter(isObject).map(({ symbol, name }) => ({
    symbol: String(symbol),
    name: typeof name === "string" ? name : String(symbol),
  }));
  const all = [...own, ...built.map(({ symbol, name }) => ({ symbol, name: sayText(name) }))];
  const isKnown = all.some(({ symbol }) => symbol === value);
  const choose = (symbol: string): void => document.set(place.path, symbol === reference.default ? undefined : symbol);
  return (
    <select
      id={id}
      value={String(value)}
      aria-describedby={describedBy}
      aria-invalid={isWrong}
      onChange={(event) => choose(event.currentTarget.value)}
    >
      {!isKnown && <option value={String(value)}>{String(value)}</option>}
      {all.map(({ symbol, name }) => (
        <option key={symbol} value={symbol}>
          {name}
        </option>
      ))}
    </select>
  );
}
