import type { PlaceWords } from '../../types.ts';

export const lists: PlaceWords['lists'] = {
  select: '选择',
  selectAll: (n) => `全选 ${n} 项`,
  selectNone: '取消选择',
  selected: (n, of) => `已选 ${n} 项 · ${of}`,
  keys: '↑ ↓ 换行 · 空格选择 · 按住 Shift 连选',
  columns: (hidden) => (hidden === 0 ? '显示的列' : `显示的列（隐藏 ${hidden} 列）`),
  shownColumns: '显示哪些列',
  sortBy: '排序',
  sortedBy: (column) => `排序：${column}`,
  showAll: (n) => `全部 ${n} 项`,
  showFirst: (n) => `只看前 ${n} 项`,
};
