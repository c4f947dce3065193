/**
 * Unites a drawn sprue with a ring that is finished otherwise: it is cut off again after casting, so nothing else counts it.
 */

import type { Band } from "../band/band.js";
import { AnnuletError } from "../base/errors.js";
import { radians } from "../base/units.js";
import type { SprueSpec } from "../design/sprue.js";
import { assertSolid, checkSolid } from "../judge/gate.js";
import type { Alloy } from "../measure/alloys/alloy.js";
import { massOf } from "../measure/mass.js";
import type { Mesh } from "../mesh/mesh.js";
import { placeStep } from "../mesh/step.js";
import { transformMesh } from "../mesh/transform.js";
import { signedVolume } from "../mesh/volume.js";
import type { Kernel } from "../union/kernels/kernel.js";
import { manifoldKernel } from "../union/kernels/manifold.js";
import { uniteRing } from "../union/union.js";
import { sprueBody, sprueOutline, sprueReach } from "./sprue-body.js";
import { sprueSeat } from "./sprue-place.js";

export interface SprueOptions {
  readonly profile: Pick<Band, "sectionAt">;
  /** Largest chordal deviation, mm. */
  readonly tolerance: number;
  readonly kernel: Kernel;
  readonly signal?: AbortSignal | undefined;
}

/** A ring that carries its sprue. */
export interface SpruedRing {
  readonly mesh: Mesh;
  readonly figures: SprueFigures;
}

/** What a sprue measures on the casting. */
export interface SprueFigures {
  /** mm³ that it adds to the casting, outside the ring. */
  readonly volume: number;
  /** mm from the finger's axis to where it stands on the band, and to its end. */
  readonly root: number;
  readonly reach: number;
  /** Diameter of what it covers of the band, fillet included, mm. */
  readonly covers: number;
  /** Name of the kernel that united it. */
  readonly kernel: string;
}

/** What a sprue comes to on the casting. */
export interface SprueReport extends SprueFigures {
  /** g that it adds to the casting, outside the ring. */
  readonly weight: number;
  /** Symbol of the alloy that it is weighed in. */
  readonly material: string;
}

/**
 * How far the plane of the flare lies below the band's highest place, mm: its thin rim would touch the band there, and
 * tangent solids make bad unions.
 */
const SUNK = 0.02;

/** The sprue where it stands, its foot sunk in the band. */
export function placeSprue(spec: SprueSpec, { profile, tolerance }: Omit<SprueOptions, "kernel" | "signal">) {
  const { diameter, end = diameter, length, fillet, at, across } = spec;
  const sunk = SUNK + tolerance;
  const outline = sprueOutline({ diameter, end, length: length + sunk, fillet }, tolerance);
  if (outline === undefined) {
    throw new AnnuletError({
      code: "fillet-too-large",
      message: "the sprue's fillet does not fit on its stem",
      path: "sprue.fillet",
      value: fillet,
      allowed: "well below the length",
    });
  }
  const { root, foot } = sprueSeat(profile.sectionAt(radians(at)).polyline, across, sprueReach(outline));
  const plane = root - sunk;
  // From the sprue's own axes: its axis points out at the angle, its first axis along the finger.
  const [cos, sin] = [Math.cos(radians(at)), Math.sin(radians(at))];
  const body = sprueBody(outline, plane - foot, tolerance);
  const [x, y] = [plane * cos, plane * sin];
  const mesh = transformMesh(body, [0, 0, 1, 0, sin, -cos, 0, 0, cos, sin, 0, 0, x, y, across, 1]);
  return { mesh, root, reach: root + length, covers: 2 * sprueReach(outline) };
}

/**
 * The ring with its sprue.
 *
 * @throws AnnuletError `sprue-too-wide`, `fillet-too-large`, `not-closed` where the result fails the gate
 */
export async function addSprue(ring: Mesh, spec: SprueSpec, options: SprueOptions): Promise<SpruedRing> {
  const { mesh: body, ...place } = placeSprue(spec, options);
  const { mesh, kernel } = await uniteRing(
    { steps: [placeStep("casting", "add", [ring]), placeStep("sprue", "add", [body])] },
    { kernel: options.kernel, fallback: manifoldKernel, check: checkSolid, signal: options.signal },
  );
  assertSolid(mesh);
  return { mesh, figures: { volume: signedVolume(mesh) - signedVolume(ring), ...place, kernel } };
}

/** The sprue's figures with its weight in a metal. */
export function weighSprue({ volume, ...place }: SprueFigures, metal: Alloy): SprueReport {
  return { volume, weight: massOf(volume, metal), material: metal.symbol, ...place };
}
