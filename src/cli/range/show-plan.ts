/**
 * The variants of a plan as a table, before any mesh is made.
 */
import { fileSource } from "../../disk/file-source.js";
import { openPlan } from "../../range/expand/open-plan.js";
import { planRange } from "../../range/figures/plan-range.js";
import type { PlannedVariant } from "../../range/figures/plan-variant.js";
import { EXIT } from "../exit.js";
import { type Io, print, say } from "../io.js";
import { plainJson } from "../plain-text.js";
import { fixed, NOTHING } from "../show.js";
import { type Column, showTable } from "../table.js";
import type { PlanFile } from "./plan-file.js";

/** Rows that are put into columns of one width: a table of all would have to be waited for. Chosen. */
const AT_ONCE = 500;

/**
 * Prints the table, or a line of JSON for each variant.
 *
 * @returns the exit code: 1 where a variant is no sound design
 */
export async function showPlan({ text, folder }: PlanFile, json: boolean, io: Io): Promise<number> {
  const files = fileSource(folder);
  const open = await openPlan(text, files);
  const counts = { planned: 0, "left-out": 0, fault: 0 };
  let rows: PlannedVariant[] = [];
  const flush = () => {
    const withStones = rows.some(hasStones);
    const cells = rows.map(cellsOf(open.axisNames, withStones));
    if (rows.length > 0) print(io, showTable(columnsOf(open.axisNames, withStones), cells));
    rows = [];
  };
  for await (const variant of planRange(open, { files })) {
    counts[variant.kind]++;
    if (json) print(io, plainJson(jsonOf(variant), 0));
    else if (rows.push(variant) >= AT_ONCE) flush();
  }
  flush();
  tellCounts(open.count, counts, io);
  return counts.fault > 0 ? EXIT.check : EXIT.done;
}

/** Of designs with stones there are columns of them too. */
function columnsOf(axes: readonly string[], withStones: boolean): readonly Column[] {
  const right = [...HEADS, ...(withStones ? STONE_HEADS : [])].map((head): Column => ({ head, align: "right" }));
  return [{ head: "name" }, ...axes.map((head): Column => ({ head })), ...right, { head: "" }];
}

const HEADS = ["tiles", "tile mm", "stretch %", "band mm", "metal g"];
const STONE_HEADS = ["stones", "stones g"];

function hasStones(variant: PlannedVariant): boolean {
  return variant.kind !== "fault" && variant.figures.stones > 0;
}

function cellsOf(axes: readonly string[], withStones: boolean): (variant: PlannedVariant) => readonly string[] {
  return (variant) => {
    const head = [variant.name, ...axes.map((axis) => variant.shown[axis] ?? "")];
    if (variant.kind === "fault")
      return [
        ...head,
        ...Array((withStones ? [...HEADS, ...STONE_HEADS] : HEADS).length).fill(NOTHING),
        variant.problems[0].message,
      ];
    const { repeats, tileWidth, stretch, bandWidth, weight, stones, stoneWeight } = variant.figures;
    return [
      ...head,
      repeats === null ? NOTHING : String(repeats),
      tileWidth === null ? NOTHING : fixed(tileWidth),
      stretch === null ? NOTHING : fixed(100 * (stretch - 1), 1),
      fixed(bandWidth),
      fixed(weight, 2),
      ...(withStones ? [String(stones), fixed(stoneWeight, 2)] : []),
      variant.kind === "left-out" ? `left out: ${variant.why}` : "",
    ];
  };
}

/** All but the design itself. */
function jsonOf(variant: PlannedVariant): object {
  const { document: _, ...rest } = variant as PlannedVariant & { document?: unknown };
  return rest;
}

function tellCounts(
  count: number,
  { planned, "left-out": leftOut, fault }: Record<PlannedVariant["kind"], number>,
  io: Io,
): void {
  const share = (number: number) => `${number} (${((100 * number) / count).toFixed(1)} %)`;
  const parts = [`${count} variants: ${planned} to make`];
  if (leftOut > 0) parts.push(`${share(leftOut)} left out`);
  if (fault > 0) parts.push(`${share(fault)} at fault`);
  say(io, `${parts.join(", ")}. Weights of metal are estimates; other faults may show when rings are made.`);
}
