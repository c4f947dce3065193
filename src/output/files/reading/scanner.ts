/**
 * Goes through the bytes of a text word by word, with no string made on the way.
 */
import { asciiText, readDecimal } from "./read-decimal.js";

const TAB = 9;
const LINE_FEED = 10;
const RETURN = 13;
const SPACE = 32;
const BACKSLASH = 92;

/** Letters of a word that are shown in an error. */
const WORD_SHOWN = 40;

export class Scanner {
  /** Where the next byte is read. */
  at = 0;
  /** The word found last: from here … */
  start = 0;
  /** … to here. */
  end = 0;

  constructor(readonly bytes: Uint8Array) {}

  get done(): boolean {
    return this.at >= this.bytes.length;
  }

  /** Finds the next word, on this line or later; false at the end. */
  nextWord(): boolean {
    while (this.at < this.bytes.length && this.bytes[this.at] <= SPACE) this.at++;
    return this.takeWord();
  }

  /** Finds the next word of this line; false where the line has no more. A backslash at a line's end joins the next line. */
  nextWordOfLine(): boolean {
    for (; this.at < this.bytes.length; this.at++) {
      const byte = this.bytes[this.at];
      if (byte === BACKSLASH && this.endsLine(this.at + 1)) {
        this.at++;
        if (this.bytes[this.at] === RETURN && this.bytes[this.at + 1] === LINE_FEED) this.at++;
      } else if (byte !== SPACE && byte !== TAB) break;
    }
    if (this.endsLine(this.at)) return false;
    return this.takeWord();
  }

  /** Goes to the beginning of the next line. */
  nextLine(): void {
    while (!this.endsLine(this.at)) {
      if (this.bytes[this.at] === BACKSLASH && this.endsLine(this.at + 1)) this.at++;
      this.at++;
    }
    this.at++;
  }

  /** Whether the word is this one, small or capital letters. */
  isWord(word: Uint8Array): boolean {
    if (this.end - this.start !== word.length) return false;
    for (let i = 0; i < word.length; i++) {
      if ((this.bytes[this.start + i] | SPACE) !== word[i]) return false;
    }
    return true;
  }

  /** The word as a number; NaN where it is none. */
  number(): number {
    return readDecimal(this.bytes, this.start, this.end);
  }

  /** The word, for an error. */
  word(): string {
    return asciiText(this.bytes, this.start, Math.min(this.end, this.start + WORD_SHOWN));
  }

  /** Number of the line that is read, from 1. */
  line(): number {
    let line = 1;
    for (let i = 0; i < this.start; i++) if (this.bytes[i] === LINE_FEED) line++;
    return line;
  }

  private takeWord(): boolean {
    this.start = this.at;
    while (this.at < this.bytes.length && this.bytes[this.at] > SPACE) this.at++;
    this.end = this.at;
    return this.end > this.start;
  }

  private endsLine(at: number): boolean {
    return at >= this.bytes.length || this.bytes[at] === LINE_FEED || this.bytes[at] === RETURN;
  }
}
