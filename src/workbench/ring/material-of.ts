/**
 * What the document's metal looks like: a built-in material by its symbol, one of the document's own by its kind.
 */
import { type Look, lookOf } from "../../entries/view.js";
import { valueAt } from "../state/json-text.js";

const KINDS = ["gold", "silver", "platinum", "palladium", "copper alloy", "pattern", "other"] as const;

/** Default that of an unknown alloy, for what the document does not tell soundly. */
export function materialOf(document: unknown): Look {
  const symbol = valueAt(document, ["material"]) ?? "ag925";
  const own = valueAt(document, ["alloys"]);
  const found = Array.isArray(own) ? own.find((alloy) => valueAt(alloy, ["symbol"]) === symbol) : undefined;
  const kind = KINDS.find((one) => one === valueAt(found, ["kind"])) ?? "other";
  return lookOf(found === undefined ? String(symbol) : { symbol: String(symbol), name: String(symbol), kind });
}
