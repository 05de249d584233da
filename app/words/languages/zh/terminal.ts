import type { TerminalWords } from '../../types.ts';
import { countPanel } from './count.ts';

export const terminal: TerminalWords = {
  usage: (
    languages,
    trades,
  ) => `用法：npm run review -- 文件 [--json] [--project 名称] [--language ${languages}] [--how-sure] [--without-out-of-tolerance]
     npm run review -- 文件 --report 输出.html [--round N] [--trade ${trades}] [--language en+zh]
     npm run review -- 文件 [--csv 文件夹] [--json 输出.json]
     npm run review -- --schema
读取日志包（.pairlog），打印项目评审，或写成报告、数据文件。`,
  cannotRead: (file, why) => `${file}:${why}`,
  unpack: {
    damaged: '文件已损坏，无法解包。请重新索取。',
    'too-large': '文件解包后超过日志包的上限。',
    'no-log': '该压缩包内没有日志（log.ndjson），不是日志包。',
    'attachment-differs': '文件中的照片或轨迹在途中被改动。请重新索取。',
  },
  problem: (problem) => {
    const at = `第 ${problem.line} 行：`;
    switch (problem.why) {
      case 'not-a-bundle':
        return `${at}format：这不是 Pairlog 日志包。`;
      case 'newer-bundle':
        return `${at}v：日志包版本为 ${problem.v}，本程序只读版本 1。请使用新版程序。`;
      case 'not-json':
        return `${at}不是 JSON，该行在途中损坏。`;
      case 'cut-off':
        return `${at}文件不完整：缺少结尾行。请重新索取。`;
      case 'digest-differs':
        return `${at}digest：结尾行与前文不符，有内容被改动、丢失或添加。`;
      case 'not-a-revision':
        return `${at}${problem.field || 'revision'}：缺失或格式错误。`;
      case 'newer-envelope':
        return `${at}v：记录版本为 ${problem.v}，请使用新版程序。`;
      case 'too-large':
        return `${at}body:${problem.characters} 个字符，上限为 ${problem.most}。`;
      case 'hash-differs':
        return `${at}hash：记录保存后被改动。`;
    }
  },
  unreadable: (line, record, problem) => `第 ${line} 行：${record}：${problem}未计入任何数字。`,
  noProject: (name, names) =>
    name === undefined
      ? names.length === 0
        ? '日志包中没有项目。'
        : `日志包中有多个项目，请用 --project 选择：${names.join('、')}`
      : `没有项目“${name}”。现有：${names.join('、') || '无'}`,
  wrote: (file) => `已写入：${file}`,
  noRound: (order, rounds) =>
    order === undefined ? '项目还没有轮次。' : `没有第 ${order} 轮。现有：${rounds.join('、')}。`,
  evidence: (p, t, haveRun, r, km) => `${p} 双，${countPanel(t, haveRun)}，${r} 次跑步，${km} km`,
  brief: (km) => `任务书要求每双 ${km} km。`,
  pairs: '样鞋',
  silent: (days) => `已 ${days} 天没有消息`,
  pair: '编号',
  round: '轮次',
  size: '尺码 mm',
  distance: 'km',
  ofBrief: '占任务书',
  runs: '跑步',
  surfaces: '路面',
  holder: '持有人',
  note: '备注',
  stopUse: '停用',
  complaints: (round) => `不适反馈，${round}`,
  noComplaint: '无人指出不适的区域。',
  zone: '区域',
  complaint: '不适',
  testersOnce: '试穿员',
  testersTwice: '两次以上',
  reportedRuns: '跑步',
  leftRight: '左/右',
  severity: '严重度 平均/最高',
  proof: '日志结论',
  bench: '测量值与里程',
  noBench: '尚无测量。',
  measure: '指标、部位、脚',
  readings: '读数 @ km',
  deviations: '到样与图纸对照',
  deviation: '偏差',
  nominal: '标称',
  reading: '读数',
  damages: '损坏的样鞋',
  oddities: '需询问的跑步',
  oddity: {
    'logged-twice': '重复记录，只计一次',
    'tester-overlap': '与同一试穿员的另一次跑步时间重叠',
    'pair-overlap': '同一双鞋同时被两人穿着',
    pace: '配速不合理',
    distance: '距离不合理',
    'not-handed-out': '当时该鞋未发给此试穿员',
    'in-the-future': '时间在未来',
    'unknown-pair': '日志中没有该鞋',
  },
  leftOut: {
    'unknown-kind': (count) => `${count} 条记录的类型需要新版程序`,
    'newer-schema': (count) => `${count} 条记录由新版程序写入`,
  },
  changes: '改动',
  unread: '这些记录不计入任何数字。请查出正确的数值，并在工作台更正。',
};
