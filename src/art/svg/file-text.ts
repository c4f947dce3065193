/**
 * Bytes of an SVG file → its text: unpacked where it is a .svgz, decoded as its byte order mark or declaration says.
 * XML 1.0 (Fifth Edition), 4.3.3 and appendix F; labels of encodings as in the WHATWG's Encoding standard.
 */
import { AnnuletError } from "../../base/errors.js";
import { isGzip, unpackGzip } from "./gzip.js";

/** Encodings that are read, by the names that declarations give them, small letters. */
const READ = /^(?:utf-?8|us-ascii|ascii|utf-16(?:le|be)?|latin1|iso-8859-\d{1,2}|windows-125\d)$/;

/** Letters at the beginning of a file among which the declaration stands. Chosen. */
const HEAD = 200;

const DECLARED = /^<\?xml\s[^>]*?encoding\s*=\s*["']([\w.:-]+)["']/;

/**
 * The text of a file; text as it is.
 *
 * @param where the file's place in the document, for errors
 * @throws AnnuletError `svg-encoding`, and as `unpackGzip`
 */
export function fileText(content: string | Uint8Array, where: string): string {
  if (typeof content === "string") return content;
  const bytes = isGzip(content) ? unpackGzip(content, where) : content;
  const encoding = encodingOf(bytes);
  const refuse = (message: string, cause?: unknown) =>
    new AnnuletError(
      {
        code: "svg-encoding",
        message: `the SVG file ${message}`,
        path: where,
        value: encoding,
        allowed: "UTF-8, UTF-16, US-ASCII, ISO-8859 or windows-125x, as the file declares",
        hint: "save the drawing again in UTF-8",
      },
      { cause },
    );
  if (!READ.test(encoding)) throw refuse(`is declared to be in ${encoding}, which is not read`);
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch (cause) {
    throw refuse(`is not text in ${encoding.toUpperCase()}`, cause);
  }
}

function encodingOf(bytes: Uint8Array): string {
  const [a, b, c] = bytes;
  if (a === 0xef && b === 0xbb && c === 0xbf) return "utf-8";
  // A byte order mark, or the < that every file begins with.
  if ((a === 0xff && b === 0xfe) || (a === 0x3c && b === 0)) return "utf-16le";
  if ((a === 0xfe && b === 0xff) || (a === 0 && b === 0x3c)) return "utf-16be";
  const head = String.fromCharCode(...bytes.subarray(0, HEAD));
  const declared = DECLARED.exec(head)?.[1].toLowerCase() ?? "utf-8";
  // What can be read byte by byte is not UTF-16, whatever it says of itself: some other program has converted it.
  return declared.startsWith("utf-16") ? "utf-8" : declared;
}
