/**
 * The fan of triangles round a vertex, and how far the surface would shift if another fan over the same rim, from a vertex
 * of the rim, took its place.
 *
 * Both fans are seen along the rim's area vector, which is the sum of the area vectors of either. Where neither folds over
 * from there, each is a height over the same polygon, linear between the vertices of the two and the points where their
 * edges cross; so the largest difference of height at those is how far one lies from the other at most (J. Cohen,
 * D. Manocha, M. Olano, Simplifying polygonal models using successive mappings, 1997; from memory).
 */

/** Rims longer than this are left alone: the work grows with the cube of their length. */
export const MOST_SPOKES = 24;

/** A face that the rim's area vector sees more slantingly than this, as a cosine, counts as folded over. */
const LEAST_FACING = 0.05;

/** Below the rounding of a barycentric weight, as a share of the triangle's area. */
const WEIGHT_ROUNDING = 1e-12;

export class Fan {
  /** Rim vertices in order, counter-clockwise seen from outside. */
  readonly rim = new Int32Array(MOST_SPOKES);
  /** Number of rim vertices. */
  spokes = 0;
  /** Unit normals of the faces, x, y, z in turn; face i lies between spokes i and i + 1. */
  readonly #normals = new Float64Array(3 * MOST_SPOKES);
  /** Rim relative to the centre: across, along, height over the plane. */
  readonly #x = new Float64Array(MOST_SPOKES);
  readonly #y = new Float64Array(MOST_SPOKES);
  readonly #h = new Float64Array(MOST_SPOKES);
  readonly #positions: Float64Array;
  /** Smallest height of the fan's triangles, mm. */
  lowest = 0;

  constructor(positions: Float64Array) {
    this.#positions = positions;
  }

  /** Flattens the fan round a vertex whose rim has been filled in. False where it folds over or has a flat face. */
  flatten(centre: number): boolean {
    const p = this.#positions;
    const { rim, spokes } = this;
    const normals = this.#normals;
    let [nx, ny, nz] = [0, 0, 0];
    this.lowest = Number.POSITIVE_INFINITY;
    for (let i = 0; i < spokes; i++) {
      const a = 3 * rim[i];
      const b = 3 * rim[i + 1 === spokes ? 0 : i + 1];
      const ux = p[a] - p[3 * centre];
      const uy = p[a + 1] - p[3 * centre + 1];
      const uz = p[a + 2] - p[3 * centre + 2];
      const vx = p[b] - p[3 * centre];
      const vy = p[b + 1] - p[3 * centre + 1];
      const vz = p[b + 2] - p[3 * centre + 2];
      const cx = uy * vz - uz * vy;
      const cy = uz * vx - ux * vz;
      const cz = ux * vy - uy * vx;
      const area = Math.sqrt(cx * cx + cy * cy + cz * cz);
      if (area === 0) return false;
      const wx = vx - ux;
      const wy = vy - uy;
      const wz = vz - uz;
      const longest = Math.max(ux * ux + uy * uy + uz * uz, vx * vx + vy * vy + vz * vz, wx * wx + wy * wy + wz * wz);
      this.lowest = Math.min(this.lowest, area / Math.sqrt(longest));
      normals[3 * i] = cx / area;
      normals[3 * i + 1] = cy / area;
      normals[3 * i + 2] = cz / area;
      nx += cx;
      ny += cy;
      nz += cz;
    }
    const length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    if (length === 0) return false;
    nx /= length;
    ny /= length;
    nz /= length;
    for (let i = 0; i < 3 * spokes; i += 3) {
      if (normals[i] * nx + normals[i + 1] * ny + normals[i + 2] * nz < LEAST_FACING) return false;
    }
    this.#project(centre, nx, ny, nz);
    return true;
  }

  /** Whether the surface turns by more than an angle, given by its cosine, across a spoke. */
  turnsAt(spoke: number, cosine: number): boolean {
    const n = this.#normals;
    const a = 3 * (spoke === 0 ? this.spokes - 1 : spoke - 1);
    const b = 3 * spoke;
    return n[a] * n[b] + n[a + 1] * n[b + 1] + n[a + 2] * n[b + 2] < cosine;
  }

