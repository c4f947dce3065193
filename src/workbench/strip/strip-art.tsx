/**
 * What is raised, sunk and pierced on the tiles, drawn once, with the copies taken from it; the beads on it.
 *
 * Raised is plain and lined round, the higher the darker; sunk is hatched, its line dashed; pierced is dark and hatched both ways.
 */
import { useMemo } from "preact/hooks";
import type { FlatRegion } from "../../index.js";
import { Hatch } from "../section/cut-metal.js";
import type { ShownTile } from "./shared-view.js";
import type { StripLayout } from "./strip-layout.js";

type DrawnArt = Pick<ShownTile, "regions" | "beads">;

/** Most corners that are drawn, all copies together: beyond it frames would take too long. Copies far from the own tile stay bare. */
const MOST_CORNERS = 400_000;

/** The copies that are drawn, the own one first. */
export function drawnCopies({ copies }: Pick<StripLayout, "copies">, tile: DrawnArt): readonly number[] {
  const corners =
    tile.beads.length + tile.regions.flatMap(({ rings }) => rings).reduce((sum, ring) => sum + ring.length, 0);
  const most = Math.max(1, Math.floor(MOST_CORNERS / Math.max(1, corners)));
  return [...copies].sort((a, b) => Math.abs(a) - Math.abs(b)).slice(0, most);
}

function pathOf({ rings }: FlatRegion): string {
  const text = (value: number): string => String(Math.round(value * 1e4) / 1e4);
  return rings.map((ring) => `M${ring.map(([u, v]) => `${text(u)} ${text(-v)}`).join("L")}Z`).join("");
}

/** From the lowest to the highest of what is raised, 0 to 1. */
function shareOf({ height = 0 }: FlatRegion, regions: readonly FlatRegion[]): number {
  const raised = regions.filter(({ mode }) => mode === "raised").map((one) => one.height ?? 0);
  const [low, high] = [Math.min(...raised), Math.max(...raised)];
  return high > low ? (height - low) / (high - low) : 0.5;
}

export function StripArt({
  tile,
  layout,
  chosen,
  id = "tile",
}: {
  readonly tile: DrawnArt;
  readonly layout: StripLayout;
  /** Name of the region that is chosen. */
  readonly chosen: string | undefined;
  /** What its drawing is called, where there are several. */
  readonly id?: string;
}) {
  const { regions, beads } = tile;
  const paths = useMemo(() => regions.map(pathOf), [regions]);
  const copies = useMemo(() => drawnCopies(layout, tile), [layout, tile]);
  return (
    <>
      <defs>
        <g id={`${id}-art`}>
          {paths.map((d, i) => (
            <path
              key={`${i} ${regions[i].names}`}
              class={`region region-${regions[i].mode}`}
              style={{ "--share": `${Math.round(100 * shareOf(regions[i], regions))}%` }}
              {...{ d }}
              fill-rule="evenodd"
            />
          ))}
          {beads.map(({ centre: [u, v], diameter }) => (
            <circle key={`${u} ${v}`} class="tile-bead" cx={u} cy={-v} r={diameter / 2} />
          ))}
        </g>
      </defs>
      {copies.map((u) => (
        <use key={u} href={`#${id}-art`} x={u} class={u === 0 ? "own-tile" : "tile-copy"} />
      ))}
      {paths.map((d, i) =>
        // Of several that are one body the images of its own art tell which is meant.
        chosen !== undefined && regions[i].names.length === 1 && regions[i].names[0] === chosen ? (
          <path key={`chosen ${i} ${regions[i].names}`} class="region-chosen" {...{ d }} fill-rule="evenodd" />
        ) : null,
      )}
    </>
  );
}

/** The hatches, of one density whatever the scale. */
export function StripHatches({ scale }: { readonly scale: number }) {
  return (
    <defs>
      <Hatch id="sunk-hatch" turn={-45} scale={1 / scale} />
      <Hatch id="pierced-hatch" scale={1 / scale} />
    </defs>
  );
}
