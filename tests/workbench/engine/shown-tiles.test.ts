// Covers: src/workbench/engine/ring-library.ts
import { describe, expect, it, vi } from "vitest";
import { AnnuletError, type Rings } from "../../../src/entries/worker.js";
import { Answers } from "../../../src/workbench/engine/answers.js";
import { ringLibrary } from "../../../src/workbench/engine/ring-library.js";

describe("what the flat views ask", () => {
  it("is the cross-section at any angle of a band that tapers, as plain data", async () => {
    const text = JSON.stringify({
      annulet: 1,
      name: "Taper",
      size: { system: "iso", value: 54 },
      tolerance: 0.1,
      profile: {
        width: 6,
        thickness: 2,
        bore: { form: "flat" },
        outside: { form: "domed", rise: 0.3 },
        taper: { width: 3, thickness: 1.5 },
      },
    });
    const [top, back, side] = await Promise.all([90, 270, 180].map((angle) => ringLibrary.sectionAt(text, angle)));
    expect([top.width, back.width]).toEqual([expect.closeTo(6, 6), expect.closeTo(3, 6)]);
    expect([top.thickness, back.thickness]).toEqual([expect.closeTo(2, 6), expect.closeTo(1.5, 6)]);
    expect(side.width).toBeGreaterThan(3);
    expect(side.width).toBeLessThan(6);
    expect(structuredClone(side)).toEqual(side);
  });

  it("is where the seven groups have their elements", () => {
    const elements = ringLibrary.symmetryElements();
    expect(Object.keys(elements)).toHaveLength(7);
    expect(elements.p2mg).toMatchObject({ mirrors: [0, 0.5], middle: "glide", centres: [0.25, 0.75] });
  });

  it("is another lane or part, and the first lane where the document has it no more", async () => {
    const asked: unknown[] = [];
    const pending = () => new Promise<never>(() => undefined);
    const ring = {
      tile: async (question: { readonly lane?: string }) => {
        asked.push(question);
        if (question.lane === "gone") throw new AnnuletError({ code: "no-such-lane", message: "there is no lane" });
        return { lane: question.lane ?? "low" };
      },
    };
    const answers = new Answers({
      open: () => new Proxy(ring, { get: (own, name) => own[name as "tile"] ?? pending }),
    } as unknown as Rings);
    answers.show("{}");
    await vi.waitFor(() => expect(answers.of.tile.value?.value).toEqual({ lane: "low" }));
    answers.showTile({ lane: "high" });
    await vi.waitFor(() => expect(answers.of.tile.value?.value).toEqual({ lane: "high" }));
    answers.showTile({ lane: "high" });
    answers.showTile({ lane: "gone" });
    await vi.waitFor(() => expect(answers.of.tile.value?.value).toEqual({ lane: "low" }));
    expect(asked).toEqual([{}, { lane: "high" }, { lane: "gone" }, {}]);
    answers.stop();
  });

  it("are the tiles of all lanes, the lowest first, and none where the pattern is one", async () => {
    const pending = () => new Promise<never>(() => undefined);
    const answersOf = (names: readonly string[]) => {
      const ring = {
        fit: async () => ({ lanes: names.map((name) => ({ name })) }),
        tile: async ({ lane }: { readonly lane?: string }) => ({ lane }),
      };
      const open = () => new Proxy(ring, { get: (own, name) => own[name as "tile"] ?? pending });
      const answers = new Answers({ open } as unknown as Rings);
      answers.show("{}");
      return answers;
    };
    const [two, none] = [answersOf(["low", "high"]), answersOf([])];
    await vi.waitFor(() => expect(two.of.lanes.value?.value).toEqual([{ lane: "low" }, { lane: "high" }]));
    await vi.waitFor(() => expect(none.of.lanes.value?.value).toEqual([]));
    two.stop();
    none.stop();
  });
});
