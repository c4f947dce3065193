/**
 * The dimensions of a cross-section: what each form is measured by, where, and how a pull at an arrow changes it.
 */
import type { WordKey } from "../words/english.js";
import { arcRise } from "./section-shape.js";
import type { SectionNumbers } from "./section-sizes.js";

/** A place in the cross-section, mm: across the band from its middle, and above the bore's narrowest circle. */
export type SectionPoint = readonly [w: number, height: number];

/** What is taken hold of. */
export interface Grip {
  readonly at: SectionPoint;
  /** By how much the size grows for a millimetre towards +w, and outward. */
  readonly pull: SectionPoint;
}

/** One dimension. */
export interface Dimension {
  /** Its place within `profile`: `outside.rail`. */
  readonly size: string;
  readonly label: WordKey;
  readonly value: number;
  /** What the field takes, mm. */
  readonly least: number;
  readonly most: number;
  /** Measured across the band, outward, or as a radius. */
  readonly kind: "across" | "outward" | "radius";
  readonly from: SectionPoint;
  readonly to: SectionPoint;
  /** On which side of the cross-section its line stands. */
  readonly side: "left" | "right" | "above" | "below" | "inside";
  readonly grips: readonly Grip[];
}

/** The least a size may be where 0 is too little, mm: a hair. Chosen. */
const ABOVE_NOTHING = 0.01;

/** The largest size that the document takes, mm, and the largest of a step; as the schema has them. */
const LARGEST = 1000;
const LARGEST_STEP = 20;

/** What every size may be, mm: `profile`'s schema. */
export const SIZE_RANGES: Readonly<Record<string, readonly [least: number, most: number]>> = {
  width: [ABOVE_NOTHING, LARGEST],
  thickness: [ABOVE_NOTHING, LARGEST],
  "bore.rise": [0, LARGEST],
  "bore.edge": [0, LARGEST],
  "outside.rail": [ABOVE_NOTHING, LARGEST],
  "outside.depth": [ABOVE_NOTHING, LARGEST],
  "outside.crown": [0, LARGEST],
  "outside.root": [0, LARGEST],
  "outside.edge": [0, LARGEST],
  "outside.rise": [0, LARGEST],
  "outside.ridge": [0, LARGEST],
  "outside.dip": [0, LARGEST],
  "outside.bevel": [ABOVE_NOTHING, LARGEST],
  "outside.drop": [0, LARGEST],
  "step.width": [ABOVE_NOTHING, LARGEST_STEP],
  "step.depth": [ABOVE_NOTHING, LARGEST_STEP],
  "taper.width": [ABOVE_NOTHING, LARGEST],
  "taper.thickness": [ABOVE_NOTHING, LARGEST],
};

/** By how much the radius of a right corner grows for a millimetre on either axis inwards at the middle of its arc. */
const ROUND_PULL = Math.SQRT1_2 / (Math.SQRT2 - 1);

/** From a right corner to the middle of its arc, of the radius, along either axis. */
const ROUND_AT = 1 - Math.SQRT1_2;

type Place = Pick<Dimension, "kind" | "from" | "to" | "side" | "grips">;

/** What is known where dimensions are laid out, mm. */
interface Known {
  readonly half: number;
  readonly top: number;
  readonly size: (name: string) => number;
}

const across = (from: number, to: number, height: number, side: Place["side"], grips: readonly Grip[]): Place => ({
  kind: "across",
  from: [from, height],
  to: [to, height],
  side,
  grips,
});

const outward = (from: number, to: number, w: number, side: Place["side"], grips: readonly Grip[]): Place => ({
  kind: "outward",
  from: [w, from],
  to: [w, to],
  side,
  grips,
});

/** A rounded right corner; the signs say on which sides the metal lies. */
function corner([w, height]: SectionPoint, radius: number, [inW, inHeight]: SectionPoint, side: Place["side"]): Place {
  const at: SectionPoint = [w + inW * ROUND_AT * radius, height + inHeight * ROUND_AT * radius];
  const grips = [{ at, pull: [inW * ROUND_PULL, inHeight * ROUND_PULL] as const }];
  return { kind: "radius", from: [w + inW * radius, height + inHeight * radius], to: at, side, grips };
}

