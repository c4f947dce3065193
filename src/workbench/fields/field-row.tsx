/**
 * One field: its name with the help behind it, its control, and what is wrong with it.
 */
import { useSignal } from "@preact/signals";
import type { ComponentChildren } from "preact";
import type { FieldReference, Problem } from "../../index.js";
import { useBench } from "../state/bench.js";
import type { Path } from "../state/json-text.js";
import { sayField, sayFieldHelp } from "../words/fields/say-field.js";
import { say } from "../words/language.js";
import { sayProblem } from "../words/say-problem.js";
import { type ControlProps, idOf } from "./control-props.js";
import type { Place } from "./place.js";
import { problemsIn, problemsOnly, stoneWarnings } from "./problems-at.js";

interface RowProps {
  readonly place: Place;
  readonly reference: FieldReference;
  readonly children: (control: ControlProps) => ComponentChildren;
  /** Default what is wrong with the field or in it. */
  readonly problems?: readonly Problem[];
  /** Keys in it that have controls of their own, which tell what is to be minded there. */
  readonly inside?: readonly string[];
}

export function FieldRow({ place, reference, children, problems, inside = [] }: RowProps) {
  const bench = useBench();
  const id = idOf(place.path);
  const wrong = problems ?? problemsIn(bench.answers.problems.value, place.path);
  const control = {
    place,
    reference,
    id,
    describedBy: `${id}-help${wrong.length > 0 ? ` ${id}-problem` : ""}`,
    isWrong: wrong.length > 0,
  };
  const select = (event: FocusEvent): void => {
    event.stopPropagation();
    bench.selected.value = place.path;
  };
  return (
    <div class="field" data-written={isWritten(bench, place)} onFocusIn={select}>
      <FieldLabel id={id} place={place} reference={reference} />
      <div class="field-control">
        {children(control)}
        <Problems id={`${id}-problem`} problems={wrong} />
        <Minded path={place.path} {...{ inside }} />
      </div>
    </div>
  );
}

function isWritten({ document }: ReturnType<typeof useBench>, { path }: Place): boolean {
  const owner = path.slice(0, -1).reduce<unknown>((part, key) => (part as never)?.[key as never], document.value.value);
  return typeof owner === "object" && owner !== null && Object.hasOwn(owner, path[path.length - 1]);
}

interface LabelProps {
  readonly id: string;
  readonly place: Place;
  readonly reference: FieldReference;
}

function FieldLabel({ id, place, reference }: LabelProps) {
  const name = sayField(place.schema);
  return (
    <HelpFor id={id} name={name} help={sayFieldHelp(reference)}>
      <label for={id}>{name}</label>
    </HelpFor>
  );
}

interface HelpProps {
  readonly id: string;
  readonly name: string;
  readonly help: string;
  readonly children: ComponentChildren;
}

/** A name with a button that shows its help; who listens hears the help with the control. */
export function HelpFor({ id, name, help, children }: HelpProps) {
  const open = useSignal(false);
  return (
    <>
      <div class="field-name">
        {children}
        {help !== "" && (
          <button
            type="button"
            class="field-ask"
            aria-label={say("field.help", { name })}
            aria-expanded={open.value}
            aria-controls={`${id}-help`}
            onClick={() => {
              open.value = !open.value;
            }}
          >
            ?
          </button>
        )}
      </div>
      <p class="field-help" id={`${id}-help`} hidden={!open.value}>
        {help}
      </p>
    </>
  );
}

export function Problems({ id, problems }: { readonly id: string; readonly problems: readonly Problem[] }) {
  if (problems.length === 0) return null;
  return (
    <div id={id} class="field-problem">
      {problems.map((problem) => (
        <ProblemText key={`${problem.code} ${problem.path}`} problem={problem} />
      ))}
    </div>
  );
}

interface MindedProps {
  readonly path: Path;
  readonly inside: readonly string[];
}

/** What is to be minded about stones at a place. */
export function Minded({ path, inside }: MindedProps) {
  const { answers } = useBench();
  const minded = problemsOnly(stoneWarnings(answers.warnings.value), path, inside);
  if (minded.length === 0) return null;
  return (
    <div class="field-minded">
      {minded.map((warning) => (
        <ProblemText key={`${warning.code} ${warning.message}`} problem={warning} />
      ))}
    </div>
  );
}

function ProblemText({ problem }: { readonly problem: Problem }) {
  const { text, allowed, hint } = sayProblem(problem);
  return (
    <p>
      {text}
      {allowed !== undefined && ` · ${say("field.allowed", { allowed })}`}
      {hint !== undefined && ` · ${hint}`}
    </p>
  );
}
