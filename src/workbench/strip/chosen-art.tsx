/**
 * The chosen region or run as the document draws it, with its images at once, and what can be taken hold of in it.
 */
import { signal } from "@preact/signals";
import { type Bench, useBench } from "../state/bench.js";
import type { Path } from "../state/json-text.js";
import { nameOf, valueAt } from "../state/json-text.js";
import { say, sayNumber } from "../words/language.js";
import { withoutStone } from "./add-stone.js";
import { arcNodes, bendArc } from "./arc-radius.js";
import type { ArtEntry } from "./art-entries.js";
import { artParts, type LevelPart, type PathPart, type PointPart } from "./art-parts.js";
import { artOnStrip, dragged, nearestHandles, ownRow } from "./drag-art.js";
import type { FlatPoint } from "./flat-view.js";
import { addPoint, movePoint, nodesOf, type PathNode, removePoint } from "./path-edit.js";
import { type PathText, readPathText, writePathText } from "./path-text.js";
import {
  awayFrom,
  PLACE_RANGES,
  PLACE_STEPS,
  type PlacedArt,
  placedArt,
  placeHandles,
  scaleTo,
  turnTo,
  writtenScale,
  writtenTurn,
} from "./placed-art.js";
import { sharedView } from "./shared-view.js";
import type { Guide } from "./snapping.js";
import { angleNear, type RowPart, type SpotPart } from "./stone-parts.js";
import { StripHandle } from "./strip-handle.js";
import { placeOfAngle, type StripLayout } from "./strip-layout.js";
import { type ArtPoint, toArt, unitScale } from "./tile-units.js";

/** Where a point was dragged to last, and what it snapped to. */
export interface Told {
  readonly point: ArtPoint;
  readonly place: FlatPoint;
  readonly to: readonly Guide[];
  /** What is told in place of where the point is. */
  readonly text?: string;
}

export const told = signal<Told | undefined>(undefined);

interface Chosen {
  readonly layout: StripLayout;
  readonly guides: readonly Guide[];
}

/** Sets what was dragged, as one line of changes. */
function useDrag({ layout, guides }: Chosen) {
  const { document } = useBench();
  return {
    move(unit: PathPart["unit"], at: Path, place: FlatPoint, reach: number, make: (point: ArtPoint) => unknown): void {
      const { point, to } = dragged(layout, unit, place, { guides, reach });
      told.value = { point, place: artOnStrip(layout, unit, point), to };
      document.set(at, make(point), `drag ${nameOf(at)}`);
    },
    change(at: Path, value: unknown): void {
      document.rest();
      document.set(at, value);
      document.rest();
    },
    rest(): void {
      told.value = undefined;
      document.rest();
    },
  };
}

export function ChosenHandles({ entry, ...chosen }: Chosen & { readonly entry: ArtEntry }) {
  const bench = useBench();
  const value = bench.document.value.value;
  const parts = artParts(value, entry.path);
  const remove = entry.kind === "stones" ? () => removeStones(bench, Number(entry.path[1])) : undefined;
  return (
    <g class="handles">
      {parts.map((part) => {
        const key = nameOf(part.at);
        if (part.kind === "path") return <PathHandles key={key} {...{ part }} {...chosen} />;
        if (part.kind === "point" && part.place !== undefined) {
          return <PlaceHandles key={key} {...{ part }} {...chosen} place={part.place} />;
        }
        if (part.kind === "level") return <LevelHandle key={key} {...{ part }} {...chosen} />;
        if (part.kind === "row") return <RowHandle key={key} {...{ part, remove }} {...chosen} />;
        if (part.kind === "spot") return <SpotHandle key={key} {...{ part, remove }} {...chosen} />;
        return <PointHandle key={key} {...{ part, remove }} {...chosen} />;
      })}
    </g>
  );
}

function removeStones({ document, selected }: Bench, group: number): void {
  document.rest();
  document.set(["stones"], withoutStone(document.value.peek(), group));
  document.rest();
  selected.value = undefined;
}

/** The path as it was read last: most of what is drawn anew asks for the same. */
let lastRead: { readonly d: string; readonly path: PathText | undefined } | undefined;

export function readOnce(d: string): PathText | undefined {
  if (lastRead?.d !== d) lastRead = { d, path: readPathText(d) };
  return lastRead.path;
}

