import type { JoinWords } from '../../types.ts';

export const join: JoinWords = {
  invited: {
    tester: (group, tester) =>
      `本机将以试穿员${tester === null ? '' : ` ${tester} `}的身份加入 ${group}。`,
    lead: (group) => `本设备将以负责人的身份加入 ${group}。`,
    specialist: (group) => `本设备将以专员的身份加入 ${group}。`,
  },
  willSee: {
    tester: '你为手上的样鞋记录跑步。负责人能看到你的记录，其他试穿员看不到。',
    lead: '你可以查看和修改小组的一切：任务书、轮次、样鞋、试穿员、跑步、问题单和报告。',
    specialist: '你可以阅读负责人写的问题单和报告。你看不到试穿员的跑步记录，也不需要填写什么。',
  },
  notWithYou: (code) => `样鞋 ${code} 现在不在你手上`,
  notWithYouHint: '如果刚刚交给你，请等手机联网。否则请问负责人。',
};
