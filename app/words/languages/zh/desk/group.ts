import type { DeskWords } from '../../../types.ts';

export const group: DeskWords['group'] = {
  devices: '设备',
  device: '设备',
  role: '角色',
  seen: '最近在线',
  revoke: '注销',
  revoked: '已注销',
  inviteLead: '邀请另一位负责人',
  inviteSpecialist: '邀请一位工厂专员',
  specialistHint: '工厂专员只能看到问题项，以及你发送的引文和报告，看不到其他内容。',
  files: '文件',
  exportAll: '将全部日志存为文件',
  specialistFile: '给专员的文件',
  specialistFileHint:
    '用于不连服务器的专员：含问题项及其照片，以及你发送的内容。一人一份：打开它的设备即归此人使用。专员也以文件发回答复。',
  open: '打开文件',
  noHub: '本小组以文件往来：没有服务器。',
  sync: '立即同步',
};
