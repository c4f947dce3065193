/**
 * Typed arrays that grow, for files that do not say beforehand how much is in them.
 */

/** Numbers of a new list. */
const FIRST_ROOM = 3 * 1024;

export class FloatList {
  private room = new Float64Array(FIRST_ROOM);
  length = 0;

  push(x: number, y: number, z: number): void {
    if (this.length + 3 > this.room.length) this.room = doubled(this.room, Float64Array);
    this.room[this.length++] = x;
    this.room[this.length++] = y;
    this.room[this.length++] = z;
  }

  /** What has been put in; good until the next number is. */
  get values(): Float64Array {
    return this.room.subarray(0, this.length);
  }

  /** The same to keep; the list is empty afterwards. */
  take(): Float64Array {
    const taken = this.values.slice();
    this.length = 0;
    return taken;
  }
}

export class IndexList {
  private room = new Uint32Array(FIRST_ROOM);
  length = 0;

  push(a: number, b: number, c: number): void {
    if (this.length + 3 > this.room.length) this.room = doubled(this.room, Uint32Array);
    this.room[this.length++] = a;
    this.room[this.length++] = b;
    this.room[this.length++] = c;
  }

  /** What has been put in; good until the next number is. */
  get values(): Uint32Array {
    return this.room.subarray(0, this.length);
  }

  /** The same to keep; the list is empty afterwards. */
  take(): Uint32Array {
    const taken = this.values.slice();
    this.length = 0;
    return taken;
  }
}

interface Room<Numbers> {
  readonly length: number;
  set(numbers: Numbers): void;
}

function doubled<Numbers extends Room<Numbers>>(full: Numbers, Type: new (length: number) => Numbers): Numbers {
  const room = new Type(2 * full.length);
  room.set(full);
  return room;
}
