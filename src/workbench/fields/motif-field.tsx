/**
 * A motif, by picture from the catalogue, with its parameters.
 */
import type { MotifEntry } from "../../index.js";
import { useBench } from "../state/bench.js";
import { valueAt } from "../state/json-text.js";
import { sayChoice, sayField } from "../words/fields/say-field.js";
import { say } from "../words/language.js";
import { motifValues, USUAL_TILE } from "./choose-motif.js";
import { Fold } from "./fold.js";
import { MotifPictures } from "./motif-pictures.js";
import { ObjectFields } from "./object-fields.js";
import type { Place } from "./place.js";
import { useOwner } from "./use-fields.js";

export function MotifField({ place }: { readonly place: Place }) {
  const { document, answers } = useBench();
  const { name } = useOwner(place);
  const motif = typeof name === "string" ? name : undefined;
  const width = answers.of.fit.value?.value?.tileWidth ?? USUAL_TILE;
  const choose = (entry: MotifEntry): void => {
    const owner = place.path.slice(0, -1);
    document.setAll(motifValues(owner, valueAt(document.value.peek(), owner), entry, width));
  };
  return (
    <Fold
      title={`${sayField(place.schema)}${motif === undefined ? "" : ` · ${sayChoice("motif", motif)}`}`}
      paths={[place.path]}
      isOpen
      class="fold-part"
    >
      {() => (
        <>
          <Fold title={say("motif.choose")} paths={[]}>
            {() => <MotifPictures chosen={motif} choose={choose} />}
          </Fold>
          {motif !== undefined && <ObjectFields place={place} form={motif} without={["name"]} />}
        </>
      )}
    </Fold>
  );
}
