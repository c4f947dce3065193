/**
 * The lines that tell of files and storage, with their buttons.
 */
import { useBench } from "../state/bench.js";
import { say } from "../words/language.js";
import type { Note } from "./notes.js";

export function NoteList() {
  const { notes } = useBench();
  return (
    <div class="notes" role="status" aria-live="polite">
      {notes.all.value.map((note) => (
        <NoteLine key={note.name} note={note} />
      ))}
    </div>
  );
}

function NoteLine({ note }: { readonly note: Note }) {
  const { notes } = useBench();
  const { name, kind, text, values, choices = [] } = note;
  return (
    <p class={`note note-${kind}`} data-note={name}>
      <span>{say(text, values)}</span>
      {choices.map(({ text, take }) => (
        <button
          key={text}
          type="button"
          onClick={() => {
            notes.drop(name);
            take();
          }}
        >
          {say(text)}
        </button>
      ))}
      <button type="button" aria-label={say("note.put-away")} onClick={() => notes.drop(name)}>
        ×
      </button>
    </p>
  );
}
