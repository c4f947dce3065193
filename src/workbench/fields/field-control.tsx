/**
 * The control of any field, for parts that hold fields of their own: it is handed down, since it holds those parts in turn.
 */
import { createContext, type FunctionComponent } from "preact";
import { useContext } from "preact/hooks";
import type { FieldReference } from "../../index.js";
import type { Place } from "./place.js";

export interface FieldProps {
  readonly place: Place;
  readonly reference: FieldReference | undefined;
}

export const FieldControl = createContext<FunctionComponent<FieldProps> | undefined>(undefined);

export function useFieldControl(): FunctionComponent<FieldProps> {
  const control = useContext(FieldControl);
  if (control === undefined) throw new Error("drawn outside of a form");
  return control;
}
