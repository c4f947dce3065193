/**
 * Who in the page waits for what from the worker.
 */
import type { Remote } from "comlink";
import { AnnuletError } from "../base/errors.js";
import type { Asker } from "../ring/asker.js";
import type { Answered, Extra, Page, Question, RingWorker } from "./messages.js";
import type { Hearing } from "./worker-setup.js";

interface Waiting {
  readonly onProgress: Asker["onProgress"];
  readonly reject: (reason: unknown) => void;
}

export class Switchboard {
  readonly remote: Remote<RingWorker>;
  /** What the worker tells and asks. */
  readonly page: Page;
  readonly #waiting = new Map<number, Waiting>();
  readonly #hearing = new Map<number, Hearing>();
  #next = 0;
  #lost: AnnuletError | undefined;

  constructor(remote: Remote<RingWorker>) {
    this.remote = remote;
    this.page = {
      progress: (question, progress) => this.#waiting.get(question)?.onProgress?.(progress),
      stage: (ring, stage, piece) => this.#hearing.get(ring)?.onStage?.(stage, piece as never),
      file: (ring, name) => this.#file(ring, name),
    };
  }

  /** A number that no ring and no question has. */
  number(): number {
    return this.#next++;
  }

  /** Who is asked for files of a ring, and told of its stages. */
  hear(ring: number, hearing: Hearing): void {
    this.#hearing.set(ring, hearing);
  }

  forget(ring: number): void {
    this.#hearing.delete(ring);
  }

  /**
   * @param opened once the ring is there
   * @throws the signal's reason; AnnuletError `worker-lost`; what the worker answers
   */
  async ask(
    ring: number,
    name: Question | Extra,
    given: readonly unknown[],
    { signal, onProgress }: Asker,
  ): Promise<unknown> {
    if (this.#lost !== undefined) throw this.#lost;
    signal?.throwIfAborted();
    const question = this.number();
    const answered = await new Promise<Answered>((resolve, reject) => {
      const stop = (): void => {
        reject(signal?.reason);
        this.remote.stop(question).catch(() => undefined);
      };
      signal?.addEventListener("abort", stop, { once: true });
      this.#waiting.set(question, { onProgress, reject });
      const done = (): void => {
        signal?.removeEventListener("abort", stop);
        this.#waiting.delete(question);
      };
      this.remote
        .ask(ring, question, name, given, onProgress !== undefined)
        .then(resolve, reject)
        .finally(done);
    });
    if ("error" in answered) throw AnnuletError.from(answered.error);
    return answered.value;
  }

  /** Nothing comes any more. */
  loseAll(reason: AnnuletError): void {
    this.#lost = reason;
    for (const { reject } of this.#waiting.values()) reject(reason);
    this.#waiting.clear();
  }

  async #file(ring: number, name: string) {
    const files = this.#hearing.get(ring)?.files;
    if (typeof files === "function") return files(name);
    return files !== undefined && Object.hasOwn(files, name) ? files[name] : undefined;
  }
}
