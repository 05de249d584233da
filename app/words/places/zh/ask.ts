import type { PlaceWords } from '../../types.ts';

export const ask: PlaceWords['ask'] = {
  headline: (h, say) => {
    switch (h.case) {
      case 'pain': {
        const whom =
          h.testers.length === 1 ? ` ${say.testers(h.testers)} ` : ` ${h.testers.length} 名试穿员`;
        return h.more === 0
          ? `请问问${whom}的疼痛。`
          : `先问${whom}的疼痛，另有 ${h.more} 件事要问。`;
      }
      case 'answers':
        return h.things === 0
          ? `${h.unread} 条新回答待阅读。`
          : `${h.unread} 条新回答待阅读，${h.things} 件事要问。`;
      case 'to-ask':
        return h.testers.length === 1
          ? `有 ${h.things} 件事要问 ${say.testers(h.testers)}。`
          : `有 ${h.things} 件事要问 ${h.testers.length} 名试穿员。`;
      case 'waiting':
        return `${h.questions} 个提问还没有回答。`;
      case 'nothing':
        return '目前没有要问的。';
    }
  },
  sub: '试穿员每次只看到一个问题，用自己的语言阅读，点一下就能回答。',
  title: '问与答',
  crumb: '要问的',
  toRead: (n) => `${n} 条回答待阅读`,
  doubts: '要问的',
  noDoubts: '可疑的跑步、疼痛、没有消息和漏答会自动列在这里。',
  waiting: '等待回答',
  said: '全部问答',
  nothingSaid: '还没有人提问或留言。',

  doubt: {
    pain: (tester, score) => `${tester} 有疼痛，${score} 分（满分 10 分）。`,
    damage: (tester, what) => `${tester} 报告了损坏：${what}。`,
    'odd-run': (tester, whys) => `${tester}：${whys}。`,
    'early-sign': (tester, felt, n) =>
      n > 1 ? `${tester} 在 ${n} 次跑步中报告：${felt}。` : `${tester} 报告：${felt}。`,
    'outlying-score': (tester, attribute, score, usual) =>
      `${tester} 的${attribute}打了 ${score} 分，平时约 ${usual} 分。`,
    feet: (tester, n) =>
      n > 1 ? `${tester} 最近 ${n} 次没有回答脚部感受。` : `${tester} 没有回答脚部感受。`,
    comfort: (tester, n) =>
      n > 1 ? `${tester} 最近 ${n} 次没有回答总体舒适度。` : `${tester} 没有回答总体舒适度。`,
    silence: (tester, days) => `${tester} 已有 ${days} 天没有记录。`,
  },
  aboutRun: (date, pair, distance) => `${date}的跑步，样鞋 ${pair}，${distance}`,
  aboutPair: (pair) => `样鞋 ${pair}`,
  aboutDamage: (pair) => `样鞋 ${pair} 的损坏`,
  aboutZone: (zone) => `部位：${zone}`,
  inGeneral: '一般问题',

  button: (tester) => `问 ${tester}`,
  edit: '先修改',
  editName: (question) => `先修改：${question}`,
  buttonName: (tester, question) => `问 ${tester}：${question}`,
  other: '另外提问',
  askRun: (tester) => `就这次跑步问 ${tester}`,
  askDamage: (tester) => `就这处损坏问 ${tester}`,
  askPair: '就这双样鞋提问',
  askZone: '就这个部位提问',
  askedNow: (tester) => `已问 ${tester}`,
  form: {
    tester: '问谁',
    question: '问题',
    own: '自己写',
    words: '对方看到的话',
    readyMade: '现成的问题：对方会看到自己语言的版本。',
    asTyped: '对方看到的就是你写的原文。',
    answers: '可以点选什么？',
    sets: {
      words: '不点选，用文字回答',
      'yes-no': '是、不是、部分是',
      foot: '左脚、右脚、都有',
      now: '没有了、轻了、一样、变差了',
      change: '更好、一样、变差了',
    },
    always: '“说不准”和“跳过”始终可选。',
    missing: { tester: '请选择问谁。', words: '请写下问题。' },
    tooLong: '请写短一些。',
    send: '发送提问',
  },
  reveals: (tester, words) => `这可能会让 ${tester} 知道改了什么：${words}。请问感受，不要问原因。`,
  quoted: (words) => `“${words}”`,

  asked: (tester, when) => `${when} 问 ${tester}`,
  answered: (tester, when) => `${tester}，${when} 回答`,
  wrote: (tester, when) => `${tester}，${when} 留言`,
  replied: (when) => `${when} 回复`,
  unanswered: (days) => (days < 1 ? '还没有回答。' : `${days} 天没有回答。`),
  withdrawn: (when) => `已于 ${when} 撤回。`,
  withdraw: '撤回',
  withdrawName: (question) => `撤回：${question}`,
  withdrawnNow: '提问已撤回',
  again: '再次提问',
  againName: (question) => `再次提问：${question}`,
  isNew: '新',
  reply: (tester) => `回复 ${tester}`,
  replyWords: '写给试穿员的话',
  replyMissing: '请写几句话。',
};
