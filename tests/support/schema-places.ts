/**
 * Every field of the design document, as the form asks for it; parts that come again inside of lanes, medallions and shapes
 * in shapes are left out.
 */
import type { FieldReference } from "annulet";
import { explain } from "../../src/workbench/engine/explain-inside.js";

const AGAIN =
  /(lanes|ornament|medallion)\.regions\.|lanes\.(fit|medallion|ends)\.|shape\.(union|intersection|difference|of)\./;

/** Deepest place that is looked at; the schema has seven. */
const DEEPEST = 9;

/** Place in the schema → what is said of it. */
export function schemaPlaces(): Map<string, FieldReference> {
  const found = new Map<string, FieldReference>();
  const look = (place: string): void => {
    if (AGAIN.test(place) || place.split(".").length > DEEPEST) return;
    for (const reference of explain(place)) {
      if (place !== "") found.set(place, reference);
      const owner = place === "" ? "" : `${place}.`;
      for (const { name } of reference.fields) if (name !== "*") look(`${owner}${name}`);
      for (const form of reference.forms) {
        for (const { name } of form.fields) look(`${owner}${form.name}.${name}`);
      }
    }
  };
  look("");
  return found;
}
