import type { DeskWords } from '../../../types.ts';

export const audit: DeskWords['audit'] = {
  title: '操作记录',
  hint: '谁加入、谁被注销、谁邀请了谁。不包含任何人记录的内容。',
  show: '显示',
  when: '时间',
  who: '谁',
  what: '操作',
  lead: '负责人或专员',
  deeds: {
    join: '加入',
    return: '在清空的设备上恢复',
    renew: '更新了令牌',
    invite: '邀请了：',
    revoke: '注销了设备',
  },
};
