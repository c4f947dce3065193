/**
 * The options by which a command line changes values of a design before it is worked on; its file stays as it is.
 */
import { AnnuletError, type Problem, type SizeSpec, sizeSystems } from "../index.js";
import type { DocumentChange } from "../toolbox/index.js";
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
    const spec = sizeOf(size);
    if (spec === undefined) problems.push({ ...usage("--size is no finger size."), value: size, allowed: SIZE_FORM });
    else changes.push({ path: "size", value: { ...spec } });
  }
  for (const text of set) {
    const at = text.indexOf("=");
    if (at > 0) changes.push({ path: text.slice(0, at).trim(), value: readValue(text.slice(at + 1)) });
    else problems.push({ ...usage("--set has no = after the path."), value: text, allowed: "path=value" });
  }
  if (problems.length > 0) throw new AnnuletError(problems);
  return changes;
}

/** What was asked for; undefined where it has not the form of a size. Whether there is such a label, the design's reader tells. */
function sizeOf(text: string): SizeSpec | undefined {
  const found = /^\s*([\w-]+)\s*:\s*(\S.*?)\s*$/.exec(text);
  if (found === null) return undefined;
  const [, word, label] = found;
  const system = word.toLowerCase();
  const measure = MEASURES.find((name) => name === system);
  if (measure === undefined) return { system, value: label };
  const mm = Number(label);
  if (!Number.isFinite(mm)) return undefined;
  return measure === "diameter" ? { diameter: mm } : { circumference: mm };
}

/** JSON, or else the text itself. */
function readValue(text: string): DocumentChange["value"] {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}
