import type { DeskCommonWords } from '../../../types.ts';
import { countPanel } from '../count.ts';

export const common: DeskCommonWords = {
  title: '工作台',
  phone: '前往手机端',
  projects: '项目',
  groupTitle: '小组',
  onlyLeads: '工作台供负责人使用。你的界面在手机端。',
  evidence: (p, t, haveRun, r, distance) =>
    `${p} 双，${countPanel(t, haveRun)}，${r} 次跑步，${distance}`,
  save: '保存',
  add: '添加',
  cancel: '取消',
  wrongNumber: '缺少数字或数字不对。',
  mustBe: (least, most) => `应在 ${least} 至 ${most} 之间。`,
  missing: '此项必填。',
  optional: (label, more) => `${label}（选填${more === null ? '' : `；${more}`}）`,
  notACode: '只用大写字母、数字和连字符，最多 12 个，例如 T07。',
  trouble: '未能保存，没有丢失：请再试一次。',
  saved: '已保存',
  kept: {
    fromBefore: '这是你之前输入、还没有保存的内容。',
    afresh: '重新填写',
    dropped: '之前输入的内容已清除。',
  },
  none: '–',
  workTrouble:
    '无法评审日志。数据没有丢失：请关闭本页再打开。若仍不行，请将日志存为文件并告知负责人。',
  notPrinted: (left) => `另有 ${left} 项未显示。`,
  more: (next, left) =>
    next === left ? `显示其余 ${left} 项` : `再显示 ${next} 项（共余 ${left} 项）`,
};
