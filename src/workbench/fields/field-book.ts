/**
 * What the schema says of the document's fields, asked of the worker once each and remembered.
 */
import { type ReadonlySignal, type Signal, signal } from "@preact/signals";
import type { ExplainedField } from "../engine/explain-inside.js";

/** Asks the worker. */
export type Explain = (schema: string) => Promise<ExplainedField>;

const NOTHING: ExplainedField = { own: [], inside: {} };

export class FieldBook {
  readonly #explain: Explain;
  readonly #pages = new Map<string, Signal<ExplainedField | undefined>>();
  readonly #asked = new Map<string, Promise<ExplainedField>>();

  constructor(explain: Explain) {
    this.#explain = explain;
  }

  /** What is known by now; undefined until the worker has answered. Of a field that is none nothing is said. */
  look(schema: string): ReadonlySignal<ExplainedField | undefined> {
    const page = this.#page(schema);
    if (page.peek() === undefined) void this.ask(schema);
    return page;
  }

  /** The same once it is known. A worker that died is asked anew. */
  ask(schema: string): Promise<ExplainedField> {
    const asked = this.#asked.get(schema) ?? this.#read(schema);
    this.#asked.set(schema, asked);
    return asked;
  }

  async #read(schema: string): Promise<ExplainedField> {
    const explained = await this.#explain(schema).catch((error: unknown) => {
      if (!isRefusal(error)) this.#asked.delete(schema);
      return NOTHING;
    });
    this.#page(schema).value = explained;
    return explained;
  }

  #page(schema: string): Signal<ExplainedField | undefined> {
    const page = this.#pages.get(schema) ?? signal(undefined);
    this.#pages.set(schema, page);
    return page;
  }
}

/** The library's own errors come through the worker by their name alone. */
function isRefusal(error: unknown): boolean {
  return error instanceof Error && error.name === "AnnuletError";
}
