/**
 * A field that is an object, or may be one: its fields in a fold. A part that counts by being there has a switch.
 */
import type { FieldReference } from "../../index.js";
import { useBench } from "../state/bench.js";
import { sayField } from "../words/fields/say-field.js";
import { ChoiceField, chosenWay, SwitchField } from "./choice-field.js";
import { FieldRow } from "./field-row.js";
import { Fold } from "./fold.js";
import { newValue } from "./new-value.js";
import { NumberField } from "./number-field.js";
import { ObjectFields } from "./object-fields.js";
import type { Place } from "./place.js";
import { problemsOnly } from "./problems-at.js";
import { useBook, useValue } from "./use-fields.js";
import type { Way } from "./ways.js";
import { WrittenField } from "./written-field.js";

interface PartProps {
  readonly place: Place;
  readonly reference: FieldReference;
  readonly ways: readonly Way[];
}

export function PartField({ place, reference, ways }: PartProps) {
  if (ways.length > 1) return <FormedPart place={place} reference={reference} ways={ways} />;
  const counts = !reference.required && reference.default === undefined;
  return counts ? <SwitchedPart place={place} reference={reference} way={ways[0]} /> : <PlainPart place={place} />;
}

function PlainPart({ place }: { readonly place: Place }) {
  return (
    <Fold title={sayField(place.schema)} paths={[place.path]} isOpen={isOpenAtFirst(place)} class="fold-part">
      {() => <ObjectFields place={place} />}
    </Fold>
  );
}

/** Parts that most rings are shaped by. */
function isOpenAtFirst({ schema }: Place): boolean {
  return schema === "pattern.fit";
}

interface SwitchedProps {
  readonly place: Place;
  readonly reference: FieldReference;
  readonly way: Way;
}

/** A part that may be missing: it is there once it is switched on. */
function SwitchedPart({ place, reference, way }: SwitchedProps) {
  const { document, answers } = useBench();
  const book = useBook();
  const isThere = useValue(place) !== undefined;
  const turn = async (on: boolean): Promise<void> => {
    document.set(place.path, on ? await newValue(place, way, book) : undefined);
  };
  return (
    <>
      <FieldRow
        place={place}
        reference={reference}
        problems={problemsOnly(
          answers.problems.value,
          place.path,
          isThere ? reference.fields.map(({ name }) => name) : [],
        )}
      >
        {({ id, describedBy }) => (
          <input
            id={id}
            type="checkbox"
            checked={isThere}
            aria-describedby={describedBy}
            onChange={(event) => void turn(event.currentTarget.checked)}
          />
        )}
      </FieldRow>
      {isThere && (
        <div class="part-inside">
          <ObjectFields place={place} />
        </div>
      )}
    </>
  );
}

/** A part in one of several forms, or a plain value instead of it. */
function FormedPart({ place, reference, ways }: PartProps) {
  const value = useValue(place);
  const { answers } = useBench();
  const way = ways[chosenWay(value, reference.default, ways)];
  const form = way?.kind === "object" ? way.form : undefined;
  const fields = form?.fields ?? (way?.kind === "object" ? reference.fields : []);
  const inside = fields.map(({ name }) => name);
  const problems = problemsOnly(answers.problems.value, place.path, inside);
  return (
    <>
      <FieldRow place={place} reference={reference} problems={problems} inside={inside}>
        {(control) => (
          <span class="field-ways">
            <ChoiceField ways={ways} {...control} />
            {way?.kind === "number" && <NumberField way={way} {...control} id={`${control.id}-own`} />}
            {way?.kind === "switch" && <SwitchField {...control} id={`${control.id}-own`} />}
            {value !== undefined && way === undefined && <WrittenField {...control} id={`${control.id}-own`} />}
          </span>
        )}
      </FieldRow>
      {way?.kind === "object" && (
        <div class="part-inside">
          <ObjectFields place={place} form={form?.name} />
        </div>
      )}
    </>
  );
}
