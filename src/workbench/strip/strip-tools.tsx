/**
 * What is shown on the strip and how near: lane, part, region, the whole strip or one tile; and what can be told of the tile.
 */
import type { TilePart } from "../../index.js";
import { ICONS } from "../ring/icons.js";
import { useBench } from "../state/bench.js";
import type { WordKey } from "../words/english.js";
import { say, sayNumber } from "../words/language.js";
import { hasEllipse } from "./arc-radius.js";
import { type ArtEntry, laneNames, partsOf } from "./art-entries.js";
import { drawnIn } from "./art-parts.js";
import { readOnce, told } from "./chosen-art.js";
import { type FlatView, fitBand, fitStrip, zoomed } from "./flat-view.js";
import { lettersSize } from "./letters-size.js";
import { type ShownTile, sharedView } from "./shared-view.js";
import { undrawnStones } from "./stone-spots.js";
import type { StripLayout } from "./strip-layout.js";

interface Tools {
  readonly entries: readonly ArtEntry[];
  readonly chosen: ArtEntry | undefined;
  readonly layout: StripLayout;
  /** Where the strip ends with the stones behind it. */
  readonly end: number;
}

export function StripTools({ entries, chosen, layout, end }: Tools) {
  const bench = useBench();
  return (
    <div class="strip-tools">
      <LaneChoice />
      <PartChoice />
      <select
        aria-label={say("strip.region")}
        value={chosen === undefined ? "" : String(entries.indexOf(chosen))}
        onChange={({ currentTarget: { value } }) => {
          bench.selected.value = value === "" ? undefined : entries[Number(value)].path;
        }}
      >
        <option value="">{say("strip.noRegion")}</option>
        {entries.map(({ name, path }, i) => (
          <option key={path.join()} value={String(i)}>
            {name}
          </option>
        ))}
      </select>
      <AddStone />
      <Nearness {...{ layout, end }} />
    </div>
  );
}

function LaneChoice() {
  const bench = useBench();
  const shared = sharedView(bench);
  const names = laneNames(bench.document.value.value);
  if (names.length === 0) return null;
  return (
    <select
      aria-label={say("strip.lane")}
      value={shared.lane.value ?? names[0]}
      onChange={({ currentTarget: { value } }) => {
        shared.lane.value = value;
        shared.part.value = "tile";
      }}
    >
      {names.map((name) => (
        <option key={name}>{name}</option>
      ))}
    </select>
  );
}

function PartChoice() {
  const bench = useBench();
  const shared = sharedView(bench);
  const parts = partsOf(bench.document.value.value, shared.lane.value);
  if (parts.length === 1) return null;
  return (
    <select
      aria-label={say("strip.part")}
      value={shared.part.value}
      onChange={({ currentTarget: { value } }) => {
        shared.part.value = value as TilePart;
      }}
    >
      {parts.map((part) => (
        <option key={part} value={part}>
          {say(`strip.part.${part}` as WordKey)}
        </option>
      ))}
    </select>
  );
}

/** The next press on the strip puts a stone there. */
function AddStone() {
  const { addsStone, part } = sharedView(useBench());
  if (part.value !== "tile") return null;
  const turn = (on: boolean): void => {
    addsStone.value = on;
  };
  return (
    <button
      type="button"
      class="add-stone"
      aria-label={say("strip.addStone")}
      title={say("strip.addStone")}
      aria-pressed={addsStone.value}
      onClick={() => turn(!addsStone.value)}
      onKeyDown={(event) => {
        if (event.key === "Escape") turn(false);
      }}
    >
      + {ICONS.stones()}
    </button>
  );
}

function Nearness({ layout, end }: Pick<Tools, "layout" | "end">) {
  const { view, size } = sharedView(useBench());
  const set = (next: FlatView): void => {
    view.value = next;
  };
  const near = (factor: number): void => {
    const [width, height] = size.value;
    set(zoomed(view.value, size.value, [width / 2, height / 2], factor));
  };
  const FACTOR = 1.4;
  const { hold } = view.value;
  return (
    <>
      <button
        type="button"
        aria-pressed={hold === "strip"}
        onClick={() => set(fitStrip(size.value, { ...layout, to: end, letters: lettersSize() }))}
      >
        {say("strip.whole")}
      </button>
      <button
        type="button"
        aria-pressed={hold === "band"}
        onClick={() => set(fitBand(size.value, { ...layout, letters: lettersSize() }))}
      >
        {say("strip.oneTile")}
      </button>
      <button type="button" aria-label={say("strip.farther")} onClick={() => near(1 / FACTOR)}>
        −
      </button>
      <button type="button" aria-label={say("strip.nearer")} onClick={() => near(FACTOR)}>
        +
      </button>
    </>
  );
}

/** How far a tile may be stretched before it is told: what is printed. */
const SAME = 5e-4;

interface NoteProps extends Pick<Tools, "chosen"> {
  readonly tile: ShownTile;
  /** Copies that are not drawn. */
  readonly bare: number;
}

/** Tile size and stretch, and where a dragged point is. */
export function StripNote({ tile, bare, chosen }: NoteProps) {
  const { fit, round, group } = tile;
  const bench = useBench();
  const { addsStone } = sharedView(bench);
  const stones = bench.answers.of.stones.value?.value;
  const undrawn = stones === undefined ? 0 : undrawnStones(stones);
  const drag = told.value;
  const drawn = chosen === undefined ? undefined : drawnIn(chosen.value, chosen.path).own.path;
  const path = typeof drawn === "string" ? readOnce(drawn) : undefined;
  const ellipse = path !== undefined && hasEllipse(path);
  const size = say("strip.tile", {
    count: round.repeats,
    width: sayNumber(fit.tileWidth, 3),
    height: sayNumber(fit.tileHeight, 3),
    group: group.name,
  });
  const stretched = Math.abs(fit.stretch - 1) > SAME;
  const snapped = drag?.to.map(({ kind }) => say(`snap.${kind}` as WordKey)).join(", ");
  return (
    <p class="strip-note caption">
      {size}
      {stretched ? ` ${say("strip.stretched", { share: sayNumber(100 * (fit.stretch - 1), 1) })}` : ""}
      {ellipse ? ` ${say("strip.ellipse")}` : ""}
      {addsStone.value ? ` ${say("strip.addStoneAt")}` : ""}
      {bare > 0 ? ` ${say("strip.bare", { count: bare })}` : ""}
      {undrawn > 0 ? ` ${say("strip.moreStones", { count: undrawn })}` : ""}
      <output class="strip-told">
        {drag === undefined || drag.text !== undefined
          ? `  ${drag?.text ?? ""}`
          : ` x ${sayNumber(drag.point[0], 3)}  y ${sayNumber(drag.point[1], 3)}${snapped === "" ? "" : ` · ${say("strip.snapped", { to: snapped ?? "" })}`}`}
      </output>
    </p>
  );
}
