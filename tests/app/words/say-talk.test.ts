/** Ready-made questions, their answers and structured changes, in both languages. */
import { describe, expect, it } from 'vitest';
import { languageFile, languages } from '../../../app/terminal/languages.ts';
import {
  askInWords,
  changeInWords,
  optionInWords,
  type ChangeSpeaker,
} from '../../../app/words/say-talk.ts';
import { partIds } from '../../../core/foot/index.ts';
import { answerOptions, askIds, type StructuredChange } from '../../../core/records/index.ts';
import { asks, optionsOf } from '../../../core/talk/index.ts';
import { revealsChange } from '../../../core/words/index.ts';

const facts = {
  pair: '637',
  distance: '212 km',
  pace: '2:10',
  when: '3.5.',
  attribute: 'Ventilation',
};

describe.each(languages)('in %s', (id) => {
  const { talk, glossary, desk } = languageFile(id);

  it('each question is one short line that names nothing of the build', () => {
    for (const ask of askIds) {
      const line = askInWords(ask, facts, talk);
      expect(line).not.toMatch(/undefined|\n/);
      expect(line.split(/\s+/).length, line).toBeLessThanOrEqual(12);
      // Not even where the round changed every part there is; of the laces the one that asks about them is warned of.
      const changes = partIds.map((part) => ({ what: glossary.parts[part].name }));
      const revealed = revealsChange(line, changes).map(({ change }) => change);
      expect(revealed, line).toEqual(ask === 'looser-laces' ? [partIds.indexOf('lacing')] : []);
    }
  });

  it('no two answers to a question read alike', () => {
    for (const ask of askIds) {
      const said = optionsOf({ ask }).map((option) => optionInWords(option, ask, talk));
      expect(new Set(said).size, ask).toBe(said.length);
    }
    for (const option of answerOptions)
      expect(optionInWords(option, undefined, talk)).toBe(talk.options[option]);
    // What is said otherwise is offered there.
    for (const [ask, own] of Object.entries(talk.optionsIn))
      for (const option of Object.keys(own))
        expect(asks[ask as keyof typeof asks].options, ask).toContain(option);
  });

  it('a change is said whole', () => {
    const speaker: ChangeSpeaker = {
      talk,
      glossary,
      number: (value, most) => String(Number(value.toFixed(most))),
      foot: (foot) => (id === 'en' ? `${foot} shoe` : foot === 'left' ? '左脚' : '右脚'),
      site: (site) => desk.blueprint.sites[site] ?? site,
      of: (what, said) => desk.joined.of(what, said),
      clauses: (parts) => desk.joined.clauses(parts),
    };
    const say = (change: StructuredChange) => changeInWords(change, speaker);
    const collar: StructuredChange = {
      ...({ part: 'upper-pattern', line: 'collar', side: 'lateral' } as const),
      ...({ foot: 'left', direction: 'lower' } as const),
    };
    const foam = { part: 'midsole-foam', direction: 'less' } as const;
    const said = [
      say({ ...collar, by: { amount: 2, unit: 'mm' } }),
      say(collar),
      say({
        ...{ ...foam, by: { amount: 3, unit: 'asker-c' } },
        dimension: { measure: 'hardness', site: 'heel-centre' },
      }),
      say({ ...foam, by: { amount: 1, unit: 'grade' } }),
      say({ ...foam, by: { amount: 2, unit: 'grade' } }),
      say({ part: 'midsole-geometry', direction: 'more', by: { amount: 1.5, unit: 'deg' } }),
    ];
    expect(said).toEqual(
      id === 'en'
        ? [
            'Collar line: 2 mm lower, lateral side, left shoe',
            'Collar line: lower, lateral side, left shoe',
            'Hardness, centre of the heel: 3 Asker C less',
            'Midsole foam: 1 grade less',
            'Midsole foam: 2 grades less',
            'Midsole geometry: 1.5° more',
          ]
        : [
            '领口线：降低 2 mm，外侧，左脚',
            '领口线：降低，外侧，左脚',
            '硬度，后跟中心：减少 3 Asker C',
            '中底发泡材料：减少 1 级',
            '中底发泡材料：减少 2 级',
            '中底造型：增加 1.5°',
          ],
    );
  });
});
