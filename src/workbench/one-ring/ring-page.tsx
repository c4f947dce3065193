/**
 * A ring to be turned, in the metal and with the surface that the reader chooses.
 */
import { useEffect, useRef, useState } from "preact/hooks";
import { type Buffers, type Dress, dimensionsOf } from "../../entries/view.js";
import { type RingFacts, stonesOfFacts } from "../../toolbox/index.js";
import type { CameraPlaceName } from "../ring/camera-places.js";
import { ICONS } from "../ring/icons.js";
import { FinishChoice, LookButtons } from "../ring/look-buttons.js";
import { readPens } from "../ring/paper-pens.js";
import { pressKey } from "../ring/press-key.js";
import { newRingState } from "../ring/ring-state.js";
import { RingStage } from "../ring/stage.js";
import { say, sayNumber } from "../words/language.js";
import { sayGrams } from "./say-grams.js";

interface PageProps {
  readonly facts: RingFacts;
  readonly buffers: Buffers;
}

/** What the reader chose. */
interface Choice {
  readonly material: string;
  readonly finish: NonNullable<Dress["finish"]>;
  readonly dimensions: boolean;
  readonly stones: boolean;
}

export function RingPage({ facts, buffers }: PageProps) {
  const [choice, choose] = useState<Choice>({
    material: facts.material,
    finish: "polished",
    dimensions: false,
    stones: true,
  });
  const { canvas, stage, missing } = useStage(facts, buffers, choice);
  const look = (name: CameraPlaceName): void => stage.current?.look(name, 0);
  const state = useRef(newRingState()).current;
  const change = (part: Partial<Choice>): void => choose({ ...choice, ...part });
  return (
    <>
      <div
        class="ring-picture"
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: keys turn the ring, so it takes the focus
        tabIndex={0}
        aria-label={facts.name}
        onKeyDown={(event) => pressKey(event, { stage: stage.current, state, look, pick: () => undefined })}
      >
        <canvas ref={canvas} />
        {missing ? <p>{say("ring.trouble.no-webgl")}</p> : null}
      </div>
      <Choices facts={facts} choice={choice} change={change} look={look} />
      <Facts facts={facts} material={choice.material} />
    </>
  );
}

/** The ring on its canvas, as it is chosen. */
function useStage({ sizes, metals, stones: held }: RingFacts, buffers: Buffers, choice: Choice) {
  const { material, finish, dimensions, stones } = choice;
  const canvas = useRef<HTMLCanvasElement>(null);
  const stage = useRef<RingStage>(undefined);
  const [missing, miss] = useState(false);
  useEffect(() => {
    const element = canvas.current;
    if (element === null) return undefined;
    try {
      stage.current = new RingStage(element, readPens(document.body));
    } catch {
      miss(true);
      return undefined;
    }
    const own = stage.current;
    own.resize(element.clientWidth, element.clientHeight);
    own.show(buffers, sizes.diameter / 2);
    const watch = new ResizeObserver(() => own.resize(element.clientWidth, element.clientHeight));
    watch.observe(element);
    return () => {
      watch.disconnect();
      own.dispose();
    };
  }, [buffers, sizes]);
  useEffect(() => {
    const metal = metals.find(({ symbol }) => symbol === material);
    stage.current?.dress({ material: metal ?? material, finish });
    stage.current?.drawDimensions("dimensions", dimensions ? dimensionsOf(sizes, (mm) => sayNumber(mm, 2)) : []);
  }, [metals, sizes, material, finish, dimensions]);
  useEffect(() => {
    stage.current?.showStones(held !== undefined && stones ? stonesOfFacts(held) : undefined);
  }, [held, stones]);
  return { canvas, stage, missing };
}

interface ChoicesProps {
  readonly facts: RingFacts;
  readonly choice: Choice;
  readonly change: (part: Partial<Choice>) => void;
  readonly look: (name: CameraPlaceName) => void;
}

function Choices({ facts, choice, change, look }: ChoicesProps) {
  return (
    <div class="choices" role="toolbar" aria-label={say("ring.tools")}>
      <LookButtons look={look} />
      <Switch name="dimensions" {...{ choice, change }} />
      {facts.stones === undefined ? null : <Switch name="stones" {...{ choice, change }} />}
      <select
        aria-label={say("one-ring.metal")}
        value={choice.material}
        onChange={(event) => change({ material: event.currentTarget.value })}
      >
        {facts.metals.map(({ symbol, name }) => (
          <option key={symbol} value={symbol}>
            {name}
          </option>
        ))}
      </select>
      <FinishChoice finish={choice.finish} choose={(finish) => change({ finish })} />
    </div>
  );
}

interface SwitchProps extends Pick<ChoicesProps, "choice" | "change"> {
  readonly name: "dimensions" | "stones";
}

function Switch({ name, choice, change }: SwitchProps) {
  const label = say(`ring.${name}`);
  return (
    <button
      type="button"
      title={label}
      aria-label={label}
      aria-pressed={choice[name]}
      onClick={() => change({ [name]: !choice[name] })}
    >
      {ICONS[name]()}
    </button>
  );
}

function Facts({
  facts: { name, size, sizes, metals },
  material,
}: {
  readonly facts: RingFacts;
  readonly material: string;
}) {
  const metal = metals.find(({ symbol }) => symbol === material);
  return (
    <footer>
      <h1>{name}</h1>
      <p>
        {size.label === undefined ? "" : `${size.system} ${size.label} · `}Ø {sayNumber(sizes.diameter, 2)} mm ·{" "}
        {sayNumber(sizes.width, 2)} × {sayNumber(sizes.thickness, 2)} mm
        {metal === undefined ? "" : ` · ${sayGrams(metal.grams)}`}
      </p>
    </footer>
  );
}
