/**
 * The document's fields, by its parts.
 */
import { useBench } from "../state/bench.js";
import { say } from "../words/language.js";
import { Field } from "./field.js";
import { FieldControl } from "./field-control.js";
import { Problems } from "./field-row.js";
import "./fields.css";
import { Findings } from "./findings.js";
import { FitChoices } from "./fit-choices.js";
import { Fold } from "./fold.js";
import { ObjectFields } from "./object-fields.js";
import { fieldOf, ROOT_PLACE } from "./place.js";
import { problemsOnly } from "./problems-at.js";
import { useBook } from "./use-fields.js";

/** Parts of the document under one head each. */
const GROUPS = [
  { name: "size", keys: ["size"] },
  { name: "band", keys: ["profile"] },
  { name: "pattern", keys: ["pattern", "proud"] },
  { name: "beads", keys: ["beads"] },
  { name: "stones", keys: ["stones", "gems"] },
  { name: "marks", keys: ["lettering", "hallmark"] },
  { name: "metal", keys: ["material", "costing", "alloys"] },
  { name: "casting", keys: ["casting", "sprue", "print"] },
  { name: "rules", keys: ["rules"] },
  { name: "document", keys: ["name", "tolerance"] },
] as const;

/** Open from the start: what every ring has. */
const OPEN: readonly string[] = ["size", "band"];

const KEYS: readonly string[] = GROUPS.flatMap(({ keys }) => keys);

export function FieldsPanel() {
  const problems = useBench().answers.problems.value;
  return (
    <FieldControl.Provider value={Field}>
      <section class="fields" aria-label={say("panel.fields")}>
        <Problems id="document-problems" problems={problemsOnly(problems, [], KEYS)} />
        {GROUPS.map(({ name, keys }) => (
          <Fold
            key={name}
            title={say(`group.${name}`)}
            paths={keys.map((key) => [key])}
            isOpen={OPEN.includes(name)}
            class="fold-group"
          >
            {() => (
              <>
                {name === "pattern" && <FitChoices />}
                {name === "rules" && <Findings />}
                {keys.map((key) => (
                  <RootField key={key} name={key} />
                ))}
              </>
            )}
          </Fold>
        ))}
      </section>
    </FieldControl.Provider>
  );
}

/** A field of the document itself. */
export function RootField({ name }: { readonly name: string }) {
  const reference = useBook().look("").value?.inside[name]?.[0];
  const place = fieldOf(ROOT_PLACE, name);
  if (name === "profile") return <ObjectFields place={place} />;
  return <Field place={place} reference={reference} />;
}
