/** Round lobes with a notch between them: arcs of a circle over chord w with sagitta d, radius (w² / 4 + d²) / 2d. */
import { arcBySagitta, flattenSegment } from "../../base/math/curve.js";
import type { EdgeForm } from "./edge-form.js";

export const scallopEdge: EdgeForm = {
  draw({ width, depth, tolerance }) {
    return [[0, 0], ...flattenSegment(arcBySagitta([0, 0], [width, 0], -depth), tolerance)];
  },
  // A half circle: beyond it the lobe would be wider than its place.
  deepest: (width) => width / 2,
};
