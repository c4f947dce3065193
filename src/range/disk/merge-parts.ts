/**
 * Puts the parts of a range together, once their folders were copied into one: the whole's manifest and tables, as one machine would
 * have written them.
 */
import { join } from "node:path";
import { fileSource } from "../../disk/file-source.js";
import { type OpenPlan, openPlan } from "../expand/open-plan.js";
import type { Outcome } from "../summary/summary-rows.js";
import { keepTables, keepText } from "./keep-tables.js";
import { type Manifest, manifestText, mergeManifests } from "./manifest.js";
import { manifestName } from "./range-folder.js";
import { readRecord } from "./record-store.js";
import { manifestsIn } from "./verify-range.js";

/**
 * @param source the plan
 * @param planFolder where the files are that plan and designs name
 * @throws AnnuletError `parts-differ`, `manifest-damaged`, `file-missing`
 */
export async function mergeParts(source: unknown, folder: string, planFolder = "."): Promise<Manifest> {
  const open = await openPlan(source, fileSource(planFolder));
  const parts = manifestsIn(folder).filter(({ part }) => part !== null);
  const checked = mergeManifests(parts, []);
  const tables = keepTables(folder, open, outcomesOf(open, folder, checked));
  const manifest = mergeManifests(parts, tables);
  keepText(join(folder, manifestName()), manifestText(manifest));
  return manifest;
}

function outcomesOf(open: OpenPlan, folder: string, { failed }: Manifest): readonly Outcome[] {
  const reasons = new Map(failed.map(({ name, why }) => [name, why]));
  return Array.from({ length: open.count }, (_, i): Outcome => {
    const { name, shown } = open.variant(i + 1);
    const record = reasons.has(name) ? undefined : readRecord(folder, name);
    const head = { number: i + 1, name, shown };
    return record === undefined
      ? { ...head, failed: reasons.get(name) ?? "its record is missing" }
      : { ...head, record };
  });
}
