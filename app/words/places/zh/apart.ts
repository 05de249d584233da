/** A name within a sentence, set apart by spaces where it begins or ends in Latin letters or figures. */
export const apart = (name: string): string =>
  `${/^[!-~]/.test(name) ? ' ' : ''}${name}${/[!-~]$/.test(name) ? ' ' : ''}`;

/** A half-width space wherever a Chinese character and a Latin letter or a figure stand side by side; dates stay together. */
const spaced = (text: string): string =>
  text
    .replace(/(?![年月])([\u3400-\u9fff])(?=[A-Za-z0-9])/g, '$1 ')
    .replace(/([A-Za-z0-9%])(?![年月日])(?=[\u3400-\u9fff])/g, '$1 ');

/** A space that does not break between a figure and its unit, or what it counts. */
export const unbrokenText = (text: string): string =>
  text.replace(/(\d) (?=(?:km|mi|mm|g|min|%)(?![A-Za-z])|[\u3400-\u9fff])/g, '$1\u00a0');

/** A rule for every text of some words, also for those that a function puts together. */
const inEvery =
  (rule: (text: string) => string) =>
  (value: unknown): unknown => {
    const own = inEvery(rule);
    if (typeof value === 'string') return rule(value);
    if (typeof value === 'function')
      return (...about: unknown[]) => own((value as (...given: unknown[]) => unknown)(...about));
    if (Array.isArray(value)) return value.map(own);
    return typeof value === 'object' && value !== null
      ? Object.fromEntries(Object.entries(value).map(([key, one]) => [key, own(one)]))
      : value;
  };

/** The same words, whatever names are put in: a group may name its rounds in Latin letters. */
export const withSpaces = <Words extends object>(words: Words): Words =>
  inEvery(spaced)(words) as Words;

/** The same words, so that no line ends between a figure and what it counts. */
export const unbroken = <Words extends object>(words: Words): Words =>
  inEvery(unbrokenText)(words) as Words;
