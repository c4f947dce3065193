/**
 * The finger size: by a label of any system, or by the bore itself; with the labels of all systems for the same bore.
 */
import type { FieldReference, SizeSpec } from "../../index.js";
import { useBench } from "../state/bench.js";
import { sayField } from "../words/fields/say-field.js";
import { say, sayNumber } from "../words/language.js";
import { sayText } from "../words/say-text.js";
import { asked } from "./asked.js";
import { ChoiceField, chosenWay } from "./choice-field.js";
import { idOf } from "./control-props.js";
import { FieldRow, HelpFor } from "./field-row.js";
import { ObjectFields } from "./object-fields.js";
import { fieldOf, inForm, type Place } from "./place.js";
import { useOwner, useValue } from "./use-fields.js";
import { waysOf } from "./ways.js";

interface SizeProps {
  readonly place: Place;
  readonly reference: FieldReference;
}

export function SizeField({ place, reference }: SizeProps) {
  const ways = waysOf(reference);
  const way = ways[chosenWay(useValue(place), undefined, ways)];
  const form = way?.kind === "object" ? way.form?.name : undefined;
  const isLabel = form === LABELLED;
  return (
    <>
      <FieldRow place={place} reference={reference} problems={[]}>
        {(control) => <ChoiceField ways={ways} {...control} />}
      </FieldRow>
      {isLabel && <SystemField place={place} />}
      <ObjectFields place={place} form={form} without={isLabel ? ["system"] : []} />
      <SizeLabels place={place} />
    </>
  );
}

/** The form of the size that is a label. */
const LABELLED = "{system, value}";

/** The system; another shows the same bore by its own label. */
function SystemField({ place }: { readonly place: Place }) {
  const { document, host } = useBench();
  const size = useOwner(place);
  const systems = asked("size systems", () => host.peek().library.sizeSystems()).value ?? [];
  const id = idOf([...place.path, "system"]);
  const schema = fieldOf(inForm(place, LABELLED), "system").schema;
  const choose = async (system: string): Promise<void> => {
    const rows = await host
      .peek()
      .library.sizeLabels(size as never as SizeSpec)
      .catch(() => []);
    const label = rows.find((row) => row.system === system)?.label;
    document.set(place.path, { ...size, system, ...(label !== undefined && { value: label }) });
  };
  return (
    <div class="field">
      <HelpFor id={id} name={sayField(schema)} help="">
        <label for={id}>{sayField(schema)}</label>
      </HelpFor>
      <div class="field-control">
        <select id={id} value={String(size.system)} onChange={(event) => void choose(event.currentTarget.value)}>
          {systems.map(({ name, title }) => (
            <option key={name} value={name}>
              {sayText(title)}
            </option>
          ))}
        </select>
      </div>
    </div>
  );
}

/** The same bore in all systems; pressing one writes the size so. */
function SizeLabels({ place }: { readonly place: Place }) {
  const { document, host, answers } = useBench();
  const size = useOwner(place);
  const bore = answers.of.size.value?.value;
  const rows = asked(`labels ${JSON.stringify(size)}`, () =>
    host.peek().library.sizeLabels(size as never as SizeSpec),
  ).value;
  if (rows === undefined) return null;
  return (
    <div class="sizes">
      {bore !== undefined && (
        <p class="caption">
          {say("size.bore", { diameter: sayNumber(bore.diameter, 2), circumference: sayNumber(bore.circumference, 1) })}
        </p>
      )}
      <ul>
        {rows.map(({ system, title, label }) => (
          <li key={system}>
            <button
              type="button"
              disabled={label === undefined}
              aria-pressed={size.system === system}
              title={sayText(title)}
              onClick={() => document.set(place.path, { system, value: label })}
            >
              <span class="caption">{sayText(title)}</span> {label ?? "–"}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
