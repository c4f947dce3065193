/**
 * The page of one ring, to look at: it holds the ring itself, and asks for nothing.
 */
import { render } from "preact";
import { toBuffers } from "../../index.js";
import { type RingFacts, unpackMesh } from "../../toolbox/index.js";
import { unpack } from "../engine/unpack.js";
import { language, preferred, say } from "../words/language.js";
import { RingPage } from "./ring-page.js";
import "../style/tokens.css";
import "./one-ring.css";

const textOf = (id: string): string => document.getElementById(id)?.textContent ?? "";

async function start(): Promise<void> {
  language.value = preferred(navigator.languages);
  document.documentElement.lang = language.value;
  const root = document.createElement("main");
  document.body.append(root);
  try {
    const facts = JSON.parse(textOf("ring-facts")) as RingFacts;
    const buffers = toBuffers(unpackMesh(facts.grid, await unpack(textOf("ring-mesh"))));
    render(<RingPage facts={facts} buffers={buffers} />, root);
  } catch (error) {
    root.textContent = say("one-ring.unreadable");
    throw error;
  }
}

void start();
