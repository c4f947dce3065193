/**
 * What whoever casts, sets or cleans the stones of a ring should know of their gems.
 */
import type { Gem } from "../../gems/gem.js";
import type { PlacedStones } from "../../stones/place-stones.js";

/** What goes before them. */
export const STONE_CAUTION =
  "What gems bear is common practice and differs from stone to stone: ask who cut or sold them, keep to the rules where you work, and leave setting to someone trained for it.";

/** Whole sentences, one for each gem that the stones are of. */
export function stoneCautions({ stones, gems }: PlacedStones): readonly string[] {
  const used = new Set(stones.map(({ stone }) => stone.gem));
  return [...gems.values()].filter(({ symbol }) => used.has(symbol)).map(sentence);
}

function sentence({ name, heat, ultrasonic, fracture }: Gem): string {
  const cast =
    heat.value === "cast"
      ? "may be cast in place where it is clean"
      : "is set after casting: it does not bear burnout and metal";
  const bath = {
    yes: "bears an ultrasonic bath",
    caution: "bears an ultrasonic bath only where it is neither included, treated nor filled",
    no: "goes into no ultrasonic bath",
  }[ultrasonic.value];
  const breaks = fracture === undefined ? "" : ` Beware: ${fracture.value}.`;
  return `${name} ${cast}, and ${bath}.${breaks}`;
}
