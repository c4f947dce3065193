/**
 * What whoever casts, wears or sells a ring should know. No advice that replaces training or the law.
 *
 * Limits: REACH (EC 1907/2006) annex XVII entries 27, 23 and 63; UK hallmarking exemption weights (Hallmarking Act
 * 1973); 29 CFR 1910.1053 for respirable silica.
 */

export interface Caution {
  /** One or two words. */
  readonly topic: string;
  /** A few whole sentences. */
  readonly text: string;
}

/**
 * What to know before casting, wearing or selling a ring, for a program that passes it on.
 *
 * @example
 * for (const { topic, text } of cautions) console.log(topic, text);
 */
export const cautions: readonly Caution[] = [
  {
    topic: "estimates",
    text:
      "Weights, shrinkage and wall limits are estimates from published values. Metal, investment, printer and caster " +
      "all move them. Prove a design with a test casting before you promise a size or a weight.",
  },
  {
    topic: "resin",
    text:
      "Uncured resin can make the skin allergic for life. Read its safety data sheet, wear gloves and eye protection, " +
      "air the room, and cure what you throw away.",
  },
  {
    topic: "burnout",
    text:
      "Burning out wax or resin gives off harmful fumes. Use a kiln with extraction made for it, never an oven for " +
      "food or one in a living space.",
  },
  {
    topic: "investment",
    text:
      "Investment powder holds crystalline silica, which scars lungs for good. Mix and break it under extraction or " +
      "wet, and wear a fitted respirator. The US limit is 50 µg/m³ of respirable silica over 8 hours " +
      "(29 CFR 1910.1053); other countries have their own.",
  },
  {
    topic: "molten metal",
    text:
      "Molten metal and hot flasks burn, and damp moulds spit. Casting is for trained people with the right " +
      "equipment, under the rules that hold where they work.",
  },
  {
    topic: "polishing",
    text:
      "Polishing wheels catch hair, sleeves, gloves and rings. Tie back or take off what is loose, wear eye " +
      "protection, and draw off the dust.",
  },
  {
    topic: "skin contact",
    text:
      "In the EU a ring may release at most 0.5 µg of nickel per cm² and week (REACH annex XVII, entry 27), and may " +
      "hold at most 0.01 % of cadmium (entry 23) and 0.05 % of lead (entry 63) by weight. Ask your metal dealer for " +
      "the alloy's composition.",
  },
  {
    topic: "hallmarks",
    text:
      "Precious metal often has to be hallmarked before it is sold as such. In the UK articles below 1 g of gold, " +
      "7.78 g of silver, 0.5 g of platinum or 1 g of palladium are exempt; other countries differ.",
  },
  {
    topic: "selling",
    text:
      "Check the law where you make and where you sell: this list is not complete and may be out of date. Where it " +
      "and local codes or a licensed practitioner disagree, follow them. annulet certifies nothing.",
  },
];
