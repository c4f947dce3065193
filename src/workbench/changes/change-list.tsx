/**
 * The list of changes, to go back and forth.
 */
import { useEffect, useRef } from "preact/hooks";
import { useBook } from "../fields/use-fields.js";
import { useBench } from "../state/bench.js";
import type { Path } from "../state/json-text.js";
import { schemaOf } from "../text/offers.js";
import { say } from "../words/language.js";
import { sayChange } from "./change-words.js";
import { followUndoKeys } from "./undo-keys.js";
import "./changes.css";

/** Lines that are shown of a long list; the others can be reached by undo. Chosen. */
const SHOWN = 60;

export function ChangeList() {
  const { document } = useBench();
  const [list, at] = [document.changes.value, document.at.value];
  return (
    <details class="panel panel-changes">
      <summary>
        {say("panel.changes")} <span class="caption">{say("change.place", { at: at + 1, of: list.length })}</span>
      </summary>
      <ChangeLines />
    </details>
  );
}

function ChangeLines() {
  const { document } = useBench();
  const book = useBook();
  const current = useRef<HTMLLIElement>(null);
  const [list, at] = [document.changes.value, document.at.value];
  const unitOf = (path: Path): string | undefined => book.look(schemaOf(path)).value?.own[0]?.unit;
  useEffect(() => current.current?.scrollIntoView({ block: "nearest" }), [at, list.length]);
  const first = Math.max(0, Math.min(at - SHOWN / 2, list.length - SHOWN));
  return (
    <ol class="changes" start={first + 1}>
      {list.slice(first, first + SHOWN).map((change, i) => {
        const index = first + i;
        return (
          <li key={index} ref={index === at ? current : undefined} data-undone={index > at}>
            <button type="button" aria-current={index === at} onClick={() => document.goTo(index)}>
              {sayChange(change, list[index - 1], unitOf)}
            </button>
          </li>
        );
      })}
    </ol>
  );
}

/** Undo and redo, always in sight; by key too. */
export function ChangeTools() {
  const { document } = useBench();
  useEffect(() => followUndoKeys(window, document), [document]);
  const [count, at] = [document.changes.value.length, document.at.value];
  return (
    <div class="change-tools">
      <button type="button" disabled={at === 0} onClick={() => document.undo()} aria-keyshortcuts="Control+Z">
        {say("change.undo")}
      </button>
      <button
        type="button"
        disabled={at === count - 1}
        onClick={() => document.redo()}
        aria-keyshortcuts="Control+Shift+Z"
      >
        {say("change.redo")}
      </button>
    </div>
  );
}
