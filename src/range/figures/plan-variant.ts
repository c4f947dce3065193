/**
 * What is known of each variant before it is made, and which are left out.
 */
import { AnnuletError, type Problem } from "../../base/errors.js";
import type { FileSource } from "../../base/files.js";
import { changePlain } from "../../design/change-document.js";
import { materialsOf } from "../../design/materials.js";
import type { PlainObject } from "../../design/plain.js";
import { readDesign } from "../../design/read.js";
import type { Design } from "../../design/schema.js";
import { findAlloy } from "../../measure/alloys/catalogue.js";
import { massOf } from "../../measure/mass.js";
import type { Variant } from "../expand/open-plan.js";
import type { FigureName, Plan } from "../plan/plan-schema.js";
import { chooseRepeats, type Span } from "./choose-repeats.js";
import { beadRatios, narrowestDetail } from "./drawn-figures.js";
import { VolumeEstimate } from "./estimate-volume.js";
import { rememberingFits } from "./fit-variant.js";
import { figureOf, fitFigures, type KnownFigures } from "./known-figures.js";
import { KnownStones } from "./known-stones.js";

/** A variant with what is known of it. */
export type PlannedVariant = Omit<Variant, "document"> &
  (
    | { readonly kind: "planned"; readonly document: PlainObject; readonly figures: KnownFigures }
    /** `why` says which filter, or which of the family's spans, and the figure. */
    | { readonly kind: "left-out"; readonly why: string; readonly figures: KnownFigures }
    /** No ring can be made of it. */
    | { readonly kind: "fault"; readonly problems: readonly Problem[] }
  );

/** Why one is left out; undefined where it is not. */
type Why = string | undefined;

export class Planner {
  readonly #plan: Pick<Plan, "family" | "leaveOut">;
  readonly #files: FileSource;
  readonly #signal: AbortSignal | undefined;
  readonly #fits = rememberingFits();
  readonly #volumes: VolumeEstimate;
  readonly #stones: KnownStones;

  /** @param files that the designs name */
  constructor(plan: Pick<Plan, "family" | "leaveOut">, files: FileSource, signal?: AbortSignal) {
    this.#plan = plan;
    this.#files = files;
    this.#signal = signal;
    this.#volumes = new VolumeEstimate(files);
    this.#stones = new KnownStones(files);
  }

  /** @throws the signal's reason */
  async plan({ document, ...variant }: Variant): Promise<PlannedVariant> {
    try {
      const design = this.#inFamily(readDesign(document));
      const figures = await this.#figures(design);
      const why = this.#filtered(figures) ?? this.#outside(figures) ?? (await this.#drawnOutside(design));
      if (why !== undefined) return { ...variant, kind: "left-out", why, figures };
      return { ...variant, kind: "planned", document: withRepeats(document, design), figures };
    } catch (error) {
      this.#signal?.throwIfAborted();
      if (!(error instanceof AnnuletError)) throw error;
      return { ...variant, kind: "fault", problems: error.problems };
    }
  }

  #inFamily(design: Design): Design {
    const { tileWidth: tile, stretch } = this.#plan.family ?? {};
    return tile === undefined ? design : chooseRepeats(design, { tile, stretch }, this.#fits);
  }

  async #figures(design: Design): Promise<KnownFigures> {
    const fitted = this.#fits(design);
    const { outside, width } = design.profile;
    const volume = await this.#volumes.of(design, fitted, this.#signal);
    const alloy = findAlloy(design.material, { alloys: materialsOf(design) });
    return {
      ...fitFigures(fitted.fit),
      bandWidth: fitted.fit?.bandWidth ?? width,
      rail: "rail" in outside && typeof outside.rail === "number" ? outside.rail : null,
      volume,
      weight: massOf(volume, alloy),
      material: design.material,
      ...(await this.#stones.of(design, this.#signal)),
    };
  }

  #filtered(figures: KnownFigures): Why {
    for (const filter of this.#plan.leaveOut) {
      const figure = figureOf(figures, filter.figure);
      if (figure === undefined) continue;
      if ("above" in filter && figure > filter.above) return compared(filter.figure, figure, "above", filter.above);
      if ("below" in filter && figure < filter.below) return compared(filter.figure, figure, "below", filter.below);
    }
    return undefined;
  }

  #outside(figures: KnownFigures): Why {
    const { tileWidth, bandWidth, rail, stretch } = this.#plan.family ?? {};
    const most = stretch === undefined ? undefined : { from: Number.NEGATIVE_INFINITY, to: stretch };
    return (
      beyond("tileWidth", figureOf(figures, "tileWidth"), tileWidth) ??
      beyond("bandWidth", figureOf(figures, "bandWidth"), bandWidth) ??
      beyond("rail", figureOf(figures, "rail"), rail) ??
      beyond("stretch", figureOf(figures, "stretch"), most)
    );
  }

  /** What asks for the drawn pattern comes last, and only where the plan bounds it. */
  async #drawnOutside(design: Design): Promise<Why> {
    const { beadRatio, detail } = this.#plan.family ?? {};
    const filters = this.#plan.leaveOut.filter(({ figure }) => figure === "beadRatio");
    if (beadRatio !== undefined || filters.length > 0) {
      const [least, most] = (await beadRatios(design, this.#files, this.#signal)) ?? [];
      const why = beyond("beadRatio", least, beadRatio) ?? beyond("beadRatio", most, beadRatio);
      if (why !== undefined) return why;
      for (const filter of filters) {
        if ("above" in filter && most !== undefined && most > filter.above)
          return compared("beadRatio", most, "above", filter.above);
        if ("below" in filter && least !== undefined && least < filter.below)
          return compared("beadRatio", least, "below", filter.below);
      }
    }
    if (detail === undefined) return undefined;
    const width = await narrowestDetail(design, detail, { files: this.#files, signal: this.#signal });
    return width === undefined ? undefined : compared("detail", width, "below", detail);
  }
}

/** Digits of figures in words. */
const DIGITS = 4;

function compared(name: FigureName | "detail", figure: number, how: "above" | "below", limit: number): string {
  return `${name} ${Number(figure.toPrecision(DIGITS))} is ${how} ${limit}`;
}

/** Rounding errors that are let pass at the ends of a span. */
const SLACK = 1e-9;

function beyond(name: FigureName, figure: number | undefined, span: Span | undefined): Why {
  if (figure === undefined || span === undefined) return undefined;
  if (figure < span.from - SLACK) return compared(name, figure, "below", span.from);
  return figure > span.to + SLACK ? compared(name, figure, "above", span.to) : undefined;
}

/** The document with the repeats that were chosen for it, so that it is a design like any other. */
function withRepeats(document: PlainObject, { pattern }: Design): PlainObject {
  const chosen = pattern?.fit.repeats;
  if (chosen === undefined || chosen === "auto") return document;
  return changePlain(document, [{ path: "pattern.fit.repeats", value: chosen }]);
}
