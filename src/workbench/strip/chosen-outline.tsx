/**
 * The outline of the chosen art as the document has it, before anything is completed, and its images under the group: they follow
 * a drag at once, before the worker has answered.
 */

import type { Point2, StonesInView } from "../../index.js";
import { useBench } from "../state/bench.js";
import { type Path, valueAt } from "../state/json-text.js";
import type { ArtEntry } from "./art-entries.js";
import { artParts, drawnIn, type PathPart, type PointPart } from "./art-parts.js";
import { placedIn, readOnce } from "./chosen-art.js";
import { ownRow } from "./drag-art.js";
import { type FlatPoint, toFlat } from "./flat-view.js";
import { imageMatrix, imagesOf } from "./images.js";
import { addPoint, nearestOn, nodesOf } from "./path-edit.js";
import { writePathText } from "./path-text.js";
import { placeFrame } from "./placed-art.js";
import { type ShownTile, sharedView } from "./shared-view.js";
import type { StripLayout } from "./strip-layout.js";
import { toArt, toMm, unitScale } from "./tile-units.js";
import { carriesOf } from "./tiles-field.js";
import { useOwnOutline } from "./use-own-outline.js";

interface Outlined {
  readonly entry: ArtEntry;
  readonly tile: Pick<ShownTile, "group" | "fit">;
  readonly layout: StripLayout;
  /** The copies of the own drawing that are drawn. */
  readonly copies: readonly number[];
}

export function ChosenOutline({ entry, ...rest }: Outlined) {
  const bench = useBench();
  const value = bench.document.value.value;
  const parts = artParts(value, entry.path);
  const paths = parts.filter((part): part is PathPart => part.kind === "path");
  const { own } = drawnIn(entry.value, entry.path);
  const outline = entry.kind === "stones" ? outlineOf(entry, bench.answers.of.stones.value?.value) : undefined;
  const stones = parts.flatMap((part): FramePart[] => {
    if (part.kind !== "point" || part.point === undefined || outline === undefined) return [];
    const d = stonePath(outline, toMm(part.point, unitScale(rest.layout, part.unit)), own.turn);
    return [{ kind: "path", at: part.at, unit: "mm", d, box: d }];
  });
  // Of a placed drawing the box that it stands in, and its lines once they are known.
  const placing = parts.find(
    (part) => part.kind === "point" && part.place !== undefined && isOwnPlace(part.place, entry),
  );
  const lines = useOwnOutline(entry, placing as PointPart | undefined, rest.layout);
  const frames = parts.flatMap((part): FramePart[] => {
    if (part.kind !== "point" || part.place === undefined) return [];
    const box = placeFrame(placedIn(value, part, rest.layout));
    const d = part === placing && lines !== undefined ? `${box} ${lines}` : box;
    return [{ kind: "path", at: part.place, unit: part.unit, d, box }];
  });
  return (
    <g class="chosen-art">
      {paths.map((part, i) => (
        <PathOutline key={part.at.join()} id={`chosen-${i}`} tiles={valueAt(own, ["tiles"])} {...{ part }} {...rest} />
      ))}
      {[...frames, ...stones].map((part, i) => (
        <PathOutline
          key={part.at.join()}
          id={`placed-${i}`}
          tiles={valueAt(own, ["tiles"])}
          {...{ part }}
          {...rest}
          frame
        />
      ))}
    </g>
  );
}

/** Whether it is the region's own drawing that stands there, and no drawing within a shape. */
function isOwnPlace(place: Path, { path }: ArtEntry): boolean {
  return place.length === path.length + 1;
}

/** The girdle of a group's stones; undefined until it is known. */
function outlineOf({ path }: ArtEntry, stones: StonesInView | undefined): readonly Point2[] | undefined {
  const stone = stones?.stones.find(({ group }) => group === path[1]);
  return stone && stones?.bodies[stone.body].outline;
}

/** The girdle at a place of the tile, mm. @param turn degrees, as the document has it */
function stonePath(outline: readonly Point2[], [u, v]: FlatPoint, turn: unknown): string {
  const angle = ((typeof turn === "number" ? turn : 0) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const corner = ([x, y]: Point2): string =>
    `${(u + cos * x - sin * y).toFixed(4)} ${(v + sin * x + cos * y).toFixed(4)}`;
  return `M ${outline.map(corner).join(" L ")} Z`;
}

interface PathOutlined extends Omit<Outlined, "entry"> {
  readonly part: PathPart | FramePart;
  readonly id: string;
  readonly tiles: unknown;
  /** Whether it is no path of the document, so that no point can be added. */
  readonly frame?: boolean;
}

/** What is drawn of no path of the document; the box about it tells in which tile it lies. */
interface FramePart extends PathPart {
  readonly box: string;
}

/** From x to x of a path's points, mm. */
function spanOf(part: PathPart | FramePart, layout: StripLayout): readonly [number, number] {
  const path = readOnce("box" in part ? part.box : part.d);
  const [sx] = unitScale(layout, part.unit);
  const xs = path === undefined ? [0] : nodesOf(path).map(({ at }) => at[0] * sx);
  return [Math.min(...xs), Math.max(...xs)];
}

function PathOutline({ part, id, tiles, tile, layout, copies, frame = false }: PathOutlined) {
  const bench = useBench();
  const scale = unitScale(layout, part.unit);
  const images = imagesOf(layout, tile.group, spanOf(part, layout), carriesOf(tiles, tile.fit.cycle), 0);
  const group = `${id}-images`;
  const { laneMiddle } = layout;
  const row = layout.laneMiddle - ownRow(layout);
  const add = (at: FlatPoint): void => {
    const path = readOnce(part.d);
    const point = toArt([at[0], at[1] - ownRow(layout)], scale);
    const near = path === undefined ? undefined : nearestOn(path, point, scale);
    if (path === undefined || near === undefined) return;
    bench.document.rest();
    bench.document.set(part.at, writePathText(addPoint(path, near.step, near.share)));
    bench.document.rest();
  };
  return (
    <>
      <defs>
        <path class="chosen-source" {...{ id }} d={part.d} />
        <g id={group}>
          {images.map((image) => (
            <use key={imageMatrix(image, scale)} href={`#${id}`} transform={imageMatrix(image, scale)} />
          ))}
        </g>
      </defs>
      <g class="chosen-images" transform={`translate(0 ${-laneMiddle})`}>
        {copies.map((u) => (
          <use key={u} href={`#${group}`} x={u} />
        ))}
      </g>
      <g transform={`translate(0 ${-laneMiddle + row}) scale(${scale[0]} ${-scale[1]})`}>
        <path class="chosen-line" d={part.d} />
        {frame ? null : <AddRoom {...{ add }} d={part.d} />}
      </g>
    </>
  );
}

/** The room about a path in which a double press adds a point. */
function AddRoom({ add, d }: { readonly add: (at: FlatPoint) => void; readonly d: string }) {
  const bench = useBench();
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: by keys a point is added with Enter on the one before it
    <path
      class="chosen-room"
      {...{ d }}
      onDblClick={(event) => {
        event.stopPropagation();
        const { left, top } = event.currentTarget.ownerSVGElement?.getBoundingClientRect() ?? { left: 0, top: 0 };
        const shared = sharedView(bench);
        add(toFlat(shared.view.peek(), shared.size.peek(), [event.clientX - left, event.clientY - top]));
      }}
    />
  );
}
