/**
 * The chosen region or run as the document draws it, with its images at once, and what can be taken hold of in it.
 */
import { signal } from "@preact/signals";
import { useBench } from "../state/bench.js";
import type { Path } from "../state/json-text.js";
import { nameOf, valueAt } from "../state/json-text.js";
import { say, sayNumber } from "../words/language.js";
import type { ArtEntry } from "./art-entries.js";
import { artParts, type LevelPart, type PathPart, type PointPart } from "./art-parts.js";
import { artOnStrip, dragged, nearestHandles } from "./drag-art.js";
import type { FlatPoint } from "./flat-view.js";
import { addPoint, movePoint, nodesOf, type PathNode, removePoint } from "./path-edit.js";
import { type PathText, readPathText, writePathText } from "./path-text.js";
import { sharedView } from "./shared-view.js";
import type { Guide } from "./snapping.js";
import { StripHandle } from "./strip-handle.js";
import type { StripLayout } from "./strip-layout.js";
import type { ArtPoint } from "./tile-units.js";

/** Where a point was dragged to last, and what it snapped to. */
export interface Told {
  readonly point: ArtPoint;
  readonly place: FlatPoint;
  readonly to: readonly Guide[];
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
  return (
    <g class="handles">
      {parts.map((part) => {
        const key = nameOf(part.at);
        if (part.kind === "path") return <PathHandles key={key} {...{ part }} {...chosen} />;
        return part.kind === "level" ? (
          <LevelHandle key={key} {...{ part }} {...chosen} />
        ) : (
          <PointHandle key={key} {...{ part }} {...chosen} />
        );
      })}
    </g>
  );
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
  const move = (node: PathNode) => (place: FlatPoint, reach: number) => {
    // Of what is there now, since a drag goes on while the page is drawn anew.
    const now = readOnce(String(valueAt(bench.document.value.peek(), part.at)));
    if (now === undefined) return;
    drag.move(part.unit, part.at, place, reach, (point) => writePathText(movePoint(now, node, point)));
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
    </>
  );
}

function PointHandle({ part, ...chosen }: Chosen & { readonly part: PointPart }) {
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
    />
  );
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