function PathHandles({ part, ...chosen }: Chosen & { readonly part: PathPart }) {
  const bench = useBench();
  const drag = useDrag(chosen);
  const path = readOnce(part.d);
  if (path === undefined) return null;
  const { layout } = chosen;
  const view = sharedView(bench).view.value;
  const handles = nodesOf(path).map((node) => ({ node, place: artOnStrip(layout, part.unit, node.at) }));
  const arcs = arcNodes(path).map((node) => ({ node, place: artOnStrip(layout, part.unit, node.at) }));
  const move = (node: PathNode) => (place: FlatPoint, reach: number) => {
    // Of what is there now, since a drag goes on while the page is drawn anew.
    const now = readOnce(String(valueAt(bench.document.value.peek(), part.at)));
    if (now === undefined) return;
    drag.move(part.unit, part.at, place, reach, (point) => writePathText(movePoint(now, node, point)));
  };
  const bend = (step: number) => (place: FlatPoint, reach: number) => {
    const now = readOnce(String(valueAt(bench.document.value.peek(), part.at)));
    if (now !== undefined)
      drag.move(part.unit, part.at, place, reach, (point) => writePathText(bendArc(now, step, point)));
  };
  const remove =
    ({ step }: PathNode) =>
    () => {
      const less = removePoint(path, step);
      if (less !== undefined) drag.change(part.at, writePathText(less));
    };
  const add =
    ({ step }: PathNode) =>
    () => {
      const next = path.steps[step + 1];
      const HALF = 0.5;
      const line = next === undefined || next.letter === "M" ? step : step + 1;
      if (path.steps[line].letter !== "M") drag.change(part.at, writePathText(addPoint(path, line, HALF)));
    };
  return (
    <>
      {nearestHandles(handles, [view.u, view.v]).map(({ node, place }) => (
        <StripHandle
          key={`${node.step} ${node.point}`}
          {...{ place }}
          kind={node.kind}
          label={say(node.kind === "end" ? "strip.point" : "strip.bend", {
            number: node.step + 1,
            x: sayNumber(node.at[0], 3),
            y: sayNumber(node.at[1], 3),
          })}
          onMove={move(node)}
          onRest={drag.rest}
          onAdd={node.kind === "end" ? add(node) : undefined}
          onRemove={node.kind === "end" ? remove(node) : undefined}
        />
      ))}
      {nearestHandles(arcs, [view.u, view.v]).map(({ node, place }) => (
        <StripHandle
          key={`arc ${node.step}`}
          {...{ place }}
          kind="control"
          label={say("strip.radius", { number: node.step + 1, radius: sayNumber(node.radius, 3) })}
          onMove={bend(node.step)}
          onRest={drag.rest}
        />
      ))}
    </>
  );
}

interface Removed {
  /** Takes the whole away that is taken hold of. */
  readonly remove?: (() => void) | undefined;
}

function PointHandle({ part, remove, ...chosen }: Chosen & Removed & { readonly part: PointPart }) {
  const drag = useDrag(chosen);
  const { layout } = chosen;
  const point = part.point ?? [part.unit === "mm" ? layout.tileWidth / 2 : 1 / 2, 0];
  return (
    <StripHandle
      place={artOnStrip(layout, part.unit, point)}
      kind="point"
      label={say("strip.place", { x: sayNumber(point[0], 3), y: sayNumber(point[1], 3) })}
      onMove={(place, reach) => drag.move(part.unit, part.at, place, reach, (to) => to)}
      onRest={drag.rest}
      onRemove={remove}
    />
  );
}

interface Placing extends Chosen {
  readonly part: PointPart;
  readonly place: Path;
}

/** The least way on the screen from a drawing's place to what turns it: both have room for a finger. CSS pixels, chosen. */
const CLEAR = 60;

