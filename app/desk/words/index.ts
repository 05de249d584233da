/** The desk's words in the language that the app speaks. They come with the desk, not with the phone. */
import { language } from '../../parts/words/index.ts';
import { en, type DeskWords } from './en.ts';
import { zh } from './zh.ts';

const words = { en, zh } as const;

export const d = (): DeskWords => words[language()];
