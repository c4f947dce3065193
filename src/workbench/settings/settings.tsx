/**
 * How the page itself is shown: light or dark, and in which language.
 */
import { useEffect } from "preact/hooks";
import { LANGUAGE_NAMES, type LanguageTag, language, say } from "../words/language.js";
import { keepTheme, keptTheme, THEMES, type Theme, theme } from "./theme.js";

export function Settings() {
  useEffect(() => {
    theme.value = keptTheme(() => localStorage);
  }, []);
  useEffect(() => {
    document.documentElement.dataset.theme = theme.value;
  }, [theme.value]);
  return (
    <div class="settings">
      <ThemeChoice />
      <LanguageChoice />
    </div>
  );
}

function ThemeChoice() {
  const choose = (chosen: Theme): void => {
    theme.value = chosen;
    keepTheme(chosen, () => localStorage);
  };
  return (
    <select
      aria-label={say("settings.theme")}
      value={theme.value}
      onChange={(event) => choose(event.currentTarget.value as Theme)}
    >
      {THEMES.map((one) => (
        <option key={one} value={one}>
          {say(`settings.theme.${one}`)}
        </option>
      ))}
    </select>
  );
}

function LanguageChoice() {
  useEffect(() => {
    document.documentElement.lang = language.value;
  }, [language.value]);
  return (
    <select
      aria-label={say("settings.language")}
      value={language.value}
      onChange={(event) => {
        language.value = event.currentTarget.value as LanguageTag;
      }}
    >
      {Object.entries(LANGUAGE_NAMES).map(([tag, name]) => (
        <option key={tag} value={tag} lang={tag}>
          {name}
        </option>
      ))}
    </select>
  );
}
