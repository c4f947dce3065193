/**
 * Entries under names that the maker chooses: shapes, prices.
 */
import { useSignal } from "@preact/signals";
import type { FieldReference } from "../../index.js";
import { useBench } from "../state/bench.js";
import { sayField } from "../words/fields/say-field.js";
import { say } from "../words/language.js";
import { idOf } from "./control-props.js";
import { useFieldControl } from "./field-control.js";
import { Fold } from "./fold.js";
import { newValue } from "./new-value.js";
import { fieldOf, type Place } from "./place.js";
import { useBook, useOwner } from "./use-fields.js";
import { waysOf } from "./ways.js";

interface MapProps {
  readonly place: Place;
  readonly reference: FieldReference;
}

export function MapField({ place, reference }: MapProps) {
  const owner = useOwner(place);
  const names = Object.keys(owner);
  const known = new Set(reference.fields.map(({ name }) => name));
  return (
    <Fold title={sayField(place.schema)} paths={[place.path]} class="fold-part">
      {() => (
        <>
          {names
            .filter((name) => !known.has(name))
            .map((name) => (
              <NamedEntry key={name} map={place} name={name} />
            ))}
          <AddNamed place={place} taken={names} />
        </>
      )}
    </Fold>
  );
}

function NamedEntry({ map, name }: { readonly map: Place; readonly name: string }) {
  const { document } = useBench();
  const Field = useFieldControl();
  // The schema has one description for all names.
  const place = { path: [...map.path, name], schema: fieldOf(map, ENTRY).schema };
  const reference = useBook().look(place.schema).value?.own[0];
  return (
    <div class="map-entry">
      <span>{name}</span>
      <Field place={place} reference={reference} />
      <button
        type="button"
        aria-label={say("list.removeNamed", { name })}
        onClick={() => document.set(place.path, undefined)}
      >
        {say("list.remove")}
      </button>
    </div>
  );
}

/** Stands for any name that is none of the schema's own. */
const ENTRY = "entry";

function AddNamed({ place, taken }: { readonly place: Place; readonly taken: readonly string[] }) {
  const { document } = useBench();
  const book = useBook();
  const typed = useSignal("");
  const id = `${idOf(place.path)}-new`;
  const name = typed.value.trim();
  const isGood = name !== "" && name !== "__proto__" && !taken.includes(name);
  const add = async (): Promise<void> => {
    const schema = fieldOf(place, ENTRY).schema;
    const [reference] = (await book.ask(schema)).own;
    const path = [...place.path, name];
    document.set(path, await newValue({ path, schema }, waysOf(reference)[0], book));
    typed.value = "";
  };
  return (
    <div class="map-new">
      <label for={id}>{say("map.new")}</label>
      <input
        id={id}
        type="text"
        value={typed.value}
        onInput={(event) => {
          typed.value = event.currentTarget.value;
        }}
      />
      <button type="button" disabled={!isGood} onClick={() => void add()}>
        {say("map.add")}
      </button>
    </div>
  );
}
