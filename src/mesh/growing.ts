/**
 * Rows of numbers in threes, points or triangles, that grow as they are found: typed arrays with room to spare.
 */

/** Numbers that there is room for at first. */
const FIRST_ROOM = 3 * 1024;

type Row = Float64Array | Uint32Array;

abstract class Growing<Numbers extends Row> {
  protected row: Numbers;
  protected length = 0;

  constructor(row: Numbers) {
    this.row = row;
  }

  /** How many threes there are. */
  get count(): number {
    return this.length / 3;
  }

  /** Adds three numbers. */
  push(a: number, b: number, c: number): void {
    if (this.length + 3 > this.row.length) this.grow();
    const { row } = this;
    row[this.length++] = a;
    row[this.length++] = b;
    row[this.length++] = c;
  }

  protected abstract grow(): void;
}

/** Points, x, y, z in turn. */
export class GrowingPoints extends Growing<Float64Array> {
  constructor(first: Float64Array = new Float64Array(0)) {
    super(withRoom(Float64Array, first));
    this.length = first.length;
  }

  /** One coordinate, by its place in the row. */
  at(i: number): number {
    return this.row[i];
  }

  /** All of them. */
  take(): Float64Array {
    return this.row.slice(0, this.length);
  }

  protected grow(): void {
    this.row = withRoom(Float64Array, this.row);
  }
}

/** Triangles, by the numbers of their corners. */
export class GrowingTriangles extends Growing<Uint32Array> {
  constructor() {
    super(new Uint32Array(FIRST_ROOM));
  }

  /** All of them. */
  take(): Uint32Array {
    return this.row.slice(0, this.length);
  }

  protected grow(): void {
    this.row = withRoom(Uint32Array, this.row);
  }
}

function withRoom<Numbers extends Row>(make: new (length: number) => Numbers, row: Numbers): Numbers {
  const wide = new make(Math.max(FIRST_ROOM, 2 * row.length));
  wide.set(row);
  return wide;
}
