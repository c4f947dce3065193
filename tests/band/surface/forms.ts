/** One band of every outside form whose seat is smooth, for tests that loop over them. */
import { buildProfile, type Profile } from "../../../src/band/profile/profile.js";
import { spec } from "../profile/specs.js";

export const BORE_RADIUS = 8.25;

export interface SmoothForm {
  readonly name: string;
  /** The profile part of a design. */
  readonly profile: { readonly width: number; readonly thickness: number; readonly outside: object };
  /** Heights within the seat's radius of curvature on either side, mm. */
  readonly reach: readonly [down: number, up: number];
}

const sized = { width: 6, thickness: 2 };

export const SMOOTH_FORMS: readonly SmoothForm[] = [
  { name: "flat", profile: { ...sized, outside: { form: "flat" } }, reach: [-1, 1] },
  { name: "domed", profile: { ...sized, outside: { form: "domed", rise: 0.6 } }, reach: [-1, 1] },
  { name: "strongly domed", profile: { ...sized, outside: { form: "domed", rise: 1.6, edge: 0 } }, reach: [-1, 1] },
  { name: "channel", profile: { ...sized, outside: { form: "channel", root: 0.1 } }, reach: [-1, 1] },
  {
    name: "crowned channel",
    profile: { ...sized, outside: { form: "channel", depth: 0.8, crown: 0.3 } },
    reach: [-1, 1],
  },
  { name: "bevelled", profile: { ...sized, outside: { form: "bevelled" } }, reach: [-1, 1] },
  { name: "concave", profile: { ...sized, outside: { form: "concave", dip: 0.5 } }, reach: [-1, 1] },
  { name: "knife", profile: { ...sized, outside: { form: "knife", rise: 0.6, ridge: 1 } }, reach: [-0.9, 1] },
  {
    name: "free arc",
    // Sagitta of the arc: 9 − √(9² − 3²) = 0.5147.
    profile: { width: 6, thickness: 2.0147, outside: { form: "free", path: "M -3 1.5 A 9 9 0 0 0 3 1.5", edge: 0.1 } },
    reach: [-1, 1],
  },
];

export function profileOf({ profile }: SmoothForm, tolerance = 0.01): Profile {
  return buildProfile(spec(profile), BORE_RADIUS, tolerance);
}
