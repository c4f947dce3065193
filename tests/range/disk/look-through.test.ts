import { expect, it } from "vitest";
import { LookThrough } from "../../../src/range/disk/look-through.js";
import { folderStore } from "../../../src/range/disk/store/folder-store.js";
import { openPlan } from "../../../src/range/expand/open-plan.js";
import { PLAIN, tempFolder } from "../../cli/support.js";

const pattern = { symmetry: "p1", regions: [{ path: "M 0.3 -0.1 H 0.7 V 0.1 H 0.3 Z", height: 0.2 }] };

const rowsAlong = (svg: string) => [{ size: 1, place: { form: "line", shape: { svg } }, setting: { form: "flush" } }];

it("tells variants apart whose stones alone follow other drawings", async () => {
  const files = { "one.svg": "<svg xmlns='http://www.w3.org/2000/svg'/>", "two.svg": "<svg/>" };
  const base = { ...PLAIN, pattern, stones: rowsAlong("one.svg") };
  const { plan } = await openPlan(
    { range: 1, base, vary: [{ material: ["ag925", "brass"] }], outputs: ["stl"] },
    files,
  );
  const look = new LookThrough(plan, files, folderStore(tempFolder()));
  const first = await look.source({ document: base });
  const other = await look.source({ document: { ...base, stones: rowsAlong("two.svg") } });
  expect(Object.keys(first.files)).toEqual(["one.svg"]);
  expect(Object.keys(other.files)).toEqual(["two.svg"]);
  expect(other.source).not.toBe(first.source);
});
