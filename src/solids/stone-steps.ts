/**
 * The steps of stones: what reaches over them is cut away, their walls are added, their hollows cut out of all that, grains
 * added last. Groups that come again as the ring does are worked on its unit, others where they stand.
 */
import type { Warn } from "../base/errors.js";
import type { Sector } from "../base/math/round.js";
import { TURN } from "../base/units.js";
import type { Bead } from "../beads/bead.js";
import type { Mesh } from "../mesh/mesh.js";
import type { Step } from "../mesh/step.js";
import { stoneUnits } from "../stones/alike-stones.js";
import type { PlacedStone } from "../stones/placed-stone.js";
import { type SetStonesOptions, setStones } from "../stones/set-stones.js";
import { ROOM } from "../stones/settings/hollow.js";
import type { SettingPart } from "../stones/settings/parts-of-setting.js";
import { remember } from "./remember.js";

/** The stones of a ring in two heaps. */
export interface StoneScopes {
  /** They come again as the ring does, or nothing does. */
  readonly unit: readonly PlacedStone[];
  /** They stand at one place. */
  readonly place: readonly PlacedStone[];
}

/** What stands at one place is worked on the units that it touches, up to so much of the round (chosen, below half of it). */
const MOST_PLACE = 0.4;

/**
 * Which groups come again with the rest of the ring.
 *
 * @param units of the ring without stones; 1 where nothing else comes again
 */
export function scopesOf(stones: readonly PlacedStone[], units: number): StoneScopes {
  const groups = byGroup(stones);
  const isPlaced = (group: readonly PlacedStone[]) =>
    units > 1 && arcOf(group) < MOST_PLACE * TURN && stoneUnits(group, units) === 1;
  const placed = new Set([...groups].filter(([, group]) => isPlaced(group)).map(([number]) => number));
  // All that stands at one place is worked at once: together it must not reach too far either.
  const place = stones.filter(({ group }) => placed.has(group));
  if (arcOf(place) >= MOST_PLACE * TURN) return { unit: stones, place: [] };
  return { unit: stones.filter(({ group }) => !placed.has(group)), place };
}

/** Stones by the numbers of their groups. */
function byGroup(stones: readonly PlacedStone[]): Map<number, PlacedStone[]> {
  const groups = new Map<number, PlacedStone[]>();
  for (const stone of stones) {
    const group = groups.get(stone.group);
    if (group === undefined) groups.set(stone.group, [stone]);
    else group.push(stone);
  }
  return groups;
}

/** The most units in which a group of stones comes again. */
export function mostStoneUnits(stones: readonly PlacedStone[]): number {
  return Math.max(1, ...[...byGroup(stones).values()].map((group) => stoneUnits(group, group.length)));
}

/** The least part of the round that holds all stones, radians. */
function arcOf(stones: readonly PlacedStone[]): number {
  if (stones.length === 0) return 0;
  const angles = stones.map(({ at: [x, y] }) => Math.atan2(y, x)).sort((a, b) => a - b);
  const gaps = angles.map((angle, i) => (angles[i + 1] ?? angles[0] + TURN) - angle);
  return TURN - Math.max(...gaps);
}

export interface StoneStepsOptions extends SetStonesOptions {
  readonly warn: Warn;
}

/** The steps, those of what comes again first. */
export function stoneSteps(scopes: StoneScopes, options: StoneStepsOptions): Step[] {
  return (["unit", "place"] as const).flatMap((scope) => stepsFor(scopes[scope], scope, options));
}

const KINDS = [
  { kind: "clears", name: "cleared for stones", op: "cut" },
  { kind: "walls", name: "walls of settings", op: "add" },
  { kind: "hollows", name: "hollows of stones", op: "cut" },
  { kind: "grains", name: "grains", op: "add" },
] as const;

function stepsFor(stones: readonly PlacedStone[], scope: Step["scope"], options: StoneStepsOptions): Step[] {
  if (stones.length === 0) return [];
  const parts = [...byGroup(stones).values()].flatMap((group) => partsOf(group, options));
  return KINDS.flatMap(({ kind, name, op }): Step[] => {
    const own = parts.filter((part) => part.kind === kind);
    if (own.length === 0) return [];
    const bodies = remember((sector?: Sector): readonly Mesh[] => own.flatMap((part) => part.bodies(sector)));
    return [{ name, op, bodies, scope, keepClear: undefined, small: kind === "grains" }];
  });
}

function partsOf(group: readonly PlacedStone[], options: StoneStepsOptions): readonly SettingPart[] {
  const { parts, unheld } = setStones(group, options);
  const numbers = unheld.map((i) => group[i].number);
  if (numbers.length > 0) options.warn(unheldWarning(group[0].group, numbers));
  return parts;
}

function unheldWarning(group: number, numbers: readonly number[]): Parameters<Warn>[0] {
  const { length: count } = numbers;
  return {
    code: "stones-unheld",
    message: `${count} stone${count === 1 ? " has" : "s have"} room for fewer than two grains or prongs; the first is number ${numbers[0]}`,
    path: `stones[${group}].setting`,
    value: count,
  };
}

/** Spheres round the hollows of stones: where a unit may be cut without grazing them is asked of these as of beads. */
export function hollowSpheres(stones: readonly PlacedStone[]): Bead[] {
  return stones.map(({ at, out, stone: { length } }) => ({ centre: at, outward: out, radius: length / 2 + ROOM }));
}
