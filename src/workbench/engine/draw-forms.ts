/**
 * Small drawings of a band's cross-section in each of its forms, from the very profiles that the forms make.
 */
import { openRing, type Point2 } from "../../index.js";
import { explain } from "./explain-inside.js";
import { outlinePath } from "./outline-path.js";

/** A closed outline, for an SVG path; the finger axis runs along x, outward is up. */
export interface FormDrawing {
  readonly form: string;
  readonly path: string;
  readonly viewBox: string;
}

type Part = Readonly<Record<string, unknown>>;

/** A band that every form fits, mm. Chosen. */
const PLAIN: Part = { width: 6, thickness: 2.2 };

/** What forms need that have no defaults: a free outline. Chosen. */
const FIRST: Readonly<Record<string, Part>> = {
  free: {
    points: [
      [-3, 1.3],
      [-1, 2.2],
      [1.5, 1.6],
      [3, 1.8],
    ],
  },
};

/** Accuracy of what is drawn some ten millimetres wide, mm. */
const TOLERANCE = 0.02;

/**
 * Each form of the outside or the bore: over the profile as it is, or over a plain one where it would not fit.
 *
 * @param profile `profile` of a document, as it is written
 */
export async function drawForms(part: "outside" | "bore", profile: unknown): Promise<FormDrawing[]> {
  const forms = explain(`profile.${part}`).flatMap(({ forms }) => forms.map(({ name }) => name));
  const drawn = await Promise.all(forms.map((form) => drawForm(form, part, (profile ?? {}) as Part)));
  return drawn.filter((one) => one !== undefined);
}

async function drawForm(form: string, part: "outside" | "bore", profile: Part): Promise<FormDrawing | undefined> {
  const given = profile[part] as Part | undefined;
  const own = given?.form === form ? given : { ...FIRST[form], form };
  const plain = { outside: { form: "flat" }, ...PLAIN };
  const { width = PLAIN.width, thickness = PLAIN.thickness, outside = plain.outside, bore } = profile;
  const tries = [
    { width, thickness, outside, ...(bore !== undefined && { bore }), [part]: own },
    { ...plain, [part]: own },
    { ...plain, [part]: { ...FIRST[form], form } },
  ];
  for (const one of tries) {
    const polyline = await outlineOf(one).catch(() => undefined);
    if (polyline !== undefined) return { form, ...drawOutline(polyline) };
  }
  return undefined;
}

async function outlineOf(profile: Part): Promise<readonly Point2[]> {
  const ring = openRing({ annulet: 1, size: { diameter: 17 }, tolerance: TOLERANCE, profile });
  return (await ring.profile()).polyline;
}

function drawOutline(polyline: readonly Point2[]): { readonly path: string; readonly viewBox: string } {
  const [ws, rs] = [polyline.map(([w]) => w), polyline.map(([, r]) => r)];
  const [left, right, low, high] = [Math.min(...ws), Math.max(...ws), Math.min(...rs), Math.max(...rs)];
  const path = outlinePath([polyline.map(([w, r]): Point2 => [w - left, r - high])], 2);
  return { path, viewBox: `0 0 ${(right - left).toFixed(2)} ${(high - low).toFixed(2)}` };
}
