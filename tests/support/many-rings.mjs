/**
 * Builds many small rings of many kinds in this process, some of which fail and some of which are stopped, and prints
 * the memory it holds as they come to pass: node --expose-gc tests/support/many-rings.mjs RINGS EVERY
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build, manifoldKernel } from "../../dist/index.js";

const [rings, every] = process.argv.slice(2).map(Number);

const FONT = fileURLToPath(
  new URL("../../node_modules/@expo-google-fonts/nunito/800ExtraBold/Nunito_800ExtraBold.ttf", import.meta.url),
);
const font = readFileSync(FONT);
const files = (name) => (name === "missing.ttf" ? undefined : font);

/** Coarse, so that a ring takes a twentieth of a second. */
const plain = {
  annulet: 1,
  size: { diameter: 16 },
  tolerance: 0.1,
  profile: { width: 5, thickness: 2, outside: { form: "channel", rail: 0.9, depth: 0.6, edge: 0 } },
};
const flat = { ...plain, profile: { width: 5, thickness: 2, outside: { form: "flat", edge: 0 } } };
const path = "M 0.1 0.16 L 0.4 0.2 L 0.14 0.4 Z";
const leaf = { path, height: 0.4 };
const tile = (symmetry, ...regions) => ({ symmetry, fit: { hold: "band", repeats: 5 }, regions });

const kinds = [
  { ...plain, beads: [{ along: "rail", diameter: 0.6 }] },
  { ...plain, pattern: tile("p2mm", { ...leaf, round: 0.05 }) },
  { ...plain, pattern: tile("p2", { ...leaf, beads: { diameter: 0.4, on: 0.18 } }) },
  { ...flat, pattern: tile("p11g", { path, mode: "pierced" }) },
  { ...flat, pattern: tile("p1m1", { path, mode: "sunk", depth: 0.5 }) },
  { ...plain, lettering: [{ text: "reed", at: "bore", height: 2 }] },
  { ...plain, pattern: { ...tile("p2mm", leaf), cover: 200 } },
];

/** What fails, each at another stage. */
const faulty = [
  { ...plain, profile: { ...plain.profile, width: -1 } },
  { ...plain, pattern: tile("p2mm", { ...leaf, height: 0.9 }) },
  { ...plain, lettering: [{ text: "reed", at: "bore", height: 2, font: "missing.ttf" }] },
];

/** A kernel whose second operation fails for want of a closed body, and of which there is no other. */
const failing = () => {
  let operations = 0;
  const refuse = (body) => ({ ...body, triangles: body.triangles.slice(3) });
  return {
    ...manifoldKernel,
    name: "failing",
    union: (parts) => manifoldKernel.union(++operations > 1 ? parts.map(refuse) : parts),
  };
};

const counts = {};
const count = (outcome) => {
  counts[outcome] = (counts[outcome] ?? 0) + 1;
};

async function attempt(document, options) {
  try {
    const { report } = await build(document, { files, ...options });
    count(report.closed ? "closed" : "open");
  } catch (error) {
    count(error.problems?.[0].code ?? error.name);
  }
}

const memory = [];
for (let ring = 1; ring <= rings; ring++) {
  const document = { ...kinds[ring % kinds.length], size: { diameter: 15 + (ring % 40) / 10 } };
  await attempt(document);
  if (ring % 5 === 0) await attempt(faulty[(ring / 5) % faulty.length]);
  if (ring % 5 === 1) {
    // Stopped after another number of stages each time, from 0 to 9.
    let stages = ((ring - 1) / 5) % 10;
    const controller = new AbortController();
    await attempt(document, {
      signal: controller.signal,
      onProgress: () => {
        if (stages-- === 0) controller.abort();
      },
    });
  }
  if (ring % 20 === 3) await attempt(document, { kernel: failing() });
  if (ring % every === 0) {
    // Twice, with a turn between: what the first collection finalises is free after the second.
    globalThis.gc();
    await new Promise((resolve) => setTimeout(resolve, 10));
    globalThis.gc();
    memory.push({ ring, rss: process.memoryUsage().rss });
  }
}
process.stdout.write(JSON.stringify({ counts, memory }));
