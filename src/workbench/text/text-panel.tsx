/**
 * The document as text: the editor is made when it is first opened.
 */
import { useSignal, useSignalEffect } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import { useBench } from "../state/bench.js";
import { say } from "../words/language.js";
import { openEditor } from "./editor.js";
import { textAsked } from "./text-asked.js";
import "./text.css";

export function TextPanel() {
  const { document } = useBench();
  const open = useSignal(false);
  useSignalEffect(() => {
    if (textAsked.value !== undefined) open.value = true;
  });
  return (
    <details
      class="panel panel-text"
      open={open.value}
      onToggle={(event) => {
        open.value = event.currentTarget.open;
      }}
    >
      <summary>
        {say("panel.text")}
        {document.misread.value !== undefined && <span class="fold-wrong">{say("text.misread")}</span>}
      </summary>
      {open.value && <Editor />}
    </details>
  );
}

function Editor() {
  const bench = useBench();
  const element = useRef<HTMLDivElement>(null);
  useEffect(() => (element.current === null ? undefined : openEditor(element.current, bench)), [bench]);
  return <div class="editor" ref={element} />;
}
