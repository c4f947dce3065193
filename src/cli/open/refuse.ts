/**
 * Who may ask the program's server: the page that it served, and nobody else. Other pages of the same browser can send
 * requests to this machine too, under names that lead here.
 */
import { timingSafeEqual } from "node:crypto";
import type { IncomingMessage } from "node:http";

/** What a request must know. */
export interface Door {
  /** The one host under which the server answers: `127.0.0.1:40123`. */
  readonly host: string;
  /** Stands first in every path. */
  readonly token: string;
}

/** Why a request is not answered. */
export interface Refusal {
  readonly status: number;
  readonly message: string;
}

/** What is asked of whoever may ask. */
export interface Admitted {
  readonly method: "GET" | "PUT";
  /** Behind the token, as sent: not decoded. */
  readonly path: string;
}

/**
 * Admits a request or says why not. A changed name server may lead any host here, so the host is compared; pages of other
 * origins are told by `Origin` and `Sec-Fetch-Site`; programs that send neither have to know the token.
 */
export function admit(request: Pick<IncomingMessage, "method" | "url" | "headers">, door: Door): Admitted | Refusal {
  const { method = "", url = "", headers } = request;
  if (headers.host !== door.host) return { status: 421, message: "this server answers under its own address alone" };
  const { origin } = headers;
  if (origin !== undefined && origin !== `http://${door.host}`)
    return { status: 403, message: "asked by another page" };
  const site = headers["sec-fetch-site"];
  if (site !== undefined && site !== "same-origin" && site !== "none" && !isLedHere(headers)) {
    return { status: 403, message: "asked by another site" };
  }
  if (method !== "GET" && method !== "PUT") return { status: 405, message: "GET and PUT are answered" };
  if (method === "PUT" && origin === undefined) return { status: 403, message: "only the page itself may save" };
  const [, token = "", ...rest] = url.replace(/[?#].*$/s, "").split("/");
  if (!isSame(token, door.token) || rest.length === 0) return { status: 404, message: "there is nothing here" };
  return { method, path: rest.join("/") };
}

/**
 * Whether a window of its own was led here, as by the page that `annulet open` writes into a file: whoever led it knows the
 * token and sees nothing of what is answered. What is shown inside another page is none.
 */
function isLedHere(headers: IncomingMessage["headers"]): boolean {
  return headers["sec-fetch-mode"] === "navigate" && headers["sec-fetch-dest"] === "document";
}

/** In a time that tells nothing of how much was right. */
function isSame(given: string, token: string): boolean {
  const [a, b] = [Buffer.from(given), Buffer.from(token)];
  return a.length === b.length && timingSafeEqual(a, b);
}
