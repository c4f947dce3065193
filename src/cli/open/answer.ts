/**
 * What the page asks of the program: itself, its design, and the files that designs name.
 */
import type { IncomingMessage, ServerResponse } from "node:http";
import { AnnuletError } from "../../index.js";
import { MAX_DESIGN_BYTES } from "../design-file.js";
import { namesIn } from "../open-design.js";
import { artBytes } from "./art-on-disk.js";
import type { DesignOnDisk } from "./design-on-disk.js";
import { DATA_HEADERS } from "./page-headers.js";
import { readBody } from "./read-body.js";
import { type Admitted, admit, type Door } from "./refuse.js";

/** All that is served. */
export interface Offer {
  readonly door: Door;
  readonly html: string;
  readonly headers: Readonly<Record<string, string>>;
  /** Undefined for an empty start. */
  readonly design: DesignOnDisk | undefined;
  /** Writes art beside the design, as `writeArt`. */
  readonly art: (name: string, bytes: Uint8Array) => boolean;
  /** A file beside the design, by the name that a design gives it. @throws AnnuletError */
  readonly file: (name: string) => Uint8Array;
}

/** Endings of files that designs name. Others of the folder are handed out only where the saved design names them. */
const ART = /\.(svg|png|ttf|otf|woff2?)$/i;

/** Answers one request, whatever it is. @throws what is no answer but the server's end: Interrupted */
export async function answer(request: IncomingMessage, response: ServerResponse, offer: Offer): Promise<void> {
  const admitted = admit(request, offer.door);
  if ("status" in admitted) return refuse(response, admitted.status, admitted.message);
  try {
    await answerAdmitted(admitted, request, response, offer);
  } catch (error) {
    if (!(error instanceof AnnuletError)) {
      refuse(response, 500, "it could not be done");
      throw error;
    }
    sendProblems(response, error);
  }
}

async function answerAdmitted(
  { method, path }: Admitted,
  request: IncomingMessage,
  response: ServerResponse,
  offer: Offer,
): Promise<void> {
  const { design } = offer;
  if (path === "design" && design !== undefined) {
    if (method === "PUT") await saveDesign(design, request, response);
    else sendDesign(design, request, response);
  } else if (method === "PUT" && path.startsWith("files/")) {
    await saveArt(path.slice("files/".length), request, response, offer);
  } else if (method === "PUT") refuse(response, 405, "only the design and its art can be saved");
  else if (path === "") send(response, 200, offer.headers, offer.html);
  else if (path.startsWith("files/")) sendFile(path.slice("files/".length), response, offer);
  else refuse(response, 404, "there is nothing here");
}

function sendDesign(design: DesignOnDisk, request: IncomingMessage, response: ServerResponse): void {
  const { bytes, digest } = design.read();
  const headers = { ...DATA_HEADERS, "content-type": "application/json", etag: tagOf(digest) };
  if (request.headers["if-none-match"] === headers.etag) send(response, 304, headers);
  else send(response, 200, headers, bytes);
}

/** By RFC 9110: `If-Match` names what may be replaced, `If-None-Match: *` says that nothing may stand there. */
async function saveDesign(design: DesignOnDisk, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const { "if-match": match, "if-none-match": none } = request.headers;
  const expected = /^"([0-9a-f]{64})"$/.exec(match ?? "")?.[1];
  if (expected === undefined && none !== "*") return refuse(response, 428, "say what is to be replaced: If-Match");
  const body = await readBody(request, MAX_DESIGN_BYTES);
  if (body === undefined) return refuse(response, 413, `at most ${MAX_DESIGN_BYTES} bytes`);
  if (!isText(body)) return refuse(response, 400, "a design is text in UTF-8");
  const saved = await design.write(body, expected);
  if ("digest" in saved) return send(response, 204, { ...DATA_HEADERS, etag: tagOf(saved.digest) });
  const now = saved.changedTo === undefined ? undefined : { etag: tagOf(saved.changedTo) };
  send(response, 412, { ...DATA_HEADERS, ...now }, "the file is another by now");
}

/** Art that the saved design names, where no file has its name: said by `If-None-Match: *`, so that no page expects otherwise. */
async function saveArt(
  encoded: string,
  request: IncomingMessage,
  response: ServerResponse,
  { design, art }: Offer,
): Promise<void> {
  const name = decode(encoded);
  const most = name === undefined ? undefined : artBytes(name);
  if (name === undefined || most === undefined) return refuse(response, 403, "no plain name of art");
  if (request.headers["if-none-match"] !== "*") return refuse(response, 428, "art is only added: If-None-Match: *");
  if (!isNamed(name, design)) return refuse(response, 403, "the saved design does not name it");
  const body = await readBody(request, most);
  if (body === undefined) return refuse(response, 413, `at most ${most} bytes`);
  try {
    if (art(name, body)) send(response, 204, DATA_HEADERS);
    else refuse(response, 412, "another file has that name");
  } catch {
    refuse(response, 507, "it could not be written");
  }
}

function sendFile(encoded: string, response: ServerResponse, { design, file }: Offer): void {
  const name = decode(encoded);
  if (name === undefined) refuse(response, 400, "no name");
  else if (!ART.test(name) && !isNamed(name, design)) refuse(response, 403, "no file that designs name");
  else send(response, 200, { ...DATA_HEADERS, "content-type": "application/octet-stream" }, file(name));
}

/** Whether the saved design names a file. */
function isNamed(name: string, design: DesignOnDisk | undefined): boolean {
  return design !== undefined && namesIn(new TextDecoder().decode(design.read().bytes)).includes(name);
}

function decode(text: string): string | undefined {
  try {
    return decodeURIComponent(text);
  } catch {
    return undefined;
  }
}

function isText(bytes: Uint8Array): boolean {
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

function tagOf(digest: string): string {
  return `"${digest}"`;
}

/** Problems as the program prints them with --json. */
function sendProblems(response: ServerResponse, { code, problems }: AnnuletError): void {
  const status = code === "file-missing" ? 404 : 403;
  const headers = { ...DATA_HEADERS, "content-type": "application/json" };
  send(response, status, headers, JSON.stringify({ errors: problems }));
}

function refuse(response: ServerResponse, status: number, message: string): void {
  // What the request still sends is not read.
  send(
    response,
    status,
    { ...DATA_HEADERS, "content-type": "text/plain; charset=utf-8", connection: "close" },
    message,
  );
}

function send(
  response: ServerResponse,
  status: number,
  headers: Readonly<Record<string, string>>,
  body?: string | Uint8Array,
): void {
  response.writeHead(status, headers).end(body);
}
