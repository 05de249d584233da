/** What the runs, the decisions that wait and one run say first: a case for each state, in both languages. */
import { describe, expect, it } from 'vitest';
import {
  damagesToAnswer,
  runHeadline,
  runsHeadline,
  waitingHeadline,
  type RunHeadline,
  type RunsFacts,
  type RunsHeadline,
  type WaitingHeadline,
} from '../../../core/headlines/index.ts';
import type { RunLook } from '../../../core/review/index.ts';
import { runs as en } from '../../../app/words/places/en/runs.ts';
import { runs as zh } from '../../../app/words/places/zh/runs.ts';
import type { Say } from '../../../app/words/say-names.ts';
import { idOf } from '../records/make.ts';

const [t01, t02, pair] = [idOf(1), idOf(2), idOf(20)];
const list = (names: readonly string[]) => names.join(', ');
const tester = (id: string) => (id === t01 ? 'T01' : 'T02');
const sayIn = (felt: string): Say =>
  ({
    pair: () => '963',
    tester,
    testers: (ids: readonly string[]) => list(ids.map(tester)),
    felt: () => felt,
    date: String,
    number: (value: number, digits = 1) => value.toFixed(digits),
    list,
  }) as unknown as Say;
const both = (h: RunsHeadline) => [
  en.headline(h, sayIn('heel slip at the heel cup')),
  zh.headline(h, sayIn('后跟打滑')),
];

const pain = (who: string, more: object = {}) => ({
  tester: who,
  stands: true,
  answer: null,
  ...more,
});
const facts = (more: object = {}): RunsFacts => ({
  review: {
    size: { runs: 518 },
    pairs: [],
    pains: [],
    damages: [],
    waiting: [],
    oddities: [],
    ...more,
  },
});
const answered = { answer: { advice: 'stay-out' } };

describe('the list of runs says first', () => {
  it.each([
    ['nobody ran', { size: { runs: 0 } }, 'Nobody has logged a run yet.', '还没有人记录跑步。'],
    [
      'pain that nobody answered',
      { pains: [pain(t01), pain(t01), pain(t02, answered)] },
      'T01 reports pain. Answer that first.',
      'T01 反映疼痛，请先答复。',
    ],
    [
      'pain of several',
      { pains: [pain(t01), pain(t02)] },
      '2 testers report pain. Answer them first.',
      '2 名试穿员反映疼痛，请先答复。',
    ],
    [
      'damage, after pain',
      { damages: [{ pair, stands: true, answer: null }], waiting: [{ about: 'run' }] },
      'Pair 963 comes apart. Answer its tester.',
      '样鞋 963 开始损坏，请答复试穿员。',
    ],
    [
      'damage of several pairs',
      {
        damages: [
          { pair, stands: true, answer: null },
          { pair: idOf(21), stands: true, answer: null },
        ],
      },
      '2 pairs come apart. Answer their testers.',
      '2 双样鞋开始损坏，请答复试穿员。',
    ],
    [
      'runs that wait, before pain that was answered',
      { waiting: [{ about: 'run' }], pains: [pain(t01, answered)] },
      '1 run waits for your decision.',
      '1 次跑步等你决定。',
    ],
    [
      'readings that wait',
      { waiting: [{ about: 'run' }, { about: 'gauge' }] },
      '2 entries wait for your decision.',
      '2 条记录等你决定。',
    ],
    [
      'pain that was answered and stands',
      { pains: [pain(t01, answered)], oddities: [{ run: idOf(5) }] },
      'T01 still stays out because of pain.',
      'T01 因疼痛仍在停跑。',
    ],
    [
      'odd runs, each once',
      { oddities: [{ run: idOf(5) }, { run: idOf(5) }, { run: idOf(6) }] },
      'Nothing waits. 2 runs look odd, of 518.',
      '没有待决定的事；518 次跑步中有 2 次可疑。',
    ],
    ['nothing', {}, '518 runs. Nothing waits for you.', '共 518 次跑步，没有待办事项。'],
  ])('%s', (_, more, english, chinese) => {
    const headline = runsHeadline(facts(more));
    expect(headline.claims).toBe('nothing');
    expect(both(headline)).toEqual([english, chinese]);
  });

  it('nothing of damage to a pair that was stopped', () => {
    const damages = [{ pair, stands: true, answer: null }];
    const pairs = [{ id: pair, stopUse: { id: idOf(40) } }];
    expect(runsHeadline(facts({ damages, pairs })).case).toBe('quiet');
  });

  it('nothing of pain and damage that no longer stand', () => {
    const over = { stands: false };
    expect(
      runsHeadline(facts({ pains: [pain(t01, over)], damages: [{ pair, answer: null, ...over }] }))
        .case,
    ).toBe('quiet');
  });
});

