/**
 * Makes a range: every variant once, on all cores, into one folder. What is there is kept, what fails is told and the rest is made.
 */
import { join } from "node:path";
import { fileSource } from "../../disk/file-source.js";
import { removeLeftovers } from "../../disk/temporary-files.js";
import { type OpenPlan, openPlan } from "../expand/open-plan.js";
import { groupsOf } from "../expand/part.js";
import { type Manifest, makeManifest, manifestText } from "../records/manifest.js";
import type { Outcome } from "../summary/summary-rows.js";
import { keepTables, keepText } from "./keep-tables.js";
import { manifestName, requireOwnFolder } from "./range-folder.js";
import { type RangeEvent, RangeRun } from "./range-run.js";
import type { RangeSetup } from "./range-setup.js";
import { makeFolders, RECORDS, RINGS } from "./record-store.js";

/**
 * Makes the variants of a plan and yields what became of each, as they come. The tables and the manifest are written at the end.
 *
 * @param source the plan: JSON text, or the plan itself
 * @returns the manifest, once all is done
 * @throws AnnuletError what is wrong with the plan; `output-not-writable`, `folder-taken`, `manifest-damaged`; the signal's reason,
 *   and then what was made stays and the next run goes on
 */
export async function* makeRange(source: unknown, setup: RangeSetup): AsyncGenerator<RangeEvent, Manifest, void> {
  const { folder, planFolder = ".", part, signal } = setup;
  const open = await openPlan(source, fileSource(planFolder), signal);
  requireOwnFolder(folder, part);
  makeFolders(folder);
  for (const inner of [".", RINGS, RECORDS]) removeLeftovers(join(folder, inner));
  setup.onCount?.(part === undefined ? open.count : countOf(groupsOf(open, part)));
  const outcomes: Outcome[] = [];
  for await (const event of new RangeRun(open, setup).events()) {
    outcomes.push(outcomeOf(event));
    yield event;
  }
  return finishRange(open, outcomes, setup);
}

/** Writes tables and manifest. */
function finishRange(
  open: OpenPlan,
  outcomes: readonly Outcome[],
  { folder, part }: Pick<RangeSetup, "folder" | "part">,
): Manifest {
  const tables = part === undefined ? keepTables(folder, open, outcomes) : [];
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
  keepText(join(folder, manifestName(part)), manifestText(manifest));
  return manifest;
}

function countOf(groups: Iterable<readonly number[]>): number {
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
