/**
 * The fields of an object, the commonest first and the others folded.
 */
import type { FieldLine, FieldReference } from "../../index.js";
import { useBench } from "../state/bench.js";
import { say } from "../words/language.js";
import { ART, artOf, isRegion } from "./art.js";
import { ArtField } from "./art-field.js";
import { BeadChoices } from "./bead-choices.js";
import { useFieldControl } from "./field-control.js";
import { Minded, Problems } from "./field-row.js";
import { Fold } from "./fold.js";
import { orderFields } from "./order.js";
import { fieldOf, inForm, type Place } from "./place.js";
import { problemsOnly } from "./problems-at.js";
import { StoneChoices } from "./stone-choices.js";
import { useBook, useOwner } from "./use-fields.js";

interface ObjectProps {
  readonly place: Place;
  /** The form that the object is given in. */
  readonly form?: string | undefined;
  /** Fields that are shown elsewhere. */
  readonly without?: readonly string[];
}

export function ObjectFields({ place, form, without = [] }: ObjectProps) {
  const Field = useFieldControl();
  const at = inForm(place, form);
  const owner = useOwner(place);
  const problems = useBench().answers.problems.value;
  const explained = useBook().look(at.schema).value;
  if (explained === undefined) return <p class="caption">…</p>;
  const { inside } = explained;
  const lines = explained.own.flatMap(({ fields }) => fields).filter(({ name }) => !without.includes(name));
  const constant = lines.find(({ name }) => isConstant(inside[name]?.[0], form))?.name;
  const isArt = isRegion(place.schema);
  const art = isArt ? artOf(owner) : undefined;
  const shown = isArt ? lines.filter(({ name }) => name === art || !(ART as readonly string[]).includes(name)) : lines;
  const { first, more } = orderFields(at.schema, shown, owner, constant);
  const known = lines.map(({ name }) => name);
  const rows = (some: readonly FieldLine[]) =>
    some.map(({ name }) => <Field key={name} place={fieldOf(at, name)} reference={inside[name]?.[0]} />);
  return (
    <>
      <Problems id={`${place.schema}-own`} problems={problemsOnly(problems, place.path, known)} />
      <Minded path={place.path} inside={known} />
      {isArt && <ArtField place={place} />}
      {/(^|\.)beads$/.test(place.schema) && <BeadChoices path={place.path} />}
      {place.schema === "stones" && <StoneChoices path={place.path} />}
      {rows(first)}
      {more.length > 0 && (
        <Fold
          title={say("field.more", { count: more.length })}
          paths={more.map(({ name }) => [...place.path, name])}
          class="fold-more"
        >
          {() => rows(more)}
        </Fold>
      )}
    </>
  );
}

function isConstant(reference: FieldReference | undefined, form: string | undefined): boolean {
  const { choices } = reference ?? {};
  return form !== undefined && choices?.length === 1 && choices[0] === form;
}
