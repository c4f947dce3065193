/**
 * What no control shows well: drawn lines, lists of points. It leads to its place in the text.
 */

import { leadToText } from "../text/text-asked.js";
import { say } from "../words/language.js";
import type { ControlProps } from "./control-props.js";
import { useValue } from "./use-fields.js";

export function WrittenField({ place, id, describedBy }: ControlProps) {
  const value = useValue(place);
  const isDrawn = typeof value === "string" || Array.isArray(value);
  return (
    <button
      type="button"
      id={id}
      class="field-written"
      aria-describedby={describedBy}
      onClick={() => leadToText(place.path)}
    >
      {say(isDrawn ? "field.drawn" : "field.written")}
    </button>
  );
}
