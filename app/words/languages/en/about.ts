import type { LanguageName } from '../../types.ts';

export const about: LanguageName = { name: 'English', locale: 'en-GB' };
