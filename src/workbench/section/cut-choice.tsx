/**
 * At which angle a band that tapers is cut.
 */
import { signal } from "@preact/signals";
import { useEffect, useState } from "preact/hooks";
import type { Profile } from "../../index.js";
import { useBench } from "../state/bench.js";
import { readText } from "../state/json-text.js";
import { say, sayNumber } from "../words/language.js";
import type { BuiltSection } from "./built-numbers.js";

/** The top of the ring, degrees from +x. */
export const TOP = 90;

/** Degrees; the drawing's own, not the document's. */
export const cutAngle = signal(TOP);

/** The newest cross-section at the chosen angle; undefined before the first. */
export function useCut(): BuiltSection | undefined {
  const { answers, host } = useBench();
  const atTop = answers.of.profile.value;
  const design = answers.of.design.value;
  const [elsewhere, setElsewhere] = useState<{ readonly text: string; readonly profile: Profile }>();
  const angle = cutAngle.value;
  const tapers = design?.value.profile.taper !== undefined;
  const text = atTop?.text;
  useEffect(() => {
    setElsewhere(undefined);
    if (!tapers || angle === TOP || text === undefined) return;
    let stands = true;
    const take = (profile: Profile): void => {
      if (stands) setElsewhere({ text, profile });
    };
    // What is wrong with the document is told by the ring's own answers.
    host.value.library.sectionAt(text, angle).then(take, () => undefined);
    return () => {
      stands = false;
    };
  }, [text, angle, tapers]);
  if (atTop === undefined || design === undefined) return undefined;
  const read = readText(atTop.text);
  const written = "value" in read ? read.value.profile : undefined;
  return { written, profile: elsewhere?.profile ?? atTop.value, read: design.value.profile };
}

/** A slider, where the band tapers. */
export function CutChoice() {
  const { answers } = useBench();
  if (answers.of.design.value?.value.profile.taper === undefined) return null;
  const angle = cutAngle.value;
  return (
    <label class="cut-choice">
      <span class="caption">
        {say(angle === TOP ? "section.cutTop" : "section.cut", { angle: sayNumber(angle, 0) })}
      </span>
      <input
        type="range"
        min={0}
        max={360}
        step={5}
        value={angle}
        onInput={({ currentTarget }) => {
          cutAngle.value = Number(currentTarget.value);
        }}
      />
    </label>
  );
}
