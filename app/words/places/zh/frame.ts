import type { PlaceWords } from '../../types.ts';

export const frame: PlaceWords['frame'] = {
  allShoes: '全部鞋款',
  places: {
    sheet: '总览',
    shoe: '鞋',
    wear: '磨损',
    changes: '改动',
    verdict: '判定',
    pairs: '样鞋',
    testers: '试穿员',
    runs: '跑步记录',
  },
  asOf: (date) => `截至 ${date}`,
  allPairs: '全部样鞋',
  inTolerance: '不含超差样鞋',
  howSure: '有多确定？',
  asTable: '以表格查看',
  stamps: { fails: '不合格', open: '未定', holds: '合格' },
  stampMeaning: {
    fails: '设计任务书中至少有一项已证实达不到。',
    open: '目前还不能定论。',
    holds: '设计任务书的各项要求都已证实达到。',
  },
  sureLegend: (word, alone) => `“${word}”指：${alone}。`,
  sureWords: '各个词的含义',
  sureWord: (meaning) => `：${meaning}。`,
  doNotRun: '停穿',
  outOfTolerance: '超差',
  felt: (kind, zone) => `${zone}${kind}`,
  feltTitle: (kind, zone) => `${zone}：${kind}`,
};
