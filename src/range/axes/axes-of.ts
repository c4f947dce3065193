/**
 * The axes of a plan.
 */
import { AnnuletError, type Problem } from "../../base/errors.js";
import { type FileSource, loadFile } from "../../base/files.js";
import type { Plain } from "../../design/plain.js";
import type { AxisSpec } from "../plan/plan-schema.js";
import type { Axis } from "./axis.js";
import { type Row, readRows, rowAxis } from "./row-axis.js";
import { sizeAxis } from "./size-axis.js";
import { listedAxis, steppedAxis } from "./value-axis.js";

/**
 * Reads the axes, with the files of rows that they name.
 *
 * @param tables takes the text of each
 * @throws AnnuletError with what is wrong in all of them; `axes-alike` where two are called the same
 */
export async function axesOf(
  specs: readonly AxisSpec[],
  files: FileSource,
  tables: string[],
): Promise<readonly Axis[]> {
  const problems: Problem[] = [];
  const axes: Axis[] = [];
  for (const [i, spec] of specs.entries()) {
    try {
      axes.push(await axisOf(spec, `vary[${i}]`, files, tables));
    } catch (error) {
      if (!(error instanceof AnnuletError)) throw error;
      problems.push(...error.problems);
    }
  }
  if (problems.length > 0) throw new AnnuletError(problems);
  requireApart(axes);
  return axes;
}

async function axisOf(spec: AxisSpec, where: string, files: FileSource, tables: string[]): Promise<Axis> {
  if ("size" in spec) return sizeAxis(spec.size, `${where}.size`);
  if ("material" in spec) return listedAxis({ path: "material" }, spec.material, where);
  if ("rows" in spec) return rowAxis(await rowsOf(spec.rows, `${where}.rows`, files, tables), where);
  // What the plan holds was read as JSON.
  if ("values" in spec) return listedAxis(spec, spec.values as readonly Plain[], where);
  return steppedAxis(spec, spec, where);
}

async function rowsOf(
  rows: string | readonly object[],
  where: string,
  files: FileSource,
  tables: string[],
): Promise<readonly Row[]> {
  // What the plan holds was read as JSON.
  if (typeof rows !== "string") return rows as readonly Row[];
  const hint = "put the file beside the plan";
  return loadFile({ name: rows, where, kind: "rows", hint }, files, (content) => {
    const text = typeof content === "string" ? content : new TextDecoder().decode(content);
    tables.push(text);
    return readRows(text, rows, where);
  });
}

function requireApart(axes: readonly Axis[]): void {
  const names = axes.flatMap((axis) => axis.names);
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice === undefined) return;
  throw new AnnuletError({
    code: "axes-alike",
    message: `two axes are called ${twice}`,
    path: "vary",
    value: names,
    hint: 'give one of them a "name"',
  });
}
