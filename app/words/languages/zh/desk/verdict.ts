import type { DeskWords } from '../../../types.ts';

export const verdict: DeskWords['verdict'] = {
  of: (round, word) => `${round}：${word}`,
  items: {
    structure: '结构',
    'allowed-rate': (complaint, pain) => `不适至多占跑步的 ${complaint}，疼痛至多 ${pain}`,
    complaints: '随里程加重的不适',
    'stop-use': '停用通知',
  },
  notMeasured: '没有相应测量',
  evidence: (count, checks) => `${count} 双，${checks} 次测量`,
  structureShort: (failed, count, upper) =>
    `${count} 双中 ${failed} 双损坏，还没有一双达到任务书里程。所有这类样鞋中至多 ${upper} 完好（95 % 的把握）。`,
  pairsDiffer: '再测也难有定论：未知的几乎全是各双之间的差异，约有这么多达标。',
  onePairDiffers: (pair) =>
    `只因样鞋 ${pair} 才无定论：去掉它，各双几乎一致，或结论不同。请先查看这一双。`,
  oneReadingDiffers: (pair, at) =>
    `只因一个读数才无定论：样鞋 ${pair}，${at}。再测之前请先核对这个数。`,
  structureNone: (count) => `${count} 双无一损坏，但还没有一双达到任务书里程。`,
  structure: (failed, count, share, lower, upper) =>
    `${count} 双中 ${failed} 双损坏。到任务书里程时，这类样鞋 ${share} 完好（90 % 区间 ${lower} 至 ${upper}）；要求 90 %。`,
  weibull: (shape, share, lower, upper) =>
    `按 Weibull 曲线，${share} 完好（90 % 区间 ${lower} 至 ${upper}）；形状参数 ${shape}，大于 1 表示跑得越远越易损坏。`,
  noLimits: '任务书尚未列出发泡料或花纹的限值。',
  holding: '完好的样鞋，按样鞋里程',
  holdingShare: '完好的样鞋，%',
  cameApart: '此处有样鞋损坏',
  tooFewPairs: (count) => `${count} 双太少：即使不再有损坏，也无法证明达标。`,
  recurs: (cells) => `已证实在多名试穿员中反复出现：${cells}`,
  nobodyAsked: '尚未询问',
  noneRecurs: (asked, who, complaint, pain) =>
    `未证实有哪一区域的不适在多名试穿员中反复出现；按 ${who} 名试穿员的 ${asked} 次跑步，不适仍可能占跑步的 ${complaint}，疼痛 ${pain}（95 % 区间上限）`,
  growing: (cells) => `加重：${cells}`,
  noneGrows: (tested) =>
    tested === 0 ? '没有反馈任何不适' : `反馈的 ${tested} 项不适均未显示加重`,
  mayGrow: (cells, more) => `不能排除加重：${cells}${more > 0 ? `，另有 ${more} 项` : ''}`,
  nobodyThere: '在任务书里程尚未询问',
  askedThere: (r, t, p, chance) =>
    `在任务书里程的询问：${p} 双、${t} 名试穿员的 ${r} 次跑步。若其中半数试穿员在那里有五分之一的跑步出现某项不适，无人反馈的可能仍有 ${chance}`,
  stopped: (codes) => `停用中的样鞋：${codes}`,
  notStopped: '没有生效中的通知',
  settle: '怎样才能定论',
  alone: {
    tester: {
      holds: (name) => `如果不算 ${name} 的回答，就达标。`,
      'does-not-hold': (name) => `如果不算 ${name} 的回答，就不达标。`,
      'not-known-yet': (name) => `如果不算 ${name} 的回答，就还没有定论。`,
    },
    pair: {
      holds: (code) => `如果不算 ${code} 这双鞋，就达标。`,
      'does-not-hold': (code) => `如果不算 ${code} 这双鞋，就不达标。`,
      'not-known-yet': (code) => `如果不算 ${code} 这双鞋，就还没有定论。`,
    },
  },
  aloneNotTried: '人和鞋太多，没有逐一试算结论是否只取决于某一名试穿员或某一双鞋。',
  caution: '结论供开发者使用。鞋能否销售以销售地的标准和法律为准。',
  how: '磨损：新鞋在任务书里程仍在限值内的概率达到 95 % 为达标，至多 5 % 为不达标。结构：须以 95 % 的把握有 90 % 的样鞋完好：若无一损坏，须有 29 双达到该里程。允许比例：有不适已证实在多名试穿员中反复出现为不达标；各类不适（包括无人报告的）比例的上限都不超过允许值且至少询问了三名试穿员为达标；比例为 5 % 且全无报告时须有 73 名试穿员：小组的沉默说明不了问题。随里程加重的不适：检验每一项反馈。每项不适须已表明减轻，或在任务书里程（至少三双）少到若半数试穿员在那里有五分之一的跑步出现便属罕见（5 %），才算达标（经验判断，无来源）。',
};
