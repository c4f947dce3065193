import { describe, expect, it, vi } from "vitest";
import { DesignDocument } from "../../../src/workbench/state/document.js";

const TEXT = '{ "annulet": 1, "name": "Demo", "tolerance": 0.01 }';

describe("the document", () => {
  it("goes back to the start and forth to the end with the same text", () => {
    const document = new DesignDocument(TEXT);
    const texts = [TEXT];
    for (let step = 1; step <= 50; step++) {
      document.set(["tolerance"], step / 1000);
      document.set(["name"], `Demo ${step}`);
      texts.push(document.text.value);
    }
    const last = document.text.value;
    expect(document.changes.value).toHaveLength(101);
    while (document.at.value > 0) document.undo();
    expect(document.text.value).toBe(TEXT);
    document.undo();
    expect(document.at.value).toBe(0);
    for (let step = 0; step < 200; step++) document.redo();
    expect(document.text.value).toBe(last);
  });

  it("makes one line of a drag, and a new one after a pause", () => {
    const document = new DesignDocument(TEXT);
    for (const width of [5, 5.1, 5.2]) document.set(["profile", "width"], width, "drag width");
    expect(document.changes.value).toHaveLength(2);
    document.rest();
    document.set(["profile", "width"], 6, "drag width");
    expect(document.changes.value).toHaveLength(3);
    document.undo();
    expect(document.value.value).toMatchObject({ profile: { width: 5.2 } });
  });

  it("forgets what was undone once something else is done", () => {
    const document = new DesignDocument(TEXT);
    document.set(["name"], "a");
    document.set(["name"], "b");
    document.undo();
    document.set(["name"], "c");
    expect(document.changes.value.map(({ text }) => JSON.parse(text).name)).toEqual(["Demo", "a", "c"]);
  });

  it("keeps the last sound text while what is typed is no JSON", () => {
    const document = new DesignDocument(TEXT);
    document.type("{ not yet");
    expect(document.text.value).toBe("{ not yet");
    expect(document.misread.value).toMatchObject({ at: 2 });
    expect(document.sound.value).toBe(TEXT);
    expect(document.value.value).toMatchObject({ name: "Demo" });
    document.set(["name"], "typed over");
    expect(JSON.parse(document.text.value)).toMatchObject({ name: "typed over", tolerance: 0.01 });
  });

  it("bounds the list", () => {
    const document = new DesignDocument(TEXT);
    for (let step = 0; step < 1100; step++) document.set(["tolerance"], 0.001 + step / 1e6);
    expect(document.changes.value).toHaveLength(1000);
    expect(document.at.value).toBe(999);
  });

  it("sets several values as one line, and says nothing where nothing changed", () => {
    const document = new DesignDocument(TEXT);
    document.setAll([
      [["name"], "both"],
      [["tolerance"], 0.02],
    ]);
    document.set(["name"], "both");
    expect(document.changes.value).toHaveLength(2);
    expect(document.value.value).toMatchObject({ name: "both", tolerance: 0.02 });
  });

  it("begins another design with a list of its own, or with the list that it was left with", () => {
    const document = new DesignDocument('{"name": "a"}');
    document.set(["name"], "b");
    const left = { changes: document.changes.value, at: 0 };
    document.begin('{"name": "c"}');
    expect(document.changes.value).toHaveLength(1);
    document.undo();
    expect(document.value.value).toEqual({ name: "c" });
    document.begin('{"name": "a"}', left);
    document.redo();
    expect(document.value.value).toEqual({ name: "b" });
    // A list that does not belong to the text is left out.
    document.begin('{"name": "d"}', left);
    expect(document.changes.value).toHaveLength(1);
    document.begin('{"name": "d"}', { changes: [], at: 3 });
    expect(document.text.value).toBe('{"name": "d"}');
  });
});

it("what is pulled slowly is one line, and the next pull another", () => {
  const now = vi.spyOn(performance, "now");
  const document = new DesignDocument(TEXT);
  const pull = (from: number) => {
    document.rest();
    document.pull(true);
    for (const step of [0, 1, 2]) {
      now.mockReturnValue(from + 5000 * step);
      document.set(["tolerance"], (from + step + 1) / 1e6, "drag tolerance");
    }
    document.pull(false);
    document.rest();
  };
  pull(0);
  pull(20_000);
  expect(document.changes.value).toHaveLength(3);
  // By keys, without a pull, a pause still parts them.
  for (const time of [50_000, 60_000]) {
    now.mockReturnValue(time);
    document.set(["tolerance"], time / 1e6, "drag tolerance");
  }
  expect(document.changes.value).toHaveLength(5);
  now.mockRestore();
});
