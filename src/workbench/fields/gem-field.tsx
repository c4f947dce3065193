/**
 * What stones are of, by name: the document's own gems, then those that are built in.
 */
import { useBench } from "../state/bench.js";
import { sayText } from "../words/say-text.js";
import { asked } from "./asked.js";
import type { ControlProps } from "./control-props.js";
import { SymbolChoice } from "./symbol-choice.js";

export function GemField(control: ControlProps) {
  const { document, host } = useBench();
  const { place, reference } = control;
  const gems = asked("gems", () => host.peek().library.gems()).value ?? [];
  const built = gems.map(({ symbol, name }) => ({ symbol, label: sayText(name) }));
  const choose = (symbol: string): void => document.set(place.path, symbol === reference.default ? undefined : symbol);
  return <SymbolChoice {...{ control, built, choose }} own={document.value.value.gems} />;
}
