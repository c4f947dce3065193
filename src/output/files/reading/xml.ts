/**
 * Reads XML tag by tag, without a tree. Entities of documents' own are never expanded.
 */
import { SaxesParser, type SaxesTagNS } from "saxes";
import type { Broken } from "./reader.js";

export interface Tag {
  /** Without its prefix. */
  readonly name: string;
  readonly namespace: string;
  /** An attribute without a prefix. */
  attribute(name: string): string | undefined;
  /** The same of a namespace. */
  attributeOf(namespace: string, name: string): string | undefined;
  /** The namespace that a prefix stands for here. */
  namespaceOf(prefix: string): string | undefined;
}

export interface TagHandler {
  open(tag: Tag): void;
  close(name: string): void;
}

/** Bytes decoded at once. */
const PIECE = 1 << 16;

/**
 * Elements may lie so deep in each other. The library looks through all that are open for a namespace, so its time would
 * grow with their square. Chosen: a 3MF model has 6.
 */
const MOST_DEPTH = 256;

/** @param what the document, for errors */
export function readXml(bytes: Uint8Array, what: string, handler: TagHandler, broken: Broken): void {
  const parser = new SaxesParser({ xmlns: true, position: true });
  parser.on("error", (error) => {
    throw broken(`${what}: ${error.message}`, error);
  });
  let depth = 0;
  parser.on("opentag", (tag) => {
    depth++;
    if (depth > MOST_DEPTH) throw broken(`${what}: its elements lie more than ${MOST_DEPTH} deep in each other`);
    handler.open(tagOf(tag, parser));
  });
  parser.on("closetag", (tag) => {
    depth--;
    handler.close(tag.local);
  });
  const decoder = new TextDecoder("utf-8", { fatal: true });
  for (let at = 0; at < bytes.length; at += PIECE) {
    parser.write(decode(decoder, bytes.subarray(at, at + PIECE), what, broken));
  }
  parser.close();
}

function tagOf(tag: SaxesTagNS, parser: SaxesParser<{ xmlns: true }>): Tag {
  return {
    name: tag.local,
    namespace: tag.uri,
    attribute: (name) => tag.attributes[name]?.value,
    attributeOf: (namespace, name) =>
      Object.values(tag.attributes).find(({ local, uri }) => local === name && uri === namespace)?.value,
    namespaceOf: (prefix) => parser.resolve(prefix),
  };
}

function decode(decoder: TextDecoder, piece: Uint8Array, what: string, broken: Broken): string {
  try {
    return decoder.decode(piece, { stream: true });
  } catch (cause) {
    throw broken(`${what} is not UTF-8`, cause);
  }
}
