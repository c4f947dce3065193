// Covers: src/output/report/report-json-schema.ts, src/output/report/schema-fields/*, src/output/report/report-version.ts
/**
 * The report's published schema against real reports of pieces with and without each optional part; tests/examples.test.ts
 * holds it against every example.
 */
import { Ajv2020 } from "ajv/dist/2020.js";
import { beforeAll, describe, expect, it } from "vitest";
import { reportJsonSchema } from "../../../src/output/report/report-json-schema.js";
import { reportSchema } from "../../../src/output/report/report-schema.js";
import { build } from "../../../src/ring/build.js";

const isReport = new Ajv2020().compile(reportJsonSchema());

const BAND = {
  annulet: 1,
  size: { system: "iso", value: 55 },
  profile: { width: 5, thickness: 2, outside: { form: "flat" } },
};

/** Every part of a report that may be null or missing is there. */
const FULL = {
  ...BAND,
  name: "full",
  pattern: {
    lanes: [
      { name: "low", regions: [{ path: "M 0.2 0 A 0.3 0.3 0 1 1 0.8 0 A 0.3 0.3 0 1 1 0.2 0 Z", height: 0.4 }] },
      { name: "high", regions: [] },
    ],
  },
  beads: [{ along: "seat-edge", diameter: 0.4 }],
  casting: { shrinkage: 1.5, cure: 0.5, finishing: 0.05 },
  costing: { currency: "EUR", prices: { ag925: 1 } },
  sprue: { diameter: 2.5, length: 10 },
  print: { stance: "lying" },
};

type Json = { [key: string]: unknown };

async function reportOf(document: object, piece: "finished" | "master", decimate?: number): Promise<Json> {
  const { report, timings } = await build(document, { detail: "draft", piece, decimate });
  const files = [{ name: "ring.stl", sha256: "0".repeat(64) }];
  return JSON.parse(JSON.stringify(document === FULL ? { ...report, files, timings } : report));
}

describe("the report's schema", () => {
  let plain: Json;
  let full: Json;
  beforeAll(async () => {
    plain = await reportOf(BAND, "finished");
    full = await reportOf(FULL, "master", 0.01);
  });

  it("takes the report of a bare band and of a piece with everything", () => {
    for (const report of [plain, full]) {
      expect(isReport(report), JSON.stringify(isReport.errors?.slice(0, 3))).toBe(true);
      expect(reportSchema.parse(report)).toEqual(report);
      expect(report).toMatchObject({
        $schema: (reportJsonSchema() as Json).$id,
        report: 2,
        tool: expect.stringMatching(/^annulet \d/),
      });
    }
    expect(plain).toMatchObject({ fit: null, headroom: null, sprue: null, mesh: { decimation: null } });
    expect(full.sprue).not.toBeNull();
    expect((full.fit as Json).lanes).toHaveLength(2);
    expect((full.mesh as Json).decimation).not.toBeNull();
    expect(((full.weights as Json).rows as Json[]).some(({ cost }) => cost !== null)).toBe(true);
  });

  it("refuses an unknown key in every object whose keys are known", () => {
    const open = [".mass", ".timings"];
    for (const [path, object] of objectsIn(full, "")) {
      if (open.includes(path) || path.endsWith(".value")) continue;
      object.another = 1;
      expect(isReport(full), path).toBe(false);
      expect(reportSchema.safeParse(full).success, path).toBe(false);
      delete object.another;
    }
    expect(isReport(full)).toBe(true);
  });

  it("refuses a report without any one of its fields, and of another version", () => {
    for (const key of Object.keys(full).filter((name) => name !== "files" && name !== "timings")) {
      const { [key]: left, ...rest } = full;
      expect(left).toBeDefined();
      expect(isReport(rest), key).toBe(false);
    }
    expect(isReport({ ...full, report: 1 })).toBe(false);
  });

  it("describes every field", () => {
    const { $defs, ...schema } = reportJsonSchema();
    const bare = [...propertiesIn(schema, ""), ...propertiesIn($defs, "")].filter(
      ([, { description, $ref }]) => description === undefined && $ref === undefined,
    );
    expect(bare.map(([path]) => path).filter((path) => !/\.volumes\./.test(path))).toEqual([]);
  });
});

function* objectsIn(value: unknown, path: string): Generator<[string, Json]> {
  if (typeof value !== "object" || value === null) return;
  if (!Array.isArray(value)) yield [path, value as Json];
  for (const [key, inner] of Object.entries(value)) yield* objectsIn(inner, `${path}.${key}`);
}

function* propertiesIn(node: unknown, path: string): Generator<[string, Json]> {
  if (typeof node !== "object" || node === null) return;
  for (const [key, inner] of Object.entries(node)) {
    if (key !== "properties") yield* propertiesIn(inner, path);
    else {
      for (const [name, property] of Object.entries(inner as Json)) {
        yield [`${path}.${name}`, property as Json];
        yield* propertiesIn(property, `${path}.${name}`);
      }
    }
  }
}
