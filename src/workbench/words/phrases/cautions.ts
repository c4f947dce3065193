/**
 * German for what whoever casts, wears or sells a ring should know. The keys are the whole English texts: where one of them
 * changes, the English is shown until the German follows, since these matter for safety.
 */
import type { Phrases } from "../phrasebook.js";

export const cautionPhrases: Phrases = {
  estimates: "Schätzwerte",
  "Weights, shrinkage and wall limits are estimates from published values. Metal, investment, printer and caster all move them. Prove a design with a test casting before you promise a size or a weight.":
    "Gewichte, Schwindung und Wandgrenzen sind Schätzungen nach veröffentlichten Werten. Metall, Einbettmasse, Drucker und Gießerei verschieben sie alle. Prüfen Sie einen Entwurf mit einem Probeguss, bevor Sie eine Ringweite oder ein Gewicht zusagen.",
  resin: "Harz",
  "Uncured resin can make the skin allergic for life. Read its safety data sheet, wear gloves and eye protection, air the room, and cure what you throw away.":
    "Nicht ausgehärtetes Harz kann lebenslange Allergien der Haut auslösen. Lesen Sie das Sicherheitsdatenblatt, tragen Sie Handschuhe und Augenschutz, lüften Sie den Raum und härten Sie aus, was Sie wegwerfen.",
  burnout: "Ausbrennen",
  "Burning out wax or resin gives off harmful fumes. Use a kiln with extraction made for it, never an oven for food or one in a living space.":
    "Beim Ausbrennen von Wachs oder Harz entstehen gesundheitsschädliche Dämpfe. Verwenden Sie einen dafür gebauten Ofen mit Absaugung, niemals einen Ofen für Lebensmittel oder einen in Wohnräumen.",
  investment: "Einbettmasse",
  "Investment powder holds crystalline silica, which scars lungs for good. Mix and break it under extraction or wet, and wear a fitted respirator. The US limit is 50 µg/m³ of respirable silica over 8 hours (29 CFR 1910.1053); other countries have their own.":
    "Einbettmasse enthält kristallines Siliziumdioxid, dessen Staub die Lunge dauerhaft vernarbt. Mischen und zerbrechen Sie sie unter Absaugung oder nass, und tragen Sie eine angepasste Atemschutzmaske. Der Grenzwert in den USA ist 50 µg/m³ alveolengängiges Siliziumdioxid über 8 Stunden (29 CFR 1910.1053); andere Länder haben eigene.",
  "molten metal": "Flüssiges Metall",
  "Molten metal and hot flasks burn, and damp moulds spit. Casting is for trained people with the right equipment, under the rules that hold where they work.":
    "Flüssiges Metall und heiße Küvetten verbrennen, und aus feuchten Formen spritzt es. Gießen ist Sache von ausgebildeten Menschen mit der richtigen Ausrüstung, nach den Vorschriften, die an ihrem Arbeitsort gelten.",
  polishing: "Polieren",
  "Polishing wheels catch hair, sleeves, gloves and rings. Tie back or take off what is loose, wear eye protection, and draw off the dust.":
    "Polierscheiben erfassen Haare, Ärmel, Handschuhe und Ringe. Binden Sie Loses zurück oder legen Sie es ab, tragen Sie Augenschutz und saugen Sie den Staub ab.",
  "skin contact": "Hautkontakt",
  "In the EU a ring may release at most 0.5 µg of nickel per cm² and week (REACH annex XVII, entry 27), and may hold at most 0.01 % of cadmium (entry 23) and 0.05 % of lead (entry 63) by weight. Ask your metal dealer for the alloy's composition.":
    "In der EU darf ein Ring höchstens 0,5 µg Nickel je cm² und Woche abgeben (REACH Anhang XVII, Eintrag 27) und höchstens 0,01 % Cadmium (Eintrag 23) und 0,05 % Blei (Eintrag 63) nach Gewicht enthalten. Fragen Sie Ihren Metallhändler nach der Zusammensetzung der Legierung.",
  hallmarks: "Punzen",
  "Precious metal often has to be hallmarked before it is sold as such. In the UK articles below 1 g of gold, 7.78 g of silver, 0.5 g of platinum or 1 g of palladium are exempt; other countries differ.":
    "Edelmetall muss oft gepunzt sein, bevor es als solches verkauft wird. Im Vereinigten Königreich sind Stücke unter 1 g Gold, 7,78 g Silber, 0,5 g Platin oder 1 g Palladium ausgenommen; andere Länder regeln es anders.",
  selling: "Verkauf",
  "Check the law where you make and where you sell: this list is not complete and may be out of date. Where it and local codes or a licensed practitioner disagree, follow them. annulet certifies nothing.":
    "Prüfen Sie das Recht dort, wo Sie herstellen, und dort, wo Sie verkaufen: Diese Liste ist nicht vollständig und kann veraltet sein. Wo sie von örtlichen Vorschriften oder zugelassenen Fachleuten abweicht, gelten diese. annulet bescheinigt nichts.",
};
