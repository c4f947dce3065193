/**
 * What the settings of one group should be, body by body, in closed form; and where nothing is told.
 */
import type { Point3 } from "../../../base/math/point.js";
import { radians } from "../../../base/units.js";
import type { BeadSetSpec } from "../../../design/stones/settings/bead-set.js";
import type { ChannelSpec } from "../../../design/stones/settings/channel.js";
import type { ProngsSpec } from "../../../design/stones/settings/prongs.js";
import { between, brightPieces, grooveOf, type SectionPieces, wallPieces } from "./groove.js";
import { edgeOf, hollowPieces } from "./hollow-body.js";
import { linkBodies } from "./links.js";
import { postBody } from "./post-body.js";
import { type Axis, postAxes } from "./posts.js";
import { type RowLine, rowLines } from "./row-line.js";
import { below, type Clip } from "./span.js";
import type { StoneView } from "./stone-view.js";
import * as told from "./told.js";
import { keptPieces, type ToldBody } from "./told-body.js";

/** A ball in which nothing is told. */
export interface Untold {
  readonly centre: Point3;
  readonly radius: number;
}

export interface ToldGroup {
  readonly bodies: readonly ToldBody[];
  readonly untold: readonly Untold[];
  /** Where grains or prongs stand, each with the stones that it holds. Default nowhere. */
  readonly axes?: readonly Axis[];
}

/** A stone with the height of the bore under it, in its own coordinates. */
export interface Seen {
  readonly view: StoneView;
  readonly bore: number;
}

/** Over a stone's girdle all is cut away at least this high, mm, and so many of its crown's height beside that. */
const OVER_STONE = 0.5;
const OVER_CROWNS = 2;

export function tellGroup(stones: readonly Seen[]): ToldGroup {
  const [{ view }] = stones;
  const { setting } = view.placed;
  switch (setting.form) {
    case "flush":
      return hollowsOf(stones, setting.pilot);
    case "bezel":
      return joined([
        { bodies: stones.map(bezelWall), untold: [] },
        hollowsOf(stones, Math.max(0.1, 1 - (2 * setting.ledge) / view.width)),
      ]);
    case "bead-set":
      return joined([hollowsOf(stones, setting.pilot), ...beadSet(stones, setting)]);
    case "channel":
      return channel(stones, setting);
    case "prongs":
      return prongs(stones, setting);
  }
}

function joined(groups: readonly ToldGroup[]): ToldGroup {
  return {
    bodies: groups.flatMap(({ bodies }) => bodies),
    untold: groups.flatMap(({ untold }) => untold),
    axes: groups.flatMap(({ axes = [] }) => axes),
  };
}

function aboveOf({ crown }: StoneView): number {
  return OVER_CROWNS * crown + OVER_STONE;
}

/** A ball round a stone and all that is cut for it. */
function ballOf({ view, bore }: Seen, beside: number, above = aboveOf(view)): Untold {
  const across = Math.hypot(view.length, view.width) / 2 + beside;
  const deep = Math.max(view.band + view.pavilion + told.ROOM, -bore) + told.ROOM;
  return { centre: view.space([0, 0, (above - deep) / 2]), radius: Math.hypot(across, (above + deep) / 2) };
}

/** The axis of a stone, and how far a body round it reaches. */
function axisOf(
  { placed: { at, out }, length, width, radius }: StoneView,
  beside: number,
): NonNullable<ToldBody["axis"]> {
  return { at, out, radius: (radius ?? Math.hypot(length, width) / 2) + beside + AXIS_MORE };
}

/** What is grown by the tolerance still lies within that, mm (chosen: the coarsest tolerance and a little). */
const AXIS_MORE = 0.25;

function hollowsOf(stones: readonly Seen[], pilot: number, crowned = false): ToldGroup {
  const bodies = stones.map((seen): ToldBody => {
    const { view, bore } = seen;
    return {
      kind: "hollows",
      sphere: ballOf(seen, 1),
      axis: axisOf(view, told.ROOM),
      line: (through) => view.line(through),
      pieces: keptPieces((grown) => hollowPieces(view, { pilot, bore, above: aboveOf(view), crowned }, grown)),
    };
  });
  return { bodies: [...bodies, ...linkBodies(stones.map(({ view }) => view))], untold: [] };
}

function surfaceOf(view: StoneView): number {
  return -view.girdleLevel;
}

