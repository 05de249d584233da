import type { DeskWords } from '../../../types.ts';

export const complaints: DeskWords['complaints'] = {
  round: '轮次',
  any: '任何不适',
  legend: '占被询问试穿员的比例',
  levels: ['无', '至 10 %', '至 25 %', '至 50 %', '更多'],
  savePicture: (form) => `将脚图存为 ${form}`,
  print: '打印',
  nothingProven: '本轮没有被证实反复出现的不适。',
  all: '全部反馈',
  unreported: {
    complaint: (word, asked, upTo, chance) =>
      `其他各项不适：${asked} 次跑步中${word}；仍可能有至多 ${upTo} 的试穿员会出现（95 %）。若半数试穿员有五分之一的跑步会出现，这样的沉默仍有 ${chance} 的可能。`,
    pain: (word, asked, upTo, chance) =>
      `其他部位疼痛：${asked} 次跑步中${word}；仍可能有至多 ${upTo} 的试穿员会出现（95 %）。若半数试穿员有五分之一的跑步会出现，这样的沉默仍有 ${chance} 的可能。`,
  },
  proof: '日志结论',
  suspects: (first, second) =>
    `通常先看：${first || '无特定部件'}${second ? `；其次：${second}` : ''}。行业惯例，并非测得的原因。`,
  firstRepeat: '尚未两次出现的试穿员比例，按本人穿着里程',
  withItTwice: '此处有试穿员第二次出现',
  withoutIt: '未出现的试穿员，%',
  look: '何时、何处、何人',
  asked: (r, t) => `共就脚部不适询问了 ${t} 名试穿员的 ${r} 次跑步。`,
  unanswered: (open, of) =>
    `${of} 次跑步中有 ${open} 次未回答。若多半只在不适时才回答，不适会显得过于频繁，也会误称证实。`,
  nobodyAsked: '尚未询问任何人。这不等于没有不适。',
  none: '已询问，无人指出不适的区域。',
  zone: '区域',
  kind: '不适',
  testers: '试穿员',
  twice: '两次以上',
  runs: '跑步',
  feet: '左 / 右',
  severity: '程度，平均 / 最高',
  unasked: '未询问',
  how: (complaint, pain) =>
    `回答了脚部不适问题的跑步才算被询问。证实：任务书允许 ${complaint} 的被询问跑步出现（疼痛：${pain}）；以 e 值对照该比例，无论多频繁查看都有效（Ramdas 2023；Vovk & Wang 2021），至少两名试穿员（Benjamini & Heller 2008），一次读取全部不适时，每类结论中被称为证实者平均误报至多 10 %（Wang & Ramdas 2022）；不同日期存定的问题项不在此限内。这有两个前提：不适不会延续（若有三分之一以上的跑步只是延续上一次，就会误称过多，单个试穿员尤甚）；没有不适的跑步之后也要回答。刚被证实时的比例偏高：模拟中高六分之一到三分之一，不适越弱偏得越多。95 % 区间：试穿员用 Wilson；跑步以试穿员为单位（Rao & Scott 1992）。`,
};
