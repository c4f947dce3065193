/**
 * Embeds annulet: builds a ring from an object, follows the progress, takes buffers for a viewer.
 * Run by `npm run examples`. Scenario and numbers are invented for the demo.
 */
import { AnnuletError, build, type DesignInput } from "annulet";

const design: DesignInput = {
  annulet: 1,
  name: "Reed line",
  size: { system: "us", value: "7 1/4" },
  profile: {
    width: 5,
    thickness: 1.8,
    bore: { form: "comfort", rise: 0.2 },
    outside: { form: "channel", rail: 0.7, depth: 0.6 },
  },
  pattern: {
    symmetry: "p1m1",
    fit: { repeats: 16 },
    regions: [{ name: "reed", path: "M 0.5 -0.4 Q 0.05 0 0.5 0.4 Q 0.95 0 0.5 -0.4 Z", height: 0.45, round: 0.1 }],
  },
  material: "au585-yellow",
};

const stages: string[] = [];
const { report, geometry } = await build(design, { geometry: true, onProgress: ({ stage }) => stages.push(stage) });
console.log(`${report.name}: closed ${report.closed}, ${report.triangles} triangles`);
console.log(`bore ${report.size.diameter.toFixed(2)} mm, band ${report.band.width.toFixed(2)} mm wide`);
console.log(`weight ${report.mass["au585-yellow"].toFixed(2)} g`);
console.log(`geometry for a viewer: ${geometry?.triangles.length} indices; stages: ${stages.join(" → ")}`);

// What cannot be built says what would be possible.
try {
  await build({ ...design, profile: { ...design.profile, outside: { form: "channel", rail: 2.6 } } });
} catch (error) {
  if (!(error instanceof AnnuletError)) throw error;
  console.log(`refused: ${error.code} at ${error.path}, allowed: ${error.allowed}`);
}
