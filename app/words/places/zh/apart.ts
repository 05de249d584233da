/** A name within a sentence, set apart by spaces where it begins or ends in Latin letters or figures. */
export const apart = (name: string): string =>
  `${/^[!-~]/.test(name) ? ' ' : ''}${name}${/[!-~]$/.test(name) ? ' ' : ''}`;

/** A half-width space wherever a Chinese character and a Latin letter or a figure stand side by side; dates stay together. */
const spaced = (text: string): string =>
  text
    .replace(/(?![年月])([\u3400-\u9fff])(?=[A-Za-z0-9])/g, '$1 ')
    .replace(/([A-Za-z0-9%])(?![年月日])(?=[\u3400-\u9fff])/g, '$1 ');

const spacedIn = (value: unknown): unknown =>
  typeof value === 'string'
    ? spaced(value)
    : typeof value === 'function'
      ? (...about: unknown[]) => spacedIn((value as (...own: unknown[]) => unknown)(...about))
      : Array.isArray(value)
        ? value.map(spacedIn)
        : typeof value === 'object' && value !== null
          ? Object.fromEntries(Object.entries(value).map(([key, own]) => [key, spacedIn(own)]))
          : value;

/** The same words, whatever names are put in: a group may name its rounds in Latin letters. */
export const withSpaces = <Words extends object>(words: Words): Words => spacedIn(words) as Words;
