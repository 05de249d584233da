import type { PlaceWords } from '../../types.ts';

export const search: PlaceWords['search'] = {
  open: '搜索',
  label: '搜索全部内容：样鞋、试穿员、日期、文字',
  hint: '样鞋或试穿员的编号或姓名，日期如 11月17日，或有人写过的文字。',
  close: '关闭搜索',
  nothing: (text) => `没有找到“${text}”。`,
  found: (n) => `${n} 项结果`,
  groups: {
    places: '页面',
    shoes: '鞋款',
    pairs: '样鞋',
    testers: '试穿员',
    rounds: '轮次',
    findings: '问题项',
    remarks: '试穿员的话',
    runs: '跑步记录',
    checks: '测量记录',
  },
  more: (group, n) => `${group}：全部 ${n} 项`,
  counted: (shown, of) => `${of} 项中的 ${shown} 项`,
  pair: (code) => `样鞋 ${code}`,
  of: (first, second) => [first, second].filter(Boolean).join('，'),
  waiting: '待决定的记录',
};
