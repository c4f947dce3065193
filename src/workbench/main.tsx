/**
 * Starts the workbench in its page: the design that was worked on last, or the file that the program serves.
 */

import { effect } from "@preact/signals";
import font from "annulet/default-font.ttf?packed";
import harfbuzz from "annulet/harfbuzz.wasm?packed";
import manifold from "annulet/manifold.wasm?packed";
import { render } from "preact";
import { canCompile } from "./engine/can-compile.js";
import { markTimes } from "./engine/marks.js";
import { unpack } from "./engine/unpack.js";
import RingsWorker from "./engine/worker.js?worker&inline";
import { Desk } from "./files/desk.js";
import { DiskDesign } from "./files/disk-design.js";
import { firstDesign, tabSession } from "./files/first-design.js";
import { handOver } from "./files/hand-over.js";
import { OtherFiles } from "./files/other-files.js";
import { browserStore } from "./keep/browser-store.js";
import { Keep } from "./keep/keep.js";
import { keepPictures } from "./keep/keep-pictures.js";
import { Page } from "./page.js";
import { firstRing } from "./start/first-ring.js";
import { startShown } from "./start/start-state.js";
import { openBench } from "./state/bench.js";
import "./style/sheet.css";
import { language, preferred, say } from "./words/language.js";

async function start(): Promise<void> {
  language.value = preferred(navigator.languages);
  const disk = servedDesign();
  const keep = new Keep(browserStore());
  const session = tabSession(() => sessionStorage);
  const begun = await firstDesign(keep, disk, session);
  const others = new OtherFiles(font, disk);
  const compiles = canCompile();
  const wasm = compiles ? { manifold: await unpack(manifold), harfbuzz: await unpack(harfbuzz) } : undefined;
  const setup = { wasm, kernel: compiles ? undefined : ("bvh" as const), files: others.find };
  const bench = openBench({
    text: firstRing(say("start.name")),
    ...begun,
    startWorker: () => new RingsWorker(),
    setup,
  });
  const desk = new Desk(bench, keep, disk, handOver);
  if (!compiles) bench.notes.tell({ name: "wasm", text: "work.no-wasm", kind: "trouble" });
  keep.follow(bench);
  keepPictures(bench, keep);
  markTimes(bench);
  desk.follow();
  effect(() => session.set(bench.id.value));
  followWindow(desk, others);
  startShown.value = begun === undefined ? "first" : undefined;
  render(<Page bench={bench} desk={desk} />, document.body);
  await desk.lookAtDisk();
}

/** The file that the program serves, where it is the program that serves this page. */
function servedDesign(): DiskDesign | undefined {
  const named = document.querySelector<HTMLMetaElement>('meta[name="annulet-design"]');
  return named === null ? undefined : new DiskDesign(named.content, (path, how) => fetch(path, how));
}

/** The window's title, what is written before it goes, and what may have changed when the maker comes back to it. */
function followWindow(desk: Desk, others: OtherFiles): void {
  const { bench, keep, disk } = desk;
  effect(() => {
    const { name } = bench.document.value.value;
    const mark = desk.unsaved.value ? "● " : "";
    document.title = `${mark}${typeof name === "string" && name !== "" ? `${name} – ` : ""}annulet`;
  });
  const hold = (event: BeforeUnloadEvent): void => {
    event.preventDefault();
    void keep.flush();
  };
  // Only while work would be lost: a page that always listens is not kept for the way back.
  effect(() => {
    if (desk.atRisk.value) addEventListener("beforeunload", hold);
    else removeEventListener("beforeunload", hold);
  });
  addEventListener("pagehide", () => void keep.flush());
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") void keep.flush();
  });
  if (disk === undefined) return;
  addEventListener("focus", () => {
    others.forget();
    void desk.lookAtDisk();
  });
}

start().catch((reason: unknown) => {
  const line = document.createElement("p");
  line.setAttribute("role", "alert");
  line.textContent = say("start.failed", { reason: String(reason) });
  document.body.append(line);
  throw reason;
});
