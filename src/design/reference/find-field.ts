/**
 * Finds a field of the design document by its path, as `profile.outside.rail`.
 *
 * Entries of lists need no number in the path, though one may stand there. Where a part has several forms, the path may name
 * one: `profile.outside.channel.rail`; without it the field is looked for in all of them.
 */
import { nearest } from "../../base/errors/nearest.js";
import { AnnuletError } from "../../base/errors.js";
import { objectsOf } from "./describe-field.js";
import { fieldsOf, formName, type SchemaNode } from "./schema-node.js";

/** Deepest path that is looked up; the document's own limit of nesting is lower than what could be asked. Chosen. */
const DEEPEST = 64;

/** A node that a path leads to. */
export interface FoundField {
  readonly node: SchemaNode;
  readonly required: boolean;
  /** The forms around it that have it; missing where the part around it has but one. */
  readonly of?: readonly string[];
}

/**
 * The nodes that a path leads to: more than one where forms have fields of one name that differ.
 *
 * @throws AnnuletError `field-unknown` with the names that are known there, and the nearest of them
 */
export function findField(path: string, root: SchemaNode): FoundField[] {
  const steps = stepsOf(path);
  if (steps.length > DEEPEST) throw unknownField(path, steps[DEEPEST], []);
  let here: FoundField[] = [{ node: root, required: true }];
  steps.forEach((step, i) => {
    const objects = here.flatMap(({ node }) => objectsOf(node, root));
    const next = inForms(objects, step, root);
    if (next.length === 0) throw unknownField(steps.slice(0, i).join("."), step, namesIn(objects, root));
    here = next;
  });
  return here;
}

/** `pattern.regions[0].height` and `pattern.regions.0.height` are `pattern.regions.height`. */
function stepsOf(path: string): string[] {
  return path
    .replace(/\[("[^"]*"|\d+)\]/g, (_, key: string) => (key.startsWith('"') ? `.${key.slice(1, -1)}` : ""))
    .split(".")
    .filter((step) => step !== "" && !/^\d+$/.test(step));
}

function inForms(objects: readonly SchemaNode[], step: string, root: SchemaNode): FoundField[] {
  const named = alike(
    objects.flatMap((object) => {
      const node = object.properties?.[step];
      return node === undefined ? [] : [{ object, node }];
    }),
    root,
    objects.length > 1,
    step,
  );
  if (named.length > 0) return named;
  const form = objects.find((object) => formName(object, root) === step || formName(object, root) === `{${step}}`);
  if (form !== undefined) return [{ node: form, required: false, of: undefined }];
  const open = objects.flatMap((object) => fieldsOf(object).filter(([name]) => name === "*"));
  return open.map(([, node]) => ({ node, required: false }));
}

/** Fields that the schema says the same of are one, of several forms. */
function alike(
  found: readonly { readonly object: SchemaNode; readonly node: SchemaNode }[],
  root: SchemaNode,
  several: boolean,
  step: string,
): FoundField[] {
  const groups = new Map<string, { node: SchemaNode; required: boolean; of: string[] }>();
  for (const { object, node } of found) {
    const required = object.required?.includes(step) ?? false;
    const key = JSON.stringify([node, required]);
    const group = groups.get(key) ?? { node, required, of: [] };
    group.of.push(formName(object, root) ?? "");
    groups.set(key, group);
  }
  return [...groups.values()].map(({ node, required, of }) => ({ node, required, of: several ? of : undefined }));
}

function namesIn(objects: readonly SchemaNode[], root: SchemaNode): string[] {
  const forms = objects.length > 1 ? objects.map((object) => formName(object, root) ?? "") : [];
  const fields = objects.flatMap((object) => fieldsOf(object).map(([name]) => name));
  return [...new Set([...fields, ...forms.filter((name) => !name.startsWith("{"))])];
}

function unknownField(owner: string, step: string, known: readonly string[]): AnnuletError {
  const where = owner === "" ? "a design" : owner;
  return new AnnuletError({
    code: "field-unknown",
    message: `${where} has no field ${JSON.stringify(step)}`,
    value: step,
    allowed: known.length === 0 ? "nothing: it is a plain value" : known.join(", "),
    hint: nearest(step, known),
  });
}
