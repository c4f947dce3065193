/**
 * One stone in all terms.
 */
import { measureMesh } from "../../index.js";
import {
  cuts,
  type FacetedBody,
  type Gem,
  gems,
  type MetalDepth,
  metalDepths,
  polyhedronMesh,
  type StoneFacts,
} from "../../toolbox/index.js";
import { type Io, print } from "../io.js";
import { fixed, showPairs, signed } from "../show.js";
import { showSize } from "./show-tables.js";

/** A stone with what its mesh tells of it. */
export interface DescribedStone extends StoneFacts {
  readonly facets: Readonly<Record<string, number>>;
  /** mm³, of the mesh. */
  readonly volume: number;
  /** The volume by the gem's density, carats. */
  readonly caratsByVolume: number;
  readonly metal: readonly MetalDepth[];
  readonly material: Gem;
}

/** Carats in a gram, mm³ in a cm³. */
const CARATS_PER_GRAM = 5;
const MM3_PER_CM3 = 1000;

export function describeStone(stone: StoneFacts, body: FacetedBody): DescribedStone {
  const counts: Record<string, number> = {};
  for (const { name } of body.facets) counts[name] = (counts[name] ?? 0) + 1;
  const { volume } = measureMesh(polyhedronMesh(body));
  const [material = gems[0]] = gems.filter(({ symbol }) => symbol === stone.gem);
  const caratsByVolume = (volume / MM3_PER_CM3) * material.density.value * CARATS_PER_GRAM;
  const metal = stone.angles === undefined ? [] : metalDepths(stone.heights);
  return { ...stone, facets: counts, volume, caratsByVolume, metal, material };
}

export function printStone(stone: DescribedStone, io: Io): void {
  const { proportions, heights, angles, formula, width, carats, caratsByVolume, outline, material } = stone;
  const share = (height: number) => `${fixed(height)} mm, ${fixed((100 * height) / width, 1)} % of the width`;
  const product = formula.product === "area" ? "length × width" : "mean diameter²";
  const more = signed(100 * (caratsByVolume / carats - 1), 1);
  const flat = (name: string, part: number): [string, string][] =>
    part === 0 ? [] : [[name, `${fixed(part * width)} mm wide, ${fixed(100 * part, 1)} %`]];
  const angle = (degrees: number | undefined) => (degrees === undefined ? "" : `, ${fixed(degrees, 2)}°`);
  const pairs: readonly (readonly [string, string])[] = [
    ["stone", `${cuts.find(({ name }) => name === stone.cut)?.title ?? stone.cut}, ${material.name}`],
    ["size", `${showSize(stone)} mm`],
    ["weight", `${fixed(carats, 4)} ct, ${fixed(stone.grams, 4)} g: ${fixed(formula.factor, 5)} × ${product} × depth`],
    ["", formula.source],
    ["by volume", `${fixed(caratsByVolume, 4)} ct (${more} %): ${fixed(stone.volume)} mm³ of the facets × density`],
    ["depth", share(heights.depth)],
    ["crown", `${share(heights.crown)}${angle(angles?.crown)}`],
    ...flat("table", proportions.table),
    ["girdle", `${share(heights.girdle)}; ${fixed(outline.perimeter)} mm round, ${fixed(outline.area)} mm²`],
    ...(heights.pavilion === 0 ? [] : [["pavilion", `${share(heights.pavilion)}${angle(angles?.pavilion)}`] as const]),
    ...flat("culet", proportions.culet),
    ["facets", showFacets(stone.facets)],
    ...stone.metal.map(({ depth, what, source }, i): [string, string] => [
      i === 0 ? "metal" : "",
      `${fixed(depth)} mm under a level table: ${what} (${source})`,
    ]),
    ...gemPairs(material),
  ];
  print(io, showPairs(pairs));
}

/** Those of the girdle apart: their number is the tolerance's, not the cut's. */
function showFacets({ girdle = 0, dome = 0, ...counts }: DescribedStone["facets"]): string {
  const sum = Object.values(counts).reduce((total, count) => total + count, 0);
  const named = Object.entries(counts).map(([name, count]) => `${count} ${name}`);
  const round = [...(girdle > 0 ? [`${girdle} round the girdle`] : []), ...(dome > 0 ? [`${dome} over the dome`] : [])];
  return `${sum} (${named.join(", ")}), and ${round.join(", ")}`;
}

function gemPairs({ density, densityRange, hardness, heat, ultrasonic, fracture }: Gem): [string, string][] {
  const range = densityRange === undefined ? "" : `, ${densityRange.join(" to ")} published`;
  const set = heat.value === "cast" ? "may be cast in place" : "after casting: heat would spoil it";
  const told = (value: string, { source }: { readonly source: string }) => `${value} (${source})`;
  return [
    ["density", told(`${density.value} g/cm³${range}`, density)],
    ...(hardness === undefined
      ? []
      : [
          ["hardness", told(`${[...new Set(hardness.value)].join(" to ")} on Mohs' scale`, hardness)] as [
            string,
            string,
          ],
        ]),
    ["setting", told(set, heat)],
    ["ultrasonic", told(ultrasonic.value, ultrasonic)],
    ...(fracture === undefined ? [] : [["beware", told(fracture.value, fracture)] as [string, string]]),
  ];
}
