/**
 * A stone in its place on the ring.
 */
import type { Point3 } from "../base/math/point.js";
import type { SettingSpec } from "../design/stones/setting.js";
import type { StoneGroupSpec } from "../design/stones/stone-group.js";
import type { Stone } from "../gems/stone.js";

/** A stone in its place. Its own coordinates are those of `Stone`: x along its length, z out of the ring. */
export interface PlacedStone {
  /** Index of its group in `design.stones`. */
  readonly group: number;
  /** Number on the setter's map, from 1, all groups counted on. */
  readonly number: number;
  readonly stone: Stone;
  /** Origin of its coordinates, mm: the middle of the plane of the girdle's upper edge. */
  readonly at: Point3;
  /** Its +z, a unit vector: the normal of the surface where it stands. */
  readonly out: Point3;
  /** Its +x, a unit vector at right angles to `out`. */
  readonly along: Point3;
  /** mm from the surface up to the table, negative below it. */
  readonly level: number;
  readonly surface: StoneSurface;
  readonly setting: SettingSpec;
  readonly through: StoneGroupSpec["through"];
  /** Which row of its group it stands in, from 0, and which it is there; undefined of stones that stand alone. */
  readonly row: RowPlace | undefined;
}

/** Where on the band a stone stands. */
export interface StoneSurface {
  readonly name: "seat" | "rail";
  /** Along the band at the reference radius and across it, mm; of a rail v is its w, mm along the axis. */
  readonly u: number;
  readonly v: number;
  /** θ, radians. */
  readonly angle: number;
}

/** A stone's place in a row: its neighbours there are the stones with the numbers beside its own, in a row that closes round its ends too. */
export interface RowPlace {
  readonly row: number;
  readonly index: number;
  /** Stones in the row. */
  readonly count: number;
  readonly closed: boolean;
}
