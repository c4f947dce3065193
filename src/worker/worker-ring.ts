/**
 * A ring in a worker, as its page holds it.
 */
import { definedOf } from "../base/defined-of.js";
import { AnnuletError } from "../base/errors.js";
import type { Buffers } from "../mesh/normals.js";
import type { Asker } from "../ring/asker.js";
import type { Ring } from "../ring/open-ring.js";
import { ASKER_AT, type BuffersAsking, type Extra, type FileAsking, type Question } from "./messages.js";
import type { Plain } from "./plain.js";
import type { Switchboard } from "./switchboard.js";
import { postedSetup, type WorkerSetup } from "./worker-setup.js";

/** The same questions as of a ring, with answers that could be posted. */
type Posted = {
  readonly [Name in Question]: (...given: Parameters<Ring[Name]>) => Promise<Plain<Awaited<ReturnType<Ring[Name]>>>>;
};

/** A ring in a worker. */
export interface WorkerRing extends Posted {
  /** The piece as buffers for a viewer, made in the worker. Default the finished piece. */
  buffers(asking?: BuffersAsking): Promise<Buffers>;
  /**
   * The bytes of a mesh file, by the ending of its name: what the command line writes. Default the master.
   *
   * @throws AnnuletError `format-unknown`
   */
  file(name: string, asking?: FileAsking): Promise<Uint8Array>;
  /** Another ring, as `Ring.change`. Close this one once it is not asked any more. */
  change(document: unknown, setup?: WorkerSetup): WorkerRing;
  /** Lets go of it in the worker; later questions reject with `ring-closed`. */
  close(): void;
}

type Answer<Name extends Question> = Promise<Plain<Awaited<ReturnType<Ring[Name]>>>>;

export class CallerRing implements WorkerRing {
  readonly #board: Switchboard;
  readonly #number: number;
  /** What went wrong before anything could be posted; every question tells it. */
  readonly #wrong: AnnuletError | undefined;
  readonly #setup: WorkerSetup;

  private constructor(board: Switchboard, number: number, setup: WorkerSetup, wrong: AnnuletError | undefined) {
    this.#board = board;
    this.#number = number;
    this.#setup = setup;
    this.#wrong = wrong;
    const { files = {}, onStage } = setup;
    board.hear(number, { files, onStage });
  }

  static open(board: Switchboard, document: unknown, setup: WorkerSetup): CallerRing {
    const number = board.number();
    const wrong = post(() => board.remote.open(number, document, postedSetup(setup)));
    return new CallerRing(board, number, setup, wrong);
  }

  design = (): Answer<"design"> => this.#ask("design", []);
  size = (...given: Parameters<Ring["size"]>): Answer<"size"> => this.#ask("size", given);
  fit = (...given: Parameters<Ring["fit"]>): Answer<"fit"> => this.#ask("fit", given);
  profile = (...given: Parameters<Ring["profile"]>): Answer<"profile"> => this.#ask("profile", given);
  beads = (...given: Parameters<Ring["beads"]>): Answer<"beads"> => this.#ask("beads", given);
  stones = (...given: Parameters<Ring["stones"]>): Answer<"stones"> => this.#ask("stones", given);
  tile = (...given: Parameters<Ring["tile"]>): Answer<"tile"> => this.#ask("tile", given);
  solid = (...given: Parameters<Ring["solid"]>): Answer<"solid"> => this.#ask("solid", given);
  warnings = (...given: Parameters<Ring["warnings"]>): Answer<"warnings"> => this.#ask("warnings", given);
  make = (...given: Parameters<Ring["make"]>): Answer<"make"> => this.#ask("make", given);
  report = (...given: Parameters<Ring["report"]>): Answer<"report"> => this.#ask("report", given);
  partAt = (...given: Parameters<Ring["partAt"]>): Answer<"partAt"> => this.#ask("partAt", given);
  partLines = (...given: Parameters<Ring["partLines"]>): Answer<"partLines"> => this.#ask("partLines", given);
  check = (...given: Parameters<Ring["check"]>): Answer<"check"> => this.#ask("check", given);
  allowances = (...given: Parameters<Ring["allowances"]>): Answer<"allowances"> => this.#ask("allowances", given);
  weights = (...given: Parameters<Ring["weights"]>): Answer<"weights"> => this.#ask("weights", given);
  sprue = (...given: Parameters<Ring["sprue"]>): Answer<"sprue"> => this.#ask("sprue", given);
  printFigures = (...given: Parameters<Ring["printFigures"]>): Answer<"printFigures"> =>
    this.#ask("printFigures", given);
  sheet = (...given: Parameters<Ring["sheet"]>): Answer<"sheet"> => this.#ask("sheet", given);
  picture = (...given: Parameters<Ring["picture"]>): Answer<"picture"> => this.#ask("picture", given);
  buffers = (asking: BuffersAsking = {}): Promise<Buffers> => this.#ask("buffers", [asking]);
  file = (name: string, asking: FileAsking = {}): Promise<Uint8Array> => this.#ask("file", [name, asking]);

  change(document: unknown, setup?: WorkerSetup): CallerRing {
    const number = this.#board.number();
    const before = this.#number;
    const wrong = post(() => {
      return this.#board.remote.change(before, number, document, setup && postedSetup(setup));
    });
    return new CallerRing(this.#board, number, { ...this.#setup, ...definedOf(setup ?? {}) }, wrong ?? this.#wrong);
  }

  close(): void {
    this.#board.forget(this.#number);
    this.#board.remote.close(this.#number).catch(() => undefined);
  }

  async #ask<Value>(name: Question | Extra, given: readonly unknown[]): Promise<Value> {
    if (this.#wrong !== undefined) throw this.#wrong;
    const at = ASKER_AT[name];
    const { signal, onProgress, ...asking } = (given[at] ?? {}) as Asker;
    const posted = [...given];
    posted[at] = asking;
    return (await this.#board.ask(this.#number, name, posted, { signal, onProgress })) as Value;
  }
}

/** Posts, and gives what could not be posted: a document with functions in it, say. */
function post(send: () => Promise<void>): AnnuletError | undefined {
  try {
    send().catch(() => undefined);
    return undefined;
  } catch (error) {
    return AnnuletError.from(error);
  }
}
