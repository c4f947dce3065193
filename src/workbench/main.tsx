/**
 * Starts the workbench in its page.
 */

import { demoDesigns } from "demo:designs";
import harfbuzz from "annulet/harfbuzz.wasm?packed";
import manifold from "annulet/manifold.wasm?packed";
import { render } from "preact";
import { unpack } from "./engine/unpack.js";
import RingsWorker from "./engine/worker.js?worker&inline";
import { Page } from "./page.js";
import { openBench } from "./state/bench.js";
import "./style/sheet.css";
import { language, preferred } from "./words/language.js";

async function start(): Promise<void> {
  language.value = preferred(navigator.languages);
  const wasm = { manifold: await unpack(manifold), harfbuzz: await unpack(harfbuzz) };
  const bench = openBench({ text: demoDesigns[0].text, startWorker: () => new RingsWorker(), setup: { wasm } });
  render(<Page bench={bench} />, document.body);
}

void start();
