/**
 * Findings at their places, as numbered balloons with leader lines (ISO 6433 in spirit): number 1 is the first finding.
 */
import { Group, Vector3 } from "three";
import type { LineSegments2 } from "three/addons/lines/LineSegments2.js";
import type { FindingPlace } from "../judge/finding.js";
import { makeLines } from "./dimension-line.js";
import { type Drawn, makeLabel, type Pen } from "./label.js";

/** What is needed of a finding. */
export interface PlacedFinding {
  readonly places: readonly Pick<FindingPlace, "point">[];
}

/** From a place on the ring outwards to its balloon, mm. Chosen. */
const LEADER = 4;

/** Most balloons of one finding: its places come worst first. Chosen, so that a ring stays in sight. */
export const MOST_PLACES = 6;

/**
 * Balloons of a ring's findings; those without a place in space have none.
 *
 * @example
 * const marks = new FindingMarks((await ring.check()).findings, { ink: "#a83226", paper: "#f3f4f1" });
 * scene.add(marks.object);
 */
export class FindingMarks implements Drawn {
  readonly object = new Group();
  readonly #labels: readonly Drawn[];
  readonly #leaders: LineSegments2 | undefined;

  constructor(findings: readonly PlacedFinding[], pen: Pen) {
    this.object.name = "findings";
    const marks = findings.flatMap(({ places }, index) =>
      places
        .flatMap(({ point }) => (point === undefined ? [] : [new Vector3(...point)]))
        .slice(0, MOST_PLACES)
        .map((place) => ({ place, head: headOf(place), text: String(index + 1) })),
    );
    this.#labels = marks.map(({ head, text }) => {
      const label = makeLabel(text, pen, true);
      label.object.position.copy(head);
      return label;
    });
    if (marks.length > 0)
      this.#leaders = makeLines(
        marks.flatMap(({ place, head }) => [place, head]),
        pen,
        true,
      );
    for (const { object } of this.#labels) this.object.add(object);
    if (this.#leaders !== undefined) this.object.add(this.#leaders);
  }

  /** Lets go of all that the graphics card holds of them, and takes them out of their scene. */
  dispose(): void {
    this.object.removeFromParent();
    for (const label of this.#labels) label.dispose();
    this.#leaders?.geometry.dispose();
    this.#leaders?.material.dispose();
  }
}

/** Away from the finger, so that balloons stand round the ring; what lies on the axis goes along it. */
function headOf(place: Vector3): Vector3 {
  const away = new Vector3(place.x, place.y, 0);
  if (away.lengthSq() === 0) away.set(0, 0, 1);
  return place.clone().addScaledVector(away.normalize(), LEADER);
}
