/** The workbench's words in German. */
import type { Words } from "./english.js";

export const german: Words = {
  "view.ring": "Ring",
  "view.strip": "Muster, abgewickelt",
  "view.section": "Querschnitt",
  "panel.fields": "Maße und Auswahl",
  "panel.text": "Entwurf als Text",
  "panel.changes": "Änderungen",
  "settings.theme": "Farben",
  "settings.theme.auto": "wie das System",
  "settings.theme.light": "hell",
  "settings.theme.dark": "dunkel",
  "settings.language": "Sprache",
  "work.working": "rechnet: {stage}, {share} %",
  "work.stop": "Anhalten",
  "work.stopped": "angehalten; mit der nächsten Änderung geht es weiter",
  "note.put-away": "Meldung schließen",
};
