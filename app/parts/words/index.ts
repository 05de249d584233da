/**
 * Which language does this device speak? One file a language; only the chosen one is loaded.
 * Numbers and dates follow the platform's Intl.
 */
import { signal } from '@preact/signals';
import type { Words } from './en.ts';

export type { Words } from './en.ts';

export const languages = ['en', 'zh'] as const;
export type Language = (typeof languages)[number];

/** Each language in its own words, and its name for Intl and the page. */
export const languageNames: Readonly<Record<Language, string>> = { en: 'English', zh: '简体中文' };
const locales: Readonly<Record<Language, string>> = { en: 'en-GB', zh: 'zh-CN' };

const load: Readonly<Record<Language, () => Promise<Words>>> = {
  en: async () => (await import('./en.ts')).en,
  zh: async () => (await import('./zh.ts')).zh,
};

const current = signal<{ readonly language: Language; readonly words: Words } | null>(null);

/** Loads a language and makes it the page's. */
export const speak = async (language: Language): Promise<void> => {
  const words = await load[language]();
  document.documentElement.lang = locales[language];
  current.value = { language, words };
};

const spoken = () => {
  if (!current.value) throw new Error('a screen was drawn before a language was loaded');
  return current.value;
};

/** The words of the current language; a screen that reads them is drawn anew when it changes. */
export const t = (): Words => spoken().words;
export const language = (): Language => spoken().language;
export const locale = (): string => locales[spoken().language];

/** The language that the device asks for, as far as there is one here. */
export const preferredLanguage = (): Language =>
  navigator.languages
    .map((tag) => tag.slice(0, 2).toLowerCase() as Language)
    .find((tag) => languages.includes(tag)) ?? 'en';
