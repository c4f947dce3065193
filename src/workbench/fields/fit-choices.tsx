/**
 * How many tiles there may be round the band: choose one, and the ring follows.
 */
import type { Fit } from "../../index.js";
import { useBench } from "../state/bench.js";
import type { Path } from "../state/json-text.js";
import { say, sayNumber } from "../words/language.js";

/** Most that are shown; the nearest come first. Chosen. */
const MOST = 9;

export function FitChoices() {
  const fit = useBench().answers.of.fit.value?.value;
  if (fit === undefined) return null;
  if (fit.lanes.length === 0) return <Candidates {...{ fit }} path={["pattern"]} caption={say("choice.fit")} />;
  return (
    <>
      {fit.lanes.map((lane, i) => (
        <Candidates
          key={lane.name}
          fit={lane}
          path={["pattern", "lanes", i]}
          caption={say("choice.lane", { lane: lane.name })}
        />
      ))}
    </>
  );
}

interface CandidatesProps {
  readonly fit: Pick<Fit, "repeats" | "hold" | "candidates">;
  /** Where what is fitted stands in the document. */
  readonly path: Path;
  readonly caption: string;
}

function Candidates({ fit, path, caption }: CandidatesProps) {
  const { document } = useBench();
  if (fit.candidates.length < 2) return null;
  const candidates = fit.candidates.slice(0, MOST).toSorted((a, b) => a.repeats - b.repeats);
  const choose = (repeats: number): void => document.set([...path, "fit", "repeats"], repeats);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset's frame is not wanted
    <div class="choices" role="group" aria-label={caption}>
      <p class="caption">{caption}</p>
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
