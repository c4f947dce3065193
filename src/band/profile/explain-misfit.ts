/**
 * Turns a misfit into an error that says which value is too large, and the largest that would fit.
 *
 * "Largest" is found by building: the one value is lowered, everything else kept, until the profile can be drawn.
 */
import { AnnuletError, type Problem } from "../../base/errors.js";
import { showLength } from "../../base/units.js";
import type { ProfileSpec } from "../../design/profile/profile.js";
import type { Misfit } from "./misfit.js";

/** Values are given to a thousandth of a millimetre, rounded down, so that the one named can be used. */
const STEP = 0.001;

/** What a field is called when it alone is too large. */
const CODES: Readonly<Record<string, string>> = {
  "bore.rise": "bore-larger-than-outside",
  "step.width": "step-too-wide",
  "step.depth": "step-too-deep",
  edge: "fillet-too-large",
  root: "fillet-too-large",
  ridge: "fillet-too-large",
  rail: "rail-too-wide",
  bevel: "bevel-too-wide",
  depth: "depth-too-large",
  crown: "crown-too-high",
  drop: "drop-too-large",
  dip: "dip-too-large",
  rise: "rise-too-large",
};

/**
 * @param misfit what was met
 * @param spec the profile that does not fit
 * @param builds whether another spec does
 */
export function explainMisfit(misfit: Misfit, spec: ProfileSpec, builds: (spec: ProfileSpec) => boolean): AnnuletError {
  const remedies = (fields: readonly string[], from: ProfileSpec) =>
    fields.flatMap((field) => {
      const requested = fieldValue(from, field);
      if (requested === undefined || requested === 0) return [];
      const range = largestThatFits((value) => builds(withField(from, field, value)), requested);
      return range === undefined ? [] : [{ field, requested, ...range }];
    });
  const blamed = remedies(misfit.fields, spec);
  const found = blamed.length > 0 ? blamed : remedies(lengthFields(spec), spec).slice(0, 1);
  if (found.length > 0) {
    const [first, ...others] = found;
    return new AnnuletError(problem(misfit, first, others));
  }
  const each = lengthFields(spec).filter((field) => codeOf(field) === "fillet-too-large");
  const sharp = each.reduce((rest, field) => withField(rest, field, 0), spec);
  const alone = each.flatMap((field) => remedies([field], withField(sharp, field, fieldValue(spec, field) ?? 0)));
  if (alone.length > 0 && builds(sharp)) {
    return new AnnuletError(
      alone.map((remedy) => ({
        ...problem(misfit, remedy, []),
        hint: "several radii are too large at once; this is the largest with every other corner sharp",
      })),
    );
  }
  const thickness = smallestThickness(spec, builds);
  if (misfit.fields.includes("thickness") && thickness !== undefined) {
    return new AnnuletError({
      code: misfit.code,
      message: misfit.message,
      path: "profile.thickness",
      value: spec.thickness,
      allowed: `${showLength(thickness)} or more`,
      hint: "make the band thicker",
    });
  }
  const field = misfit.fields[misfit.fields.length - 1];
  const [part, name] = field.split(".");
  return new AnnuletError({
    code: misfit.code,
    message: misfit.message,
    path: `profile.${field}`,
    value: name === undefined ? Reflect.get(spec, part) : Reflect.get(Reflect.get(spec, part), name),
    hint: "no single value mends this: make the band thicker or wider, or several of its features smaller",
  });
}

/** How finely values below the requested one are tried before the run that fits is narrowed down. */
const TRIALS = 64;

/**
 * The highest run of values at or below `requested` that fits, ends rounded inwards to a thousandth so that they fit
 * themselves; undefined where none does. Runs narrower than a sixty-fourth of the value can be missed.
 */
export function largestThatFits(fits: (value: number) => boolean, requested: number): Range | undefined {
  const trial = (i: number) => (requested * (TRIALS - i)) / TRIALS;
  let i = 0;
  while (i <= TRIALS && !fits(trial(i))) i++;
  if (i > TRIALS) return undefined;
  const inside = trial(i);
  const largest = onGrid(i === 0 ? inside : edgeOfRun(fits, inside, trial(i - 1)), -1, fits);
  const least = fits(0) ? 0 : onGrid(edgeOfRun(fits, inside, 0), 1, fits);
  return largest === undefined || least === undefined ? undefined : { least, largest };
}

/** The last value that fits on the way from one that fits to one that does not. */
function edgeOfRun(fits: (value: number) => boolean, inside: number, outside: number): number {
  let [good, bad] = [inside, outside];
  while (Math.abs(good - bad) > STEP / 16) {
    const middle = (good + bad) / 2;
    if (fits(middle)) good = middle;
    else bad = middle;
  }
  return good;
}

/** The nearest thousandth to `value` that fits, looked for in the direction `inwards` from just outside it. */
function onGrid(value: number, inwards: 1 | -1, fits: (value: number) => boolean): number | undefined {
  const nearest = inwards < 0 ? Math.ceil(value / STEP) : Math.floor(value / STEP);
  return [0, 1, 2].map((i) => Number(((nearest + i * inwards) * STEP).toFixed(3))).find(fits);
}

/** How often the thickness is doubled in search of one that fits. */
const DOUBLINGS = 8;

/** The smallest larger thickness that fits, rounded up to a thousandth. */
function smallestThickness(spec: ProfileSpec, builds: (spec: ProfileSpec) => boolean): number | undefined {
  const fits = (thickness: number) => builds({ ...spec, thickness });
  const larger = Array.from({ length: DOUBLINGS }, (_, i) => spec.thickness * 2 ** (i + 1)).find(fits);
  return larger === undefined ? undefined : onGrid(edgeOfRun(fits, larger, spec.thickness), 1, fits);
}

/** A run of values, mm. */
interface Range {
  readonly least: number;
  readonly largest: number;
}

interface Remedy extends Range {
  readonly field: string;
  readonly requested: number;
}

function problem(misfit: Misfit, { field, requested, least, largest }: Remedy, others: readonly Remedy[]): Problem {
  const alternatives = others.map((other) => `profile.${other.field} to ${showLength(other.largest)}`);
  return {
    code: codeOf(field) ?? misfit.code,
    message: misfit.message,
    path: `profile.${field}`,
    value: requested,
    allowed: `${least} to ${showLength(largest)}`,
    hint: ["lower it", ...alternatives.map((text) => `or lower ${text}`)].join(", "),
  };
}

function codeOf(field: string): string | undefined {
  return CODES[field] ?? CODES[field.slice(field.indexOf(".") + 1)];
}

/** The parts of a profile whose lengths may be too large. */
const PARTS = ["outside", "bore", "step"] as const;

type Part = (typeof PARTS)[number];

/** Every length in the two forms and the step, by path. */
function lengthFields(spec: ProfileSpec): string[] {
  return PARTS.flatMap((part) =>
    Object.entries(spec[part] ?? {})
      .filter(([, value]) => typeof value === "number")
      .map(([name]) => `${part}.${name}`),
  );
}

function fieldValue(spec: ProfileSpec, field: string): number | undefined {
  const [name, key] = field.split(".");
  const part = PARTS.find((one) => one === name);
  const value = part && (spec[part] as Readonly<Record<string, unknown>> | undefined)?.[key];
  return typeof value === "number" ? value : undefined;
}

function withField(spec: ProfileSpec, field: string, value: number): ProfileSpec {
  const [part, name] = field.split(".") as [Part, string];
  return { ...spec, [part]: { ...spec[part], [name]: value } };
}
