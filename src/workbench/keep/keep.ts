/**
 * Keeps what is shaped, in the browser, shortly after each change: several designs, with their files and lists of changes. A
 * page that finds its design written by another goes on with a copy, so that two pages never take each other's work.
 */
import { effect, type ReadonlySignal, signal } from "@preact/signals";
import type { Begun, Bench } from "../state/bench.js";
import type { DesignFiles } from "../state/design-files.js";
import type { ChangeHistory } from "../state/document.js";
import { fileKey, type KeepStore, type KeptDesign } from "./kept-design.js";
import { shortenHistory } from "./shorten-history.js";

/** How long changes are gathered before they are written, ms: what a crash may take. Chosen. */
const GATHERED = 300;

/** How long what was deleted can be brought back, ms: 30 days. Chosen. */
const KEPT_DELETED = 30 * 24 * 3600 * 1000;

/** What is wrong with the storage: no room in it, or none is given. */
export type Trouble = "full" | "forbidden";

/** What is to be written of a design. Nothing of it changes afterwards. */
interface Snapshot {
  readonly id: string;
  readonly text: string;
  readonly name: string;
  readonly files: DesignFiles;
  readonly history: ChangeHistory;
}

/** The parts of the bench that are kept. */
export type KeptBench = Pick<Bench, "document" | "id" | "files">;

export class Keep {
  /** The newest first; those that were deleted are among them. */
  readonly list: ReadonlySignal<readonly KeptDesign[]>;
  readonly trouble: ReadonlySignal<Trouble | undefined>;
  /** Whether something has changed that is not written yet. */
  readonly behind: ReadonlySignal<boolean>;
  /** Names of designs of which this page goes on with a copy, the newest last. */
  readonly copies: ReadonlySignal<readonly string[]>;
  readonly #list = signal<readonly KeptDesign[]>([]);
  readonly #trouble = signal<Trouble | undefined>(undefined);
  readonly #behind = signal(false);
  readonly #copies = signal<readonly string[]>([]);
  readonly #store: KeepStore;
  #bench: KeptBench | undefined;
  /** Design → the revision that this page read or wrote, and the files that are kept with it. */
  readonly #known = new Map<string, { readonly revision: string; readonly files: ReadonlySet<string> }>();
  readonly #bases = new Map<string, string>();
  #waiting: Snapshot | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #last: Promise<void> = Promise.resolve();

  constructor(store: KeepStore) {
    this.#store = store;
    this.list = this.#list;
    this.trouble = this.#trouble;
    this.behind = this.#behind;
    this.copies = this.#copies;
  }

  /** Keeps what changes on a bench from now on. @returns what ends that */
  follow(bench: KeptBench): () => void {
    this.#bench = bench;
    let [id, text] = ["", ""];
    return effect(() => {
      const snapshot = snapshotOf(bench);
      const isOther = snapshot.id !== id;
      if (isOther) void this.flush();
      const changed = !isOther && snapshot.text !== text;
      [id, text] = [snapshot.id, snapshot.text];
      if (changed || this.#known.has(id)) this.#wait(snapshot);
    });
  }

  /** Writes what waits, at once. */
  flush(): Promise<void> {
    const snapshot = this.#waiting;
    if (snapshot === undefined) return this.#last;
    this.#waiting = undefined;
    this.#last = this.#last.then(() => this.#write(snapshot));
    return this.#last;
  }

  /** Keeps the design that lies on the bench, changed or not. */
  keepNow(): Promise<void> {
    if (this.#bench !== undefined) this.#wait(snapshotOf(this.#bench));
    return this.flush();
  }

  /** Says what the design's file on the disk held when its text was read or saved. */
  setBase(id: string, digest: string): void {
    this.#bases.set(id, digest);
    if (this.#known.has(id) && this.#bench?.id.peek() === id) this.#wait(snapshotOf(this.#bench));
  }

  /** Looks anew which designs are kept. What was deleted long ago is taken away for good. */
  refresh(now = Date.now()): Promise<void> {
    return this.#try(async () => {
      const all = await this.#store.list();
      const isGone = ({ deleted }: KeptDesign) => deleted !== undefined && now - deleted > KEPT_DELETED;
      for (const design of all.filter(isGone)) await this.#store.remove(design);
      this.#list.value = all.filter((design) => !isGone(design)).sort((a, b) => b.at - a.at);
    });
  }

  /** A kept design, as it is put on the bench; undefined where it is gone or cannot be read. */
  async read(id: string): Promise<(Begun & { readonly base?: string | undefined }) | undefined> {
    let begun: (Begun & { base?: string | undefined }) | undefined;
    await this.flush();
    await this.#try(async () => {
      const design = await this.#store.get(id);
      if (design === undefined) return;
      const files = new Map<string, Uint8Array>();
      for (const name of design.files) {
        const bytes = await this.#store.part("file", fileKey(id, name));
        if (bytes instanceof Uint8Array) files.set(name, bytes);
      }
      const history = (await this.#store.part("history", id)) as ChangeHistory | undefined;
      this.#known.set(id, { revision: design.revision, files: new Set(files.keys()) });
      if (design.base !== undefined) this.#bases.set(id, design.base);
      begun = { id, text: design.text, files, history, base: design.base };
    });
    return begun;
  }

