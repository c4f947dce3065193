/**
 * All stones of a ring in their places, numbered, with what each group came to.
 */
import { AnnuletError, type Problem } from "../base/errors.js";
import type { OwnGemSpec } from "../design/stones/own-gems.js";
import type { StoneGroupSpec } from "../design/stones/stone-group.js";
import type { Gem } from "../gems/gem.js";
import { heightsOf, type Stone } from "../gems/stone.js";
import { checkApart } from "./check-apart.js";
import { checkBore } from "./check-bore.js";
import type { DraftStone } from "./draft-stone.js";
import type { Ground } from "./ground.js";
import { usualLevel } from "./level.js";
import { gemsOf } from "./own-gems.js";
import { type PlacedRow, tooManyStones } from "./place-along.js";
import { placeOnLines } from "./place-line.js";
import { placeRow } from "./place-row.js";
import { placeSingle } from "./place-single.js";
import { placeInTile } from "./place-tile.js";
import type { PlacedStone } from "./placed-stone.js";
import { readStone } from "./read-stone.js";
import { frameOn } from "./spot.js";
import { StoneShapes } from "./stone-shape.js";

/** Most stones of a ring; a stated limit, far above what one carries. */
const MAX_STONES = 5000;

/** The stones of a ring. */
export interface PlacedStones {
  /** In the order of their numbers. */
  readonly stones: readonly PlacedStone[];
  /** One for each group of the document. */
  readonly groups: readonly PlacedGroup[];
  /** The gems that they are of, by symbol. */
  readonly gems: ReadonlyMap<string, Gem>;
}

/** What a group came to. */
export interface PlacedGroup {
  readonly name: string;
  readonly rows: readonly PlacedRow[];
  /** Stones that would reach beyond the pattern's ends or the seat's edge, and are left out. */
  readonly left: number;
  /** As the document says. */
  readonly spec: StoneGroupSpec;
}

export interface PlaceStonesOptions extends Ground {
  readonly groups: readonly StoneGroupSpec[];
  readonly ownGems: readonly OwnGemSpec[];
}

/**
 * Places every group; warns of stones that stand too near to each other or to the bore.
 *
 * @throws AnnuletError with the problems of all groups: `too-many-stones`, `gem-unknown`, `stone-size`,
 *   `proportions-cannot-close`, `stones-row-full`, `stones-overlap`, `stone-too-deep` …
 */
export function placeStones({ groups, ownGems, ...ground }: PlaceStonesOptions): PlacedStones {
  const gems = gemsOf(ownGems);
  const shapes = new StoneShapes();
  const problems: Problem[] = [];
  let left = MAX_STONES;
  const placed = groups.map((group, i): DraftGroup => {
    const where = `stones[${i}]`;
    try {
      const one = placeGroup(group, { stone: readStone(group, gems, where), shapes, most: left, ground, where });
      left -= one.stones.length;
      if (left < 0) throw tooManyStones(MAX_STONES - left, MAX_STONES, "stones");
      return one;
    } catch (error) {
      if (!(error instanceof AnnuletError)) throw error;
      problems.push(...error.problems);
      return { stones: [], rows: [], left: 0 };
    }
  });
  if (problems.length > 0) throw new AnnuletError(problems);
  const stones = placed.flatMap((one, group) => one.stones.map((draft) => settled(draft, group, groups[group])));
  const numbered = stones.map((stone, i): PlacedStone => ({ ...stone, number: i + 1 }));
  const names = groups.map(({ name }, i) => name ?? `stones ${i + 1}`);
  const all = { stones: numbered, names, shapes, ground };
  const grave = [...checkApart(all), ...checkBore(all)];
  if (grave.length > 0) throw new AnnuletError(grave);
  placed.forEach(({ left: count, stones: kept }, i) => {
    if (count > 0) warnLeft(names[i], count, count + kept.length, `stones[${i}].place`, ground);
  });
  return {
    stones: numbered,
    groups: placed.map(({ rows, left: out }, i) => ({ name: names[i], rows, left: out, spec: groups[i] })),
    gems,
  };
}

/** A group before its stones are numbered. */
interface DraftGroup extends Omit<PlacedGroup, "name" | "spec"> {
  readonly stones: readonly DraftStone[];
}

interface GroupAsk {
  readonly stone: Stone;
  readonly shapes: StoneShapes;
  readonly most: number;
  readonly ground: Ground;
  readonly where: string;
}

function placeGroup(group: StoneGroupSpec, { stone, shapes, most, ground, where }: GroupAsk): DraftGroup {
  const { place } = group;
  const at = `${where}.place`;
  const levelOf = (one: Stone) => levelIn(group, one);
  const ask = { stone, shapes, levelOf, most };
  switch (place.form) {
    case "single":
      return { stones: [placeSingle(place, stone, ground, at)], rows: [], left: 0 };
    case "tile": {
      const { stones, left } = placeInTile(place, shapes.of(stone), ground, at);
      return { stones: stones.toSorted(inOrder), rows: [], left };
    }
    case "line":
      return rowsOf(placeOnLines(place, ask, ground, at));
    case "row":
      return rowsOf(placeRow(place, ask, ground, at));
  }
}

function rowsOf(rows: readonly PlacedRow[]): DraftGroup {
  return { stones: rows.flatMap(({ stones }) => stones), rows, left: 0 };
}

function levelIn({ level, setting }: StoneGroupSpec, stone: Stone): number {
  return level ?? usualLevel(setting, heightsOf(stone));
}

/** Places this near along the band stand beside each other, mm. */
const BESIDE = 1e-3;

/** Along the band, then across it. */
function inOrder({ spot: { surface: a } }: DraftStone, { spot: { surface: b } }: DraftStone): number {
  return Math.abs(a.u - b.u) > BESIDE ? a.u - b.u : a.v - b.v;
}

/** A draft in space. */
function settled(
  { spot, turn, stone, row }: DraftStone,
  group: number,
  spec: StoneGroupSpec,
): Omit<PlacedStone, "number"> {
  const level = levelIn(spec, stone);
  const { at, out, along } = frameOn(spot, level - heightsOf(stone).crown, turn);
  return {
    group,
    stone,
    at,
    out,
    along,
    level,
    surface: spot.surface,
    setting: spec.setting,
    through: spec.through,
    row,
  };
}

function warnLeft(name: string, left: number, of: number, path: string, { warn }: Ground): void {
  warn({
    code: "stones-left-out",
    message: `${left} of ${of} stones of "${name}" would reach beyond the pattern's end or the seat's edge and are left out`,
    path,
    value: left,
    hint: "make them smaller, or place them farther inside",
  });
}