  /**
   * How far the surface shifts at most when the fan from a rim vertex takes the place of the one round the centre, mm;
   * infinite where that is more than `most`, where the new fan folds over, or has a triangle lower than `least`.
   */
  shiftTo(from: number, most: number, least: number): number {
    const { spokes } = this;
    let worst = Number.POSITIVE_INFINITY;
    for (let step = 1; step + 1 < spokes; step++) {
      const i = (from + step) % spokes;
      const j = (from + step + 1) % spokes;
      if (!this.#isSound(from, i, j, least)) return Number.POSITIVE_INFINITY;
      const under = this.#heightUnderCentre(from, i, j);
      if (under < worst) worst = under;
    }
    for (let step = 2; step + 1 < spokes && worst <= most; step++) {
      worst = Math.max(worst, this.#shiftAlong(from, (from + step) % spokes));
    }
    return worst <= most ? worst : Number.POSITIVE_INFINITY;
  }

  #project(centre: number, nx: number, ny: number, nz: number): void {
    const p = this.#positions;
    // Any axis not along the normal gives a direction in the plane.
    const [ax, ay, az] = Math.abs(nx) < 0.6 ? [1, 0, 0] : [0, 1, 0];
    let ex = ay * nz - az * ny;
    let ey = az * nx - ax * nz;
    let ez = ax * ny - ay * nx;
    const length = Math.sqrt(ex * ex + ey * ey + ez * ez);
    ex /= length;
    ey /= length;
    ez /= length;
    const fx = ny * ez - nz * ey;
    const fy = nz * ex - nx * ez;
    const fz = nx * ey - ny * ex;
    for (let i = 0; i < this.spokes; i++) {
      const x = p[3 * this.rim[i]] - p[3 * centre];
      const y = p[3 * this.rim[i] + 1] - p[3 * centre + 1];
      const z = p[3 * this.rim[i] + 2] - p[3 * centre + 2];
      this.#x[i] = x * ex + y * ey + z * ez;
      this.#y[i] = x * fx + y * fy + z * fz;
      this.#h[i] = x * nx + y * ny + z * nz;
    }
  }

  /** Whether a triangle of the rim faces the way the fan does and is not too low. */
  #isSound(a: number, b: number, c: number, least: number): boolean {
    const x = this.#x;
    const y = this.#y;
    const h = this.#h;
    const ux = x[b] - x[a];
    const uy = y[b] - y[a];
    const uh = h[b] - h[a];
    const vx = x[c] - x[a];
    const vy = y[c] - y[a];
    const vh = h[c] - h[a];
    const seen = ux * vy - uy * vx;
    if (seen <= 0) return false;
    const cx = uy * vh - uh * vy;
    const cy = uh * vx - ux * vh;
    const area = Math.sqrt(cx * cx + cy * cy + seen * seen);
    if (seen < LEAST_FACING * area) return false;
    const wx = vx - ux;
    const wy = vy - uy;
    const wh = vh - uh;
    const longest = Math.max(ux * ux + uy * uy + uh * uh, vx * vx + vy * vy + vh * vh, wx * wx + wy * wy + wh * wh);
    return area >= least * Math.sqrt(longest);
  }

  /** How far the centre lies from a triangle of the rim, where it lies over it; infinite where it does not. */
  #heightUnderCentre(a: number, b: number, c: number): number {
    const x = this.#x;
    const y = this.#y;
    const h = this.#h;
    const wa = x[b] * y[c] - y[b] * x[c];
    const wb = x[c] * y[a] - y[c] * x[a];
    const wc = x[a] * y[b] - y[a] * x[b];
    const sum = wa + wb + wc;
    if (Math.min(wa, wb, wc) < -WEIGHT_ROUNDING * sum) return Number.POSITIVE_INFINITY;
    return Math.abs(wa * h[a] + wb * h[b] + wc * h[c]) / sum;
  }

  /** Largest difference of height where the line between two rim vertices crosses a spoke. */
  #shiftAlong(a: number, b: number): number {
    const x = this.#x;
    const y = this.#y;
    const h = this.#h;
    const dx = x[b] - x[a];
    const dy = y[b] - y[a];
    const moment = x[a] * dy - y[a] * dx;
    let worst = 0;
    for (let i = 0; i < this.spokes; i++) {
      if (i === a || i === b) continue;
      const across = x[i] * dy - y[i] * dx;
      const onSpoke = moment / across;
      if (!(onSpoke > 0 && onSpoke < 1)) continue;
      const onLine = (x[a] * y[i] - y[a] * x[i]) / across;
      if (!(onLine > 0 && onLine < 1)) continue;
      worst = Math.max(worst, Math.abs(h[a] + onLine * (h[b] - h[a]) - onSpoke * h[i]));
    }
    return worst;
  }
}
