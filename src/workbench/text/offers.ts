/**
 * What may be written at a place of the text: keys of an object, values of a field, each with its help.
 */
import type { FieldReference } from "../../index.js";
import type { FieldBook } from "../fields/field-book.js";
import { isObject, wayOf, waysOf } from "../fields/ways.js";
import { type Path, valueAt } from "../state/json-text.js";
import { sayFieldHelp } from "../words/fields/say-field.js";
import type { Spot } from "./spot.js";

/** One thing that may be written. */
export interface Offer {
  readonly label: string;
  /** What is written for it. */
  readonly text: string;
  /** The kind, behind the label. */
  readonly detail: string;
  readonly help: string;
}

/** A place as the reference names it: lists passed through. Of parts with forms it means all of them. */
export function schemaOf(path: Path): string {
  return path.filter((key) => typeof key === "string").join(".");
}

/** All that may be written at a place. */
export async function offersAt(spot: Spot, document: unknown, book: FieldBook): Promise<Offer[]> {
  const { own } = await book.ask(schemaOf(spot.path));
  return spot.at === "key" ? keyOffers(own, valueAt(document, spot.path), spot) : own.flatMap(valueOffers);
}

/** What is known of the field whose key or value stands at a place. */
export async function referenceAt(path: Path, book: FieldBook): Promise<FieldReference | undefined> {
  return (await book.ask(schemaOf(path))).own[0];
}

function keyOffers(own: readonly FieldReference[], owner: unknown, { hasColon }: Spot): Offer[] {
  const written = isObject(owner) ? Object.keys(owner) : [];
  const lines = own.flatMap((reference) => {
    const ways = waysOf(reference);
    const way = ways[wayOf(owner, ways)];
    const form = way?.kind === "object" ? way.form : undefined;
    return form?.fields ?? [...reference.fields, ...reference.forms.flatMap(({ fields }) => fields)];
  });
  const open = lines.filter(({ name }) => name !== "*" && !written.includes(name));
  const each = new Map(open.map((line) => [line.name, line]));
  return [...each.values()].map(({ name, kind, description = "" }) => ({
    label: name,
    text: hasColon ? JSON.stringify(name) : `${JSON.stringify(name)}: `,
    detail: kind,
    help: description,
  }));
}

function valueOffers(reference: FieldReference): Offer[] {
  const { default: preset, examples = [], kind } = reference;
  const ways = waysOf(reference);
  const words = ways.flatMap((way): unknown[] => {
    if (way.kind === "word") return [way.word];
    if (way.kind === "switch") return [true, false];
    return way.kind === "object" && way.form !== undefined ? [startOf(way.form.name)] : [];
  });
  const all = [...(preset === undefined ? [] : [preset]), ...words, ...examples];
  const each = new Map(all.map((value) => [JSON.stringify(value), value]));
  const help = sayFieldHelp(reference);
  return [...each.keys()].map((text) => ({ label: text, text, detail: kind, help }));
}

/** A form's first words: `{"form": "channel"}`; of one without a name its keys. */
function startOf(form: string): object {
  if (!form.startsWith("{")) return { form };
  return Object.fromEntries(
    form
      .slice(1, -1)
      .split(", ")
      .map((key) => [key, ""]),
  );
}
