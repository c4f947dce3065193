/**
 * Which stages a question needs, in the order in which they work: those of the finished piece, those of the casting
 * before it is finished, then what is made of both.
 */
import type { RingOptions } from "./answers.js";
import type { Read, StageName, WorkStage } from "./stage.js";
import { stages } from "./stages.js";

/** The design that a stage works on. */
export type Piece = "finished" | "cast";

/** A stage of one of the two pieces. */
export interface Node {
  /** Of no other node. */
  readonly id: string;
  readonly piece: Piece;
  readonly name: StageName;
  readonly stage: WorkStage<unknown>;
  /** Each read with the node that answers it; undefined where it is a field or an option. */
  readonly reads: readonly { readonly read: Read; readonly node: Node | undefined }[];
  /** Whether it comes after the casting. */
  readonly last: boolean;
}

const ORDER = new Map(Object.keys(stages).map((name, i) => [name, i]));

export class Plan {
  readonly #option: RingOptions;
  /** The finished piece where finishing takes nothing off. */
  readonly #cast: Piece;
  readonly #nodes = new Map<string, Node>();

  constructor(option: RingOptions, cast: Piece) {
    this.#option = option;
    this.#cast = cast;
  }

  /** The node that answers a read, with all that it needs; undefined for a field or an option. */
  need(read: Read, by: Piece = "finished"): Node | undefined {
    if (read.startsWith("design.") || read.startsWith("option.")) return undefined;
    const name = read.startsWith("cast.") ? read.slice("cast.".length) : read;
    return this.#add(name as StageName, read.startsWith("cast.") ? this.#cast : by);
  }

  /** All nodes that were needed. */
  get order(): readonly Node[] {
    const rank = ({ piece, last, name }: Node) => [Number(last), Number(piece === "cast"), ORDER.get(name) ?? 0];
    return [...this.#nodes.values()].sort((a, b) => {
      const [x, y] = [rank(a), rank(b)];
      return x[0] - y[0] || x[1] - y[1] || x[2] - y[2];
    });
  }

  #add(name: StageName, piece: Piece): Node {
    const stage = stages[name];
    if (stage.kind === "choice") return this.#add(stage.choose(this.#option), piece);
    const id = `${piece} ${name}`;
    const known = this.#nodes.get(id);
    if (known !== undefined) return known;
    const reads = stage.reads.map((read) => ({ read, node: this.need(read, piece) }));
    const last = reads.some(({ node }) => node !== undefined && (node.last || node.piece !== piece));
    const node: Node = { id, piece, name, stage: stage as WorkStage<unknown>, reads, last };
    this.#nodes.set(id, node);
    return node;
  }
}
