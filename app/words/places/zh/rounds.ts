import type { PlaceWords } from '../../types.ts';

export const rounds: PlaceWords['rounds'] = {
  headline: (h, say, part) => {
    switch (h.case) {
      case 'none':
        return '还没有轮次，请先添加第一轮。';
      case 'no-pairs':
        return `${say.round(h.round)}还没有样鞋。`;
      case 'nothing-noted':
        return `${say.round(h.round)}没有记录任何改动。`;
      case 'first':
        return `${say.round(h.round)}是第一轮：${h.pairs} 双样鞋。`;
      case 'changes':
        return `${say.round(h.round)}改动了${say.list([...h.parts.map(part), ...(h.more > 0 ? [`另外 ${h.more} 个部件`] : [])])}。`;
    }
  },
  sub: (rounds, pairs) => `共 ${rounds} 轮、${pairs} 双样鞋。`,
  enough: '有名称就可以继续，图纸、鞋楦和层数以后再补。',
  title: '轮次',
  add: '添加一轮',
  duplicate: (round) => `与${round}相同，只改……`,
  duplicateHint: (round) => `阶段、发泡、橡胶、图纸、鞋楦和层数沿用${round}，请写明不同之处。`,
  edit: '修改本轮',
  more: (pairs) => `另有 ${pairs} 双`,
  nothingChanged: '没有记录任何改动。',
  mends: (what) => `用于解决${what}`,
  dimensions: (n) => (n === 0 ? '图纸中没有尺寸' : `图纸中有 ${n} 项尺寸`),
  foam: (foam) => `发泡：${foam}`,
  last: (name) => `鞋楦 ${name}`,
  layers: (zones) => `已数 ${zones} 个区域的层数`,
  samples: (n) => (n === 0 ? '还没有样鞋' : `${n} 双样鞋：`),
  blueprint: '图纸',
  place: '项目与位置',
  nominal: '标称值',
  allowed: '允许范围',
  leftRight: '左右之差',
  noBlueprint: '图纸中没有尺寸。',
  compare: '改动的效果',
  brief: '任务书',
};

export const brief: PlaceWords['brief'] = {
  headline: (h, say) =>
    h.case === 'no-limits'
      ? `每双须跑满 ${say.distance(h.distanceM)}，尚未设定磨损限值。`
      : `每双须跑满 ${say.distance(h.distanceM)}，并守住 ${h.limits} 项限值。`,
  title: '任务书',
  archivedSince: (date) => `${date} 归档`,
  edit: '修改任务书',
  runner: '适合哪类跑者',
  use: '用途',
  surfaces: '路面',
  distance: '每双须跑里程',
  allowed: '允许的不适',
  allowedPain: '允许的疼痛',
  ofRuns: (percent) => `跑步次数的 ${percent}`,
  feet: '适合的脚',
  lengths: (from, to) => `长 ${from} 至 ${to} mm`,
  widths: (from, to) => `宽 ${from} 至 ${to} mm`,
  anyFeet: '未说明',
  limits: '须守住的限值',
  noLimits: '尚未设定',
  forTesters: '写给试穿员',
  tellTesters: '反映的结果',
  tells: { yes: '由你发送，告诉试穿员', no: '不告诉试穿员' },
  everySite: '所有位置',
  bounds: { 'at-least': '不低于', 'at-most': '不高于' },
  ofNew: (percent) => `同一双新鞋时的 ${percent}`,
  questions: '舒适度问题',
  words: '补充说明',
  putAway: '归档这款鞋',
  putAwayHint:
    '它会移到“全部鞋款”最下方的“已归档”。不会丢失任何记录：手中仍有样鞋的试穿员可以继续记录跑步。',
  bringBack: '恢复这款鞋',
  isPutAway: '已归档，可在“全部鞋款”最下方的“已归档”中找到。',
  isBack: '已恢复到进行中的鞋款。',
};

export const report: PlaceWords['report'] = {
  headline: (h, say) => {
    switch (h.case) {
      case 'nothing-to-report':
        return '还没有人跑过，没有可报告的内容。';
      case 'none-sent':
        return '还没有发送过报告。';
      case 'sent':
        return `${say.round(h.round)}的报告已于 ${say.date(h.at)} 发出。`;
      case 'not-sent':
        return `${say.round(h.round)}的报告还没有发出。`;
    }
  },
  sub: '可打印、另存为一个文件，或发送给专员。',
};
