import type { PlaceWords } from '../../types.ts';
import { apart } from './apart.ts';

const failing = {
  wear: '磨损过早',
  structure: '样鞋损坏',
  'allowed-rate': '有问题反复出现',
  complaints: '有问题随里程增多',
  'stop-use': '有样鞋停穿',
} as const;

export const verdict: PlaceWords['verdict'] = {
  headline: (h, say) => {
    switch (h.case) {
      case 'no-round':
        return '还没有轮次，无从判定。';
      case 'nobody-ran':
        return '还没有人跑过，无从判定。';
      case 'fails':
        return h.count === 1
          ? `${apart(say.round(h.round)).trimStart()}不合格：${failing[h.what]}。`
          : `${apart(say.round(h.round)).trimStart()}的 ${h.of} 项要求中有 ${h.count} 项不合格。`;
      case 'holds':
        return `${apart(say.round(h.round)).trimStart()}达到任务书的全部 ${h.of} 项要求。`;
      case 'open':
        return `尚无定论：${apart(say.round(h.round)).trimStart()}的 ${h.of} 项要求中有 ${h.open} 项未定。`;
    }
  },
  failing,
  sub: (distance, rounds) => `任务书要求每双 ${distance}。共 ${rounds} 轮。`,
  noLimits: '任务书还没有设定发泡料或花纹的限值。',
  setLimits: '设定限值',
  report: '报告',
  print: '打印',
  grid: '各轮的各项要求',
  limit: '任务书的要求',
  settle: (round) => `${apart(round).trimStart()}如何定论`,
  settleShort: '如何定论',
  rows: {
    structure: '没有损坏',
    'allowed-rate': (complaint) => `任何问题不超过 ${complaint} 的跑步`,
    complaints: '问题不随里程增多',
    'stop-use': '没有样鞋停穿',
  },
  rowNotes: {
    structure: '十双中九双须撑到底',
    'allowed-rate': (pain) => `疼痛不超过 ${pain}`,
    complaints: '各里程段有问题的跑步',
    'stop-use': '生效中的停穿通知',
  },
  notMeasured: '未测量',
  noReading: '本轮未测量',
  cameApart: (failed, of, at) =>
    failed === 0 ? `${of} 双中 0 双损坏；最远 ${at}` : `${of} 双中 ${failed} 双损坏，最早在 ${at}`,
  recurs: (felt, runs, askedRuns, testers, askedTesters) =>
    `${felt}：${askedRuns} 次中 ${runs} 次，${askedTesters} 名试穿员中 ${testers} 名`,
  painRecurs: '疼痛反复出现',
  nothingRecurs: (runs, testers) => `${testers} 名试穿员 ${runs} 次跑步，没有已证实反复出现的问题`,
  nobodyAsked: '还没有人回答过',
  grows: (felt) => `随里程增多：${felt}`,
  noRise: (there, brief) => (there === 0 ? `未见增多；${brief} 时还没有人回答` : '未见增多'),
  withdrawn: (codes) => `样鞋 ${codes} 停穿`,
  noneWithdrawn: '没有',
  share: (felt, runs, of) => `${felt}：${of} 次中 ${runs} 次`,
  without: (who, word) => `不算${apart(who).trimEnd()}：${word}`,
  pair: (code) => `样鞋 ${code}`,
  cellSays: (limit, round, stamp, says) => `${limit}，${round}：${stamp}；${says}`,
  expected: (expected, say) => {
    switch (expected.when) {
      case 'now':
        return '已跑到';
      case 'later':
        return `约 ${say.date(expected.atMs)}`;
      case 'if-resumed':
        return `${say.tester(expected.tester)} 若继续跑，约 ${say.date(expected.atMs)}`;
      case 'not-run':
        return '目前没有人在跑';
      case 'not-known':
        return '跑的次数太少，说不准何时';
      case 'comes-back-first':
        return `在此之前就会交回（${say.date(expected.atMs)}）`;
    }
  },
  nextChecks: '接下来的测量',
  settles: {
    measure: ({ pair, atM, expected, also }, say) =>
      `样鞋 ${say.pair(pair)} 到 ${say.distance(atM)} 时测量（${verdict.expected(expected, say)}）${
        also.length > 0 ? `；也可测样鞋 ${say.list(also.map(say.pair))}` : ''
      }`,
    'measure-first': '新鞋与穿过的鞋各测一次',
    'look-at-pair': (code) => `查看样鞋 ${code}：磨损与其他不同`,
    'look-at-reading': (code, at) => `核对样鞋 ${code} 在 ${at} 时的读数`,
    'pairs-differ': '各双差异大，再测也难有定论',
    'run-pairs': (need, have, at) =>
      need === null ? '损坏太多，已无法证实' : `需 ${need} 双跑到 ${at} 无损坏；已有 ${have} 双`,
    'ask-testers': (need, have) => `需 ${need} 名试穿员都无反映；目前 ${have} 名`,
    'decide-by-reports': (need) => `按试穿员的反映决定；要证明需 ${need} 名试穿员`,
    'ask-at': (need, have, at) => `${at} 时询问 ${need} 双样鞋的试穿员；目前 ${have} 双`,
    'lift-or-keep': (ids, say) => `查看样鞋 ${say.list(ids.map(say.pair))}：解除或保留停穿`,
    change: '在新一轮中改动',
    nothing: '已有定论',
  },
  figures: '数字与方法',
};
