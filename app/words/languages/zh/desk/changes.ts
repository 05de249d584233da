import type { DeskWords } from '../../../types.ts';

export const changes: DeskWords['changes'] = {
  against: (later, earlier) => `${later} 对比 ${earlier}`,
  worn: (both, earlier, onlyEarlier, later, onlyLater) =>
    `${both} 名试穿员两轮都穿过。只穿过 ${earlier}：${onlyEarlier} 名；只穿过 ${later}：${onlyLater} 名。`,
  oneOrder: (earlier) =>
    `两轮都穿过的人都先穿 ${earlier}：现在的改善可能部分来自适应或季节。交叉安排的方案才能把两者分开。`,
  knew: (earlier, whoEarlier, later, whoLater) =>
    `并非盲测：有人知道改动内容（${[whoEarlier && `${earlier}：${whoEarlier}`, whoLater && `${later}：${whoLater}`].filter(Boolean).join('；')}）。仅凭描述就曾使舒适度变化 15 分（满分 100）：相同的鞋提高了 14.6 ± 15.0 分（24 名跑者；Hébert-Losier 2025；另见 Chan 2020）。此处的改善可能正是由此而来。`,
  blindRead: '仅按盲测发鞋统计。',
  list: '改了什么，成效如何',
  noChanges: '本轮未记录改动。',
  mends: (what) => `旨在解决：${what}`,
  mendsNothing: '改动清单未写明旨在解决什么，因此无可对比。',
  anywhere: (kind) => `${kind}（任何区域）`,
  since: (round) => `自 ${round} 起`,
  slopes: (earlier, later) => `每名试穿员出现该不适的跑步比例，${earlier} 到 ${later}，%`,
  byTester: '逐个试穿员',
  tester: '试穿员',
  firstRuns: '同样多的最初几次跑步中',
  allRuns: (round) => `${round}，全部被询问的跑步`,
  notAsked: '未询问',
  ofRuns: (reported, of) => `${reported} / ${of}`,
  notCompared: '次数太少，未对比',
  newTitle: '本轮新出现的不适',
  nothingNew: '没有被证实随本轮新出现的不适，也没有值得一看的。',
  newWords: { proved: '已证实', look: '值得一看' },
  newLine: (cell, before, now, p) =>
    `${cell}：之前 ${before}，现在 ${now}${p === null ? '' : `（校正 p ${p}）`}。`,
  newHow:
    '已证实：以相同试穿员的符号翻转检验增多，或以全部试穿员检验；被称为证实者平均误报至多 10 %（Benjamini & Hochberg 1995）。值得一看：现在反复出现而之前没有，或有两名试穿员出现至少两次而之前无人，或单看其增多较为罕见。这不证明什么。',
  comfortSame: '舒适度：两轮都穿过的试穿员',
  comfortOne: '舒适度：只穿过一轮的试穿员',
  noComfort: '没有人给两轮都评过舒适度。',
  bench: '新鞋的底厚、硬度和重量',
  noBench: '两轮没有相同的首次测量。',
  measuredLate: (count) => `${count} 双在首次测量时已跑过 20 km 以上，未计入。`,
  benchWords: { differs: '有差异', open: '未显示差异', single: '只有一双：无区间' },
  difference: '差值（95 %）',
  ofPairs: (count) => `${count} 双`,
  benchLine: (place, earlier, later, difference, word) =>
    `${place}：${earlier} → ${later}；差值及其 95 % 区间 ${difference}：${word}。`,
  meanOfPairs: (round) => `${round}，均值`,
  allCells: '两轮的全部不适',
  noCells: '两轮都没有不适反馈。',
  testersOf: (round) => `${round}：试穿员`,
  runsOf: (round) => `${round}：跑步`,
  rise: '变化，百分点（95 %）',
  how: '以试穿员为单位。两轮都穿过者，取两轮同样多的最初几次被询问的跑步相比，使磨合期对磨合期。以符号翻转检验其变化（Fisher 1935），区间为该检验不拒绝的范围（Hartigan 1969），且不窄于同样多的独立跑步所得区间。若除轮次外别无变化，误称“有改善”至多 32 次对比中 1 次，误称“变差”至多 64 次中 1 次，不论各人差异多大、不适延续多久。若人人都先穿前一轮，还会掺入逐渐适应的影响：在不适每次跑步减轻 8 % 的模拟中，三分之一未改动的轮次被称为有改善。两轮都穿过者不足五名时，将全部试穿员视为两个小组（Zou & Donner 2008；Donner & Klar 2000）。“无差别”要求区间在前一轮比例的一半以内，至多 15 个百分点（经验判断，无来源）。变化以跑步比例的百分点计；每个区间单独成立。',
};
