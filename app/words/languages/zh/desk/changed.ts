import type { DeskWords } from '../../../types.ts';

export const changed: DeskWords['changed'] = {
  count: (round, reporters, of, reported, asked, share) =>
    `${round}：${of} 名试穿员中 ${reporters} 名，${asked} 次被询问的跑步中 ${reported} 次（${share}）。`,
  nobodyAsked: (round) => `${round}：未询问任何人。`,
  same: (count, runsEach, change, interval) =>
    `${count} 名试穿员两轮都穿过。取其最初的跑步，每轮共 ${runsEach} 次：出现该不适的跑步比例变化 ${change}（${interval}）。`,
  flips: (changed, p, falls) =>
    `${changed} 名试穿员有变化；仅凭偶然出现这样的${falls ? '减少' : '增多'}的概率：p ${p}。`,
  reporters: (gone, come, p) =>
    `只在之前出现的试穿员：${gone} 名；只在现在出现的：${come} 名。仅凭偶然出现这样差别的概率：p ${p}（McNemar 精确检验）。`,
  panels: (change, interval) =>
    `两轮都穿过者不足五名，因此以一轮的全部试穿员对另一轮的全部：出现该不适的跑步比例变化 ${change}（${interval}）。这以两组试穿员相近为前提。`,
  onlyOne: (earlier, before, later, now, change) =>
    `只穿过一轮的试穿员：${earlier}：${before}；${later}：${now}${change === null ? '' : `；出现该不适的跑步比例变化 ${change}`}。`,
  nobody: '无人',
  onlyCount: (count, reported, asked) => `${count} 名试穿员，${asked} 次跑步中 ${reported} 次`,
  points: (value) => `${value} 个百分点`,
  withInterval: (change, interval) => `${change}（${interval}）`,
  interval: (lower, upper) => `95 % 区间 ${lower} 至 ${upper}`,
  allowed: (upTo, allowed) =>
    `后一轮仍可能有至多 ${upTo} 的跑步出现（95 % 的把握）；任务书允许 ${allowed}。`,
  settle: (moreRuns, moreTesters) =>
    moreRuns === null && moreTesters === null
      ? '仅凭这组试穿员再多跑也无法表明已解决：因人而异太大。'
      : `要表明已解决，还需（其间无一人再反馈）：${[
          moreRuns === null ? '' : `每名试穿员再跑 ${moreRuns} 次`,
          moreTesters === null ? '' : `再增加 ${moreTesters} 名跑步次数相当的试穿员`,
        ]
          .filter(Boolean)
          .join('，或')}。`,
  margin: (points) => `变化不足 ${points} 视为无变化。`,
  why: {
    'nobody-asked-earlier': '前一轮未询问任何人。这不等于没有不适。',
    'nobody-asked-later': '后一轮尚未询问任何人。这不等于没有不适。',
    'never-reported': '之前也无人反馈，因此无可解决。',
    'too-few-testers': '试穿员太少：需要五名两轮都穿过，或每轮四名，每人被询问至少两次。',
    'too-few-changed': '有变化的试穿员不足五名；更少则无论跑多少次都不能证明什么。',
    'not-decided': '区间既容得下有意义的变化，也容得下没有变化。',
  },
};