function bezelWall(seen: Seen): ToldBody {
  const { view, bore } = seen;
  const { setting } = view.placed;
  if (setting.form !== "bezel") throw new Error("only a bezel has its wall");
  const top = setting.height * view.crown;
  const edge = Math.min(told.EDGE_RADIUS, told.EDGE_SHARE * setting.wall);
  const sure = surfaceOf(view);
  return {
    kind: "walls",
    sphere: ballOf(seen, told.ROOM + setting.wall, Math.max(top, 0)),
    axis: axisOf(view, told.ROOM + setting.wall),
    line: (through) => view.line(through),
    pieces: keptPieces((grown) => {
      const reach = told.ROOM + setting.wall + grown;
      // Its outer edge is an arc, told by its tangents.
      const tangents = Array.from({ length: TANGENTS }, (_, i): Clip => {
        const angle = ((Math.PI / 2) * (i + 1)) / (TANGENTS + 1);
        const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
        return view.beside(reach - edge + (edge + (top - edge) * sin) / cos, -sin / cos);
      });
      return [{ low: grown < 0 ? sure : bore, high: top + grown, clips: [view.beside(reach), ...tangents] }];
    }),
  };
}

/** Tangents between the two that an edge begins and ends with: off its arc by 0.002 of 0.125 mm at most. */
const TANGENTS = 3;

function beadSet(stones: readonly Seen[], spec: BeadSetSpec): ToldGroup[] {
  if (spec.ready === "pilot") return [];
  const bright = spec.border === 0 ? [] : [brightCut(stones, spec)];
  return spec.ready === "full" ? [...bright, grains(stones, spec)] : bright;
}

function brightCut(stones: readonly Seen[], { border, grain }: BeadSetSpec): ToldGroup {
  const views = stones.map(({ view }) => view);
  if (views[0].placed.row !== undefined) {
    return alongRows(stones, {
      beyond: (view) => view.length / 2 + told.ROOM + border,
      aside: border,
      kind: "hollows",
      pieces: ({ stones: [view], along }) => {
        const floor = view.across(along).half + told.ROOM;
        return brightPieces({ floor, border, surface: surfaceOf(view) }, between);
      },
    });
  }
  const bodies = stones.map((seen): ToldBody => {
    const { view } = seen;
    const flat = told.ROOM + told.OFF_HOLLOW + grain * view.width;
    const sizes = { floor: flat, border, surface: surfaceOf(view) };
    return {
      kind: "hollows",
      sphere: ballOf(seen, flat + border),
      axis: axisOf(view, flat + border),
      line: (through) => view.line(through),
      pieces: keptPieces(brightPieces(sizes, (by, slope) => [view.beside(by, slope)])),
    };
  });
  return { bodies, untold: [] };
}

function grains(stones: readonly Seen[], { grain, grains: wanted, shared }: BeadSetSpec): ToldGroup {
  const views = stones.map(({ view }) => view);
  const [{ placed }] = views;
  const radius = (grain * Math.max(...views.map(({ width }) => width))) / 2;
  const away = told.ROOM + told.OFF_HOLLOW + radius;
  const bright = placed.setting.form === "bead-set" && placed.setting.border > 0;
  const asked = { away, sharedAway: away, radius, wanted, shared, first: radians(wanted === 4 ? 45 : 90) };
  const axes = postAxes(views, asked);
  const bodies = axes.map((axis) => {
    const surface = axis.stones.reduce((sum, view) => sum + surfaceOf(view), 0) / axis.stones.length;
    const ground = bright ? 0 : surface;
    const top = ground + (1 + told.POST_SHARE) * radius;
    return postBody(axis, { foot: Math.min(0, ground) - 0.15, sure: ground, top, radius, tip: radius }, "grains");
  });
  return { bodies, untold: [], axes };
}

interface AlongRows {
  readonly kind: ToldBody["kind"];
  readonly beyond: (view: StoneView) => number;
  /** How far beside the stones it reaches, mm. */
  readonly aside: number;
  readonly pieces: (line: RowLine) => SectionPieces;
}

function alongRows(stones: readonly Seen[], { kind, beyond, aside, pieces }: AlongRows): ToldGroup {
  const lines = rowLines(stones.map(({ view }) => view));
  if (lines === undefined)
    return { bodies: [], untold: stones.map((seen) => ballOf(seen, told.ROOM + aside + seen.view.length)) };
  const bodies = lines.map((line): ToldBody => {
    const section = pieces(line);
    const far = Math.max(...line.stones.map(beyond));
    return {
      kind,
      sphere: undefined,
      line: (through) => line.line(through),
      pieces: keptPieces((grown) => {
        const ends = [below(1, 0, 0, far + grown), below(-1, 0, 0, far + grown)];
        return section(grown).map((piece) => ({ ...piece, clips: [...ends, ...piece.clips] }));
      }),
    };
  });
  return { bodies, untold: [] };
}

