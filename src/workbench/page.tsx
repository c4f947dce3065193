/**
 * The page: three views of one thing, as in a drawing where what lies in line is the same length, with the fields beside them
 * and the numbers in the title block.
 */
import { ChangeList, ChangeTools } from "./changes/change-list.js";
import { type Desk, DeskContext } from "./files/desk.js";
import { FileBar, useTakingIn } from "./files/file-bar.js";
import { NoteList } from "./notes/note-list.js";
import { RingView } from "./ring/ring-view.js";
import { SectionView } from "./section/section-view.js";
import { Settings } from "./settings/settings.js";
import { SidePanel } from "./start/side-panel.js";
import { NewButton, Start } from "./start/start-view.js";
import { type Bench, BenchContext, useBench } from "./state/bench.js";
import { StripView } from "./strip/strip-view.js";
import { TextPanel } from "./text/text-panel.js";
import { TitleBlock } from "./title/title-block.js";
import { say } from "./words/language.js";

export function Page({ bench, desk }: { readonly bench: Bench; readonly desk: Desk }) {
  return (
    <BenchContext.Provider value={bench}>
      <DeskContext.Provider value={desk}>
        <Sheet />
        <Start />
      </DeskContext.Provider>
    </BenchContext.Provider>
  );
}

function Sheet() {
  useTakingIn();
  const { pending } = useBench().answers;
  return (
    <main class="sheet" aria-busy={pending.value}>
      <header class="sheet-tools">
        <NewButton />
        <FileBar />
        <ChangeTools />
        <Settings />
        <NoteList />
      </header>
      <section class="sheet-ring" aria-label={say("view.ring")}>
        <RingView />
      </section>
      <section class="sheet-section" aria-label={say("view.section")}>
        <SectionView />
      </section>
      <section class="sheet-strip" aria-label={say("view.strip")}>
        <StripView />
      </section>
      <aside class="sheet-fields">
        <SidePanel />
        <TextPanel />
        <ChangeList />
      </aside>
      <footer class="sheet-title">
        <TitleBlock />
      </footer>
    </main>
  );
}
