/**
 * The README's example of code: a plain band from an object, to the bytes of an STL file. Run by `npm run examples`.
 */
import { build, encodeMesh, formatForFile } from "annulet";

const design = {
  annulet: 1,
  size: { system: "iso", value: 54 },
  profile: { width: 5, thickness: 1.8, bore: { form: "flat" }, outside: { form: "domed" } },
} as const;
const { mesh, report } = await build(design, { onProgress: ({ stage, share }) => console.log(stage, share) });
console.log(report.closed, report.volume, report.mass);
const bytes = await encodeMesh(formatForFile("ring.stl"), mesh, { name: report.name });
console.log(`${bytes.length} bytes`);
