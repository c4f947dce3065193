/**
 * One of what the document has of its own or what is built in, by its symbol.
 */
import type { ControlProps } from "./control-props.js";
import { useValue } from "./use-fields.js";
import { isObject } from "./ways.js";

interface SymbolChoiceProps {
  readonly control: ControlProps;
  /** The document's list: entries with a symbol, and a name where they have one. */
  readonly own: unknown;
  readonly built: readonly { readonly symbol: string; readonly label: string }[];
  readonly choose: (symbol: string) => void;
}

export function SymbolChoice({ control, own, built, choose }: SymbolChoiceProps) {
  const { place, reference, id, describedBy, isWrong } = control;
  const value = useValue(place) ?? reference.default;
  const listed = (Array.isArray(own) ? own : []).filter(isObject).map(({ symbol, name }) => ({
    symbol: String(symbol),
    label: typeof name === "string" ? name : String(symbol),
  }));
  const all = [...listed, ...built];
  const isKnown = all.some(({ symbol }) => symbol === value);
  return (
    <select
      id={id}
      value={String(value)}
      aria-describedby={describedBy}
      aria-invalid={isWrong}
      onChange={(event) => choose(event.currentTarget.value)}
    >
      {!isKnown && <option value={String(value)}>{String(value)}</option>}
      {all.map(({ symbol, label }) => (
        <option key={symbol} value={symbol}>
          {label}
        </option>
      ))}
    </select>
  );
}
