/**
 * The design's own file, where `annulet open` serves the page: read from the program, and saved by it unless the file has
 * become another meanwhile.
 */
import { type ReadonlySignal, signal } from "@preact/signals";

/** A file's content with its digest, which the program gives as the ETag. */
export interface Loaded {
  readonly text: string;
  readonly digest: string;
}

/** What came of saving: the file is written; it is another than was read; it is gone; the program does not answer. */
export type SaveOutcome = "saved" | "changed" | "gone" | "refused" | "no-answer";

/** What sends requests; the page's `fetch`. */
export type Send = (path: string, how?: RequestInit) => Promise<Response>;

export class DiskDesign {
  /** The file's name. */
  readonly name: string;
  /** What the file held when it was read or saved last. */
  readonly saved: ReadonlySignal<Loaded | undefined>;
  readonly #saved = signal<Loaded | undefined>(undefined);
  readonly #send: Send;

  constructor(name: string, send: Send) {
    this.name = name;
    this.#send = send;
    this.saved = this.#saved;
  }

  /** What the file holds; undefined where it is gone or the program does not answer. */
  async load(): Promise<Loaded | undefined> {
    const answered = await this.#send("design", { cache: "no-store" }).catch(() => undefined);
    const digest = answered?.headers.get("etag");
    if (answered?.ok !== true || digest == null) return undefined;
    return { text: await answered.text(), digest };
  }

  /** Takes this content as the one that the page goes on from. */
  goOnFrom(loaded: Loaded): void {
    this.#saved.value = loaded;
  }

  /** Writes the file where it still is what the page goes on from. */
  async save(text: string): Promise<SaveOutcome> {
    const before = this.#saved.peek();
    const over: Record<string, string> =
      before === undefined ? { "if-none-match": "*" } : { "if-match": before.digest };
    const answered = await this.#send("design", { method: "PUT", body: text, headers: over }).catch(() => undefined);
    if (answered === undefined) return "no-answer";
    const digest = answered.headers.get("etag");
    if (answered.ok && digest !== null) {
      this.#saved.value = { text, digest };
      return "saved";
    }
    if (answered.status !== 412) return "refused";
    return digest === null ? "gone" : "changed";
  }

  /** Writes over whatever stands there now. */
  async saveOver(text: string): Promise<SaveOutcome> {
    this.#saved.value = await this.load();
    return this.save(text);
  }

  /** The file's new content where another program has written it since; undefined where it has not, or nothing is known. */
  async changed(): Promise<Loaded | undefined> {
    const now = await this.load();
    return now === undefined || now.digest === this.#saved.peek()?.digest ? undefined : now;
  }

  /** Writes art beside the design, where no other file has its name and the saved design names it. @returns whether it stands there now */
  async addFile(name: string, bytes: Uint8Array): Promise<boolean> {
    const how = { method: "PUT", body: bytes as Uint8Array<ArrayBuffer>, headers: { "if-none-match": "*" } };
    const answered = await this.#send(`files/${encodeURIComponent(name)}`, how).catch(() => undefined);
    return answered?.ok === true;
  }

  /** A file beside the design; undefined where there is none. */
  async file(name: string): Promise<Uint8Array | undefined> {
    const answered = await this.#send(`files/${encodeURIComponent(name)}`).catch(() => undefined);
    return answered?.ok === true ? new Uint8Array(await answered.arrayBuffer()) : undefined;
  }
}
