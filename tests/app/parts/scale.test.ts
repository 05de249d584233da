import { describe, expect, it } from 'vitest';
import { pointInWords } from '../../../app/parts/controls/scale.tsx';
import { languageFile, languages } from '../../../app/terminal/languages.ts';

describe.each(languages)('a point on a line as it is read out, %s', (language) => {
  const { phone, glossary } = languageFile(language);
  const says = (value: number | null) =>
    pointInWords({
      label: '',
      ...glossary.attributes['heel-hold'],
      value,
      words: {
        ...phone.scale,
        unanswered: phone.unanswered,
        clear: phone.clear,
        said: phone.joined.of,
      },
    });
  const { low, high } = glossary.attributes['heel-hold'];

  it('names both ends before it is answered', () => {
    for (const part of [phone.unanswered, low, high]) expect(says(null)).toContain(part);
  });

  it('names the end that it is nearer to, and none in the middle', () => {
    for (const value of [0, 1, 49]) expect(says(value)).toContain(low);
    for (const value of [51, 99, 100]) expect(says(value)).toContain(high);
    expect(says(0)).not.toBe(says(1).replace('1', '0'));
    expect(says(50)).not.toContain(low);
    expect(says(50)).not.toContain(high);
  });
});