  /** Puts a design away; `bringBack` undoes it. */
  remove(id: string): Promise<void> {
    return this.#mark(id, Date.now());
  }

  bringBack(id: string): Promise<void> {
    return this.#mark(id, undefined);
  }

  /** Whether this page has kept a design, or read it where it was kept. */
  has(id: string): boolean {
    return this.#known.has(id);
  }

  /** Keeps a picture of a design that is kept, PNG. */
  keepPicture(id: string, png: Uint8Array): Promise<void> {
    return this.#try(async () => {
      if (this.#known.has(id)) await this.#store.putPart("picture", id, png);
    });
  }

  /** The picture of a design, PNG; undefined where there is none. */
  async picture(id: string): Promise<Uint8Array | undefined> {
    const picture = await this.#store.part("picture", id).catch(() => undefined);
    return picture instanceof Uint8Array ? picture : undefined;
  }

  /** The first change is written at once, those that follow it closely together. */
  #wait(snapshot: Snapshot): void {
    this.#waiting = snapshot;
    this.#behind.value = true;
    if (this.#timer !== undefined) return;
    void this.flush();
    this.#timer = setTimeout(() => {
      this.#timer = undefined;
      if (this.#waiting !== undefined) this.#wait(this.#waiting);
    }, GATHERED);
  }

  #write(snapshot: Snapshot): Promise<void> {
    return this.#try(async () => {
      await this.#writeDesign(snapshot);
      this.#trouble.value = undefined;
      if (this.#waiting === undefined) this.#behind.value = false;
      await this.refresh();
    });
  }

  /** Files first, so that no kept design names one that is not there. */
  async #writeDesign({ id, text, name, files, history }: Snapshot): Promise<void> {
    const known = this.#known.get(id);
    const kept = new Set(known?.files);
    for (const [file, bytes] of files) {
      if (!kept.has(file)) await this.#store.putPart("file", fileKey(id, file), bytes);
      kept.add(file);
    }
    const revision = crypto.getRandomValues(new Uint32Array(3)).join("-");
    const base = this.#bases.get(id);
    const design = { id, name, text, at: Date.now(), revision, files: [...kept], base };
    if (!(await this.#store.put(design, known?.revision))) return this.#writeCopy({ id, text, name, files, history });
    this.#known.set(id, { revision, files: kept });
    // A list that does not fit is no loss of work: the design itself is kept.
    await this.#store.putPart("history", id, shortenHistory(history)).catch(() => undefined);
  }

  /** Another page has written this design: both are kept. */
  async #writeCopy(snapshot: Snapshot): Promise<void> {
    const id = `${snapshot.id.replace(/\.\w+$/, "")}.${crypto.getRandomValues(new Uint32Array(1))[0].toString(36)}`;
    if (this.#bench?.id.peek() === snapshot.id) this.#bench.id.value = id;
    if (this.#waiting?.id === snapshot.id) this.#waiting = { ...this.#waiting, id };
    this.#copies.value = [...this.#copies.peek(), snapshot.name];
    await this.#writeDesign({ ...snapshot, id });
  }

  #mark(id: string, deleted: number | undefined): Promise<void> {
    return this.#try(async () => {
      await this.flush();
      const design = await this.#store.get(id);
      if (design === undefined) return;
      const revision = crypto.getRandomValues(new Uint32Array(3)).join("-");
      if (await this.#store.put({ ...design, revision, deleted }, design.revision)) {
        const known = this.#known.get(id);
        if (known?.revision === design.revision) this.#known.set(id, { ...known, revision });
      }
      await this.refresh();
    });
  }

  async #try(work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch (error) {
      this.#trouble.value = (error as DOMException | undefined)?.name === "QuotaExceededError" ? "full" : "forbidden";
    }
  }
}

function snapshotOf({ document, id, files }: KeptBench): Snapshot {
  const { name } = document.value.value;
  return {
    id: id.value,
    text: document.text.value,
    name: typeof name === "string" ? name : "",
    files: files.value,
    history: { changes: document.changes.value, at: document.at.value },
  };
}
