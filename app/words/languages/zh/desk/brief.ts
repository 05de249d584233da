import type { DeskWords } from '../../../types.ts';

export const brief: DeskWords['brief'] = {
  name: '项目名称',
  runner: '适合哪类跑者',
  use: '用途',
  surfaces: '路面',
  distance: '每双须承受的里程，km',
  attributes: '舒适度问题',
  attributesHint: '总体舒适度总会询问。',
  edit: '修改任务书',
  allowed: '允许出现不适的跑步比例，%',
  allowedPain: '允许出现疼痛的跑步比例，%',
  limits: '样鞋须保持的指标',
  addLimit: '再加一项限值',
  bounds: { 'at-least': '不得低于', 'at-most': '不得高于' },
  value: '限值',
  bases: { reading: '读数', 'share-of-new': '同一双新鞋时的 %' },
  everySite: '留空：所有部位',
  fromTo: '两端都要填，小的在前。',
  doubts: {
    'above-new': (typed) => `不得低于新鞋的 ${typed} %？新鞋就是 100 %，每双一开始就不合格。`,
    'below-new': (typed) => `不得高于新鞋的 ${typed} %？新鞋就是 100 %，每双一开始就不合格。`,
    'never-reached': (typed) => `不得高于新鞋的 ${typed} %？没有鞋会到这个值，这项限值不起作用。`,
    'share-typed': (typed, meant) => `新鞋的 ${typed} %？也许是 ${meant} %。`,
    'above-drawn': (typed, drawn) => `不得低于 ${typed}？图纸上是 ${drawn}，新鞋一开始就不合格。`,
    'below-drawn': (typed, drawn) => `不得高于 ${typed}？图纸上是 ${drawn}，新鞋一开始就不合格。`,
  },
};
