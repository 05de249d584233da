/** 改动是否做到了鞋上，以及还有哪些地方不同。 */
import type { DeskWords } from '../../../types.ts';

export const arrival: DeskWords['arrival'] = {
  line: (measured, wanted, word) => `要求 ${wanted}，实测 ${measured}：${word}`,
  noAmount: (measured, word) => `实测 ${measured}：${word}`,
  single: (measured, wanted) => `要求 ${wanted}，只测了一双（${measured}），还不能下结论`,
  unmeasured: '是否到位：尚未测量',
  cannot: '是否到位：无法测量。请写明改哪条线或哪个尺寸、改多少。',
  words: {
    arrived: '全部到位',
    beyond: '超出要求',
    partly: '部分到位',
    not: '没有做到鞋上',
    open: '样鞋太少，还不能下结论',
    'not-measured': '未测量',
  },
  absent: '改动没有做到鞋上，因此无法评价它的效果。',
  betterAbsent: '情况有改善，但改动没有做到鞋上。',
  worseAbsent: '情况变差，但改动没有做到鞋上。',
  interval: (place, from, to) => `${place}：在 ${from} 与 ${to} 之间。`,
  pairs: (later, earlier, sizes) => `本轮 ${later} 双对上一轮 ${earlier} 双，${sizes}。`,
  nominal: (later, sizes) => `本轮 ${later} 双，${sizes}，对照上一轮的图纸。`,
  size: (size) => `脚长 ${size} mm`,
  sizes: (from, to) => `脚长 ${from} 至 ${to} mm，同码相比`,
  gauges: '两轮用的量具不同，部分差别可能来自量具。',
  measure: (place, pairs, needed) =>
    `请测量${place}：${pairs}。${needed === null ? '' : `每轮 ${needed} 双、左右都测，应该就能下结论。`}`,
  noPairLeft: (place) => `已经没有新样鞋可以测量${place}，要等新的样鞋。`,
  found: '另外发现的差别',
  foundHint: '没有人要求这些改动，但穿起来的不同可能由此而来。',
  reading: (place, by, from, to, unit) => `${place}：${by} ${unit}（在 ${from} 与 ${to} 之间）`,
  last: (from, to) => `鞋楦：原为 ${from}，现为 ${to}`,
  lastSize: { lengthMm: '楦长', ballWidthMm: '楦的跖部宽', ballGirthMm: '楦的跖围' },
  drawn: (what, from, to, unit) => `${what}：原为 ${from} ${unit}，现为 ${to} ${unit}`,
  layers: (zone, from, to) => `${zone}的材料层数：原为 ${from}，现为 ${to}`,
};
