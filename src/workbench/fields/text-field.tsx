/**
 * A line of text; also lists of numbers or texts, written with commas between them.
 */
import { useSignal } from "@preact/signals";
import { useBench } from "../state/bench.js";
import { nameOf } from "../state/json-text.js";
import { language, say } from "../words/language.js";
import type { ControlProps } from "./control-props.js";
import { readList, writeList } from "./list-text.js";
import { useValue } from "./use-fields.js";
import type { Way } from "./ways.js";

export function TextField({ place, reference, id, describedBy, isWrong }: ControlProps) {
  const { document } = useBench();
  const value = useValue(place);
  const { examples = [] } = reference;
  const put = (text: string): void =>
    document.set(place.path, text === "" && !reference.required ? undefined : text, nameOf(place.path));
  return (
    <>
      <input
        id={id}
        type="text"
        autoComplete="off"
        list={examples.length > 0 ? `${id}-list` : undefined}
        value={typeof value === "string" || typeof value === "number" ? String(value) : ""}
        placeholder={typeof reference.default === "string" ? reference.default : ""}
        aria-invalid={isWrong}
        aria-describedby={describedBy}
        onInput={(event) => put(event.currentTarget.value)}
        onBlur={() => document.rest()}
      />
      {examples.length > 0 && (
        <datalist id={`${id}-list`}>
          {examples.map((example) => (
            <option key={String(example)} value={String(example)} />
          ))}
        </datalist>
      )}
    </>
  );
}

interface ListTextProps extends ControlProps {
  readonly way: Way & { readonly kind: "pair" | "numbers" | "texts" };
}

export function ListTextField({ place, reference, way, id, describedBy, isWrong }: ListTextProps) {
  const { document } = useBench();
  const value = useValue(place);
  const typed = useSignal<string | undefined>(undefined);
  const isRefused = typed.value !== undefined && readList(typed.value, way) === undefined;
  const type = (text: string): void => {
    typed.value = text;
    const read = text.trim() === "" && !reference.required ? [] : readList(text, way);
    if (read !== undefined) document.set(place.path, read.length === 0 ? undefined : read, nameOf(place.path));
  };
  return (
    <>
      <input
        id={id}
        type="text"
        autoComplete="off"
        value={typed.value ?? writeList(value, language.value)}
        aria-invalid={isWrong || isRefused}
        aria-describedby={`${describedBy} ${id}-refused`}
        onInput={(event) => type(event.currentTarget.value)}
        onBlur={() => {
          if (!isRefused) typed.value = undefined;
          document.rest();
        }}
      />
      <p class="field-problem" id={`${id}-refused`} hidden={!isRefused}>
        {say(way.kind === "pair" ? "field.pair" : "field.list")}
      </p>
    </>
  );
}
