/**
 * The catalogue of motifs as pictures.
 */
import type { MotifEntry } from "../../index.js";
import { useBench } from "../state/bench.js";
import { sayChoice } from "../words/fields/say-field.js";
import { say } from "../words/language.js";
import { sayText } from "../words/say-text.js";
import { asked } from "./asked.js";

interface MotifsProps {
  readonly chosen: string | undefined;
  readonly choose: (motif: MotifEntry) => void;
}

export function MotifPictures({ chosen, choose }: MotifsProps) {
  const { host } = useBench();
  const motifs = asked("motifs", () => host.peek().library.motifs()).value ?? [];
  return (
    <div class="pictures pictures-motifs" role="radiogroup" aria-label={say("motif.choose")}>
      {motifs.map((motif) => (
        // biome-ignore lint/a11y/useSemanticElements: a picture that is pressed
        <button
          type="button"
          role="radio"
          key={motif.name}
          aria-checked={motif.name === chosen}
          title={sayText(motif.summary)}
          onClick={() => choose(motif)}
        >
          <MotifPicture name={motif.name} />
          <span>{sayChoice("motif", motif.name)}</span>
        </button>
      ))}
    </div>
  );
}

function MotifPicture({ name }: { readonly name: string }) {
  const { host } = useBench();
  const drawing = asked(`motif ${name}`, () => host.peek().library.motifOutline(name)).value;
  return (
    <svg class="picture-motif" viewBox={drawing?.viewBox ?? "0 0 1 1"} aria-hidden="true">
      {drawing !== undefined && <path d={drawing.path} fill-rule="evenodd" />}
    </svg>
  );
}
