/**
 * The metal, by its name.
 */
import { useBench } from "../state/bench.js";
import { language } from "../words/language.js";
import { sayText } from "../words/say-text.js";
import { asked } from "./asked.js";
import type { ControlProps } from "./control-props.js";
import { writeNumber } from "./read-number.js";
import { SymbolChoice } from "./symbol-choice.js";

export function MetalField(control: ControlProps) {
  const { document, host } = useBench();
  const alloys = asked("alloys", () => host.peek().library.alloys()).value ?? [];
  const built = alloys.map(({ symbol, name, density }) => {
    return { symbol, label: `${sayText(name)} · ${writeNumber(density, language.value)} g/cm³` };
  });
  const choose = (symbol: string): void => document.set(control.place.path, symbol);
  return <SymbolChoice {...{ control, built, choose }} own={document.value.value.alloys} />;
}
