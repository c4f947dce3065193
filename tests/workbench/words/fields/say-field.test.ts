// Covers: src/workbench/words/fields/*
import { afterEach, describe, expect, it } from "vitest";
import { explain } from "../../../../src/workbench/engine/explain-inside.js";
import { byPlace } from "../../../../src/workbench/fields/by-place.js";
import { waysOf } from "../../../../src/workbench/fields/ways.js";
import {
  CHOICE_NAMES,
  FIELD_NAMES,
  sayChoice,
  sayField,
  sayFieldHelp,
  sayRange,
} from "../../../../src/workbench/words/fields/say-field.js";
import { language } from "../../../../src/workbench/words/language.js";
import { schemaPlaces } from "../../../support/schema-places.js";

afterEach(() => {
  language.value = "en";
});

const places = [...schemaPlaces()];

/** Each word of each choice with its field's place, and each form. */
const choices = places.flatMap(([place, reference]) =>
  waysOf(reference).flatMap((way) => {
    if (way.kind === "word") return [`${place}.${String(way.word)}`];
    return way.kind === "object" && way.form !== undefined ? [`${place}.${way.form.name}`] : [];
  }),
);

describe("names of fields", () => {
  it("are the language's, else the English ones, else the key", () => {
    expect(sayField("profile.outside.channel.rail")).toBe("rail width");
    expect(sayField("pattern.regions.map.seam")).toBe("seam");
    expect(sayChoice("beads.along", "rail")).toBe("the rails' tops");
    expect(sayChoice("beads.along", "{v}")).toBe("a circle round the band");
    language.value = "de";
    expect(sayField("profile.outside.channel.rail")).toBe("Breite der Randstege");
    expect(sayChoice("pattern.regions.mode", "sunk")).toBe("vertieft");
  });

  it("have help with range and default in either language", () => {
    const [rail] = explain("profile.outside.channel.rail");
    expect(sayFieldHelp(rail)).toBe(rail.description);
    language.value = "de";
    expect(sayFieldHelp(rail)).toMatch(/^Breite.*; mm; über 0; sonst 0,9$/);
    expect(["above 0 to 1000", "0.5 or more", "up to 3", "at most 20 entries"].map(sayRange)).toEqual([
      "über 0 bis 1000",
      "ab 0,5",
      "bis 3",
      "höchstens 20 Einträge",
    ]);
  });

  it("name only fields that there are", () => {
    const schemas = places.map(([place]) => place);
    const ends = (key: string) => schemas.some((schema) => byPlace({ [key]: true }, schema));
    for (const table of Object.values(FIELD_NAMES)) {
      expect(Object.keys(table).filter((key) => !ends(key))).toEqual([]);
    }
    for (const table of Object.values(CHOICE_NAMES)) {
      expect(Object.keys(table).filter((key) => !choices.some((choice) => byPlace({ [key]: true }, choice)))).toEqual(
        [],
      );
    }
  });

  it("are all written in German", () => {
    expect(places.map(([place]) => place).filter((place) => byPlace(FIELD_NAMES.de, place) === undefined)).toEqual([]);
    // A form's own word beside its fields (`profile.outside.channel.form`) is no choice, and motifs are named once.
    const said = choices.filter((choice) => !/\b(\w+)\.form\.\1$|\bmotif\.([\w-]+)\.name\.\2$/.test(choice));
    expect(said.filter((choice) => byPlace(CHOICE_NAMES.de, choice) === undefined)).toEqual([]);
  });
});
