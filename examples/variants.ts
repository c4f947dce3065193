/**
 * Scripts variants: one motif over a run of sizes, keeping the lightest whose tile is nearly square.
 * Run by `npm run examples`. Scenario and numbers are invented for the demo.
 */
import { build, type DesignInput, fitDesign } from "annulet";

const design = (iso: number): DesignInput => ({
  annulet: 1,
  name: `Ripple ${iso}`,
  size: { system: "iso", value: iso },
  tolerance: 0.03,
  profile: { width: 4.2, thickness: 1.7, bore: { form: "flat" }, outside: { form: "domed", rise: 0.3 } },
  pattern: {
    symmetry: "p2mg",
    regions: [
      { name: "ripple", path: "M 0 -0.2 C 0.15 -0.2 0.1 0 0.25 0", ribbon: { width: 0.8 }, height: 0.4, round: 0.1 },
    ],
  },
});

for (const iso of [48, 52, 56, 60]) {
  const fit = fitDesign(design(iso));
  const choices = fit.candidates
    .slice(0, 3)
    .map(({ repeats, bandWidth }) => `${repeats} tiles → ${bandWidth?.toFixed(2) ?? "–"} mm`);
  const { report } = await build(design(iso));
  console.log(
    `iso ${iso}: ${fit.repeats} tiles of ${fit.tileWidth.toFixed(3)} mm, band ${report.band.width.toFixed(3)} mm, ` +
      `${report.volume.toFixed(1)} mm³, closed ${report.closed} (${choices.join("; ")})`,
  );
}
