/**
 * The text editor: the document's text and the editor's follow each other. It stands in a shadow root, so that its styles need
 * no leave of the page's policy. Its own undo is off: the document's list of changes is the one that counts.
 */
import {
  autocompletion,
  type CompletionContext,
  type CompletionResult,
  completionKeymap,
} from "@codemirror/autocomplete";
import { defaultKeymap } from "@codemirror/commands";
import { json } from "@codemirror/lang-json";
import { bracketMatching, HighlightStyle, indentOnInput, indentUnit, syntaxHighlighting } from "@codemirror/language";
import { lintGutter, setDiagnostics } from "@codemirror/lint";
import { Annotation, EditorState } from "@codemirror/state";
import { drawSelection, EditorView, hoverTooltip, keymap, lineNumbers, type Tooltip } from "@codemirror/view";
import { tags } from "@lezer/highlight";
import { effect } from "@preact/signals";
import { bookOf } from "../fields/use-fields.js";
import type { Bench } from "../state/bench.js";
import { placeOf } from "../state/json-text.js";
import { sayFieldHelp } from "../words/fields/say-field.js";
import { say } from "../words/language.js";
import { marksIn } from "./marks.js";
import { offersAt, referenceAt } from "./offers.js";
import { spotAt } from "./spot.js";
import { textAsked } from "./text-asked.js";
import { changeBetween } from "./text-diff.js";

/** Marks changes that come from the document, so that they do not go back to it. */
const fromDocument = Annotation.define<boolean>();

/** Opens an editor in an element; ends with what it gives. */
export function openEditor(parent: HTMLElement, bench: Bench): () => void {
  const root = parent.shadowRoot ?? parent.attachShadow({ mode: "open" });
  const state = EditorState.create({ doc: bench.document.text.peek(), extensions: extensionsFor(bench) });
  const view = new EditorView({ state, root, parent: root as never as Element });
  const unfollow = [
    effect(() => showText(view, bench.document.text.value)),
    effect(() => showMarks(view, bench)),
    effect(() => goToAsked(view, bench)),
  ];
  return () => {
    for (const end of unfollow) end();
    view.destroy();
  };
}

function extensionsFor(bench: Bench) {
  return [
    lineNumbers(),
    drawSelection(),
    json(),
    indentUnit.of("  "),
    indentOnInput(),
    bracketMatching(),
    lintGutter(),
    syntaxHighlighting(COLOURS),
    autocompletion({ override: [(context) => complete(context, bench)] }),
    hoverTooltip((_, offset) => hover(offset, bench)),
    keymap.of([...completionKeymap, ...defaultKeymap]),
    EditorView.lineWrapping,
    EditorView.contentAttributes.of({ "aria-label": say("panel.text") }),
    EditorView.updateListener.of(({ docChanged, transactions, state }) => {
      const isOwn = docChanged && !transactions.some((one) => one.annotation(fromDocument) === true);
      if (isOwn) bench.document.type(state.doc.toString());
    }),
    LOOK,
  ];
}

function showText(view: EditorView, text: string): void {
  const changes = changeBetween(view.state.doc.toString(), text);
  if (changes !== undefined) view.dispatch({ changes, annotations: fromDocument.of(true) });
}

function showMarks(view: EditorView, { document, answers }: Bench): void {
  const text = document.text.value;
  const marks = marksIn(text, document.misread.value, answers.problems.value);
  const diagnostics = marks.map((mark) => ({ ...mark, severity: "error" as const }));
  if (text === view.state.doc.toString()) view.dispatch(setDiagnostics(view.state, diagnostics));
}

function goToAsked(view: EditorView, { document }: Bench): void {
  const asked = textAsked.value;
  if (asked === undefined) return;
  const { from, to } = placeOf(document.text.peek(), asked.path);
  view.dispatch({ selection: { anchor: from, head: to }, effects: EditorView.scrollIntoView(from, { y: "center" }) });
  view.focus();
}

async function complete(context: CompletionContext, bench: Bench): Promise<CompletionResult | null> {
  const text = context.state.doc.toString();
  const isWord = context.matchBefore(/["\w.-]+/) !== null;
  if (!isWord && !context.explicit) return null;
  const spot = spotAt(text, context.pos);
  const offers = await offersAt(spot, bench.document.value.peek(), bookOf(bench));
  const options = offers.map(({ label, text: apply, detail, help }) => ({
    label: spot.at === "key" ? JSON.stringify(label) : label,
    displayLabel: label,
    apply,
    detail,
    info: help,
  }));
  return { from: spot.from, to: spot.to, options };
}

async function hover(offset: number, bench: Bench): Promise<Tooltip | null> {
  const { path, from, to, at } = spotAt(bench.document.text.peek(), offset);
  const key = at === "key" ? bench.document.text.peek().slice(from, to).replaceAll('"', "") : undefined;
  const reference = await referenceAt(key === undefined ? path : [...path, key], bookOf(bench));
  if (reference === undefined) return null;
  return {
    pos: from,
    end: to,
    create: () => {
      const dom = document.createElement("div");
      dom.textContent = `${reference.path}: ${sayFieldHelp(reference)}`;
      return { dom };
    },
  };
}

const COLOURS = HighlightStyle.define([
  { tag: tags.propertyName, color: "var(--ink)" },
  { tag: tags.string, color: "var(--accent)" },
  { tag: [tags.number, tags.bool, tags.null], color: "var(--accent)", fontWeight: "600" },
  { tag: tags.punctuation, color: "var(--ink-soft)" },
]);

const LOOK = EditorView.theme({
  "&": { backgroundColor: "var(--paper-raised)", color: "var(--ink)", fontSize: "var(--small)", height: "100%" },
  ".cm-scroller": { fontFamily: "var(--typewritten)", overflow: "auto" },
  ".cm-content": { caretColor: "var(--ink)" },
  "&.cm-focused": { outline: "0.1875rem solid var(--accent)" },
  ".cm-gutters": {
    backgroundColor: "var(--paper-sunk)",
    color: "var(--ink-soft)",
    borderRight: "1px solid var(--line-faint)",
  },
  ".cm-cursor": { borderLeftColor: "var(--ink)" },
  "&.cm-focused > .cm-scroller > .cm-selectionLayer .cm-selectionBackground": { backgroundColor: "var(--accent-soft)" },
  ".cm-selectionBackground": { backgroundColor: "var(--accent-soft)" },
  ".cm-tooltip": {
    backgroundColor: "var(--paper-raised)",
    color: "var(--ink)",
    border: "1px solid var(--line)",
    maxWidth: "22rem",
    padding: "0.25rem",
    fontFamily: "var(--lettering)",
  },
  ".cm-tooltip-autocomplete ul li[aria-selected]": { backgroundColor: "var(--accent-soft)", color: "var(--ink)" },
  ".cm-completionDetail": { color: "var(--ink-soft)" },
  ".cm-diagnostic-error": { borderLeftColor: "var(--chalk)" },
});
