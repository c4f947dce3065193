/**
 * The pattern laid flat: one tile among its repeats, level with the cross-section beside it. What is chosen shows its own art, as
 * it is drawn before the symmetry completes it, with points and handles; the copies follow at once.
 */
import { useEffect, useMemo } from "preact/hooks";
import { useDesk } from "../files/desk.js";
import { type Bench, useBench } from "../state/bench.js";
import { say } from "../words/language.js";
import { artEntries, chosenEntry, nextEntry, regionsPath, tilesOf } from "./art-entries.js";
import { ChosenHandles, told } from "./chosen-art.js";
import { ChosenOutline } from "./chosen-outline.js";
import { artUnder } from "./drag-art.js";
import { FindingMarks } from "./findings-marks.js";
import "./flat.css";
import { type FlatPoint, held, toScreen } from "./flat-view.js";
import { laneAt, laneShift } from "./lane-layout.js";
import { lettersSize } from "./letters-size.js";
import { OtherLanes } from "./other-lanes.js";
import { regionAt } from "./region-at.js";
import { type ShownTile, sharedView } from "./shared-view.js";
import { guidesOf } from "./snapping.js";
import { endWithStones } from "./stone-spots.js";
import { drawnCopies, StripArt, StripHatches } from "./strip-art.js";
import { layOutStrip, type StripLayout } from "./strip-layout.js";
import { BareEnd, StripEdges, SymmetryMarks, TileBorders } from "./strip-marks.js";
import { StripPaper } from "./strip-paper.js";
import { StripRuler } from "./strip-ruler.js";
import { StripStones } from "./strip-stones.js";
import { StripNote, StripTools } from "./strip-tools.js";
import { useElements } from "./use-elements.js";
import { useSize } from "./use-size.js";
import { addStone, useStones } from "./use-stones.js";

export function StripView() {
  const bench = useBench();
  const [frame, size] = useSize();
  const { lane, part } = sharedView(bench);
  const answer = bench.answers.of.tile.value;
  useEffect(() => {
    sharedView(bench).size.value = size;
  }, [size]);
  useEffect(() => {
    bench.answers.showTile({ lane: lane.value, part: part.value });
  }, [lane.value, part.value]);
  useEffect(() => {
    // What is chosen in another view is shown here too.
    const selected = bench.selected.value;
    const tiles = selected && tilesOf(bench.document.value.peek(), selected);
    if (tiles === undefined) return;
    lane.value = tiles.lane;
    part.value = tiles.part;
  }, [bench.selected.value]);
  // Of a lane's tiles all are known, so that another is shown at once.
  const lanes = bench.answers.of.lanes.value?.value ?? [];
  const shown = part.value === "tile" ? lanes.find((tile) => tile.lane === (lane.value ?? lanes[0].lane)) : undefined;
  const tile = shown ?? answer?.value;
  return (
    <div class="flat-drawing strip-drawing" ref={frame}>
      {size[0] === 0 || answer === undefined ? null : tile === undefined ? (
        <p>{say("strip.none")}</p>
      ) : (
        <Strip {...{ tile, lanes }} />
      )}
    </div>
  );
}

/** Where the lane that is shown lies across the seat, and how much of the band the pattern covers. */
function layoutOf(bench: Bench, tile: ShownTile): StripLayout {
  const { fit, design } = bench.answers.of;
  const lanes = fit.value?.value?.lanes ?? [];
  const laneMiddle = lanes.find(({ name }) => name === tile.lane)?.v ?? 0;
  const spec = design.value?.value;
  const nearTop = spec?.profile.taper !== undefined && spec.pattern?.fit.taper === "keep" && tile.part === "tile";
  return layOutStrip(tile, { laneMiddle, nearTop, cover: spec?.pattern?.cover ?? tile.fit.cover });
}

/** What keeps the view where the sizes are others. */
function useHeldView(layout: StripLayout): void {
  const { view, size, pulling } = sharedView(useBench());
  const { bandWidth, tileWidth, from, to } = layout;
  useEffect(() => {
    if (size.value[0] > 0 && !pulling.value)
      view.value = held(view.peek(), size.value, { bandWidth, tileWidth, from, to, letters: lettersSize() });
  }, [size.value, pulling.value, bandWidth, tileWidth, from, to]);
}

interface StripProps {
  readonly tile: ShownTile;
  /** Of each lane its tile; none where the pattern is one. */
  readonly lanes: readonly ShownTile[];
}

