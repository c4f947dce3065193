/**
 * The start: a ring of one's own step by step, the demo's designs and the catalogue of motifs, as pictures.
 */
import { demoDesigns } from "demo:designs";
import { effect, useSignal } from "@preact/signals";
import { useEffect, useMemo, useRef } from "preact/hooks";
import { asked } from "../fields/asked.js";
import { MotifPictures } from "../fields/motif-pictures.js";
import { type Begun, type Bench, useBench } from "../state/bench.js";
import { say } from "../words/language.js";
import { begunWith, nameOfDemo, unlessChanged } from "./begin-demo.js";
import { firstRing } from "./first-ring.js";
import { GUIDE_STEPS, type GuideStep, guideStep, startShown } from "./start-state.js";
import "./start.css";

export function Start() {
  return startShown.value === undefined ? null : <StartDialog />;
}

/** Opens the start; what lies on the bench is kept. */
export function NewButton() {
  return (
    <button type="button" onClick={() => (startShown.value = "again")}>
      {say("start.new")}
    </button>
  );
}

function StartDialog() {
  const bench = useBench();
  const dialog = useRef<HTMLDialogElement>(null);
  const own = useRef<HTMLButtonElement>(null);
  // As the bench is now: the dialog may be told late that it was closed, when a file lies there already.
  const leave = useMemo(() => unlessChanged(bench), []);
  useEffect(() => {
    dialog.current?.showModal();
    own.current?.focus();
    return closeOnceBegun(bench);
  }, []);
  // Closed without a choice over an empty bench, it leaves the README's ring there.
  const close = (): void => {
    const isFirst = startShown.peek() === "first";
    startShown.value = undefined;
    if (isFirst) void leave(begunWith(demoDesigns[0]));
  };
  const begin = (design: Begun, step?: GuideStep): void => {
    bench.begin(design);
    guideStep.value = step;
    startShown.value = undefined;
  };
  return (
    <dialog ref={dialog} class="start" aria-labelledby="start-title" onClose={close}>
      <header>
        <h1 id="start-title">annulet</h1>
        <p>{say("start.what")}</p>
        <button type="button" class="start-close" onClick={close}>
          {say("start.back")}
        </button>
      </header>
      <section>
        <button
          ref={own}
          type="button"
          class="start-own"
          onClick={() => begin({ text: firstRing(say("start.name")) }, GUIDE_STEPS[0])}
        >
          {say("start.own")}
        </button>
        <p class="caption">{say("start.ownHelp")}</p>
      </section>
      <section>
        <h2>{say("start.designs")}</h2>
        <Designs begin={begin} />
      </section>
      <section>
        <h2>{say("start.motifs")}</h2>
        <p class="caption">{say("start.motifsHelp")}</p>
        <MotifPictures
          chosen={undefined}
          choose={(motif) => begin({ text: firstRing(say("start.name"), motif) }, GUIDE_STEPS[0])}
        />
      </section>
    </dialog>
  );
}

/** A file that is dropped or pasted while the start lies there is what the maker chose. @returns what ends that */
function closeOnceBegun({ id }: Bench): () => void {
  const found = id.peek();
  return effect(() => {
    if (id.value !== found) startShown.value = undefined;
  });
}

function Designs({ begin }: { readonly begin: (design: Begun) => void }) {
  // One drawing after the other, so that the ring on the bench is not kept waiting by all of them.
  const drawn = useSignal(1);
  return (
    <div class="pictures pictures-designs">
      {demoDesigns.map((design, at) => (
        <button type="button" key={design.file} onClick={() => void begunWith(design).then(begin)}>
          {at < drawn.value ? (
            <DesignPicture file={design.file} at={at} onDrawn={() => (drawn.value = Math.max(drawn.value, at + 2))} />
          ) : (
            <svg aria-hidden="true" />
          )}
          <span>{nameOfDemo(design.text)}</span>
        </button>
      ))}
    </div>
  );
}

interface DesignProps {
  readonly file: string;
  readonly at: number;
  readonly onDrawn: () => void;
}

function DesignPicture({ file, at, onDrawn }: DesignProps) {
  const { host } = useBench();
  const drawing = asked(`design ${file}`, async () => {
    const { text, files } = await begunWith(demoDesigns[at]);
    return (await host.peek().library.designOutline(text, Object.fromEntries(files ?? []))) ?? NONE;
  }).value;
  useEffect(() => {
    if (drawing !== undefined) onDrawn();
  }, [drawing]);
  return (
    <svg class="picture-motif" viewBox={drawing?.viewBox ?? "0 0 1 1"} aria-hidden="true">
      {drawing !== undefined && <path d={drawing.path} fill-rule="evenodd" />}
    </svg>
  );
}

const NONE = { path: "", viewBox: "0 0 1 1" };
