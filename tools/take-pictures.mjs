/**
 * Takes the README's pictures again, with the command line as it is built: `npm run pictures`, or only those whose design's
 * name holds a word: `node tools/take-pictures.mjs reedbed`.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { fileURLToPath } from "node:url";

/**
 * What pictures share: the ring lies on the table, seen a little from above; `views` is what some designs need instead, since
 * what matters on them lies elsewhere. Sizes in pixels.
 */
const { view, views, sizes } = JSON.parse(readFileSync(new URL("pictures.json", import.meta.url), "utf8"));

const examples = new URL("../examples/", import.meta.url);
const wanted = process.argv[2] ?? "";

function designsIn(folder) {
  return readdirSync(folder)
    .filter((name) => /^[a-z0-9]+-[a-z-]+\.json$/.test(name) && name.includes(wanted))
    .map((name) => ({ design: new URL(name, folder), name: name.replace(/json$/, "png") }));
}

function take(design, picture, size) {
  const seen = views[basename(fileURLToPath(design), ".json")] ?? view;
  const words = ["picture", fileURLToPath(design), "-o", fileURLToPath(picture), "--pixels", size, ...seen];
  const { status, stderr } = spawnSync(
    process.execPath,
    [fileURLToPath(new URL("../dist/bin/main.js", import.meta.url)), ...words],
    { encoding: "utf8" },
  );
  if (status !== 0) throw new Error(stderr);
}

const steps = new URL("first-ring/", examples);
const small = new URL("pictures/", examples);
mkdirSync(small, { recursive: true });
for (const { design, name } of designsIn(steps)) take(design, new URL(name, steps), sizes.step);
for (const { design, name } of designsIn(examples)) take(design, new URL(name, small), sizes.example);
const richest = new URL("saltmarsh-lattice.json", examples);
if ("saltmarsh-lattice".includes(wanted)) take(richest, new URL("saltmarsh-lattice.png", examples), sizes.first);
