/** What the terminal says, in each language. A missing message does not compile. */
import type { BundleProblem, LeftOut, UnpackProblem } from '../../core/records/index.ts';
import type { RunOddity } from '../../core/mileage/index.ts';

export const languages = ['en', 'zh'] as const;
export type Language = (typeof languages)[number];

export interface Words {
  readonly usage: string;
  readonly cannotRead: (file: string, why: string) => string;
  readonly unpack: Readonly<Record<UnpackProblem, string>>;
  readonly problem: (problem: BundleProblem) => string;
  readonly unreadable: (line: number, kind: string, field: string, expected: string) => string;
  readonly noProject: (name: string | undefined, names: readonly string[]) => string;
  readonly evidence: (pairs: number, testers: number, runs: number, km: string) => string;
  readonly brief: (km: string) => string;
  readonly pairs: string;
  readonly pair: string;
  readonly round: string;
  readonly size: string;
  readonly distance: string;
  readonly ofBrief: string;
  readonly runs: string;
  readonly surfaces: string;
  readonly holder: string;
  readonly note: string;
  readonly stopUse: string;
  readonly outOfTolerance: (readings: number) => string;
  readonly complaints: (round: string) => string;
  readonly asked: (runs: number, testers: number) => string;
  readonly nobodyAsked: string;
  readonly noComplaint: string;
  readonly zone: string;
  readonly complaint: string;
  readonly testersOnce: string;
  readonly testersTwice: string;
  readonly reportedRuns: string;
  readonly leftRight: string;
  readonly severity: string;
  readonly bench: string;
  readonly noBench: string;
  readonly measure: string;
  readonly readings: string;
  readonly deviations: string;
  readonly deviation: string;
  readonly allInside: (readings: number) => string;
  readonly nominal: string;
  readonly reading: string;
  readonly damages: string;
  readonly oddities: string;
  readonly oddity: Readonly<Record<RunOddity['why'], string>>;
  readonly leftOut: Readonly<Record<LeftOut['why'], (count: number) => string>>;
  readonly changes: string;
}

