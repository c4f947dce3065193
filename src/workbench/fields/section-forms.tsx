/**
 * The form of the outside or the bore, by picture: each the band as it is, in that form.
 */
import type { FieldReference } from "../../index.js";
import type { FormDrawing } from "../engine/draw-forms.js";
import { useBench } from "../state/bench.js";
import { sayChoice, sayField, sayFieldHelp } from "../words/fields/say-field.js";
import { asked } from "./asked.js";
import { chosenWay } from "./choice-field.js";
import { idOf } from "./control-props.js";
import { HelpFor, Problems } from "./field-row.js";
import { Fold } from "./fold.js";
import { changeForm } from "./new-value.js";
import { ObjectFields } from "./object-fields.js";
import type { Place } from "./place.js";
import { problemsOnly } from "./problems-at.js";
import { useBook, useValue } from "./use-fields.js";
import type { Way } from "./ways.js";

interface FormsProps {
  readonly place: Place;
  readonly reference: FieldReference;
  readonly ways: readonly Way[];
}

export function SectionForms({ place, reference, ways }: FormsProps) {
  const { answers, document } = useBench();
  const book = useBook();
  const value = useValue(place);
  const chosen = chosenWay(value, reference.default, ways);
  const way = ways[chosen];
  const form = way?.kind === "object" ? way.form : undefined;
  const names = form?.fields.map(({ name }) => name) ?? [];
  const id = idOf(place.path);
  const choose = async (to: Way): Promise<void> =>
    document.set(place.path, await changeForm(value ?? reference.default, place, to, book));
  return (
    <Fold
      title={sayField(place.schema)}
      paths={[place.path]}
      isOpen={place.schema === "profile.outside"}
      class="fold-part"
    >
      {() => (
        <>
          <HelpFor id={id} name={sayField(place.schema)} help={sayFieldHelp(reference)}>
            <span id={`${id}-name`}>{form === undefined ? "" : sayChoice(place.schema, form.name)}</span>
          </HelpFor>
          <FormPictures place={place} ways={ways} chosen={chosen} choose={choose} />
          <Problems id={`${id}-problem`} problems={problemsOnly(answers.problems.value, place.path, names)} />
          {form !== undefined && <ObjectFields place={place} form={form.name} />}
        </>
      )}
    </Fold>
  );
}

interface PicturesProps {
  readonly place: Place;
  readonly ways: readonly Way[];
  readonly chosen: number;
  readonly choose: (way: Way) => Promise<void>;
}

function FormPictures({ place, ways, chosen, choose }: PicturesProps) {
  const { host } = useBench();
  const part = place.schema === "profile.bore" ? "bore" : "outside";
  const drawings = asked(`forms ${part}`, () => host.peek().library.drawForms(part, undefined)).value;
  return (
    <div class="pictures" role="radiogroup" aria-label={sayField(place.schema)}>
      {ways.map((way, at) => {
        const name = way.kind === "object" ? (way.form?.name ?? "") : "";
        return (
          // biome-ignore lint/a11y/useSemanticElements: a picture that is pressed
          <button
            type="button"
            role="radio"
            key={name}
            aria-checked={at === chosen}
            onClick={() => void choose(way)}
            title={sayChoice(place.schema, name)}
          >
            <SectionPicture drawing={drawings?.find(({ form }) => form === name)} />
            <span>{sayChoice(place.schema, name)}</span>
          </button>
        );
      })}
    </div>
  );
}

/** A section in outline, hatched by the page's style. */
function SectionPicture({ drawing }: { readonly drawing: FormDrawing | undefined }) {
  return (
    <svg class="picture-section" viewBox={drawing?.viewBox ?? "0 0 6 2"} aria-hidden="true">
      {drawing !== undefined && <path d={drawing.path} />}
    </svg>
  );
}
