/**
 * What is measured of stones and settings in space, as they were placed: gaps between girdles, ledges, prongs and grains, how many hold
 * a stone, where its table lies, whether its gem bears the setting.
 */
import type { StoneRule } from "../../design/rules/rule-set.js";
import type { Gem } from "../../gems/gem.js";
import { girdleGaps } from "../../stones/girdle-gaps.js";
import type { PlacedStones } from "../../stones/place-stones.js";
import type { StoneView } from "../proof/stones/stone-view.js";
import type { ToldStones } from "../proof/stones/told-stones.js";
import { postRadius } from "./on-hollows.js";
import type { Measured } from "./piece.js";

/** Places that are told of each. */
const PLACES = 10;

/** Figures nearer than this are told as one, mm. */
const ALIKE = 1e-3;

export type StoneSizes = Readonly<Partial<Record<StoneRule, Measured | undefined>>>;

/** @param gap how far gaps between girdles are looked for, mm */
export function measureStoneSizes({ stones, gems }: PlacedStones, told: ToldStones, gap: number): StoneSizes {
  const { views } = told;
  const of = (figure: (view: StoneView) => number | undefined, keep: "least" | "most" = "least") =>
    worstOf(
      views.flatMap((view) => {
        const found = figure(view);
        return found === undefined ? [] : [{ figure: found, at: view.placed.at }];
      }),
      keep,
    );
  const held = new Map<StoneView, number>();
  for (const { stones: by } of told.axes) for (const view of by) held.set(view, (held.get(view) ?? 0) + 1);
  const gaps = girdleGaps(
    stones.map(({ stone, at, along, out }) => ({ stone, at, along, out })),
    gap,
  );
  return {
    girdles: worstOf(
      gaps.map(({ gap: figure, a, b }) => ({
        figure,
        at: [(a.at[0] + b.at[0]) / 2, (a.at[1] + b.at[1]) / 2, (a.at[2] + b.at[2]) / 2],
      })),
      "least",
    ),
    ledge: of(ledgeOf),
    prong: of((view) => (view.placed.setting.form === "prongs" ? 2 * postRadius(view) : undefined)),
    grain: of((view) => (hasGrains(view) ? 2 * postRadius(view) : undefined)),
    held: of((view) => (hasGrains(view) || view.placed.setting.form === "prongs" ? (held.get(view) ?? 0) : undefined)),
    level: of(
      ({ placed: { setting, level } }) =>
        setting.form === "flush" || setting.form === "bead-set" ? Math.abs(level) : undefined,
      "most",
    ),
    unfit: unfitOf(views, gems),
  };
}

function hasGrains({ placed: { setting } }: StoneView): boolean {
  return setting.form === "bead-set" && setting.ready === "full";
}

/** Half of what of a stone's width lies on metal: beside its pilot, or its opening where that is wider. */
function ledgeOf({ width, placed: { setting, through } }: StoneView): number | undefined {
  if (setting.ready === "pilot") return undefined;
  if (setting.form === "bezel") return setting.ledge;
  const opening = typeof through === "boolean" ? undefined : through.size;
  return (width / 2) * (1 - Math.max(setting.pilot, opening ?? 0));
}

/** Softer stones do not bear flush setting (hard and tough only, nancylthamilton.com; quartz as the least: common practice, no source). */
const LEAST_HARDNESS = 7;

function unfitOf(views: readonly StoneView[], gems: ReadonlyMap<string, Gem>): Measured | undefined {
  const flush = views.filter(({ placed }) => placed.setting.form === "flush");
  const unfit = flush.filter(({ placed }) => {
    const gem = gems.get(placed.stone.gem);
    return gem !== undefined && (gem.flush?.value === false || (gem.hardness?.value[1] ?? 10) < LEAST_HARDNESS);
  });
  if (flush.length === 0) return undefined;
  const names = [...new Set(unfit.map(({ placed }) => gems.get(placed.stone.gem)?.name ?? placed.stone.gem))];
  const places = unfit.slice(0, PLACES).map(({ placed }) => ({ space: placed.at }));
  return { figure: unfit.length, places, ...(names.length === 0 ? {} : { more: names.join(", ") }) };
}

interface Found {
  readonly figure: number;
  readonly at: readonly [number, number, number];
}

/** The worst figure, and where it and those like it are. */
function worstOf(all: readonly Found[], keep: "least" | "most"): Measured | undefined {
  if (all.length === 0) return undefined;
  const order = keep === "least" ? 1 : -1;
  const sorted = [...all].sort((a, b) => order * (a.figure - b.figure));
  const [{ figure }] = sorted;
  const alike = sorted.filter((one) => Math.abs(one.figure - figure) < ALIKE).slice(0, PLACES);
  return { figure, places: alike.map(({ at }) => ({ space: at })) };
}
