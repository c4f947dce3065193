/**
 * What is measured on bodies' heights: how low relief is, how shallow what is sunk.
 */
import type { FlatBody } from "../../relief/flat-body.js";
import { markPlace, marksOf } from "./mark-regions.js";
import type { JudgedPiece, Measured, Place } from "./piece.js";

export interface HeightMeasures {
  readonly relief: Measured | undefined;
  readonly engraving: Measured | undefined;
}

/** Bodies this near to the lowest are told beside it, mm. */
const ALIKE = 1e-3;

/** Places that are told of each. */
const PLACES = 10;

/** The lowest that is raised and the shallowest that is sunk, letters and height maps among them. */
export function measureHeights({ pattern, marks }: JudgedPiece): HeightMeasures {
  const own = pattern.bodies.map((body) => ({ body, place: (): Place => ({ flat: middleOf(body) }) }));
  const all = [
    ...own,
    ...marksOf(marks).map((mark) => ({ body: mark.body, place: () => markPlace(mark, middleOf(mark.body)) })),
  ];
  const least = (mode: FlatBody["mode"]): Measured | undefined => {
    const some = all.filter(({ body }) => body.mode === mode).sort((a, b) => a.body.height - b.body.height);
    if (some.length === 0) return undefined;
    const [{ body }] = some;
    const alike = some.filter((one) => one.body.height < body.height + ALIKE);
    const places = alike.slice(0, PLACES).map(({ place }) => place());
    return { figure: body.height, places, more: body.names.length > 0 ? `of ${body.names.join(", ")}` : undefined };
  };
  return { relief: least("raised"), engraving: least("sunk") };
}

function middleOf({ outline, surface }: FlatBody): readonly [number, number] {
  const points = surface === undefined ? outline.flat(2) : surface.foot.points;
  const [u, v] = [points.map((point) => point[0]), points.map((point) => point[1])];
  const middle = (values: readonly number[]) => {
    return (values.reduce((a, b) => Math.min(a, b)) + values.reduce((a, b) => Math.max(a, b))) / 2;
  };
  return [middle(u), middle(v)];
}