describe('the list of decisions says first', () => {
  const said = (of: object) => {
    const h: WaitingHeadline = waitingHeadline({
      waiting: [],
      decided: [],
      ...of,
    });
    return [en.waitingHeadline(h), zh.waitingHeadline(h)];
  };
  const out = (about: string) => ({ about, counts: false });
  it.each([
    ['nothing', {}, 'Nothing waits for your decision.', '没有等你决定的记录。'],
    [
      'what was set aside',
      { decided: [{ ruling: 'set-aside' }, { ruling: 'counted' }] },
      'Nothing waits for you. You set 1 entry aside.',
      '没有等你决定的记录；已搁置 1 条。',
    ],
    [
      'a run in no figure',
      { waiting: [out('run'), { about: 'gauge', counts: true }] },
      '1 run is in no figure until you decide.',
      '1 次跑步在你决定之前不计入。',
    ],
    [
      'runs and readings',
      { waiting: [out('run'), out('run'), out('reading')] },
      '2 runs and 1 reading are in no figure until you decide.',
      '2 次跑步和 1 个读数在你决定之前不计入。',
    ],
    [
      'what counts meanwhile',
      { waiting: [{ about: 'gauge', counts: true }] },
      '1 odd entry counts until you decide.',
      '1 条可疑记录暂时计入，等你决定。',
    ],
  ])('%s', (_, of, english, chinese) => {
    expect(said(of)).toEqual([english, chinese]);
  });
});

describe('damage that needs its lead', () => {
  it('leaves out a pair that was stopped: that is settled', () => {
    const damages = [
      { id: 'a', pair: 'p1', stands: true },
      { id: 'b', pair: 'p2', stands: true },
      { id: 'c', pair: 'p1', stands: false },
    ] as never;
    const pairs = [
      { id: 'p1', stopUse: null },
      { id: 'p2', stopUse: { id: 's', reason: 'peels' } },
    ] as never;
    expect(damagesToAnswer(damages, pairs)).toEqual([{ id: 'a', pair: 'p1', stands: true }]);
  });
});

describe('one run says first', () => {
  const look = (run: object, more: object = {}): RunLook =>
    ({
      run: { tester: t01, startedAt: '1 May', ...run },
      comfort: [],
      caution: false,
      ...more,
    }) as unknown as RunLook;
  const said = (one: RunLook) => {
    const h: RunHeadline = runHeadline(one);
    expect(h.claims).toBe('nothing');
    return [
      en.runHeadline(h, sayIn('heel slip at the heel cup')),
      zh.runHeadline(h, sayIn('后跟打滑')),
    ];
  };
  const overall = (score: number, others: readonly number[]) => ({
    comfort: [{ attribute: 'overall', score, others }],
  });
  const slips = { foot: 'left', zone: 'U10', kind: 'heel-slip', severity: 4 };
  const feet = (...complaints: object[]) => ({ feet: { answer: 'complaints', complaints } });

  it.each([
    [
      'pain that calls for the caution, before all else',
      look(
        { pain: { score: 5 }, ...feet(slips) },
        { caution: true, ...overall(20, [60, 61, 62, 63]) },
      ),
      'T01 reports pain on 1 May: 5 of 10.',
      'T01 在 1 May 反映疼痛，5 分（满分 10 分）。',
    ],
    [
      'an off day, outside of all other runs and by as much as matters',
      look({ feet: { answer: 'nothing' } }, overall(43, [55, 59, 60, 58])),
      'An off day for T01, 1 May: comfort 43, usually 59.',
      'T01 在 1 May 状态不佳：舒适度 43，平时 59。',
    ],
    [
      'a good day',
      look({}, overall(80, [55, 60, 60, 58])),
      'A good day for T01, 1 May: comfort 80, usually 59.',
      'T01 在 1 May 状态很好：舒适度 80，平时 59。',
    ],
    [
      'no off day by three other runs',
      look({ feet: { answer: 'nothing' } }, overall(43, [55, 59, 60])),
      'Nothing bothered T01 on 1 May.',
      'T01 在 1 May 的跑步没有不适。',
    ],
    [
      'what was felt, on both feet once',
      look(feet(slips, { ...slips, foot: 'right' })),
      'T01 felt heel slip at the heel cup on 1 May.',
      'T01 在 1 May 感到后跟打滑。',
    ],
    [
      'the worst of what was felt',
      look(feet({ ...slips, zone: 'U1', severity: 1 }, slips)),
      'T01 felt heel slip at the heel cup and 1 more on 1 May.',
      'T01 在 1 May 感到后跟打滑，另有 1 处。',
    ],
    [
      'no answer',
      look({}),
      'T01 said nothing about the feet on 1 May.',
      'T01 在 1 May 没有回答脚部不适。',
    ],
  ])('%s', (_, one, english, chinese) => {
    expect(said(one)).toEqual([english, chinese]);
  });
});
