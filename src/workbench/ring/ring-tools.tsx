/**
 * The tools of the ring's view: where it is looked at from, what is cut, drawn over it and measured.
 */
import type { Signal } from "@preact/signals";
import { useBench } from "../state/bench.js";
import { say } from "../words/language.js";
import type { CameraPlaceName } from "./camera-places.js";
import type { Cut } from "./cut-plane.js";
import { ICONS } from "./icons.js";
import { FinishChoice, LookButtons } from "./look-buttons.js";
import type { RingState } from "./ring-state.js";

interface ToolsProps {
  readonly state: RingState;
  readonly look: (name: CameraPlaceName) => void;
}

export function RingTools({ state, look }: ToolsProps) {
  const stones = useBench().answers.of.stones.value?.value.stones.length;
  return (
    <div class="ring-tools" role="toolbar" aria-label={say("ring.tools")}>
      <div class="joined">
        <LookButtons look={look} />
      </div>
      <div class="joined">
        <Switch name="dimensions" on={state.dimensions} />
        <Switch name="findings" on={state.findings} />
        {stones ? <Switch name="stones" on={state.stones} /> : null}
        <MeasureSwitch state={state} />
      </div>
      <FinishChoice
        finish={state.finish.value}
        choose={(finish) => {
          state.finish.value = finish;
        }}
      />
      <CutChoice cut={state.cut} />
    </div>
  );
}

function Switch({ name, on }: { readonly name: "dimensions" | "findings" | "stones"; readonly on: Signal<boolean> }) {
  const label = say(`ring.${name}`);
  const toggle = (): void => {
    on.value = !on.value;
  };
  return (
    <button type="button" title={label} aria-label={label} aria-pressed={on.value} onClick={toggle}>
      {ICONS[name]()}
    </button>
  );
}

function MeasureSwitch({ state: { measured } }: { readonly state: RingState }) {
  const on = measured.value !== undefined;
  const toggle = (): void => {
    measured.value = on ? undefined : [];
  };
  return (
    <button
      type="button"
      title={say("ring.measure")}
      aria-label={say("ring.measure")}
      aria-pressed={on}
      onClick={toggle}
    >
      {ICONS.measure()}
    </button>
  );
}

/** What a cut of each kind begins with: through the ring's back, where bands are plain, or through the middle. */
const FIRST_CUTS: Readonly<Record<Cut["kind"], Cut>> = {
  none: { kind: "none" },
  axis: { kind: "axis", angle: 90 },
  across: { kind: "across", at: 0 },
};

function CutChoice({ cut }: { readonly cut: Signal<Cut> }) {
  const kinds = Object.keys(FIRST_CUTS) as readonly Cut["kind"][];
  return (
    <select
      aria-label={say("ring.cut")}
      value={cut.value.kind}
      onChange={(event) => {
        cut.value = FIRST_CUTS[event.currentTarget.value as Cut["kind"]];
      }}
    >
      {kinds.map((kind) => (
        <option key={kind} value={kind}>
          {say(`ring.cut.${kind}`)}
        </option>
      ))}
    </select>
  );
}
