/** The workbench's words in English: the catalogue that every other language fills. `{name}` stands for a value. */
export const english = {
  "view.ring": "Ring",
  "view.strip": "Pattern, laid flat",
  "view.section": "Cross-section",
  "panel.fields": "Sizes and choices",
  "panel.text": "Design as text",
  "panel.changes": "Changes",
  "settings.theme": "Colours",
  "settings.theme.auto": "as the system",
  "settings.theme.light": "light",
  "settings.theme.dark": "dark",
  "settings.language": "Language",
  "work.working": "working: {stage}, {share} %",
  "work.stop": "Stop",
  "work.stopped": "stopped; change something to go on",
  "note.put-away": "Put this message away",
} as const;

/** The key of a text. */
export type WordKey = keyof typeof english;

/** A language: every text. */
export type Words = Readonly<Record<WordKey, string>>;
