/**
 * Puts the parts of a range together, once their folders were copied into one: the whole's manifest and tables, as one machine would
 * have written them.
 */
import { fileSource } from "../../disk/file-source.js";
import { type OpenPlan, openPlan } from "../expand/open-plan.js";
import type { Outcome } from "../summary/summary-rows.js";
import { keepTables } from "./keep-tables.js";
import { type Manifest, manifestText, mergeManifests } from "./manifest.js";
import { manifestName } from "./range-folder.js";
import { readRecord } from "./record-store.js";
import { keepText } from "./store/keep-file.js";
import { openStore, placeOf } from "./store/open-store.js";
import type { RangeStore, StorePlace } from "./store/range-store.js";
import { manifestsIn } from "./verify-range.js";

/**
 * @param source the plan
 * @param place the range's folder; or what another store calls it, with the store's module
 * @param planFolder where the files are that plan and designs name
 * @throws AnnuletError `parts-differ`, `manifest-damaged`, `file-missing`
 */
export async function mergeParts(source: unknown, place: string | StorePlace, planFolder = "."): Promise<Manifest> {
  const open = await openPlan(source, fileSource(planFolder));
  const store = await openStore(place);
  const parts = (await manifestsIn(store, placeOf(place).folder)).filter(({ part }) => part !== null);
  const checked = mergeManifests(parts, []);
  const tables = await keepTables(store, open, await outcomesOf(open, store, checked));
  const manifest = mergeManifests(parts, tables);
  await keepText(store, manifestName(), manifestText(manifest));
  return manifest;
}

async function outcomesOf(open: OpenPlan, store: RangeStore, { failed }: Manifest): Promise<readonly Outcome[]> {
  const reasons = new Map(failed.map(({ name, why }) => [name, why]));
  const outcomes: Outcome[] = [];
  for (let number = 1; number <= open.count; number++) {
    const { name, shown } = open.variant(number);
    const record = reasons.has(name) ? undefined : await readRecord(store, name);
    const head = { number, name, shown };
    outcomes.push(
      record === undefined ? { ...head, failed: reasons.get(name) ?? "its record is missing" } : { ...head, record },
    );
  }
  return outcomes;
}
