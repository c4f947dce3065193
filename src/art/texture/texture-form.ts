/**
 * What a texture is: how high it stands at a place, by the points round it.
 */
import type { Nearby } from "./nearby.js";

/** How a texture's cells lie. */
export interface Grain {
  /** Whether the cells' long side runs across the band, not along it. */
  readonly across: boolean;
  /** How many times as long as wide cells are, 1 or more. */
  readonly length: number;
}

export interface TextureForm {
  /**
   * Heights by the points round a place; which is lowest and which highest is found afterwards, so only their proportions
   * count. Plus, minus, times, divided and square roots alone: these every machine rounds alike.
   */
  readonly height: (grain: Grain) => (near: Nearby) => number;
}
