/**
 * What keys do while the ring has the focus.
 */
import type { CameraPlaceName } from "./camera-places.js";
import type { RingState } from "./ring-state.js";

/** What keys act on. */
interface Keyed {
  readonly stage:
    | {
        turn(left: number, up: number): void;
        zoom(factor: number): void;
        readonly canvas: { readonly clientWidth: number; readonly clientHeight: number };
      }
    | undefined;
  readonly state: Pick<RingState, "measured">;
  readonly look: (name: CameraPlaceName) => void;
  readonly pick: (x: number, y: number) => void;
}

/** Radians a key turns by, and the factor by which it goes nearer. Chosen. */
const TURN = Math.PI / 24;
const NEARER = 1.15;

type Act = (keyed: Keyed & { readonly stage: NonNullable<Keyed["stage"]> }) => void;

const KEYS: Readonly<Record<string, Act>> = {
  ArrowLeft: ({ stage }) => stage.turn(TURN, 0),
  ArrowRight: ({ stage }) => stage.turn(-TURN, 0),
  ArrowUp: ({ stage }) => stage.turn(0, TURN),
  ArrowDown: ({ stage }) => stage.turn(0, -TURN),
  "+": ({ stage }) => stage.zoom(NEARER),
  "=": ({ stage }) => stage.zoom(NEARER),
  "-": ({ stage }) => stage.zoom(1 / NEARER),
  Home: ({ look }) => look("turned"),
  Enter: ({ stage, pick }) => pick(stage.canvas.clientWidth / 2, stage.canvas.clientHeight / 2),
  Escape: ({ state }) => {
    state.measured.value = undefined;
  },
};

/** Keys that are none of the ring's, or pressed with others, are left to the page. */
export function pressKey(
  event: Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "altKey" | "preventDefault">,
  keyed: Keyed,
): void {
  const { stage } = keyed;
  if (stage === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
  if (!Object.hasOwn(KEYS, event.key)) return;
  event.preventDefault();
  KEYS[event.key]({ ...keyed, stage });
}
