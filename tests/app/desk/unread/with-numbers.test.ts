/** Records that cannot be read: told with their field and range in both languages, and put right in place. */
import { describe, expect, it } from 'vitest';
import { deskWork } from '../../../../app/desk/worker/desk-work.ts';
import { withNumbers } from '../../../../app/desk/unread/with-numbers.ts';
import { spokenIn } from '../../../../app/report/spoken.tsx';
import { languageFile } from '../../../../app/terminal/languages.ts';
import { problemsInWords, recordInWords } from '../../../../app/words/say-left-out.ts';
import { readBody, type LeftOut } from '../../../../core/records/index.ts';
import { idOf } from '../../../core/records/make.ts';
import { pair, project, PROJECT, record, round } from '../../../core/review/log-for-tests.ts';

const wide = project({ feet: { lengthMm: [250, 1e8] } });
const tester = record(idOf(5), 'tester', {
  ...{ code: 'T05', name: 'Ada' },
  footLengthMm: { left: 1e308, right: 265 },
});

const read = async () => {
  const heads = [wide, tester, round(idOf(2), 1), pair(idOf(3), idOf(2), 'A1')];
  const work = deskWork(
    () => Promise.resolve(heads),
    () => Date.UTC(2026, 5, 1),
  );
  return { work, records: await work.read() };
};
const said = (one: LeftOut, language: string): string => {
  const { speaker } = spokenIn(
    languageFile(language),
    { rounds: {}, pairs: {}, testers: {} },
    'km',
    'UTC',
  );
  return [recordInWords(one, speaker), ...problemsInWords(one, speaker)].join(' | ');
};

describe('records with figures that cannot be', () => {
  it('are handed to the desk, and their project is not computed', async () => {
    const { work, records } = await read();
    expect(records.unread.all).toBe(2);
    expect(records.project).toEqual([]);
    expect(work.review(PROJECT)).toBeNull();
  });

  it('are said by what they are called, never by a tester’s name', async () => {
    const { first } = (await read()).records.unread;
    expect(first.map((one) => said(one, 'en'))).toEqual([
      'Project Test | Length 2: Must be from 100 to 400 mm.',
      'Tester T05 | Foot length, left: Must be from 100 to 400 mm.',
    ]);
    expect(first.map((one) => said(one, 'zh'))).toEqual([
      '项目 Test | 长度 2：应在 100 至 400 mm 之间。',
      '试穿员 T05 | 脚长，左脚：应在 100 至 400 mm 之间。',
    ]);
  });

  it('can be read once the numbers are put right, and hold all else as it was', async () => {
    const { first } = (await read()).records.unread;
    const field = first[0]?.problems?.[0]?.field ?? '';
    const mended = withNumbers(wide.body ?? {}, new Map([[field, 280]]));
    const body = readBody('project', mended);
    expect(body.ok && body.body.brief.feet).toEqual({ lengthMm: [250, 280] });
    expect({ ...mended, brief: null }).toEqual({ ...wide.body, brief: null });
    expect(withNumbers({ a: 1 }, new Map([['b.c', 2]]))).toEqual({ a: 1 });
  });
});
