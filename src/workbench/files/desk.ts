/**
 * What is done with whole designs: opened, taken in with their art, kept, saved, downloaded. It tells the maker what came of it.
 */
import { batch, computed, effect, type ReadonlySignal, signal } from "@preact/signals";
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { AnnuletError } from "../../entries/worker.js";
import type { Keep } from "../keep/keep.js";
import type { Note } from "../notes/notes.js";
import type { Bench } from "../state/bench.js";
import { type ArtPlace, regionsWith, regionsWithDropped } from "./art-region.js";
import type { DiskDesign, Loaded } from "./disk-design.js";
import { type DownloadKind, fileStem, makeDownload } from "./downloads.js";
import { type Dropped, isDesignText, type Refused, takeIn } from "./take-in.js";
import { textFor } from "./texts-of.js";

/** What a design is kept under that is a file on the disk. */
export const ON_DISK = "on-disk";

/** A download that is being made. */
export interface Making {
  readonly kind: DownloadKind;
  /** 0 to 1. */
  readonly share: number;
  readonly stop: () => void;
}

/** How bytes reach the maker. */
export type HandOver = (name: string, bytes: Uint8Array) => void;

export class Desk {
  readonly bench: Bench;
  readonly keep: Keep;
  /** The design's own file, where the program serves the page. */
  readonly disk: DiskDesign | undefined;
  /** Whether the design on the bench is the one on the disk. */
  readonly isDisk: ReadonlySignal<boolean>;
  /** Whether the file on the disk is behind the page. */
  readonly unsaved: ReadonlySignal<boolean>;
  /** Whether work would be lost with the page. */
  readonly atRisk: ReadonlySignal<boolean>;
  readonly making: ReadonlySignal<Making | undefined>;
  readonly #making = signal<Making | undefined>(undefined);
  readonly #downloaded = signal<string | undefined>(undefined);
  readonly #handOver: HandOver;
  /** Names of art that stands beside the file by now. */
  readonly #written = new Set<string>();

