/**
 * A post with a domed top in closed form.
 */
import { vec3 } from "gl-matrix";
import type { Axis } from "./posts.js";
import type { ToldBody } from "./told-body.js";

export interface PostSizes {
  /** Heights over the axis's place of its foot, of where it surely stands in the metal, and of its top, mm. */
  readonly foot: number;
  readonly sure: number;
  readonly top: number;
  /** Radius at the foot and below the dome. */
  readonly radius: number;
  readonly tip: number;
}

/** What is grown by the tolerance lies within that beside it, mm (chosen). */
const AROUND = 0.25;

export function postBody({ at, out }: Axis, sizes: PostSizes, kind: ToldBody["kind"]): ToldBody {
  const { foot, sure, top, radius, tip } = sizes;
  const straight = top - tip;
  return {
    kind,
    sphere: { centre: at, radius: Math.max(top, -foot) + radius },
    post: at,
    axis: { at, out, radius: radius + AROUND },
    holds: (point, grown) => {
      const away = vec3.subtract([0, 0, 0], point, at);
      const z = vec3.dot(away, out);
      const beside = Math.sqrt(Math.max(0, vec3.squaredLength(away) - z * z));
      if (z < (grown < 0 ? sure : foot)) return false;
      if (z >= straight) return Math.hypot(beside, z - straight) <= tip + grown;
      return beside <= radius + ((tip - radius) * (z - foot)) / (straight - foot) + grown;
    },
  };
}
