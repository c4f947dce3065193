// Covers: src/judge/proof/*
/** Faults planted on each road: the proof must find them, and a road that has one must give way to the next. */
import { describe, expect, it } from "vitest";
import type { Sector } from "../../../src/base/math/round.js";
import { checkSolid, type SolidCheck } from "../../../src/judge/gate.js";
import { columnsOf, GROUPS } from "../../../src/judge/proof/columns.js";
import { type Compare, type Proof, requireDrawn } from "../../../src/judge/proof/prove.js";
import type { Mesh } from "../../../src/mesh/mesh.js";
import { vertexShells } from "../../../src/mesh/shells.js";
import type { Step } from "../../../src/mesh/step.js";
import { transformMesh } from "../../../src/mesh/transform.js";
import { openInside } from "../../../src/ring/open-ring.js";
import type { Detail } from "../../../src/solids/detail.js";
import type { Parts } from "../../../src/solids/parts.js";
import { manifoldKernel } from "../../../src/union/kernels/manifold.js";
import { type RingParts, uniteRing } from "../../../src/union/union.js";

/** A square C: under a mirror each of its corners lies on its outline, but it is not symmetric. */
const C = "M 0.1 -0.4 H 0.9 V -0.08 H 0.7 V -0.2 H 0.3 V 0.2 H 0.7 V 0.08 H 0.9 V 0.4 H 0.1 Z";
const LOZENGE = "M 0.2 0 L 0.5 0.3 L 0.8 0 L 0.5 -0.3 Z";
const SCALENE = "M 0.2 -0.1 L 0.5 0.3 L 0.8 0 Z";

const ring = (path: string, repeats: number, symmetry = "p1") => ({
  annulet: 1,
  size: { diameter: 17 },
  tolerance: 0.05,
  profile: { width: 6, thickness: 2, outside: { form: "channel", rail: 0.8, depth: 0.6 } },
  pattern: { fit: { repeats, hold: "band" }, symmetry, regions: [{ path, height: 0.4 }] },
});
const PLAIN = {
  annulet: 1,
  size: { diameter: 17 },
  tolerance: 0.05,
  profile: { width: 6, thickness: 2, outside: { form: "domed", rise: 0.4 } },
};

async function laid(document: object, detail: Detail = "full"): Promise<{ parts: Parts; prove: Compare }> {
  const { answers } = await openInside(document, {}).ask(["parts", "prove"], { detail });
  return answers;
}

const unite = (parts: RingParts, prove: Compare) =>
  uniteRing<SolidCheck, Proof>(parts, { kernel: manifoldKernel, fallback: manifoldKernel, check: checkSolid, prove });

/** The parts with the bodies of their second step changed, in sectors or wherever they are asked for. */
function spoilt(parts: Parts, change: (bodies: readonly Mesh[]) => readonly Mesh[], everywhere: boolean): RingParts {
  const [band, relief, ...rest] = parts.steps;
  const bodies = (sector?: Sector) =>
    sector === undefined && !everywhere ? relief.bodies(sector) : change(relief.bodies(sector));
  const step: Step = { ...relief, bodies, making: undefined };
  return { steps: [band, step, ...rest], symmetry: parts.symmetry };
}

const turned = (mesh: Mesh, angle: number): Mesh => {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return transformMesh(mesh, [cos, sin, 0, 0, -sin, cos, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1]);
};

/** Without the first of the pieces of a body. */
function lessOnePiece(mesh: Mesh): Mesh {
  const { of } = vertexShells(mesh);
  return { ...mesh, triangles: mesh.triangles.filter((_, i) => of[Math.floor(i / 3)] !== 0) };
}

const DETAILS = ["full", "draft"] as const;

const dropped = () => [];
const doubled = (bodies: readonly Mesh[]) => [...bodies, ...bodies.map((body) => turned(body, -0.12))];

describe("a ring as it was drawn", () => {
  it.each([
    ["plain", PLAIN],
    ["mirror", ring(LOZENGE, 6, "p2mm")],
    ["turn", ring(SCALENE, 6)],
    ["whole", { ...ring(SCALENE, 6), pattern: { ...ring(SCALENE, 6).pattern, cover: 200 } }],
  ])("agrees, made by the road %s", async (road, document) => {
    const { parts, prove } = await laid(document);
    const result = await unite(parts, prove);
    expect(result.road).toBe(road);
    expect(result.proof).toMatchObject({ agrees: true, astray: [] });
    const { volume, relief } = result.proof as Proof;
    expect(Math.abs(volume.built - volume.expected)).toBeLessThan(volume.bound);
    expect(Math.abs(relief.built - relief.expected)).toBeLessThanOrEqual(relief.bound);
    expect(relief.expected > 0).toBe(road !== "plain");
  });
});