  constructor(bench: Bench, keep: Keep, disk: DiskDesign | undefined, handOver: HandOver) {
    this.bench = bench;
    this.keep = keep;
    this.disk = disk;
    this.#handOver = handOver;
    this.making = this.#making;
    const { text } = bench.document;
    this.isDisk = computed(() => disk !== undefined && bench.id.value === ON_DISK);
    this.unsaved = computed(() => this.isDisk.value && text.value !== disk?.saved.value?.text);
    this.atRisk = computed(() => {
      if (text.value === this.#downloaded.value) return false;
      return this.unsaved.value || (keep.trouble.value !== undefined && keep.behind.value);
    });
  }

  /** Tells of what the storage does. @returns what ends that */
  follow(): () => void {
    const { notes } = this.bench;
    const ends = [
      effect(() => {
        const trouble = this.keep.trouble.value;
        if (trouble === undefined) notes.drop("storage");
        else notes.tell({ name: "storage", text: `keep.${trouble}`, kind: "trouble", choices: [this.#rescue()] });
      }),
      effect(() => {
        const copies = this.keep.copies.value;
        if (copies.length > 0) notes.tell({ name: "copy", text: "keep.copy", kind: "trouble" });
      }),
    ];
    return () => {
      for (const end of ends) end();
    };
  }

  /**
   * Takes designs and art that were opened, dropped or pasted.
   *
   * @param onto where on the tile; default a region that fills it
   */
  async takeFiles(dropped: readonly Dropped[], onto?: ArtPlace): Promise<void> {
    const { bench } = this;
    const before = bench.files.peek();
    const taken = await takeIn(dropped, before);
    const files = bench.files.peek() === before ? taken.files : new Map([...bench.files.peek(), ...taken.files]);
    if (taken.design !== undefined) {
      await this.#begin(taken.design.text, files);
    } else if (taken.art.length > 0) this.#useArt(taken.art, files, onto);
    for (const { name, why } of taken.refused) this.#refuse(name, why);
  }

  /** Takes a text that was pasted; false where it is none of a design. */
  async takeText(text: string): Promise<boolean> {
    if (/^\s*<(\?xml|svg)/.test(text)) {
      await this.takeFiles([new File([text], "pasted.svg")]);
      return true;
    }
    if (!isDesignText(text)) return false;
    await this.#begin(text, this.bench.files.peek());
    return true;
  }

  /** Puts a kept design on the bench. */
  async openKept(id: string): Promise<void> {
    if (id === this.bench.id.peek()) return;
    const begun = await this.keep.read(id);
    if (begun === undefined) this.#tell({ name: "kept", text: "keep.unreadable", kind: "trouble" });
    else this.bench.begin(begun);
  }

  /** Puts a kept design away, with a way back. */
  async deleteKept(id: string, name: string): Promise<void> {
    await this.keep.remove(id);
    const back = { text: "keep.bring-back", take: () => void this.keep.bringBack(id) } as const;
    this.#tell({ name: "deleted", text: "keep.deleted", values: { name }, kind: "news", choices: [back] });
  }

  /** Writes the design's own file; where there is none the design is downloaded. */
  async save(): Promise<void> {
    const text = this.bench.document.text.peek();
    if (this.disk === undefined || !this.isDisk.peek()) return this.download("json");
    this.#saved(await this.disk.save(text), this.disk);
  }

  /** Looks whether another program has written the file. */
  async lookAtDisk(): Promise<void> {
    const theirs = this.isDisk.peek() ? await this.disk?.changed() : undefined;
    if (theirs !== undefined) this.#offerBoth(theirs);
  }

  /** Makes a file and hands it to the maker. One is made at a time. */
  async download(kind: DownloadKind): Promise<void> {
    const { answers, document, host } = this.bench;
    if (this.#making.peek() !== undefined) return;
    const stopper = new AbortController();
    const stop = (): void => stopper.abort();
    this.#making.value = { kind, share: 0, stop };
    const onProgress = ({ share }: { share: number }): void => {
      if (!stopper.signal.aborted) this.#making.value = { kind, share, stop };
    };
    const text = document.text.peek();
    const name = `${fileStem(document.value.peek().name)}.${kind}`;
    try {
      const source = { text, ring: answers.ring, library: host.peek().library };
      this.#handOver(name, await makeDownload(kind, source, { signal: stopper.signal, onProgress }));
      if (kind === "json") this.#downloaded.value = text;
      this.#tell({ name: "download", text: "file.downloaded", values: { name }, kind: "news" });
    } catch (error) {
      if (!stopper.signal.aborted) this.#tellFailed(name, error);
    } finally {
      this.#making.value = undefined;
    }
  }

  async #begin(text: string, files: Bench["files"]["value"]): Promise<void> {
    this.bench.begin({ text, files });
    await this.keep.keepNow();
  }

  #useArt(art: readonly string[], files: Bench["files"]["value"], onto: ArtPlace | undefined): void {
    const { bench } = this;
    batch(() => {
      bench.files.value = files;
      for (const name of art) this.#useOne(name, onto);
    });
  }

  /** A font goes to the text that is meant, a drawing or an image becomes a region; what the design names already is there now. */
  #useOne(name: string, onto: ArtPlace | undefined): void {
    const { document, selected } = this.bench;
    if (onto === undefined && document.sound.peek().includes(JSON.stringify(name))) return;
    const isFont = !/\.(svg|png)$/i.test(name);
    const text = isFont ? textFor(document.value.peek(), selected.peek()) : undefined;
    const regions = isFont ? undefined : regionsWith(document.value.peek(), name);
    if (onto !== undefined && !isFont) this.#placeArt(name, onto);
    else if (text !== undefined) document.set([...text, "font"], name);
    else if (regions !== undefined) document.set(["pattern", "regions"], regions);
    else
      this.#tell({ name: "art", text: isFont ? "file.font-here" : "file.art-here", values: { name }, kind: "trouble" });
  }

  /** A region of its own, where it was dropped, and chosen. */
  #placeArt(name: string, onto: ArtPlace): void {
    const { document, selected } = this.bench;
    const regions = regionsWithDropped(document.value.peek(), name, onto);
    document.set(onto.regions, regions);
    selected.value = [...onto.regions, regions.length - 1];
  }

  #saved(outcome: Awaited<ReturnType<DiskDesign["save"]>>, disk: DiskDesign): void {
    const { name } = disk;
    const digest = disk.saved.peek()?.digest;
    if (outcome === "saved" && digest !== undefined) {
      this.keep.setBase(ON_DISK, digest);
      this.bench.notes.drop("disk");
      this.#tell({ name: "saved", text: "disk.saved", values: { name }, kind: "news" });
      void this.#addArt(disk);
    } else if (outcome === "changed") void disk.load().then((theirs) => theirs && this.#offerBoth(theirs));
    else if (outcome === "gone") this.#offer("disk.gone", [this.#saveOver(disk)]);
    else this.#offer(`disk.${outcome === "refused" ? "refused" : "no-answer"}`, [this.#rescue()]);
  }

  /** Both are offered; neither is lost: what is taken from the disk is one more change, which can be undone. */
  #offerBoth(theirs: Loaded): void {
    const { disk } = this;
    if (disk === undefined) return;
    const take = (): void => {
      disk.goOnFrom(theirs);
      this.keep.setBase(ON_DISK, theirs.digest);
      this.bench.document.replace(theirs.text);
    };
    this.#offer("disk.changed", [this.#saveOver(disk), { text: "disk.take-theirs", take }]);
  }

