import type { DeskWords } from '../../../types.ts';

export const lines: DeskWords['lines'] = {
  check: '将要添加',
  nothingYet: '保存之前，将要添加的内容显示在这里。',
  willBeAdded: (what) => `将添加 ${what}。`,
  putRight: (count) => `请先改正 ${count} 行。`,
  wrong: (line, text, why) => `第 ${line} 行“${text}”：${why}`,
  twice: (line) => `与第 ${line} 行编号相同。`,
  unclear: '此处的逗号可能是分隔符，也可能是小数点。请用制表符、分号或空格分隔各项。',
  added: (what) => `已添加 ${what}`,
};
