/**
 * The paper that the strip is drawn on: it is moved, drawn near, and pressed.
 */
import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";
import { useBench } from "../state/bench.js";
import { say } from "../words/language.js";
import { type FlatPoint, type FlatView, panned, type ScreenPoint, toFlat, zoomed } from "./flat-view.js";
import { PaperHand, viewKey, wheelFactor } from "./paper-hand.js";
import { sharedView } from "./shared-view.js";

interface Paper {
  readonly onPress: (at: FlatPoint) => void;
  readonly onDrop: (files: readonly File[], at: FlatPoint) => void;
  readonly children: ComponentChildren;
}

function placeIn(event: MouseEvent): ScreenPoint {
  const { left, top } = (event.currentTarget as Element).getBoundingClientRect();
  return [event.clientX - left, event.clientY - top];
}

/**
 * Two fingers draw the paper apart wherever they come down: on a phone handles cover most of it, and each would take its own.
 * The paper takes both over, and what one of them has begun to pull is let go.
 */
function useBothHands(hand: PaperHand) {
  const down = useRef(new Map<number, ScreenPoint>());
  const forget = (event: PaperEvent): void => {
    down.current.delete(event.pointerId);
  };
  return {
    onPointerDownCapture: (event: PaperEvent): void => {
      down.current.set(event.pointerId, placeIn(event));
      if (down.current.size < 2) return;
      event.stopPropagation();
      for (const [id, at] of down.current) {
        event.currentTarget.setPointerCapture(id);
        hand.down(id, at);
      }
    },
    onPointerMoveCapture: (event: PaperEvent): void => {
      if (down.current.has(event.pointerId)) down.current.set(event.pointerId, placeIn(event));
    },
    onPointerUpCapture: forget,
    onPointerCancelCapture: forget,
  };
}

type PaperEvent = PointerEvent & { readonly currentTarget: Element };

export function StripPaper({ onPress, onDrop, children }: Paper) {
  const shared = sharedView(useBench());
  const hand = useRef(new PaperHand());
  const both = useBothHands(hand.current);
  const size = shared.size.value;
  const set = (view: FlatView): void => {
    shared.view.value = view;
  };
  const view = (): FlatView => shared.view.peek();
  return (
    <svg
      class="flat-paper strip-paper"
      data-adds={shared.addsStone.value}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: an application is moved by keys
      tabIndex={0}
      role="application"
      aria-label={say("strip.paper")}
      onWheel={(event) => {
        event.preventDefault();
        set(zoomed(view(), size, placeIn(event), wheelFactor(event)));
      }}
      {...both}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        hand.current.down(event.pointerId, placeIn(event));
      }}
      onPointerMove={(event) => {
        if (hand.current.holds) set(hand.current.move(event.pointerId, placeIn(event), view(), size));
      }}
      onPointerUp={(event) => {
        const press = hand.current.up(event.pointerId);
        if (press !== undefined) onPress(toFlat(view(), size, press));
      }}
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        // Taken here, so the page itself leaves it alone.
        event.preventDefault();
        onDrop([...(event.dataTransfer?.files ?? [])], toFlat(view(), size, placeIn(event)));
      }}
      onPointerCancel={(event) => hand.current.lose(event.pointerId)}
      onKeyDown={(event) => {
        if (event.target !== event.currentTarget) return;
        if (shared.addsStone.value && event.key === "Escape") shared.addsStone.value = false;
        // By keys what stands in the view's middle is pressed.
        if (event.key === "Enter") onPress(toFlat(view(), size, [size[0] / 2, size[1] / 2]));
        const asked = viewKey(event.key);
        if (asked === undefined) return;
        event.preventDefault();
        if (asked.by !== undefined) set(panned(view(), asked.by));
        if (asked.factor !== undefined) set(zoomed(view(), size, [size[0] / 2, size[1] / 2], asked.factor));
      }}
    >
      {children}
    </svg>
  );
}
