/**
 * The cross-section as a trade drawing, turned so that the band's width runs upright as in the strip beside it. Its numbers can
 * be typed over, its arrows pulled.
 */
import { useBench } from "../state/bench.js";
import { nameOf } from "../state/json-text.js";
import type { FlatView, ScreenPoint } from "../strip/flat-view.js";
import { sharedView } from "../strip/shared-view.js";
import { useSize } from "../strip/use-size.js";
import "../strip/flat.css";
import { type BuiltSection, builtNumbers } from "./built-numbers.js";
import { CutChoice, cutAngle, TOP, useCut } from "./cut-choice.js";
import { CutMetal } from "./cut-metal.js";
import { layOut } from "./dimension-layout.js";
import { DimensionGrip, DimensionLines } from "./dimension-lines.js";
import { DimensionNumber } from "./dimension-number.js";
import { type Dimension, dimensionsOf } from "./dimensions.js";
import { Projections } from "./projections.js";
import { sectionPlace } from "./section-place.js";
import { movedOutline } from "./section-shape.js";
import { sectionNumbers, sizePath } from "./section-sizes.js";
import { SectionStones } from "./section-stones.js";

export function SectionView() {
  const bench = useBench();
  const [frame, size] = useSize();
  const cut = useCut();
  return (
    <div class="flat-drawing section-drawing" ref={frame}>
      {cut === undefined || size[0] === 0 ? null : <Drawing {...{ cut, size }} view={sharedView(bench).view.value} />}
      <CutChoice />
    </div>
  );
}

interface Drawn {
  readonly cut: BuiltSection;
  readonly view: FlatView;
  readonly size: ScreenPoint;
}

/** Sizes that follow the tiles or the angle. */
const FOLLOWING = ["width", "thickness"];

/** A size is built as it is written where it is nearer than this, mm: under what is printed. */
const AS_WRITTEN = 5e-3;

function Drawing({ cut, view, size }: Drawn) {
  const { document, selected } = useBench();
  const chosen = selected.value && nameOf(selected.value);
  const now = document.value.value.profile;
  const { before, after } = builtNumbers(cut, now);
  const written = sectionNumbers(now, cut.read).sizes;
  const { boreRadius, polyline } = cut.profile;
  const place = sectionPlace(view, size, after);
  const drawn = dimensionsOf(after).map((dimension) => ({ dimension, layout: layOut(dimension, place) }));
  const follows = ({ size: name }: Dimension): boolean => cutAngle.value !== TOP && FOLLOWING.includes(name);
  /** What is written, not what came of it, is what is pulled and typed. */
  const asWritten = (dimension: Dimension): Dimension =>
    follows(dimension) ? dimension : { ...dimension, value: written[dimension.size] ?? dimension.value };
  const made = ({ size: name, value }: Dimension): number | undefined =>
    cutAngle.value === TOP && Math.abs(value - (written[name] ?? value)) > AS_WRITTEN ? value : undefined;
  return (
    <>
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: the part of the page round it has the name; a title would stand over the drawing */}
      <svg class="flat-paper">
        <Projections {...{ place, size }} numbers={after} />
        <CutMetal outline={movedOutline(polyline, boreRadius, before, after)} {...{ boreRadius, place }} />
        <SectionStones {...{ boreRadius, place }} />
        {drawn.map(({ dimension, layout }) => (
          <DimensionLines key={dimension.size} {...{ layout }} chosen={nameOf(sizePath(dimension.size)) === chosen} />
        ))}
        {drawn
          .filter(({ dimension }) => !follows(dimension))
          .flatMap(({ dimension }) =>
            dimension.grips.map((grip) => (
              <DimensionGrip
                key={`${dimension.size} ${grip.pull}`}
                dimension={asWritten(dimension)}
                {...{ grip, place }}
                scale={view.scale}
              />
            )),
          )}
      </svg>
      {drawn.map(({ dimension, layout }) => (
        <DimensionNumber
          key={dimension.size}
          dimension={asWritten(dimension)}
          number={layout.number}
          built={made(dimension)}
          fixed={follows(dimension)}
        />
      ))}
    </>
  );
}
