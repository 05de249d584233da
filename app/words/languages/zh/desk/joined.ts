import type { DeskWords } from '../../../types.ts';

export const joined: DeskWords['joined'] = {
  names: (names) => names.join('、'),
  clauses: (parts) => parts.join('，'),
  apart: (parts) => parts.join('；'),
  of: (what, said) => `${what}：${said}`,
  aside: (said, more) => `${said}（${more}）`,
  sentence: (said) => `${said}。`,
};
