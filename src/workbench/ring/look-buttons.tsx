/**
 * Places from which a ring is looked at, a button each; and how its surface looks, as a choice.
 */
import type { Dress } from "../../entries/view.js";
import { say } from "../words/language.js";
import { CAMERA_PLACES, type CameraPlaceName } from "./camera-places.js";
import { ICONS } from "./icons.js";

const PLACES = Object.keys(CAMERA_PLACES) as readonly CameraPlaceName[];

export function LookButtons({ look }: { readonly look: (name: CameraPlaceName) => void }) {
  return (
    <>
      {PLACES.map((name) => (
        <button
          key={name}
          type="button"
          title={say(`ring.look.${name}`)}
          aria-label={say(`ring.look.${name}`)}
          onClick={() => look(name)}
        >
          {ICONS[name]()}
        </button>
      ))}
    </>
  );
}

type Finish = NonNullable<Dress["finish"]>;

interface FinishProps {
  readonly finish: Finish;
  readonly choose: (finish: Finish) => void;
}

export function FinishChoice({ finish, choose }: FinishProps) {
  return (
    <select
      aria-label={say("ring.finish")}
      value={finish}
      onChange={(event) => choose(event.currentTarget.value === "satin" ? "satin" : "polished")}
    >
      <option value="polished">{say("ring.finish.polished")}</option>
      <option value="satin">{say("ring.finish.satin")}</option>
    </select>
  );
}