describe("the volume by the drawing", () => {
  const channel = (taper: object | undefined, pattern: object) => ({
    ...PLAIN,
    tolerance: 0.02,
    profile: {
      width: 6,
      thickness: 2,
      outside: { form: "channel", rail: 0.8, depth: 0.6, root: 0.25, edge: 0.1 },
      taper,
    },
    pattern: { cover: 240, fit: { repeats: 9, hold: "band" }, regions: [{ path: LOZENGE, height: 0.3 }], ...pattern },
  });

  it("is told as closely on a band that tapers as on one that does not", async () => {
    const shareOf = async (taper: object | undefined) => {
      const { answers } = await openInside(channel(taper, {}), {}).ask(["prove", "solid", "measure"]);
      const { volume } = answers.prove(answers.solid, answers.measure, { units: 1 });
      return volume.bound / volume.expected;
    };
    // A tapered one has a third of the columns, at sixty angles.
    expect(await shareOf({ width: 5 })).toBeLessThan(1.5 * (await shareOf(undefined)));
  });

  it("counts what fills the plain zone once, over the fillets too", async () => {
    for (const taper of [undefined, { width: 5 }]) {
      const of = async (plain: string) => {
        const { answers } = await openInside(channel(taper, { plain }), {}).ask(["prove", "solid", "measure"]);
        return answers.prove(answers.solid, answers.measure, { units: 1 }).volume;
      };
      const [filled, open] = [await of("filled"), await of("open")];
      const [told, made] = [filled.expected - open.expected, filled.built - open.built];
      // A column of a tapered one stands for 6°; the fillets counted twice were 5 mm³ of 43.
      expect(Math.abs(told - made)).toBeLessThan(taper === undefined ? 1 : 2.5);
    }
  });

  it.each([undefined, { width: 5 }])("comes of sixteen groups of columns, each all round the band", async (taper) => {
    const { answers } = await openInside(channel(taper, {}), {}).ask(["profile", "wrap"]);
    const { profile: band, wrap } = answers;
    const columns = columnsOf({ band, wrap, units: 1, density: { lines: 24, along: 60 } });
    for (let group = 0; group < GROUPS; group++) {
      const own = columns.filter((column) => column.group === group);
      expect(own.length).toBeGreaterThan((0.7 * columns.length) / GROUPS);
      const quarters = new Set(own.map(({ place }) => Math.floor((2 * place.angle) / Math.PI)));
      expect(quarters.size).toBeGreaterThanOrEqual(3);
    }
  });
});

describe("a planted fault", () => {
  const documents = { mirror: ring(LOZENGE, 6, "p2mm"), turn: ring(SCALENE, 6) };
  const faults = { "a dropped body": dropped, "a doubled one": doubled };
  const cases = (["mirror", "turn"] as const).flatMap((road) =>
    (Object.keys(faults) as (keyof typeof faults)[]).map((fault) => ({ road, fault })),
  );

  it.each(cases)("on the road $road, $fault: gives way to the whole ring, a draft too", async ({ road, fault }) => {
    for (const detail of DETAILS) {
      const { parts, prove } = await laid(documents[road], detail);
      const result = await unite(spoilt(parts, faults[fault], false), prove);
      expect(result.road).toBe("whole");
      expect(result.roadReason).toContain(`${road} by manifold was not what was drawn`);
      expect(result.proof?.agrees).toBe(true);
    }
  });

  it.each([cases[0], cases[3]])(
    "on every road as on $road, $fault: is an error, a draft too",
    async ({ road, fault }) => {
      for (const detail of DETAILS) {
        const { parts, prove } = await laid(documents[road], detail);
        const { proof } = await unite(spoilt(parts, faults[fault], true), prove);
        expect(proof?.agrees).toBe(false);
        expect(() => requireDrawn(proof as Proof)).toThrow(expect.objectContaining({ code: "not-as-drawn" }));
      }
    },
  );

  it.each(DETAILS)("a wrong mirror, %s: what is not symmetric gives way to the whole ring", async (detail) => {
    const { parts, prove } = await laid(ring(C, 6), detail);
    const from = Math.PI / 2 - Math.PI;
    const symmetry = { units: 6, mirrored: true, sectors: [{ from, to: from + Math.PI / 6 }] };
    const result = await unite({ steps: parts.steps, symmetry }, prove);
    expect(result).toMatchObject({ road: "whole", proof: { agrees: true } });
    expect(result.roadReason).toContain("mirror by manifold was not what was drawn");
  });

  it.each(DETAILS)("a wrong count of copies, %s: gives way to the whole ring", async (detail) => {
    const { parts, prove } = await laid(documents.mirror, detail);
    const [{ from }] = (parts.symmetry as NonNullable<Parts["symmetry"]>).sectors;
    // Five mirrored units of a fifth of the round close, but there are six tiles.
    const symmetry = { units: 5, mirrored: true, sectors: [{ from, to: from + Math.PI / 5 }] };
    const result = await unite({ steps: parts.steps, symmetry }, prove);
    expect(result).toMatchObject({ road: "whole", proof: { agrees: true } });
    expect(result.roadReason).toContain("mirror by manifold was not what was drawn");
  });

  it.each(DETAILS)("on the plain road, a band that is not the design's, %s: is found", async (detail) => {
    const { prove } = await laid(PLAIN, detail);
    const { parts } = await laid({ ...PLAIN, profile: { ...PLAIN.profile, thickness: 2.3 } }, detail);
    const { proof, road } = await unite(parts, prove);
    expect(road).toBe("plain");
    expect(proof?.agrees).toBe(false);
  });

  it.each(DETAILS)(
    "on the whole road, one body that one tile of thirty lacks, %s: is found, and where",
    async (detail) => {
      const { parts, prove } = await laid(ring(LOZENGE, 30), detail);
      const whole = { ...spoilt(parts, (bodies) => bodies.map(lessOnePiece), true), symmetry: undefined };
      const { proof, road } = await unite(whole, prove);
      expect(road).toBe("whole");
      expect(proof?.agrees).toBe(false);
      const { astray } = proof as Proof;
      expect(astray.length).toBeGreaterThan(1);
      // All in one tile, each off by the height of what is missing.
      const [first, ...rest] = astray.map(({ place: [x, y] }) => Math.atan2(y, x));
      for (const angle of rest) expect(Math.abs(angle - first)).toBeLessThan((2 * Math.PI) / 30);
      expect(astray[0].by).toBeCloseTo(0.4, 1);
    },
  );
});
