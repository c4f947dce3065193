// Covers: src/output/stones/*, src/output/sheet/stone-tables.ts
/**
 * What to order, on the sheet and as CSV, and the map beside it.
 */
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { orderTable, rowTable } from "../../src/output/sheet/stone-tables.js";
import { orderCsv } from "../../src/output/stones/order-csv.js";
import { stoneCautions } from "../../src/output/stones/stone-cautions.js";
import { drawStoneMap } from "../../src/output/stones/stone-map.js";
import { openInside } from "../../src/ring/open-ring.js";
import { orderStones } from "../../src/stones/order-stones.js";
import { reportStones } from "../../src/stones/stone-report.js";
import { FLAT_RADIUS, flatBand, placeOn } from "../support/place-stones.js";

const flush = { form: "flush" };
const groups = [
  { size: 1.2, gem: "ruby", place: { form: "single", angle: 0 }, setting: flush },
  { size: 1.5, place: { form: "row", over: { from: 40, to: 140 }, count: 9 }, setting: flush },
  { cut: "oval", size: 1.6, width: 1.1, gem: "ruby", place: { form: "single", angle: 200 }, setting: flush },
  { size: 1.2, gem: "ruby", place: { form: "single", angle: 300 }, setting: flush },
];

describe("the order of a ring's stones", () => {
  it("has a row for each cut, gem and size, with spares rounded up", async () => {
    const rows = orderStones(await placeOn(groups), 0.1);
    expect(
      rows.map(({ number, cut, gem, length, count, spares, order }) => [
        number,
        cut,
        gem,
        length,
        count,
        spares,
        order,
      ]),
    ).toEqual([
      [1, "round", "ruby", 1.2, 2, 1, 3],
      [2, "round", "diamond", 1.5, 9, 1, 10],
      [3, "oval", "ruby", 1.6, 1, 1, 2],
    ]);
    const twenty = { size: 1, place: { form: "row", count: 20 }, setting: flush };
    // A tenth of twenty is two, whatever the arithmetic leaves.
    expect(orderStones(await placeOn([twenty]), 0.1)[0].spares).toBe(2);
    expect(orderStones(await placeOn([twenty]), 0)[0].spares).toBe(0);
  });

  it("is read by another reader of CSV as it was", async () => {
    const gems = [{ symbol: "own", density: 3 }];
    const placed = await placeOn([...groups, { ...groups[0], gem: "own", place: { form: "single", angle: 330 } }], {
      gems,
    });
    const rows = orderStones(placed);
    const read = parse(orderCsv(rows), { columns: true }) as Record<string, string>[];
    expect(
      read.map((row) => [row.no, row.gem, Number(row["length mm"]), Number(row.count), Number(row.order)]),
    ).toEqual(rows.map(({ number, gem, length, count, order }) => [String(number), gem, length, count, order]));
    expect(orderCsv(rows).endsWith("\r\n")).toBe(true);
  });

  it("stands on the sheet with its totals, and rows with their gaps", async () => {
    const placed = await placeOn(groups);
    const html = orderTable(orderStones(placed), reportStones(placed), 0.05);
    expect(html).toContain("12 stones, ");
    expect(html).toContain("5 % of each size");
    expect(html.match(/<tr>/g)).toHaveLength(1 + 3);
    expect(rowTable(reportStones(placed))).toMatch(/<td>stones 2<\/td>.*8 \(.*10 \(/);
    expect(orderTable([], undefined, 0.05) + rowTable(undefined)).toBe("");
  });

  it("has the cautions of its own gems alone", async () => {
    const texts = stoneCautions(await placeOn([{ ...groups[0], gem: "emerald" }]));
    expect(texts).toHaveLength(1);
    expect(texts[0]).toMatch(/^Emerald is set after casting: .* no ultrasonic bath\. Beware: .*\.$/);
  });
});

describe("the map of stones", () => {
  const mapOf = async (stones: readonly object[]) => {
    const ring = openInside({ ...flatBand, stones });
    const { answers } = await ring.ask(["stones", "profile", "wrap"], {});
    return drawStoneMap({ rows: orderStones(answers.stones), band: answers.profile, wrap: answers.wrap });
  };

  it("has every stone at true size where it stands, with the number of its size", async () => {
    const map = await mapOf(groups);
    expect(map.scale).toBe("1:1");
    expect(map.width).toBeCloseTo(2 * Math.PI * FLAT_RADIUS + 4, 6);
    const outlines = map.content.filter((line) => line.includes('class="stone"'));
    expect(outlines).toHaveLength(12);
    const widths = outlines.map((line) => {
      const xs = [...line.matchAll(/[ML](-?[\d.]+) /g)].map(([, x]) => Number(x));
      return Math.max(...xs) - Math.min(...xs);
    });
    expect(Math.max(...widths)).toBeCloseTo(1.6, 2);
    expect(Math.min(...widths)).toBeCloseTo(1.2, 1);
    // The top is in the middle of the map.
    const [middle] = outlines
      .slice(2)
      .map((line) => Number(/M(-?[\d.]+)/.exec(line)?.[1]))
      .toSorted((a, b) => Math.abs(a - map.width / 2) - Math.abs(b - map.width / 2));
    expect(Math.abs(middle - map.width / 2)).toBeLessThan(1.5);
    expect(map.content.join("")).toContain("2: 9 of 1.50 mm, round brilliant, diamond");
  });

  it("has numbers that are read at print: inside stones that hold them, led out of the others, none over another", async () => {
    const graded = { size: 1.6, place: { form: "row", count: 30, to: 0.9 }, setting: { form: "flush" } };
    const large = { ...groups[0], size: 3, place: { form: "single", angle: 90, v: 0 } };
    for (const [stones, led] of [
      [[graded], true],
      [[{ ...graded, size: 1.3, place: { form: "row", count: 30 } }], true],
      [[large], false],
    ] as const) {
      const map = await mapOf(stones);
      const numbers = map.content.flatMap((line) => {
        const [, x, y, size, text] =
          /<text x="([\d.]+)" y="([\d.]+)"[^>]*font-size="([\d.]+)"[^>]*>(\d+)</.exec(line) ?? [];
        return text === undefined ? [] : [{ x: Number(x), y: Number(y), size: Number(size), text }];
      });
      expect(numbers.length).toBeGreaterThan(0);
      const outlines = map.content.filter((line) => line.includes('class="stone"')).join("");
      const highest = Math.min(...[...outlines.matchAll(/[ML]-?[\d.]+ (-?[\d.]+)/g)].map(([, y]) => Number(y)));
      expect(numbers.some(({ y }) => y < highest)).toBe(led);
      for (const [i, one] of numbers.entries()) {
        expect(one.size).toBeGreaterThanOrEqual(1.8);
        for (const other of numbers.slice(0, i)) {
          const apart = 0.3 * (one.text.length + other.text.length) * 1.8;
          expect(Math.abs(one.y - other.y) > 1.8 || Math.abs(one.x - other.x) >= apart * 0.95).toBe(true);
        }
      }
    }
  });

  it("shows what goes over its ends at both", async () => {
    const map = await mapOf([{ ...groups[0], place: { form: "single", angle: 270 } }]);
    expect(map.content.filter((line) => line.includes('class="stone"'))).toHaveLength(2);
  });
});
