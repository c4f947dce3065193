/**
 * What every control of a field is handed.
 */
import type { FieldReference } from "../../index.js";
import { nameOf, type Path } from "../state/json-text.js";
import type { Place } from "./place.js";

export interface ControlProps {
  readonly place: Place;
  readonly reference: FieldReference;
  /** Of the element that takes the focus, for its label. */
  readonly id: string;
  /** Ids of help and problems. */
  readonly describedBy: string;
  readonly isWrong: boolean;
}

/** The id of a field's control. */
export function idOf(path: Path): string {
  return `field-${nameOf(path).replaceAll(/[^\w-]/g, "-")}`;
}
