import type { PlaceWords } from '../../types.ts';

export const shoes: PlaceWords['shoes'] = {
  headline: (h, list) => {
    switch (h.case) {
      case 'none':
        return '六步走到第一次跑步，随时可停，已填的都在。';
      case 'urgent':
        return h.names.length <= 3
          ? `今天需要你处理：${list(h.names)}。`
          : `今天有 ${h.names.length} 款鞋需要你处理。`;
      case 'waiting':
        return h.of === 1
          ? '没有急事，有几项等你处理。'
          : `没有急事，${h.of} 款鞋中有 ${h.count} 款有待办事项。`;
      case 'quiet':
        return '没有等待处理的事项。';
    }
  },
  sub: (count) => `共 ${count} 款鞋，需要处理的在前。每轮一个印章；横条为跑得最远的一双。`,
  add: '新建鞋款',
  noRound: '还没有轮次',
  ofBrief: (distance, brief) => `${distance}，要求 ${brief}`,
  runs: (count) => `${count} 次跑步`,
  nothingToDo: '没有待办事项',
  archived: (count) => `已归档（${count}）`,
  since: (date) => `${date} 起`,
  bringBack: (name) => `恢复 ${name}`,
};
