/**
 * What a region is drawn from.
 */
import { useBench } from "../state/bench.js";
import { sayField } from "../words/fields/say-field.js";
import { say } from "../words/language.js";
import { ART, type ArtKey, artOf, changeArt } from "./art.js";
import { idOf } from "./control-props.js";
import type { Place } from "./place.js";
import { useOwner } from "./use-fields.js";

export function ArtField({ place }: { readonly place: Place }) {
  const bench = useBench();
  const region = useOwner(place);
  const id = `${idOf(place.path)}-art`;
  return (
    <div class="field">
      <div class="field-name">
        <label for={id}>{say("field.art")}</label>
      </div>
      <div class="field-control">
        <select
          id={id}
          value={artOf(region) ?? ""}
          onChange={(event) => bench.document.set(place.path, changeArt(region, event.currentTarget.value as ArtKey))}
        >
          {artOf(region) === undefined && <option value="">{say("field.unset")}</option>}
          {ART.map((key) => (
            <option key={key} value={key}>
              {sayField(`${place.schema}.${key}`)}
            </option>
          ))}
        </select>
      </div>
    </div>
  );
}
