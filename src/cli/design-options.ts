/**
 * The options by which a command line changes values of a design before it is worked on; its file stays as it is.
 */
import { AnnuletError, type Problem, sizeSystems } from "../index.js";
import { type DocumentChange, readWritten, readWrittenSize } from "../toolbox/index.js";
import type { OptionSpec } from "./command.js";
import { usage } from "./usage.js";

export interface DesignOptions {
  readonly set?: readonly string[];
  readonly size?: string;
}

const SET_OPTION: OptionSpec = {
  flags: "--set <path=value>",
  description:
    "put a value into the design first, by its path as errors show it: pattern.fit.repeats=11; JSON, or else text; may be given several times",
  repeated: true,
};

const SYSTEMS = sizeSystems.map(({ name }) => name);

const MEASURES = ["diameter", "circumference"] as const;

const SIZE_FORM = `SYSTEM:LABEL, with ${SYSTEMS.join(", ")}; or ${MEASURES.map((name) => `${name}:MM`).join(" or ")}`;

export const DESIGN_OPTIONS: readonly OptionSpec[] = [
  SET_OPTION,
  { flags: "--size <system:label>", description: `another finger size: uk:P, iso:54, ${MEASURES[0]}:17.3` },
];

/**
 * What these options change, in their order; the size comes first.
 *
 * @throws AnnuletError `usage` with all that is wrong
 */
export function changesOf({ set = [], size }: DesignOptions): readonly DocumentChange[] {
  const problems: Problem[] = [];
  const changes: DocumentChange[] = [];
  if (size !== undefined) {
    const spec = readWrittenSize(size);
    if (spec === undefined) problems.push({ ...usage("--size is no finger size."), value: size, allowed: SIZE_FORM });
    else changes.push({ path: "size", value: { ...spec } });
  }
  for (const text of set) {
    const at = text.indexOf("=");
    if (at > 0) changes.push({ path: text.slice(0, at).trim(), value: readWritten(text.slice(at + 1)) });
    else problems.push({ ...usage("--set has no = after the path."), value: text, allowed: "path=value" });
  }
  if (problems.length > 0) throw new AnnuletError(problems);
  return changes;
}
