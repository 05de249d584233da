import type { PlaceWords } from '../../types.ts';

export const thanks: PlaceWords['thanks'] = {
  title: '告诉试穿员',
  offer: (n) => `${n} 名试穿员反映过这个问题，现在可以告诉他们结果。`,
  nobodyYet: '现在还不能告诉任何人。',
  reads: '每个人看到的话（显示为其手机的语言）',
  whom: '感谢谁',
  tellChange: (change) => `告诉他们改了什么：${change}`,
  own: '你自己的几句话',
  ownHint: '这次感谢的每个人都会看到原话。不要提到别的试穿员，也不要提到制作人员。',
  names: (who) => `请去掉“${who}”：感谢里不提别的试穿员。`,
  reveals: (words) => `“${words}”会透露改了什么。`,
  blind: (n) => `还有 ${n} 名试穿员在盲穿这款鞋，消息会传开。`,
  nobodyChosen: '请至少选一个人。',
  send: (n) => `感谢 ${n} 名试穿员`,
  sent: (n) => `已感谢 ${n} 名试穿员`,
  undone: '已撤回',
  later: (n) => `暂时不能告诉：${n} 名试穿员`,
  withheld: {
    'blind-open': (until) => (until === null ? '正在盲穿，没有结束日期' : `盲穿到 ${until}`),
    'blind-planned': (until) =>
      until === null ? '已安排盲穿，没有结束日期' : `已安排盲穿，到 ${until}`,
  },
  off: '这个项目不告诉试穿员反映的问题有什么结果：任务书里这样定的。',
  toBrief: '打开任务书',
  thanked: (n) => `已感谢 ${n} 名试穿员`,
  thankedOn: (date) => `${date}`,
};
