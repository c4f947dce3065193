// Covers: src/art/image/header.ts, src/art/image/image-limits.ts, src/art/image/load-images.ts
/** Files that are no sound images, or lie about what they hold. */
import { deflateSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { IMAGE_LIMITS } from "../../../src/art/image/image-limits.js";
import { loadImages } from "../../../src/art/image/load-images.js";
import { AnnuletError } from "../../../src/base/errors.js";
import { greyPng, join, type RawPng, rawPng } from "./pngs.js";

const tiny: RawPng = { width: 2, height: 2, depth: 8, colour: 0, lines: Uint8Array.of(0, 1, 2, 0, 3, 4) };
const sound = rawPng(tiny);

const ONE = [{ regions: [{ image: "a.png" }], where: "pattern" }];

async function failureOf(bytes: Uint8Array | string): Promise<AnnuletError> {
  const error: unknown = await loadImages(ONE, { "a.png": bytes }).catch((caught: unknown) => caught);
  if (!(error instanceof AnnuletError)) throw new Error(`no AnnuletError: ${error}`);
  return error;
}

const damaged = (at: number) => {
  const bytes = sound.slice();
  bytes[at] ^= 1;
  return bytes;
};

const broken: Readonly<Record<string, readonly [bytes: Uint8Array | string, why: RegExp]>> = {
  "no PNG": [Uint8Array.of(0xff, 0xd8, 0xff, 0xe0), /no PNG file/],
  empty: [new Uint8Array(0), /no PNG file/],
  "given as text": ["PNG", /as text/],
  "cut off in its pixels": [sound.subarray(0, sound.length - 20), /ends before/],
  "without an end": [sound.subarray(0, sound.length - 12), /ends before/],
  "no header first": [join([sound.subarray(0, 8), sound.subarray(33)]), /no header/],
  "no pixels wide": [rawPng({ ...tiny, width: 0 }), /no pixels/],
  "of 3 bits": [rawPng({ ...tiny, depth: 3 }), /kind/],
  "of colour type 5": [rawPng({ ...tiny, colour: 5 }), /kind/],
  "packed by no known method": [rawPng({ ...tiny, compression: 1 }), /kind/],
  "interlaced below a byte": [rawPng({ ...tiny, depth: 4, interlace: 1 }), /interlaced/],
  "a palette image without palette": [rawPng({ ...tiny, colour: 3 }), /no palette/],
  "numbers beyond its palette": [
    rawPng({ ...tiny, colour: 3, before: [["PLTE", Uint8Array.of(0, 0, 0)]] }),
    /not in its palette/,
  ],
  "a palette of odd length": [
    rawPng({ ...tiny, colour: 3, before: [["PLTE", Uint8Array.of(0, 0)]] }),
    /cannot be read/,
  ],
  "with a piece that must be known": [rawPng({ ...tiny, before: [["ABCD", new Uint8Array(3)]] }), /"ABCD"/],
  "fewer pixels than it says": [rawPng({ ...tiny, height: 3 }), /fewer pixels/],
  "more pixels than it says": [rawPng({ ...tiny, height: 1 }), /more pixels/],
  "half a stream": [rawPng({ ...tiny, packed: deflateSync(tiny.lines).subarray(0, 6) }), /pixels/],
  "no stream at all": [rawPng({ ...tiny, packed: Uint8Array.of(1, 2, 3, 4) }), /cannot be unpacked/],
  "an unknown filter": [rawPng({ ...tiny, lines: Uint8Array.of(9, 1, 2, 0, 3, 4) }), /cannot be read/],
  "a wrong checksum": [damaged(sound.length - 17), /cannot be/],
  "a bomb: 500 MB of nothing": [rawPng({ ...tiny, packed: deflateSync(new Uint8Array(500_000_000)) }), /more pixels/],
};

describe("broken files", () => {
  it.each(Object.entries(broken))("%s", async (_, [bytes, why]) => {
    expect(await failureOf(bytes)).toMatchObject({ code: "image-broken", path: "pattern.regions[0].image" });
    expect((await failureOf(bytes)).message).toMatch(why);
  });
});

describe("files that are too large", () => {
  it("is told by the header, before anything is unpacked", async () => {
    const error = await failureOf(rawPng({ ...tiny, width: 60_000, height: 60_000 }));
    expect(error).toMatchObject({ code: "image-too-large", path: "pattern.regions[0].image" });
    expect(error.message).toMatch(/60000 by 60000/);
  });

  it("is told by the file's length", async () => {
    const bytes = new Uint8Array(IMAGE_LIMITS.bytes + 1);
    bytes.set(sound);
    expect(await failureOf(bytes)).toMatchObject({ code: "image-too-large" });
  });

  it("is told by the number of pieces", async () => {
    const empty: [string, Uint8Array] = ["teXt", new Uint8Array(0)];
    const before = Array.from({ length: IMAGE_LIMITS.chunks }, () => empty);
    expect(await failureOf(rawPng({ ...tiny, before }))).toMatchObject({ code: "image-too-large" });
  });
});

it("passes over what is not pixels: text, profiles that would be unpacked, what follows the end", async () => {
  const profile = join([new TextEncoder().encode("p\0\0"), deflateSync(new Uint8Array(50_000_000))]);
  const before: RawPng["before"] = [
    ["iCCP", profile],
    ["teXt", new Uint8Array(40)],
    ["gAMA", Uint8Array.of(0, 0, 0x86, 0xa0)],
  ];
  const bytes = join([rawPng({ ...tiny, before }), Uint8Array.of(1, 2, 3)]);
  const picture = (await loadImages(ONE, { "a.png": bytes })).get("a.png");
  expect(Array.from(picture?.value ?? [], (light) => Math.round(light * 255))).toEqual([1, 2, 3, 4]);
});

it("asks for each file once", async () => {
  const asked: string[] = [];
  const files = async (name: string) => {
    asked.push(name);
    return greyPng(2, 2, () => 0.5);
  };
  await loadImages([{ regions: [{ image: "a" }, {}, { image: "b" }, { image: "a" }], where: "pattern" }], files);
  expect(asked).toEqual(["a", "b"]);
});