function channel(stones: readonly Seen[], spec: ChannelSpec): ToldGroup {
  if (spec.ready === "pilot") return hollowsOf(stones, spec.pilot);
  const asked = { cover: spec.cover, bearing: radians(spec.bearing), notched: spec.ready === "full" };
  const groove = ({ stones: [view], along }: RowLine) => grooveOf(view, along, asked);
  const half = (view: StoneView) => Math.max(view.length, view.width) / 2 + told.ROOM;
  const lines = rowLines(stones.map(({ view }) => view));
  if (lines === undefined)
    return { bodies: [], untold: stones.map((seen) => ballOf(seen, seen.view.length + spec.wall)) };
  const alongOf = new Map(lines.flatMap((line) => line.stones.map((view) => [view, line] as const)));
  const hollows = stones.flatMap((seen): ToldBody[] => {
    const line = alongOf.get(seen.view);
    if (line === undefined) return [];
    const { ledge } = groove(line);
    return [
      {
        kind: "hollows",
        sphere: ballOf(seen, 1),
        axis: axisOf(seen.view, told.ROOM),
        line: (through) => seen.view.line(through),
        pieces: keptPieces((grown) =>
          hollowPieces(seen.view, { pilot: spec.pilot, bore: seen.bore, above: ledge }, grown),
        ),
      },
    ];
  });
  const cut = alongRows(stones, { kind: "hollows", aside: 0, beyond: half, pieces: (line) => groove(line).pieces });
  const raised =
    spec.rise === 0
      ? []
      : [
          alongRows(stones, {
            kind: "walls",
            aside: spec.wall,
            beyond: (view) => half(view) + spec.wall,
            pieces: (line) => {
              const [view] = line.stones;
              const [sure, { bore }] = [surfaceOf(view), stones[0]];
              return wallPieces(groove(line).half, { wall: spec.wall, top: sure + spec.rise, foot: bore, sure });
            },
          }),
        ];
  return joined([...raised, cut, { bodies: hollows, untold: [] }]);
}

function prongs(stones: readonly Seen[], spec: ProngsSpec): ToldGroup {
  const hollows = hollowsOf(stones, spec.pilot, spec.ready === "full");
  const views = stones.map(({ view }) => view);
  const sizes = stones.map((seen) => prongSizes(seen, spec));
  const collars = stones.map((seen, i): ToldBody => {
    const { view, bore } = seen;
    const top = -view.band - told.COLLAR_BELOW * view.pavilion;
    const sure = surfaceOf(view);
    return {
      kind: "walls",
      sphere: ballOf(seen, sizes[i].collar),
      axis: axisOf(view, sizes[i].collar),
      line: (through) => view.line(through),
      pieces: keptPieces((grown) => [
        { low: grown < 0 ? sure : bore, high: top + grown, clips: [view.beside(sizes[i].collar + grown)] },
      ]),
    };
  });
  const clears = stones.map((seen): ToldBody => {
    const { view } = seen;
    const edge = edgeOf(view);
    return {
      kind: "clears",
      sphere: ballOf(seen, told.ROOM),
      axis: axisOf(view, told.ROOM),
      line: (through) => view.line(through),
      pieces: keptPieces((grown) => {
        const low = edge - (grown > 0 ? told.bearingOpen(view.placed.stone) : 0) - grown;
        return [{ low, high: aboveOf(view), clips: [view.beside(told.ROOM + grown)] }];
      }),
    };
  });
  const cleared = spec.ready === "full" ? clears : [];
  const [first] = sizes;
  const asked = {
    away: first.away,
    sharedAway: first.sharedAway,
    radius: first.radius,
    wanted: spec.count,
    shared: spec.shared,
    first: radians(spec.turn),
  };
  const axes = postAxes(views, asked);
  const posts = axes.map((axis) => {
    const own = sizes[views.indexOf(axis.stones[0])];
    return postBody(axis, own, "walls");
  });
  return joined([hollows, { bodies: [...collars, ...posts, ...cleared], untold: [], axes }]);
}

/** How far the metal falls away under a collar is not told: by so much at most, mm (chosen). */
const FALL = 0.1;

function prongSizes({ view, bore }: Seen, spec: ProngsSpec) {
  const { width, crown, band, pavilion } = view;
  const radius = (spec.diameter ?? Math.max(told.LEAST_PRONG, told.PRONG_SHARE * width)) / 2;
  const tip = radius * spec.tip;
  const top = Math.max(spec.height * crown, tip / 2) + tip / 2;
  const straight = top - tip;
  const sure = surfaceOf(view);
  const foot = Math.min(Math.max(sure - FALL, (sure + bore) / 2), -band - pavilion / 2);
  const girdle = straight <= 0 ? tip : radius + ((tip - radius) * -foot) / (straight - foot);
  const [away, sharedAway] = [girdle * (1 - 2 * spec.notch), girdle * (1 - spec.notch)];
  const collar = Math.max(told.ROOM + told.LEAST_COLLAR, away + told.COLLAR_SHARE * radius);
  return { radius, tip, top, foot, sure, away, sharedAway, collar };
}
