/**
 * Makes a range: every variant once, on all cores, into one folder. What is there is kept, what fails is told and the rest is made.
 */
import { fileSource } from "../../disk/file-source.js";
import { type OpenPlan, openPlan } from "../expand/open-plan.js";
import { type Group, groupsOf, type Part } from "../expand/part.js";
import type { Outcome } from "../summary/summary-rows.js";
import { keepTables } from "./keep-tables.js";
import { type Manifest, makeManifest, manifestText, TOOL } from "./manifest.js";
import { manifestName, openOwnStore } from "./range-folder.js";
import { type RangeEvent, RangeRun } from "./range-run.js";
import type { RangeSetup } from "./range-setup.js";
import { keepText } from "./store/keep-file.js";
import type { RangeStore } from "./store/range-store.js";
import { whyNot } from "./verify-range.js";

/**
 * Makes the variants of a plan and yields what became of each, as they come. The tables and the manifest are written at the end.
 *
 * @param source the plan: JSON text, or the plan itself
 * @returns the manifest, once all is done
 * @throws AnnuletError what is wrong with the plan; `output-not-writable`, `folder-taken`, `manifest-damaged`; the signal's reason,
 *   and then what was made stays and the next run goes on
 */
export async function* makeRange(source: unknown, setup: RangeSetup): AsyncGenerator<RangeEvent, Manifest, void> {
  const { folder, store: module, planFolder = ".", part, signal } = setup;
  const open = await openPlan(source, fileSource(planFolder), signal);
  const { store, before } = await openOwnStore({ folder, module }, part);
  setup.onCount?.(part === undefined ? open.count : countOf(groupsOf(open, part)));
  const outcomes: Outcome[] = [];
  let isSame = true;
  for await (const event of new RangeRun(open, setup, store).events()) {
    outcomes.push(outcomeOf(event));
    isSame &&= event.kind === "kept" || event.kind === "left-out";
    yield event;
  }
  if (before !== undefined && isSame && (await stillStands(store, before, open, outcomes))) return before;
  return finishRange(open, outcomes, { store, part });
}

/** Writes tables and manifest. */
async function finishRange(
  open: OpenPlan,
  outcomes: readonly Outcome[],
  { store, part }: { readonly store: RangeStore; readonly part: Part | undefined },
): Promise<Manifest> {
  const tables = part === undefined ? await keepTables(store, open, outcomes) : [];
  const records = outcomes.flatMap((outcome) => ("record" in outcome ? [outcome.record] : []));
  const manifest = makeManifest({
    plan: open.digest,
    count: open.count,
    part: part ?? null,
    tables,
    variants: records.flatMap((record) => {
      if (record.kind !== "made") return [];
      const { name, key, design, files } = record;
      return [{ name, key, design, files }];
    }),
    leftOut: records.flatMap((record) => (record.kind === "left-out" ? [{ name: record.name, why: record.why }] : [])),
    failed: outcomes.flatMap((one) => ("failed" in one ? [{ name: one.name, why: one.failed }] : [])),
  });
  await keepText(store, manifestName(part), manifestText(manifest));
  return manifest;
}

/** Whether a manifest says of each variant what its record says, and its tables are as they were written. */
async function stillStands(
  store: RangeStore,
  manifest: Manifest,
  { digest }: OpenPlan,
  outcomes: readonly Outcome[],
): Promise<boolean> {
  const { plan, tool, variants, leftOut, failed, tables } = manifest;
  if (plan !== digest || tool !== TOOL || failed.length > 0) return false;
  if (variants.length + leftOut.length !== outcomes.length) return false;
  const keys = new Map(variants.map(({ name, key }) => [name, key]));
  const reasons = new Map(leftOut.map(({ name, why }) => [name, why]));
  const isTold = (outcome: Outcome) => {
    if ("failed" in outcome) return false;
    const { record } = outcome;
    return record.kind === "made" ? keys.get(record.name) === record.key : reasons.get(record.name) === record.why;
  };
  if (!outcomes.every(isTold)) return false;
  for (const table of tables) if ((await whyNot(store, table)) !== undefined) return false;
  return true;
}

function countOf(groups: Iterable<Group>): number {
  let count = 0;
  for (const group of groups) count += group.length;
  return count;
}

function outcomeOf(event: RangeEvent): Outcome {
  const { number, name, shown } = event;
  if (event.kind !== "failed") return { number, name, shown, record: event.record };
  const [{ code, message }] = event.problems;
  return { number, name, shown, failed: `${code}: ${message}` };
}
