import type { DeskWords } from '../../../types.ts';

export const proof: DeskWords['proof'] = {
  testers: (twice, once, of, interval) =>
    `${of} 名试穿员中 ${twice} 名反馈至少两次${once > twice ? `，${once} 名至少一次` : ''}。推及所有这类跑者，可能占 ${interval}。`,
  runs: (count, of, interval, allowed) =>
    `${of} 次被询问的跑步中出现 ${count} 次。长期来看可能出现在 ${interval} 的跑步中；任务书允许 ${allowed}。`,
  ratherHigh: '它因突出才被列出，所以这一比例偏高：模拟中，刚被证实时高六分之一到三分之一。',
  feet: (left, right) => `左脚出现 ${left} 次跑步，右脚 ${right} 次。`,
  severity: (mean, most) => `程度平均 ${mean}（满分 10），最高 ${most}。`,
  who: (names) => `对 ${names} 已证实，各凭其自己的跑步。`,
  value: (value, needed) =>
    `这些跑步在多大程度上证明至少两名试穿员超过允许值：e 值 ${value}；达到 ${needed} 即足以单独证实。`,
  interval: (lower, upper) => `${lower} 至 ${upper}（95 % 区间）`,
  trend: (word, count, p) =>
    `是否随里程变化：${word}（${count} 名试穿员既有出现也有未出现的跑步；p ${p}，已按全部反馈项校正，并计入不适在相邻跑步间延续的影响）。这并不说明原因。`,
  onset: (median, lower, upper, count) =>
    `在一次跑步的 ${median} 后开始（${count} 名试穿员的中位数）；其中一半在 ${lower} 至 ${upper} 之间。`,
  repeated: (median, repeated, of) =>
    median === null
      ? `${of} 名试穿员中目前 ${repeated} 名出现两次。`
      : `预计本人穿着到 ${median} 时，一半试穿员会已出现两次（目前 ${of} 名中 ${repeated} 名）。`,
  hint: (factor, p, count) =>
    `值得一看：在“${factor}”时更常出现（${count} 名试穿员，校正 p ${p}）。这并不说明原因。`,
  noHint: (count) =>
    count === 0
      ? '尚无可对照的情况。'
      : `与 ${count} 种情况（如鞋码、袜子、地面）对照：没有突出的。`,
};
