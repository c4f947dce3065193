/**
 * Where the queue is: the address of a Redis server.
 */
import { AnnuletError } from "../../../base/errors.js";

export interface QueueAddress {
  readonly url: string;
  /** The same without user, password and options, for messages. */
  readonly shown: string;
}

/** @param text `redis://host:6379`, `rediss://` over TLS; `/1` behind it is another database @throws AnnuletError `queue-invalid` */
export function readQueueAddress(text: string): QueueAddress {
  const url = URL.canParse(text) ? new URL(text) : undefined;
  if (url === undefined || !SCHEMES.includes(url.protocol) || url.hostname === "" || !DATABASE.test(url.pathname)) {
    throw new AnnuletError({
      code: "queue-invalid",
      message: "is no address of a Redis server",
      path: "queue",
      // Never a password.
      value: url === undefined ? undefined : shownOf(url),
      allowed: "redis://host:port or rediss://host:port, with user:password@ before the host and /number of a database",
    });
  }
  return { url: text, shown: shownOf(url) };
}

const SCHEMES = ["redis:", "rediss:"];

const DATABASE = /^(\/\d{0,4})?$/;

function shownOf({ protocol, host, pathname }: URL): string {
  return `${protocol}//${host}${pathname === "/" ? "" : pathname}`;
}
