/**
 * What of a region or run can be taken hold of on the tile: its paths, the points that it names, the line of a circle of beads.
 */
import { type Path, valueAt } from "../state/json-text.js";
import { isPart } from "./art-entries.js";
import { type RowPart, roundParts, type SpotPart } from "./stone-parts.js";
import type { ArtPoint, DrawingUnit } from "./tile-units.js";

/** Path data, with where it stands in the document. */
export interface PathPart {
  readonly kind: "path";
  readonly at: Path;
  readonly unit: DrawingUnit;
  readonly d: string;
}

/** A point: where a drawing is placed, what copies turn about, one of two points of a mirror. */
export interface PointPart {
  readonly kind: "point";
  readonly at: Path;
  readonly unit: DrawingUnit;
  /** Undefined where the document leaves it at the tile's middle. */
  readonly point: ArtPoint | undefined;
  /** Of a drawing that is placed there, where its `place` stands in the document. */
  readonly place?: Path;
}

/** A circle round the band, mm across it from the seat's middle. */
export interface LevelPart {
  readonly kind: "level";
  readonly at: Path;
  readonly v: number;
}

export type ArtPart = PathPart | PointPart | LevelPart | RowPart | SpotPart;

/** Most of them, and how deep shapes are looked into. Chosen: above what can be told apart on a tile. */
const MOST_PARTS = 60;
const DEEPEST = 24;

/** What of an entry is drawn: a run's `along`, the `place` of a group of stones, a region itself; with its place. */
export function drawnIn(value: Part, path: Path): { readonly own: Part; readonly at: Path } {
  const key = path[0] === "stones" ? "place" : "along";
  const inner = value[key];
  return isPart(inner) ? { own: inner, at: [...path, key] } : { own: value, at: path };
}

type Part = Readonly<Record<string, unknown>>;

/** All that can be taken hold of in a region, a run, or a group of stones. */
export function artParts(document: unknown, path: Path): ArtPart[] {
  const value = valueAt(document, path);
  if (!isPart(value)) return [];
  const { own, at } = drawnIn(value, path);
  const unit = unitOf(own, "tile");
  if (path[0] === "stones") {
    if (own.form === "tile") return [{ kind: "point", at: [...at, "at"], unit, point: pointOf(own.at) }];
    if (own.form !== "line") return roundParts(own, at);
  } else if (typeof own.v === "number") return [{ kind: "level", at: [...at, "v"], v: own.v }];
  const parts: ArtPart[] = [];
  if (typeof own.path === "string") parts.push({ kind: "path", at: [...at, "path"], unit, d: own.path });
  if (own.svg !== undefined || own.text !== undefined) parts.push(placeOf(own, at, unit));
  collect({ document, parts }, own.shape, [...at, "shape"], unit, DEEPEST);
  return parts.slice(0, MOST_PARTS);
}

function unitOf({ unit }: Readonly<Record<string, unknown>>, otherwise: DrawingUnit): DrawingUnit {
  return unit === "tile" || unit === "mm" ? unit : otherwise;
}

function pointOf(value: unknown): ArtPoint | undefined {
  return Array.isArray(value) && value.length === 2 && value.every(Number.isFinite) ? [value[0], value[1]] : undefined;
}

function placeOf(own: Readonly<Record<string, unknown>>, at: Path, unit: DrawingUnit): PointPart {
  const place = isPart(own.place) ? own.place : {};
  return { kind: "point", at: [...at, "place", "at"], unit, point: pointOf(place.at), place: [...at, "place"] };
}

interface Found {
  readonly document: unknown;
  readonly parts: ArtPart[];
}

/** Walks an expression of shapes; a shape by its name is looked up in the pattern. */
function collect(found: Found, node: unknown, at: Path, unit: DrawingUnit, depth: number): void {
  if (!isPart(node) || depth === 0 || found.parts.length >= MOST_PARTS) return;
  const { parts, document } = found;
  const own = unitOf(node, unit);
  if (typeof node.path === "string") parts.push({ kind: "path", at: [...at, "path"], unit: own, d: node.path });
  if (node.svg !== undefined) parts.push(placeOf(node, at, own));
  if (node.turns !== undefined) parts.push({ kind: "point", at: [...at, "about"], unit, point: pointOf(node.about) });
  if (isPart(node.lattice)) {
    parts.push({ kind: "point", at: [...at, "lattice", "middle"], unit, point: pointOf(node.lattice.middle) });
  }
  if (isPart(node.trim) && typeof node.trim.along === "string") {
    parts.push({ kind: "path", at: [...at, "trim", "along"], unit, d: node.trim.along });
  }
  for (const key of ["mirror", "glide"]) {
    const line = node[key];
    if (!Array.isArray(line)) continue;
    line.forEach((point, i) => {
      parts.push({ kind: "point", at: [...at, key, i], unit, point: pointOf(point) });
    });
  }
  if (typeof node.shape === "string") {
    const named: Path = ["pattern", "shapes", node.shape];
    collect(found, valueAt(document, named), named, unit, depth - 1);
  }
  collect(found, node.of, [...at, "of"], unit, depth - 1);
  for (const key of ["union", "intersection", "difference"]) {
    const list = node[key];
    if (!Array.isArray(list)) continue;
    list.forEach((one, i) => {
      collect(found, one, [...at, key, i], unit, depth - 1);
    });
  }
}
