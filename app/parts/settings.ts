/** How does this device want to be spoken to: language, units, light or dark? */
import { effect, signal } from '@preact/signals';
import * as z from 'zod/mini';
import type { Store } from '../store/index.ts';
import { fetchAhead, languages, preferredLanguage, speak } from '../words/index.ts';

const settingsSchema = z.object({
  language: z.string().check(z.refine((language) => languages.includes(language))),
  distance: z.enum(['km', 'mi']),
  temperature: z.enum(['C', 'F']),
  sizes: z.enum(['mondopoint', 'eu', 'uk', 'us', 'us-women']),
  theme: z.enum(['system', 'light', 'dark']),
  /** Over which networks photos and tracks go out by themselves. Absent before version 0.2. */
  photos: z._default(z.enum(['any', 'unmetered']), 'any'),
  /** Metres of a sent track that are cut off at either end. */
  privateM: z._default(z.number().check(z.minimum(100), z.maximum(5000)), 300),
  trackTimes: z._default(z.enum(['exact', 'minutes']), 'exact'),
});
export type Settings = z.infer<typeof settingsSchema>;

const KEY = 'settings';

export const settings = signal<Settings>({
  language: 'en',
  distance: 'km',
  temperature: 'C',
  sizes: 'eu',
  theme: 'system',
  photos: 'any',
  privateM: 300,
  trackTimes: 'exact',
});

/** Reads what was chosen on this device, and loads the language. */
export const loadSettings = async (store: Store): Promise<void> => {
  // Most speak the language of their device: its words come while the settings are read.
  fetchAhead(preferredLanguage());
  const kept = z.safeParse(settingsSchema, await store.setting(KEY).catch(() => undefined));
  settings.value = kept.success ? kept.data : { ...settings.value, language: preferredLanguage() };
  await speak(settings.value.language);
  effect(() => {
    const { theme } = settings.value;
    if (theme === 'system') delete document.documentElement.dataset['theme'];
    else document.documentElement.dataset['theme'] = theme;
  });
};

/** Changes a setting now and for the next start. */
export const changeSettings = async (store: Store, change: Partial<Settings>): Promise<void> => {
  const next = { ...settings.value, ...change };
  if (next.language !== settings.value.language) await speak(next.language);
  settings.value = next;
  await store.saveSetting(KEY, next);
};
