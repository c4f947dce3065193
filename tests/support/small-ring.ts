/**
 * A small ring as buffers for viewers: a channel with relief that has no mirror, built once a file of tests.
 */
import { type Buffers, build, toBuffers } from "annulet";

const DESIGN = {
  annulet: 1,
  name: "Small ring",
  size: { system: "iso", value: 54 },
  tolerance: 0.1,
  profile: { width: 6, thickness: 2, outside: { form: "channel", rail: 0.9, depth: 0.6 } },
  pattern: {
    symmetry: "p1",
    regions: [{ name: "leaf", path: "M 0.1 0.16 L 0.8 0.2 L 0.14 0.4 Z", height: 0.3 }],
  },
} as const;

let built: Promise<Buffers> | undefined;

export function smallRing(): Promise<Buffers> {
  built ??= build(DESIGN, { detail: "draft" }).then(({ mesh }) => toBuffers(mesh));
  return built;
}
