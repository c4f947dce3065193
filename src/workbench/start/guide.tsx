/**
 * The guide to a first ring of one's own: five steps beside the views, which show the ring after each.
 */
import { useEffect, useRef } from "preact/hooks";
import type { MotifEntry } from "../../index.js";
import { Field } from "../fields/field.js";
import { FieldControl } from "../fields/field-control.js";
import { RootField } from "../fields/fields-panel.js";
import { MotifPictures } from "../fields/motif-pictures.js";
import { entryOf, fieldOf, ROOT_PLACE } from "../fields/place.js";
import { useBook } from "../fields/use-fields.js";
import { useBench } from "../state/bench.js";
import { say } from "../words/language.js";
import { firstBeads, motifIn, patternOf, seatOf } from "./first-ring.js";
import { GUIDE_STEPS, type GuideStep, guideStep, stepBeside } from "./start-state.js";

/** The step that is followed; nothing while none is. */
export function Guide({ step }: { readonly step: GuideStep }) {
  const before = stepBeside(step, -1);
  const after = stepBeside(step, 1);
  const title = useRef<HTMLHeadingElement>(null);
  // Each step is read from its head, and begins at its top.
  useEffect(() => title.current?.focus(), [step]);
  const go = (to: GuideStep | undefined): void => {
    guideStep.value = to;
  };
  return (
    <FieldControl.Provider value={Field}>
      <section class="fields guide" aria-label={say("guide.title")}>
        <p class="caption">{say("guide.step", { at: GUIDE_STEPS.indexOf(step) + 1, of: GUIDE_STEPS.length })}</p>
        <h2 ref={title} tabIndex={-1}>
          {say(`guide.${step}`)}
        </h2>
        <p>{say(`guide.${step}Help`)}</p>
        <StepFields step={step} />
        <div class="guide-tools">
          {before !== undefined && (
            <button type="button" onClick={() => go(before)}>
              {say("guide.back")}
            </button>
          )}
          <button type="button" class="guide-next" onClick={() => go(after)}>
            {say(after === undefined ? "guide.done" : "guide.next")}
          </button>
          {after !== undefined && (
            <button type="button" class="guide-leave" onClick={() => go(undefined)}>
              {say("guide.leave")}
            </button>
          )}
        </div>
      </section>
    </FieldControl.Provider>
  );
}

function StepFields({ step }: { readonly step: GuideStep }) {
  switch (step) {
    case "size":
      return <RootField name="size" />;
    case "band":
      return <RootField name="profile" />;
    case "motif":
      return <MotifStep />;
    case "beads":
      return <BeadsStep />;
    case "finish":
      return (
        <>
          <RootField name="name" />
          <RootField name="material" />
        </>
      );
  }
}

function MotifStep() {
  const { document } = useBench();
  const value = document.value.value;
  const chosen = motifIn(value);
  const choose = (motif: MotifEntry): void => document.set(["pattern"], patternOf(motif, seatOf(value.profile)));
  return (
    <>
      <button
        type="button"
        aria-pressed={value.pattern === undefined}
        onClick={() => document.set(["pattern"], undefined)}
      >
        {say("guide.plain")}
      </button>
      <MotifPictures chosen={chosen} choose={choose} />
    </>
  );
}

function BeadsStep() {
  const { document } = useBench();
  const { beads, profile } = document.value.value;
  const isOn = Array.isArray(beads) && beads.length > 0;
  const run = entryOf(fieldOf(ROOT_PLACE, "beads"), 0);
  const { inside = {} } = useBook().look("beads").value ?? {};
  return (
    <>
      <p class="guide-switch">
        <input
          id="guide-beads"
          type="checkbox"
          checked={isOn}
          onChange={(event) => document.set(["beads"], event.currentTarget.checked ? firstBeads(profile) : undefined)}
        />
        <label for="guide-beads">{say("guide.beadsOn")}</label>
      </p>
      {isOn &&
        ["along", "diameter"].map((key) => <Field key={key} place={fieldOf(run, key)} reference={inside[key]?.[0]} />)}
    </>
  );
}
