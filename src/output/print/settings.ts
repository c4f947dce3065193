/**
 * How a ring is printed: how it stands, how thick the layers are, from which lean on an underside counts as steep.
 */
import { definedOf } from "../../base/defined-of.js";
import { AnnuletError, type Problem } from "../../base/errors.js";
import {
  PRINT_DEFAULTS,
  PRINT_RANGES,
  PRINT_STANCES,
  type PrintSettings,
  UNTILTED,
} from "../../design/print-settings.js";

const UNITS = { tilt: "degrees", layer: "mm", support: "degrees" } as const;

/**
 * Fills in defaults; a tilt of its own is meant for a tilted ring alone.
 *
 * @param base what stands where nothing is given
 * @throws AnnuletError `option-invalid` with everything that is wrong
 */
export function printSettings(given: Partial<PrintSettings> = {}, base: PrintSettings = PRINT_DEFAULTS): PrintSettings {
  const all: PrintSettings = { ...base, ...definedOf(given) };
  const problems: Problem[] = [];
  const complain = (name: keyof PrintSettings, allowed: string) => {
    const message = `the print's ${name} is off`;
    problems.push({ code: "option-invalid", message, path: `print.${name}`, value: all[name], allowed });
  };
  if (!PRINT_STANCES.includes(all.stance)) complain("stance", PRINT_STANCES.join(", "));
  for (const name of ["tilt", "layer", "support"] as const) {
    const [least, most] = PRINT_RANGES[name];
    if (!(all[name] >= least && all[name] <= most)) complain(name, `${least} to ${most} ${UNITS[name]}`);
  }
  if (given.tilt !== undefined && all.stance !== "tilted" && problems.length === 0) {
    problems.push({ ...UNTILTED, path: "print.tilt", value: given.tilt });
  }
  if (problems.length > 0) throw new AnnuletError(problems);
  return all;
}
