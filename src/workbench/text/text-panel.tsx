/**
 * The document as text.
 */
import { useBench } from "../state/bench.js";
import { say } from "../words/language.js";

export function TextPanel() {
  const { document } = useBench();
  return (
    <>
      <h2>{say("panel.text")}</h2>
      <textarea value={document.text.value} onInput={(event) => document.type(event.currentTarget.value)} />
    </>
  );
}