/** A placed drawing: its place, its size at a corner, its turn above it. */
function PlaceHandles({ part, place, ...chosen }: Placing) {
  const bench = useBench();
  const { document } = bench;
  const { layout } = chosen;
  const { unit } = part;
  const placed = placedIn(document.value.value, part, layout);
  const handles = placeHandles(placed);
  const clear = CLEAR / sharedView(bench).view.value.scale;
  const set = (key: "scale" | "turn", value: number, at: FlatPoint): void => {
    told.value = { point: placed.at, place: at, to: [], text: placeWords(key, value) };
    document.set([...place, key], value, `drag ${nameOf(place)}.${key}`);
  };
  const rest = (): void => {
    told.value = undefined;
    document.rest();
  };
  const artAt = ([u, v]: FlatPoint): ArtPoint => toArt([u, v - ownRow(layout)], unitScale(layout, unit));
  const now = (): PlacedArt => placedIn(document.value.peek(), part, layout);
  const sized = {
    scale: {
      pulled: (to: FlatPoint, holds: boolean) => scaleTo(now(), artAt(to), holds),
      stepped: (up: boolean, by: number) => writtenScale(up ? now().scale * by : now().scale / by),
    },
    turn: {
      pulled: (to: FlatPoint, holds: boolean) => turnTo(now(), artAt(to), holds),
      stepped: (up: boolean, by: number) => writtenTurn(now().turn + (up ? by : -by)),
    },
  };
  return (
    <>
      <PointHandle {...{ part }} {...chosen} />
      {(["scale", "turn"] as const).map((key) => {
        const own = artOnStrip(layout, unit, handles[key]);
        const at = key === "turn" ? awayFrom(artOnStrip(layout, unit, placed.at), own, clear) : own;
        const [low, high] = PLACE_RANGES[key];
        const onStep = (up: boolean, fine: boolean): void =>
          set(key, sized[key].stepped(up, PLACE_STEPS[key][fine ? "fine" : "coarse"]), at);
        return (
          <StripHandle
            key={key}
            place={at}
            kind={key}
            label={say(`strip.${key}`)}
            slider={{ value: placed[key], least: low, most: high, text: placeWords(key, placed[key]), onStep }}
            onMove={(to, reach) => set(key, sized[key].pulled(to, reach > 0), to)}
            onRest={rest}
          />
        );
      })}
    </>
  );
}

export function placedIn(document: unknown, { place = [], unit }: PointPart, layout: StripLayout): PlacedArt {
  const { aspect, tileWidth, tileHeight } = layout;
  return placedArt(valueAt(document, place), unit === "tile" ? [1, aspect] : [tileWidth, tileHeight]);
}

function placeWords(key: "scale" | "turn", value: number): string {
  return key === "scale" ? `× ${sayNumber(value, 3)}` : `${sayNumber(value, 1)}°`;
}

function LevelHandle({ part, layout, guides }: Chosen & { readonly part: LevelPart }) {
  const drag = useDrag({ layout: { ...layout, laneMiddle: 0, rows: 1 }, guides });
  const place: FlatPoint = [layout.period / 2, part.v];
  return (
    <StripHandle
      {...{ place }}
      kind="level"
      label={say("strip.level", { v: sayNumber(part.v, 2) })}
      onMove={([, v], reach) => drag.move("mm", part.at, [place[0], v], reach, ([, to]) => to)}
      onRest={drag.rest}
    />
  );
}

/** A row of stones, moved across the band. */
function RowHandle({ part, remove, layout, guides }: Chosen & Removed & { readonly part: RowPart }) {
  const drag = useDrag({ layout: { ...layout, laneMiddle: 0, rows: 1 }, guides: [...guides, SEAT_MIDDLE] });
  const place: FlatPoint = [layout.period / 2, part.v];
  return (
    <StripHandle
      {...{ place }}
      kind="level"
      label={say("strip.row", { v: sayNumber(part.v, 2) })}
      onMove={([, v], reach) => {
        drag.move("mm", part.at, [place[0], v], reach, ([, to]) => (to === 0 ? undefined : { v: to }));
      }}
      onRest={drag.rest}
      onRemove={remove}
    />
  );
}

/** The seat's middle, which a row has by default. */
const SEAT_MIDDLE: Guide = { kind: "middle", v: 0 };

/** A single stone, or an end of a row: moved round the band, a single one across it too. */
function SpotHandle({ part, remove, layout }: Chosen & Removed & { readonly part: SpotPart }) {
  const { document } = useBench();
  const { at, angle, v, vAt } = part;
  const move = ([u, across]: FlatPoint, reach: number): void => {
    const next = angleNear(layout, u, angle, reach > 0);
    const to = vAt === undefined ? v : Math.abs(across) < reach ? 0 : Number(across.toFixed(3));
    told.value = { point: [next, to], place: [u, to], to: [], text: `${sayNumber(next, 1)}° · ${sayNumber(to, 2)} mm` };
    const values = [[at, next] as const, ...(vAt === undefined ? [] : [[vAt, to === 0 ? undefined : to] as const])];
    document.setAll(values, `drag ${nameOf(at)}`);
  };
  return (
    <StripHandle
      place={[placeOfAngle(layout, angle), v]}
      kind={vAt === undefined ? "end" : "point"}
      label={say("strip.spot", { angle: sayNumber(angle, 1), v: sayNumber(v, 2) })}
      onMove={move}
      onRest={() => {
        told.value = undefined;
        document.rest();
      }}
      onRemove={remove}
    />
  );
}
