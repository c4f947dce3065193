/**
 * A part of the form that is folded; it opens when something in it is selected by any view.
 */
import { useSignal, useSignalEffect } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";
import { useBench } from "../state/bench.js";
import type { Path } from "../state/json-text.js";
import { say } from "../words/language.js";
import { isInside } from "./place.js";
import { problemsIn } from "./problems-at.js";

interface FoldProps {
  readonly title: ComponentChildren;
  /** What it shows of the document; it opens when one of them, or a part of it, is selected. */
  readonly paths: readonly Path[];
  readonly isOpen?: boolean;
  readonly class?: string;
  /** Whether its head being reached selects its first path. */
  readonly selects?: boolean;
  readonly children: () => ComponentChildren;
}

/** Whether the form stands below the views, on a phone, and one of them is being used: it would scroll away under the finger. */
function isBusyAbove(): boolean {
  const inView = document.activeElement?.closest(".sheet-ring, .sheet-strip, .sheet-section") ?? null;
  return inView !== null && !matchMedia("(width >= 60rem)").matches;
}

export function Fold({ title, paths, isOpen = false, class: name = "", selects = false, children }: FoldProps) {
  const bench = useBench();
  const open = useSignal(isOpen);
  const element = useRef<HTMLDetailsElement>(null);
  useSignalEffect(() => {
    const selected = bench.selected.value;
    if (!paths.some((path) => isInside(selected, path))) return;
    open.value = true;
    const isHere = paths.some((path) => path.length === selected?.length);
    if (!isHere || element.current?.contains(document.activeElement) || isBusyAbove()) return;
    // Once it is drawn open.
    requestAnimationFrame(() => element.current?.scrollIntoView({ block: "start" }));
  });
  const isSelected = selects && isInside(bench.selected.value, paths[0]);
  const wrong = paths.flatMap((path) => problemsIn(bench.answers.problems.value, path)).length;
  const select = (event: FocusEvent): void => {
    event.stopPropagation();
    if (selects) bench.selected.value = paths[0];
  };
  return (
    <details
      ref={element}
      class={`fold ${name}`}
      data-selected={isSelected}
      open={open.value}
      onToggle={(event) => {
        open.value = event.currentTarget.open;
      }}
    >
      {/* biome-ignore lint/a11y/noStaticElementInteractions: a summary is pressed */}
      <summary onFocus={select}>
        {title}
        {wrong > 0 && <span class="fold-wrong">{say("field.wrong", { count: wrong })}</span>}
      </summary>
      {open.value && <div class="fold-inside">{children()}</div>}
    </details>
  );
}
