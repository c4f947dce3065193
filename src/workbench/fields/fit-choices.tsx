/**
 * How many tiles there may be round the band: choose one, and the ring follows.
 */
import { useBench } from "../state/bench.js";
import { say, sayNumber } from "../words/language.js";

/** Most that are shown; the nearest come first. Chosen. */
const MOST = 9;

export function FitChoices() {
  const { answers, document } = useBench();
  const fit = answers.of.fit.value?.value;
  if (fit === undefined || fit.candidates.length < 2 || fit.lanes.length > 0) return null;
  const candidates = fit.candidates.slice(0, MOST).toSorted((a, b) => a.repeats - b.repeats);
  const choose = (repeats: number): void => document.set(["pattern", "fit", "repeats"], repeats);
  return (
    <div class="choices">
      <p class="caption">{say("choice.fit")}</p>
      <div>
        {candidates.map(({ repeats, tileWidth, tileHeight, bandWidth, stretch }) => (
          <button type="button" key={repeats} aria-pressed={repeats === fit.repeats} onClick={() => choose(repeats)}>
            <strong>{repeats} ×</strong>
            <span class="caption">
              {say("choice.tile", { width: sayNumber(tileWidth, 2), height: sayNumber(tileHeight, 2) })}
              <br />
              {fit.hold === "tile" && bandWidth !== undefined
                ? say("choice.band", { width: sayNumber(bandWidth, 2) })
                : say("choice.stretch", { stretch: sayNumber((stretch - 1) * 100, 0) })}
            </span>
          </button>
        ))}
      </div>
    </div>
  );
}