/** Where each size is drawn. */
const PLACES: Readonly<Record<string, (known: Known) => Place>> = {
  width: ({ half }) =>
    across(-half, half, 0, "left", [
      { at: [half, 0], pull: [2, 0] },
      { at: [-half, 0], pull: [-2, 0] },
    ]),
  thickness: ({ top, half }) => outward(0, top, -half, "below", [{ at: [-half, top], pull: [0, 1] }]),
  "bore.rise": ({ half, size }) =>
    outward(0, size("bore.rise"), half, "above", [{ at: [half, size("bore.rise")], pull: [0, 1] }]),
  "bore.edge": ({ half, size }) => corner([-half, size("bore.rise")], size("bore.edge"), [1, 1], "left"),
  "outside.rail": ({ half, top, size }) =>
    across(half - size("outside.rail"), half, top, "right", [
      { at: [half - size("outside.rail"), top], pull: [-1, 0] },
    ]),
  "outside.depth": ({ half, top, size }) =>
    outward(top - size("outside.depth"), top, half, "above", [
      { at: [half, top - size("outside.depth")], pull: [0, -1] },
    ]),
  "outside.crown": ({ top, size }) => {
    const floor = top - size("outside.depth");
    return outward(floor, floor + size("outside.crown"), 0, "inside", [
      { at: [0, floor + size("outside.crown")], pull: [0, 1] },
    ]);
  },
  "outside.root": ({ half, top, size }) =>
    corner([size("outside.rail") - half, top - size("outside.depth")], size("outside.root"), [1, 1], "inside"),
  "outside.dip": ({ half, top, size }) =>
    outward(top - size("outside.dip"), top, half, "above", [{ at: [half, top - size("outside.dip")], pull: [0, -1] }]),
  "outside.bevel": ({ half, top, size }) =>
    across(half - size("outside.bevel"), half, top, "right", [
      { at: [half - size("outside.bevel"), top], pull: [-1, 0] },
    ]),
  "outside.drop": ({ half, top, size }) =>
    outward(top - size("outside.drop"), top, half, "above", [
      { at: [half, top - size("outside.drop")], pull: [0, -1] },
    ]),
  "outside.rise": ({ half, top, size }) =>
    outward(top - size("outside.rise"), top, half, "above", [
      { at: [half, top - size("outside.rise")], pull: [0, -1] },
    ]),
  "outside.ridge": ({ top, size }) => ({
    kind: "radius",
    from: [0, top - size("outside.ridge")],
    to: [0, top],
    side: "inside",
    grips: [{ at: [0, top], pull: [0, -1] }],
  }),
  "outside.edge": (known) => corner([-known.half, sideHeight(known)], known.size("outside.edge"), [1, -1], "right"),
  "step.width": ({ half, top, size }) =>
    across(half - size("step.width"), half, top, "right", [{ at: [half - size("step.width"), top], pull: [-1, 0] }]),
};

/** Height of the side walls' upper ends, mm. */
function sideHeight({ top, size }: Known): number {
  return top - (size("outside.drop") || size("outside.rise"));
}

/** The sizes that each form is measured by, beside width and thickness. */
const OF_FORM: Readonly<Record<string, readonly string[]>> = {
  flat: ["outside.edge"],
  domed: ["outside.rise", "outside.edge"],
  channel: ["outside.rail", "outside.depth", "outside.crown", "outside.edge"],
  bevelled: ["outside.bevel", "outside.drop", "outside.edge"],
  concave: ["outside.dip", "outside.edge"],
  knife: ["outside.rise", "outside.ridge", "outside.edge"],
  free: ["outside.edge"],
};

/** Every dimension of a cross-section whose size is known. */
export function dimensionsOf(numbers: SectionNumbers): Dimension[] {
  const { form, bore, sizes } = numbers;
  const known: Known = {
    half: (sizes.width ?? 0) / 2,
    top: sizes.thickness ?? 0,
    size: (name) => sizes[name] ?? 0,
  };
  const names = [
    "width",
    "thickness",
    ...(bore === "comfort" ? ["bore.rise"] : []),
    "bore.edge",
    ...(OF_FORM[form] ?? []),
    ...((sizes["outside.root"] ?? 0) > 0 && form === "channel" ? ["outside.root"] : []),
    ...(sizes["step.width"] === undefined || form === "channel" || form === "bevelled" ? [] : ["step.width"]),
  ];
  return names
    .filter((name) => sizes[name] !== undefined)
    .map((name) => {
      const [least, most] = SIZE_RANGES[name];
      return { size: name, label: `size.${name}` as WordKey, value: sizes[name], least, most, ...PLACES[name](known) };
    });
}

/** Height of the outside in the middle of the band above the bore, mm: where a centre line leaves the metal. */
export function middleHeight({ form, sizes }: SectionNumbers): number {
  const top = sizes.thickness ?? 0;
  if (form === "channel") return top - (sizes["outside.depth"] ?? 0) + (sizes["outside.crown"] ?? 0);
  if (form === "concave") return top + arcRise(0, (sizes.width ?? 0) / 2, -(sizes["outside.dip"] ?? 0));
  return top;
}
