/**
 * The list of changes, to go back and forth.
 */

import { useBench } from "../state/bench.js";
import { nameOf } from "../state/json-text.js";
import { say } from "../words/language.js";

export function ChangeList() {
  const { document } = useBench();
  return (
    <>
      <h2>{say("panel.changes")}</h2>
      <ol>
        {document.changes.value.map(({ what, text }, index) => (
          <li key={`${index} ${text.length}`}>
            <button type="button" aria-current={index === document.at.value} onClick={() => document.goTo(index)}>
              {typeof what === "string" ? what : nameOf(what)}
            </button>
          </li>
        ))}
      </ol>
    </>
  );
}
