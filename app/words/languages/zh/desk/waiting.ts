import type { DeskWords } from '../../../types.ts';

export const waiting: DeskWords['waiting'] = {
  out: '在你决定之前不计入任何数字',
  meanwhile: '有疑问，在你决定之前照常计入',
  decided: '已决定',
  setAside: '已搁置，不计入任何数字',
  counted: '核对后计入',
  reading: (pair, place, value, date) => `${pair}，${place}：${value}，${date}`,
  gauge: (round, measure, gauge, than, by) =>
    `${round}，${measure}：量具“${gauge}”的读数比“${than}”${by}`,
  higher: (share) => `高 ${share}`,
  lower: (share) => `低 ${share}`,
  gaugePlaces: (count) => `在 ${count} 处（按每只鞋的测点计）出现，不能用磨损解释。`,
  pace: (pace) => `配速不合理，每公里 ${pace}`,
  heldThen: (tester, codes) => `${tester} 当时持有 ${codes}。是不是记错了鞋？`,
  canBe: (measure, least, most) => `${measure}只可能在 ${least} 到 ${most} 之间。`,
  expected: {
    'same-shoe': (range) => `这只鞋在此处的其他读数：${range}。`,
    'other-shoe': (range) => `另一只鞋在此处：${range}。`,
    'other-pairs': (range) => `本轮其他鞋在此处：${range}。`,
    blueprint: (range) => `图纸允许 ${range}。`,
  },
  range: (least, most) => (least === most ? least : `${least} 到 ${most}`),
  isIt: (value) => `是不是 ${value}？`,
  countRun: '计入这次跑步',
  countReading: '计入这个读数',
  countReadings: '计入它的读数',
  setRunAside: '搁置这次跑步',
  setReadingAside: '搁置这个读数',
  setReadingsAside: '搁置它的读数',
  correctRun: '更正这次跑步',
  correctReading: '更正这个读数',
  rightValue: (unit) => `正确的数值，${unit}`,
  saveCorrection: '保存更正',
  reason: '为什么搁置？',
  reasons: {
    run: '不可能是真的',
    'wrong-pair': '记错了鞋',
    reading: '输入错误',
    gauge: '这件量具与第一件读数不一致',
  },
  checked: '已核对，无误',
  confirmed: '输入时已确认',
  countedNow: '已计入。',
  setAsideNow: '已搁置。',
  corrected: '已更正。',
  typed: (value, place) => `${place}，你输入的是 ${value}。`,
  isRight: '没有错',
  correct: '我来更正',
  newGauge: (gauge, than, by) =>
    `用“${gauge}”测得的读数比按“${than}”推算的${by}。先用两件量具测同一只鞋，再相信这个差别。`,
  ofLine: (line, said) => `第 ${line} 行：${said}`,
  tableAsks: (count) =>
    `${count} 个读数看起来不对。请在表格中更正后重新读入；如果没有错，就勾选它。`,
  unticked: () => '没有勾选的也会录入，并等你决定。',
  inFile: (runs, readings) =>
    `录入后等你决定：${[runs > 0 ? `${runs} 次跑步` : '', readings > 0 ? `${readings} 个读数` : '']
      .filter(Boolean)
      .join('，')}。`,
  outside: (waiting, aside) =>
    `以下跑步和读数不计入这些数字：${[
      waiting > 0 ? `${waiting} 项等待决定` : '',
      aside > 0 ? `${aside} 项已搁置` : '',
    ]
      .filter(Boolean)
      .join('，')}。`,
};