  #saveOver(disk: DiskDesign) {
    const take = async (): Promise<void> => {
      this.#saved(await disk.saveOver(this.bench.document.text.peek()), disk);
    };
    return { text: "disk.save-mine", take: () => void take() } as const;
  }

  #offer(text: Note["text"], choices: Note["choices"]): void {
    this.#tell({ name: "disk", text, values: { name: this.disk?.name ?? "" }, kind: "trouble", choices });
  }

  /** Art that was dropped here is written beside the saved file; what cannot be there is told and can be downloaded. */
  async #addArt(disk: DiskDesign): Promise<void> {
    const text = this.bench.document.sound.peek();
    const loose: [string, Uint8Array][] = [];
    for (const [name, bytes] of this.bench.files.peek()) {
      // No name ever changes its bytes, so what was written once stands there.
      if (this.#written.has(name) || !text.includes(JSON.stringify(name))) continue;
      if (await disk.addFile(name, bytes)) this.#written.add(name);
      else loose.push([name, bytes]);
    }
    if (loose.length === 0) this.bench.notes.drop("loose");
    else this.#tellLoose(disk.name, loose);
  }

  #tellLoose(design: string, loose: readonly (readonly [string, Uint8Array])[]): void {
    const names = loose.map(([name]) => name).join(", ");
    const take = (): void => {
      for (const [name, bytes] of loose) this.#handOver(name, bytes);
    };
    const choices = [{ text: "file.download-art", take }] as const;
    this.#tell({ name: "loose", text: "disk.loose", values: { names, design }, kind: "trouble", choices });
  }

  #rescue() {
    return { text: "file.download-design", take: () => void this.download("json") } as const;
  }

  #refuse(name: string, why: Refused): void {
    this.#tell({ name: `refused ${name}`, text: `file.${why}`, values: { name }, kind: "trouble" });
  }

  #tellFailed(name: string, error: unknown): void {
    const reason = (error as AnnuletError).problems?.[0]?.message ?? String(error);
    this.#tell({ name: "download", text: "file.failed", values: { name, reason }, kind: "trouble" });
  }

  #tell(note: Note): void {
    this.bench.notes.tell(note);
  }
}

export const DeskContext = createContext<Desk | undefined>(undefined);

/** What is done with whole designs, for a component. */
export function useDesk(): Desk {
  const desk = useContext(DeskContext);
  if (desk === undefined) throw new Error("drawn without a desk");
  return desk;
}