const en: Words = {
  usage: `Usage: npm run review -- FILE [--json] [--project NAME] [--lang en|zh]
       npm run review -- --schema
Reads a bundle (.pairlog) and prints the review of its project.`,
  cannotRead: (file, why) => `${file}: ${why}`,
  unpack: {
    damaged: 'The file is damaged and cannot be unpacked. Ask for it again.',
    'too-large': 'The file unpacks to more than a bundle may hold.',
    'no-log': 'This zip holds no log (log.ndjson), so it is no bundle.',
    'attachment-differs': 'A photo or track in the file was changed on the way. Ask for it again.',
  },
  problem: (problem) => {
    const at = `line ${problem.line}: `;
    switch (problem.why) {
      case 'not-a-bundle':
        return `${at}format: this is no bundle of Pairlog.`;
      case 'newer-bundle':
        return `${at}v: the bundle has version ${problem.v}; this program reads version 1. Use a newer one.`;
      case 'not-json':
        return `${at}this is no JSON; the line was damaged on the way.`;
      case 'cut-off':
        return `${at}the file ends early: its closing line is missing. Ask for it again.`;
      case 'digest-differs':
        return `${at}digest: the closing line does not fit the lines before it; some were changed, lost or added.`;
      case 'not-a-revision':
        return `${at}${problem.field || 'revision'}: missing or of the wrong form.`;
      case 'newer-envelope':
        return `${at}v: the record has version ${problem.v}; use a newer program.`;
      case 'too-large':
        return `${at}body: ${problem.characters} characters, at most ${problem.most} are allowed.`;
      case 'hash-differs':
        return `${at}hash: the record was changed after it was saved.`;
    }
  },
  unreadable: (line, kind, field, expected) =>
    `line ${line}: ${kind}.${field || 'body'}: expected ${expected}.`,
  noProject: (name, names) =>
    name === undefined
      ? names.length === 0
        ? 'The bundle holds no project.'
        : `The bundle holds several projects; choose one with --project: ${names.join(', ')}`
      : `There is no project "${name}". There are: ${names.join(', ') || 'none'}`,
  evidence: (pairs, testers, runs, km) =>
    `${pairs} pairs, ${testers} testers, ${runs} runs, ${km} km`,
  brief: (km) => `The brief asks ${km} km of a pair.`,
  pairs: 'Pairs',
  pair: 'Pair',
  round: 'Round',
  size: 'Size mm',
  distance: 'km',
  ofBrief: 'of brief',
  runs: 'Runs',
  surfaces: 'Surfaces',
  holder: 'Held by',
  note: 'Note',
  stopUse: 'STOP USE',
  outOfTolerance: (readings) =>
    `${readings} ${readings === 1 ? 'reading' : 'readings'} out of tolerance`,
  complaints: (round) => `Complaints, ${round}`,
  asked: (runs, testers) => `${runs} runs of ${testers} testers were asked.`,
  nobodyAsked: 'Nobody was asked.',
  noComplaint: 'None was reported.',
  zone: 'Zone',
  complaint: 'Complaint',
  testersOnce: 'Testers',
  testersTwice: 'twice+',
  reportedRuns: 'Runs',
  leftRight: 'left/right',
  severity: 'Severity mean/most',
  bench: 'Bench checks over distance',
  noBench: 'No pair was measured.',
  measure: 'Measure, site, foot',
  readings: 'Reading at km',
  deviations: 'Out of tolerance on arrival',
  deviation: 'Deviation',
  allInside: (readings) => `All ${readings} readings are within tolerance.`,
  nominal: 'Nominal',
  reading: 'Reading',
  damages: 'Samples that came apart',
  oddities: 'Runs to ask about',
  oddity: {
    'logged-twice': 'logged twice, counted once',
    'tester-overlap': 'overlaps with another run of the same tester',
    'pair-overlap': 'two testers in one pair at the same time',
    pace: 'implausible pace',
    distance: 'implausible distance',
    'not-handed-out': 'the pair was not handed out to this tester then',
    'in-the-future': 'lies in the future',
    'unknown-pair': 'the pair is not in the log',
  },
  leftOut: {
    'unknown-kind': (count) => `${count} of a kind that needs a newer program`,
    'newer-schema': (count) => `${count} written by a newer program`,
    unreadable: (count) => `${count} that cannot be read`,
  },
  changes: 'Changes',
};

const zh: Words = {
  usage: `用法：npm run review -- 文件 [--json] [--project 名称] [--lang en|zh]
     npm run review -- --schema
读取日志包（.pairlog）并打印项目评审。`,
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
  unreadable: (line, kind, field, expected) =>
    `第 ${line} 行：${kind}.${field || 'body'}：应为 ${expected}。`,
  noProject: (name, names) =>
    name === undefined
      ? names.length === 0
        ? '日志包中没有项目。'
        : `日志包中有多个项目，请用 --project 选择：${names.join('、')}`
      : `没有项目“${name}”。现有：${names.join('、') || '无'}`,
  evidence: (pairs, testers, runs, km) =>
    `${pairs} 双，${testers} 名试穿员，${runs} 次跑步，${km} km`,
  brief: (km) => `任务书要求每双 ${km} km。`,
  pairs: '样鞋',
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
  outOfTolerance: (readings) => `${readings} 个读数超差`,
  complaints: (round) => `不适反馈，${round}`,
  asked: (runs, testers) => `共询问 ${testers} 名试穿员的 ${runs} 次跑步。`,
  nobodyAsked: '未询问任何人。',
  noComplaint: '无人反馈不适。',
  zone: '区域',
  complaint: '不适',
  testersOnce: '试穿员',
  testersTwice: '两次以上',
  reportedRuns: '跑步',
  leftRight: '左/右',
  severity: '严重度 平均/最高',
  bench: '测量值与里程',
  noBench: '尚无测量。',
  measure: '指标、部位、脚',
  readings: '读数 @ km',
  deviations: '到样超差',
  deviation: '偏差',
  allInside: (readings) => `${readings} 个读数全部在公差内。`,
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
    unreadable: (count) => `${count} 条记录无法读取`,
  },
  changes: '改动',
};

export const words: Readonly<Record<Language, Words>> = { en, zh };
