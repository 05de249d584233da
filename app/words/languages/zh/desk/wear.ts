import type { DeskWords } from '../../../types.ts';

export const wear: DeskWords['wear'] = {
  round: '轮次',
  place: '指标与部位',
  against: '对照',
  curveOf: '曲线属于',
  newPair: '本轮一双新鞋',
  pairName: (code) => `样鞋 ${code}`,
  xTitles: { steps: '每只步数，千步', load: '每只负荷，MN' },
  amounts: {
    steps: (thousands) => `每只 ${thousands} 千步`,
    load: (meganewtons) => `每只 ${meganewtons} MN`,
  },
  curve: '估计',
  beyond: '测量范围之外的估计',
  band: '90 % 区间',
  key: '阴影：样鞋数值有 90 % 概率落在其中；单个读数的分散更大。点线：超出测量范围，最多到其两倍里程。',
  priorOnly: '还没有不同里程的两次测量。所见为此类发泡料事先已知的情况，并非这种发泡料。',
  leftOut: (count) => `${count} 次测量未计入：此前的步数或力未知。`,
  change: (word, at, change, lower, upper) =>
    `${word}。一双新鞋到 ${at} 将变化 ${change}（90 % 区间 ${lower} 至 ${upper}）。`,
  value: (at, value, lower, upper) =>
    `一双新鞋在 ${at} 时将为 ${value}（90 % 区间 ${lower} 至 ${upper}）。`,
  limit: (what, bound, value) => `${what} ${bound} ${value}`,
  ofNew: (percent) => `新鞋的 ${percent}`,
  hold: (limit, at, chance, word) =>
    `${limit}，在 ${at}：${word}。一双新鞋仍在限值内的概率为 ${chance}。`,
  crossing: (lower, median, upper) =>
    `何时达到限值：居中估计 ${median}；最早（概率 5 %）${lower}，最晚（95 %）${upper}。`,
  crossedAfter: (lower) => `何时达到限值：最早（概率 5 %）${lower}；最晚到何时，测量尚不能判断。`,
  tooFar: (limit, at) => `${limit}，在 ${at}：尚无法判断。该里程超过最远一次测量的两倍。`,
  beyondChecks: '超出测量所能判断的里程',
  notCrossed: '在多少里程达到限值，测量尚不能判断。',
  toldApart: (form, others) => `变化为${form}；${others}拟合较差。`,
  notToldApart: (weights) =>
    `今后如何变化尚不能区分（各种形式的概率：${weights}）；区间已将各种形式考虑在内。`,
  basis: {
    published: (source) => `估计中含事先已知，已发表：${source}。`,
    judgement: (source) => `估计中含事先假定，经验判断，无来源：${source}。`,
  },
  sources: {
    'cook-1985':
      '穿着后在 241 km 时保留 80 %，在 805 km 时保留 70 %（Cook SD, Kester MA & Brunet ME, Am J Sports Med 1985;13:248-253）；范围取宽，因为另一项研究几乎没有看到变化（Hennig EM, Footwear Sci 2011;3:71-81）',
    'wang-2010-2012':
      '15 双穿过的鞋在 500 km 时峰值 +4.88 %，95 % 区间 3.40 至 6.36（Wang L et al., Footwear Sci 2010;2:141-147）；200 km 时 EVA 由 921.1（标准差 20.1）到 968.0（标准差 25.9）N，PU 由 972.9 到 909.6 N（Wang L, Hong Y & Li JX, J Sports Sci 2012;30:1787-1792）；范围取宽，因为测过的款式很少',
    'wang-2012':
      '200 km 时 EVA 由 921.1（标准差 20.1）到 968.0（标准差 25.9）N，PU 由 972.9 到 909.6 N（Wang L, Hong Y & Li JX, J Sports Sci 2012;30:1787-1792）',
    'brueckner-2010':
      'PU 的变化小于 EVA，没有给出数值（Brückner K et al., Procedia Eng 2010;2:2789-2793）',
    'lippa-2019':
      '小于机器老化的 1.2 至 1.8 mm（Lippa N et al., Proc IMechE P 2019, doi 10.1177/1754337118824001）',
    'not-of-foam': '这种发泡料随里程的变化没有发表过',
    'not-worn': '跑者穿着的鞋随里程的变化没有发表过',
    'not-worn-tread': '跑者穿着的鞋随里程的变化没有发表过，假定每 100 km 半毫米',
  },
  foamUnknown: '本轮未说明发泡料；事先已知的范围较宽。',
  outlying: (pair, change, p) => `样鞋 ${pair} 与其他不同（${change}，校正 p ${p}）。`,
  outlier: { lower: '变化偏低', higher: '变化偏高' },
  leftRight: (difference, lower, upper, count) =>
    `左只相对右只多变化 ${difference}（90 % 区间 ${lower} 至 ${upper}，${count} 双）。`,
  againstRound: (round, at, difference, lower, upper) =>
    `到 ${at} 时，本轮样鞋相对 ${round} 的样鞋多变化 ${difference}（90 % 区间 ${lower} 至 ${upper}）。`,
  next: (pair, distance, narrowing) =>
    `在 ${distance} 测量样鞋 ${pair}：预计可使区间缩小 ${narrowing}。`,
  warningsTitle: '需谨慎看待的测量',
  warning: {
    'short-rest': (rested, left) => `只静置 ${rested} 小时；上次跑步的变化可能还剩至多 ${left}`,
    temperature: (celsius, points) =>
      `测量温度 ${celsius}${points === null ? '' : `，Asker C 约偏差 ${points}`}`,
    'temperature-missing': '未记录温度',
    'no-start': '该双没有 0 km 读数',
    'measured-otherwise': (what) => `与以前测法不同（${what}）`,
    'impossible-value': '不可能的数值，未计入',
  },
  ways: { site: '部位', foot: '脚', unit: '单位', method: '方法', gauge: '量具', load: '加载' },
  felt: '同一里程上脚下的感受',
  feltLine: (attribute, mean, lower, upper, count) =>
    `${attribute}：每 100 km ${mean}（满分 100；95 % 区间 ${lower} 至 ${upper}，${count} 名试穿员）。`,
  feltNone: '评分太少，无法判断脚下的感受随里程怎样变化。',
  feltScore: '评分，0 至 100',
  feltPart: '脚下的感受与实测缓震常常不一致：仪器测得的变化脚不一定察觉。',
  sites: '哪里先磨损（平均变化）',
};
