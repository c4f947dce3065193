/**
 * What is done with whole designs, as a row of buttons: open, save, download, and the designs that the browser keeps.
 */
import "./files.css";
import { useEffect, useState } from "preact/hooks";
import { KeptDesigns } from "../keep/kept-designs.js";
import { say } from "../words/language.js";
import { useDesk } from "./desk.js";
import { DOWNLOADS, type DownloadKind } from "./downloads.js";
import { DropMenu } from "./drop-menu.js";
import { SafetyList } from "./safety-list.js";

export function FileBar() {
  const desk = useDesk();
  return (
    <div class="file-bar">
      <OpenFiles />
      <DropMenu label={say("file.kept")}>
        <KeptDesigns />
      </DropMenu>
      {desk.isDisk.value ? (
        <button type="button" aria-keyshortcuts="Control+S" onClick={() => void desk.save()}>
          {say("file.save")}
          {desk.unsaved.value ? <span aria-hidden="true"> ●</span> : null}
        </button>
      ) : null}
      <DropMenu label={say("file.download")}>
        {DOWNLOADS.map((kind) => (
          <Download key={kind} {...{ kind }} />
        ))}
      </DropMenu>
      <SafetyList />
      <MakingLine />
    </div>
  );
}

/** What is told of stones alone is offered where there are any. */
function Download({ kind }: { readonly kind: DownloadKind }) {
  const desk = useDesk();
  const stones = desk.bench.answers.of.stones.value?.value.report;
  if (kind === "csv" && stones === undefined) return null;
  return (
    <button type="button" onClick={() => void desk.download(kind)}>
      {say(`file.as.${kind}`)}
    </button>
  );
}

/** A button before the browser's own field, which cannot be drawn like one. */
function OpenFiles() {
  const desk = useDesk();
  const [field, setField] = useState<HTMLInputElement | null>(null);
  return (
    <>
      <button type="button" onClick={() => field?.click()}>
        {say("file.open")}
      </button>
      <input
        ref={setField}
        type="file"
        hidden
        multiple
        aria-label={say("file.open")}
        accept=".json,.svg,.svgz,.png,.ttf,.otf,.woff,.woff2"
        onChange={({ currentTarget }) => {
          void desk.takeFiles([...(currentTarget.files ?? [])]);
          currentTarget.value = "";
        }}
      />
    </>
  );
}

function MakingLine() {
  const making = useDesk().making.value;
  if (making === undefined) return null;
  return (
    <span class="caption">
      {say("file.making", { kind: making.kind, share: Math.round(100 * making.share) })}
      <button type="button" onClick={making.stop}>
        {say("work.stop")}
      </button>
    </span>
  );
}

/** Files and text that come in by drop or paste, and Ctrl-S, anywhere on the page. */
export function useTakingIn(): void {
  const desk = useDesk();
  useEffect(() => {
    const over = (event: DragEvent): void => event.preventDefault();
    const drop = (event: DragEvent): void => {
      // A view that has a place for it has taken it.
      if (event.defaultPrevented) return;
      event.preventDefault();
      void desk.takeFiles([...(event.dataTransfer?.files ?? [])]);
    };
    const paste = (event: ClipboardEvent): void => {
      if (isField(event)) return;
      const files = [...(event.clipboardData?.files ?? [])];
      if (files.length > 0) void desk.takeFiles(files);
      else void desk.takeText(event.clipboardData?.getData("text/plain") ?? "");
    };
    const press = (event: KeyboardEvent): void => {
      if (event.key.toLowerCase() !== "s" || !(event.ctrlKey || event.metaKey) || event.altKey) return;
      event.preventDefault();
      void desk.save();
    };
    const heard = { dragover: over, drop, paste, keydown: press } as const;
    for (const [name, hear] of Object.entries(heard)) addEventListener(name, hear as EventListener);
    return () => {
      for (const [name, hear] of Object.entries(heard)) removeEventListener(name, hear as EventListener);
    };
  }, [desk]);
}

/** Whether something is pasted where text is written. */
function isField(event: Event): boolean {
  const [target] = event.composedPath();
  if (!(target instanceof HTMLElement)) return false;
  return target.isContentEditable || target.matches("input, textarea, select");
}
