/**
 * A list of objects: its entries in folds, to be added, named, moved and taken away.
 */
import type { FieldReference } from "../../index.js";
import { useBench } from "../state/bench.js";
import { sayChoice, sayField, sayFieldHelp } from "../words/fields/say-field.js";
import { say } from "../words/language.js";
import { idOf } from "./control-props.js";
import { HelpFor, Problems } from "./field-row.js";
import { Fold } from "./fold.js";
import { moveEntry, ownName, withoutEntry } from "./move-entry.js";
import { newEntry } from "./new-value.js";
import { ObjectFields } from "./object-fields.js";
import { entryOf, type Place } from "./place.js";
import { problemsOnly } from "./problems-at.js";
import { useBook, useValue } from "./use-fields.js";

interface ListProps {
  readonly place: Place;
  readonly reference: FieldReference;
}

export function ListField({ place, reference }: ListProps) {
  const { document, answers, selected } = useBench();
  const book = useBook();
  const value = useValue(place);
  const list = Array.isArray(value) ? value : [];
  const name = sayField(place.schema);
  const id = idOf(place.path);
  const numbers = list.map((_, at) => String(at));
  const add = async (): Promise<void> => {
    document.set(place.path, [...list, await newEntry(place, book)]);
    selected.value = [...place.path, list.length];
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset's legend takes no button
    <div class="list" role="group" aria-labelledby={`${id}-name`} aria-describedby={`${id}-help`}>
      <HelpFor id={id} name={name} help={sayFieldHelp(reference)}>
        <strong id={`${id}-name`}>{name}</strong>
        <button type="button" class="list-add" onClick={() => void add()} aria-label={say("list.add", { name })}>
          +
        </button>
      </HelpFor>
      <Problems id={`${id}-problem`} problems={problemsOnly(answers.problems.value, place.path, numbers)} />
      {list.map((entry, at) => (
        <Entry key={at} list={place} at={at} entry={entry} all={list} />
      ))}
    </div>
  );
}

interface EntryProps {
  readonly list: Place;
  readonly at: number;
  readonly entry: unknown;
  readonly all: readonly unknown[];
}

function Entry({ list, at, entry, all }: EntryProps) {
  const { document } = useBench();
  const place = entryOf(list, at);
  const name = nameOfEntry(list, at, entry);
  const put = (next: readonly unknown[]): void => document.set(list.path, next.length === 0 ? undefined : next);
  return (
    <Fold title={name} paths={[place.path]} class="fold-entry" selects>
      {() => (
        <>
          <div class="list-tools">
            <button type="button" disabled={at === 0} onClick={() => put(moveEntry(all, at, -1))}>
              {say("list.up")}
            </button>
            <button type="button" disabled={at === all.length - 1} onClick={() => put(moveEntry(all, at, 1))}>
              {say("list.down")}
            </button>
            <button
              type="button"
              onClick={() => put(withoutEntry(all, at))}
              aria-label={say("list.removeNamed", { name })}
            >
              {say("list.remove")}
            </button>
          </div>
          <ObjectFields place={place} />
        </>
      )}
    </Fold>
  );
}

function nameOfEntry({ schema }: Place, at: number, entry: unknown): string {
  const own = ownName(entry);
  const said = own === undefined || schema !== "beads" ? own : sayChoice("beads.along", own);
  return own === undefined ? `${at + 1}` : `${at + 1} · ${said}`;
}
