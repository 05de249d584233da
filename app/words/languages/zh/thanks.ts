/** 试穿员看到的：反映的问题有了什么结果 */
import type { TalkWords } from '../../types.ts';

export const thanks: TalkWords['thanks'] = {
  titles: {
    carried: '你反映的问题，下一批样鞋已改。',
    mended: '你反映的问题已经解决。',
    better: '你反映的问题有了改善。',
    'no-different': '你反映的问题，这次改动没有效果。',
    worse: '你反映的问题，改动后更明显了。',
  },
  felt: (kind, zone) => `${zone}${kind}`,
  told: (felt, runs) =>
    runs === null ? `你反映过：${felt}。` : `你在 ${runs} 次跑步中反映：${felt}。`,
  came: {
    carried: '因为你的反映，下一批样鞋做了改动。有没有用，要看接下来的跑步。',
    mended: '改动之后明显少了，已达到对这款鞋的要求。',
    better: '改动之后明显少了。够不够少，还没有定论。',
    'no-different': '改动之后和以前一样常见，说明光改这里还不够。',
    worse: '改动之后反而更常见了，幸好现在就知道。',
  },
  changed: (change) => `改动：${change}。`,
  thank: '谢谢你的反映。',
};
