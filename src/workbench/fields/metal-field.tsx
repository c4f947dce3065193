/**
 * The metal, by its name.
 */
import { useBench } from "../state/bench.js";
import { language } from "../words/language.js";
import { sayText } from "../words/say-text.js";
import { asked } from "./asked.js";
import type { ControlProps } from "./control-props.js";
import { writeNumber } from "./read-number.js";
import { useValue } from "./use-fields.js";
import { isObject } from "./ways.js";

export function MetalField({ place, reference, id, describedBy, isWrong }: ControlProps) {
  const { document, host } = useBench();
  const value = useValue(place) ?? reference.default;
  const built = asked("alloys", () => host.peek().library.alloys()).value ?? [];
  const { alloys } = document.value.value;
  const own = (Array.isArray(alloys) ? alloys : []).filter(isObject).map(({ symbol, name }) => ({
    symbol: String(symbol),
    name: typeof name === "string" ? name : String(symbol),
    density: undefined,
  }));
  const all = [...own, ...built.map((alloy) => ({ ...alloy, name: sayText(alloy.name) }))];
  const isKnown = all.some(({ symbol }) => symbol === value);
  return (
    <select
      id={id}
      value={String(value)}
      aria-describedby={describedBy}
      aria-invalid={isWrong}
      onChange={(event) => document.set(place.path, event.currentTarget.value)}
    >
      {!isKnown && <option value={String(value)}>{String(value)}</option>}
      {all.map(({ symbol, name, density }) => (
        <option key={symbol} value={symbol}>
          {density === undefined ? name : `${sayText(name)} · ${writeNumber(density, language.value)} g/cm³`}
        </option>
      ))}
    </select>
  );
}
