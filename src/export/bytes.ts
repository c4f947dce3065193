/**
 * Builds a file from many small writes, in chunks of bytes: no string ever holds the whole text.
 */

/** Bytes in a chunk; a power of two large enough that their number stays small. */
const CHUNK = 1 << 20;

export class ByteWriter {
  private readonly full: Uint8Array[] = [];
  private chunk = new Uint8Array(CHUNK);
  private used = 0;
  private readonly encoder = new TextEncoder();

  /** Appends text as UTF-8. */
  text(text: string): void {
    // A UTF-16 unit takes at most three bytes in UTF-8.
    this.reserve(3 * text.length);
    this.used += this.encoder.encodeInto(text, this.chunk.subarray(this.used)).written;
  }

  /** Appends bytes. */
  bytes(bytes: Uint8Array): void {
    this.reserve(bytes.length);
    this.chunk.set(bytes, this.used);
    this.used += bytes.length;
  }

  /**
   * Appends what `write` puts into the chunk.
   *
   * @param most the most bytes it can take
   * @param write given the chunk and where to begin; returns where it ended
   */
  into(most: number, write: (chunk: Uint8Array, at: number) => number): void {
    this.reserve(most);
    this.used = write(this.chunk, this.used);
  }

  /** Everything written, in one array. */
  finish(): Uint8Array {
    const all = new Uint8Array(this.full.reduce((sum, chunk) => sum + chunk.length, 0) + this.used);
    let at = 0;
    for (const chunk of [...this.full, this.chunk.subarray(0, this.used)]) {
      all.set(chunk, at);
      at += chunk.length;
    }
    return all;
  }

  private reserve(length: number): void {
    if (this.used + length <= this.chunk.length) return;
    this.full.push(this.chunk.subarray(0, this.used));
    this.chunk = new Uint8Array(Math.max(CHUNK, length));
    this.used = 0;
  }
}
