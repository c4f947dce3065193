/**
 * Undo and redo by key, anywhere on the page: they go through the document's list of changes, from a text too.
 */
import type { DesignDocument } from "../state/document.js";

/** What is read of a key. */
export interface PressedKey {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

/** Which way a key leads: Ctrl-Z back, Ctrl-Shift-Z and Ctrl-Y forth, with Cmd the same. */
export function wayOfKey({ key, ctrlKey, metaKey, shiftKey, altKey }: PressedKey): "undo" | "redo" | undefined {
  if (altKey || !(ctrlKey || metaKey)) return undefined;
  const letter = key.toLowerCase();
  if (letter === "z") return shiftKey ? "redo" : "undo";
  return letter === "y" && !shiftKey ? "redo" : undefined;
}

/** Hears keys before any control does; ends with what it gives. */
export function followUndoKeys(
  page: Pick<Window, "addEventListener" | "removeEventListener">,
  document: DesignDocument,
): () => void {
  const press = (event: KeyboardEvent): void => {
    const way = wayOfKey(event);
    if (way === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    document[way]();
  };
  page.addEventListener("keydown", press, { capture: true });
  return () => page.removeEventListener("keydown", press, { capture: true });
}
