import type { DeskWords } from '../../../types.ts';

export const testers: DeskWords['testers'] = {
  none: '还没有试穿员。',
  add: '添加试穿员',
  addSeveral: '添加多名试穿员',
  list: '试穿员，每行一名',
  listHint:
    '姓名和脚长 mm（左右不同时写 左/右）：小艾 265/267。每行自动得到下一个代号 T01、T02……；行首已写代号的照用：T07 小艾。尺码由脚长得出。两项都可不写。可从表格粘贴。',
  noLength: '尺码未知',
  howMany: '没有姓名时：试穿员人数',
  giveCodes: '补足代号',
  giveCodesHint: '只加代号，直到清单有这么多人。姓名和脚长以后再补。',
  taken: '此代号已属于另一名试穿员。',
  wrongLength: '脚长应在 100 至 400 mm 之间；左右不同时写 左/右：265/267。',
  tooManyCells: '除代号、姓名和脚长外还有多余内容。左右脚长请写在一起：265/267。',
  testers: (count) => `${count} 名试穿员`,
  code: '代号',
  codeHint: '大写字母和数字，例如 T07。',
  name: '姓名',
  nameStays: '只留在小组内',
  length: '脚长，mm（左 / 右）',
  mass: '体重，kg',
  height: '身高，cm',
  invite: '邀请',
  inviteAgain: '再加一部手机',
  file: '发鞋文件',
  joins: {
    tester: (group, code) => `扫码或输入邀请码的手机，将以试穿员 ${code} 的身份加入 ${group}。`,
    lead: (group) => `扫码或输入邀请码的设备，将以负责人的身份加入 ${group}，可查看和修改一切。`,
    specialist: (group) =>
      `扫码或输入邀请码的设备，将以专员的身份加入 ${group}，只能阅读问题单和报告。`,
  },
  localOnly: '此地址只能在本机打开。要让手机连接，请用 --lan 启动服务器，或置于网页服务器之后。',
  validUntil: (date) => `只可用一次，有效至 ${date}。`,
  needsHub: '没有服务器时，请发送发鞋文件。',
  silent: (days) => `已 ${days} 天没有消息`,
};
