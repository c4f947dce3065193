/**
 * The way to Redis: there within some seconds at the start, waited for with a bound and told when it goes away later.
 */
import { setTimeout as sleep } from "node:timers/promises";
import type { Redis } from "ioredis";
import { AnnuletError } from "../../../base/errors.js";
import { VERSION } from "../../../base/version.js";
import { type QueueAddress, readQueueAddress } from "./queue-address.js";

/** Under which name all ranges of one version stand: a worker makes what its own version would. */
export const QUEUE_NAME = `ranges-${VERSION}`;

/** What all keys in Redis begin with. */
export const PREFIX = "annulet";

export interface LinkSetup {
  /** Address of the Redis server. */
  readonly queue: string;
  /** Its password, where the address has none. */
  readonly queuePassword?: string | undefined;
  /** Seconds that are waited for a Redis that has gone away. Default 300. */
  readonly queueWait?: number | undefined;
  /** Is told what a user should know: Redis away and back, no worker there. */
  readonly onNews?: ((text: string) => void) | undefined;
}

/** Seconds; chosen: a server that is started again takes some, one that is moved some minutes. */
export const QUEUE_DEFAULTS = { wait: 300, lostAfter: 30 } as const;

/** Most seconds for the first answer. Chosen. */
const AT_START = 5;

/** For the end, ms. Chosen. */
const CLOSE_MS = 3000;

/** Between two tries, ms. */
const AGAIN_MS = 500;

export class QueueLink {
  readonly client: Redis;
  readonly #address: QueueAddress;
  readonly #setup: LinkSetup;
  readonly #over = new AbortController();
  #patience: NodeJS.Timeout | undefined;
  #closed = false;
  #reason = "it does not answer";

  /** The queue's library makes connections of its own as copies of this one: noted here, so that they can be cut with it. */
  readonly #copies: Redis[] = [];

  private constructor(client: Redis, address: QueueAddress, setup: LinkSetup) {
    const duplicate = client.duplicate.bind(client);
    this.client = Object.assign(client, {
      duplicate: (...told: Parameters<Redis["duplicate"]>) => {
        const copy = duplicate(...told);
        this.#copies.push(copy);
        return copy;
      },
    });
    this.#address = address;
    this.#setup = setup;
  }

  /** @throws AnnuletError `queue-invalid`, `queue-away`; the signal's reason */
  static async open(setup: LinkSetup, signal?: AbortSignal): Promise<QueueLink> {
    const address = readQueueAddress(setup.queue);
    const { Redis } = await import("./library.js");
    const { queuePassword: password } = setup;
    const client = new Redis(address.url, {
      ...(password === undefined || new URL(address.url).password !== "" ? {} : { password }),
      lazyConnect: true,
      // What is asked while Redis is away is asked once it is back; how long that may take is bounded here.
      maxRetriesPerRequest: null,
      retryStrategy: () => AGAIN_MS,
    });
    const link = new QueueLink(client, address, setup);
    client.on("error", (error: Error) => link.#noteReason(error));
    try {
      await link.#firstAnswer(signal);
    } catch (error) {
      link.close();
      throw error;
    }
    client.on("close", () => link.#goneAway());
    client.on("ready", () => link.#isBack());
    return link;
  }

  /** Is aborted, with an AnnuletError `queue-away`, once Redis was away for too long. */
  get over(): AbortSignal {
    return this.#over.signal;
  }

  get shown(): string {
    return this.#address.shown;
  }

  close(): void {
    this.#closed = true;
    clearTimeout(this.#patience);
    for (const client of [this.client, ...this.#copies]) client.disconnect();
  }

  /**
   * Ends in good order what uses it, where Redis is there, within some seconds; then cuts all connections.
   *
   * @param work what is waited for; is told whether Redis is there
   */
  async closeAfter(work: (isThere: boolean) => Promise<unknown>): Promise<void> {
    const isThere = this.client.status === "ready";
    const done = work(isThere).catch(() => {});
    if (isThere) await Promise.race([done, sleep(CLOSE_MS, undefined, { ref: false })]);
    this.close();
  }

  #firstAnswer(signal: AbortSignal | undefined): Promise<void> {
    const seconds = Math.min(AT_START, this.#setup.queueWait ?? AT_START);
    return new Promise((resolve, reject) => {
      const timer = setTimeout(() => end(() => reject(this.#away(seconds))), 1000 * seconds);
      const stop = () => end(() => reject(signal?.reason));
      const end = (settle: () => void) => {
        clearTimeout(timer);
        signal?.removeEventListener("abort", stop);
        settle();
      };
      signal?.addEventListener("abort", stop);
      this.client.once("ready", () => end(resolve));
      // What is wrong the client's own errors tell.
      this.client.connect().catch(() => {});
    });
  }

  #noteReason({ message }: Error): void {
    if (message !== "") this.#reason = message;
  }

  #goneAway(): void {
    if (this.#closed || this.#patience !== undefined) return;
    const { queueWait = QUEUE_DEFAULTS.wait, onNews } = this.#setup;
    onNews?.(`${this.shown} is away; waiting for it, ${queueWait} s at most`);
    this.#patience = setTimeout(() => this.#over.abort(this.#away(queueWait)), 1000 * queueWait);
  }

  #isBack(): void {
    if (this.#patience === undefined) return;
    clearTimeout(this.#patience);
    this.#patience = undefined;
    this.#setup.onNews?.(`${this.shown} is back`);
  }

  #away(seconds: number): AnnuletError {
    return new AnnuletError({
      code: "queue-away",
      message: `Redis is not there, at ${this.shown}, within ${seconds} s: ${this.#reason}`,
      path: "queue",
      value: this.shown,
      hint: "start it, or look at its address and password; what was made stays, and the same command goes on from there",
    });
  }
}
