/**
 * Controls made from the document's schema.
 */
import { say } from "../words/language.js";

export function FieldsPanel() {
  return <h2>{say("panel.fields")}</h2>;
}