function Strip({ tile, lanes }: StripProps) {
  const bench = useBench();
  const desk = useDesk();
  const { view, size, lane, part, addsStone } = sharedView(bench);
  const { design, fit } = bench.answers.of;
  const layout = useMemo(() => layoutOf(bench, tile), [tile, design.value, fit.value]);
  useHeldView(layout);
  const elements = useElements(tile.group.name, tile.fit.cycle > 1);
  const guides = useMemo(() => guidesOf(layout, elements), [layout, elements]);
  const copies = useMemo(() => drawnCopies(layout, tile), [layout, tile]);
  const entriesOf = (name: string | undefined) =>
    artEntries(bench.document.value.value, { part: part.value, lane: name });
  const entries = entriesOf(lane.value);
  const chosen = chosenEntry(entries, bench.selected.value);
  const others = useMemo(
    () => lanes.filter((one) => one.lane !== tile.lane).map((one) => ({ tile: one, layout: layoutOf(bench, one) })),
    [lanes, tile, design.value, fit.value],
  );
  const stones = useStones(layout, entries);
  const press = ([u, v]: FlatPoint): void => {
    const there = laneAt([layout, ...others.map((one) => one.layout)], v) ?? layout;
    const other = others.find((one) => one.layout === there);
    if (addsStone.value) {
      const near = other === undefined ? guides : [];
      addStone(bench, [u - laneShift(there, layout), v], {
        layout: there,
        guides: near,
        lane: (other?.tile ?? tile).lane,
      });
      return;
    }
    if (stones.press([u, v])) return;
    const at: FlatPoint = [u - laneShift(there, layout), v - there.laneMiddle];
    const region = regionAt((other?.tile ?? tile).regions, at, there.period);
    const own = other === undefined ? entries : entriesOf(other.tile.lane);
    if (other !== undefined) lane.value = other.tile.lane;
    bench.selected.value = region === undefined ? undefined : nextEntry(own, region.names, chosen)?.path;
  };
  const drop = (files: readonly File[], at: FlatPoint): void => {
    const regions = regionsPath(bench.document.value.peek(), { part: part.value, lane: lane.value });
    void desk.takeFiles(files, { regions, at: artUnder(layout, at) });
  };
  const end = endWithStones(layout, stones.spots);
  const { scale } = view.value;
  // What does not follow a drag is not looked through again while one goes on.
  const edges = useMemo(() => <StripEdges {...{ layout }} />, [layout]);
  const art = useMemo(() => <StripArt {...{ tile, layout }} chosen={chosen?.name} />, [tile, layout, chosen?.name]);
  const marks = useMemo(() => <SymmetryMarks {...{ layout, elements, scale }} />, [layout, elements, scale]);
  const [x, y] = toScreen(view.value, size.value, [0, 0]);
  return (
    <>
      <StripPaper onPress={press} onDrop={drop}>
        <StripHatches {...{ scale }} />
        <g class="strip-world" transform={`translate(${x} ${y}) scale(${scale})`}>
          <BareEnd {...{ layout }} end={end} />
          {edges}
          {others.length === 0 || part.value !== "tile" ? null : (
            <OtherLanes lanes={others} shown={layout} {...{ scale }} />
          )}
          <TileBorders {...{ layout }} />
          <g transform={`translate(0 ${-layout.laneMiddle})`}>{art}</g>
          {stones.stones === undefined ? null : <StripStones {...stones} stones={stones.stones} {...{ layout }} />}
          {marks}
          {chosen === undefined ? null : <ChosenOutline entry={chosen} {...{ tile, layout, copies }} />}
          <SnapSigns {...{ layout }} />
        </g>
        <StripRuler {...{ layout }} view={view.value} size={size.value} />
        <FindingMarks {...{ layout }} />
        {chosen === undefined ? null : <ChosenHandles entry={chosen} {...{ layout, guides }} />}
      </StripPaper>
      <StripTools {...{ entries, chosen, layout, end }} />
      <StripNote {...{ tile, chosen }} bare={layout.copies.length - copies.length} />
    </>
  );
}

/** What a dragged point snapped to, drawn over its whole length. */
function SnapSigns({ layout }: { readonly layout: StripLayout }) {
  const { from, to, bandWidth } = layout;
  return (
    <g class="snap-signs">
      {told.value?.to.map(({ kind, u, v }) => (
        <g key={`${kind} ${u} ${v}`}>
          {u === undefined ? null : <line x1={u} x2={u} y1={-bandWidth / 2} y2={bandWidth / 2} />}
          {v === undefined ? null : <line x1={from} x2={to} y1={-v} y2={-v} />}
        </g>
      ))}
    </g>
  );
}
