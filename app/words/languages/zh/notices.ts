import type { NoticeWords } from '../../types.ts';

export const notices: NoticeWords = {
  shown: { title: '请打开 Pairlog', body: '有一条通知给你。' },
  ask: {
    title: '没打开 Pairlog 也能收到通知',
    why: '某双样鞋不能再穿，或者负责人有事问你时，手机会提醒你。提醒里只写“请打开 Pairlog”，不会写是什么事。',
    turnOn: '打开通知',
    later: '以后再说',
    isOn: '通知已打开，可以在设置里关闭。',
  },
  settings: {
    title: '通知',
    what: '只有两种情况会通知你：某双样鞋不能再穿，或者负责人有事问你。消息经由浏览器的推送服务送达，只写“请打开 Pairlog”。',
    isOn: '已打开：没打开 Pairlog 时，手机也会通知你。',
    isOff: '已关闭：打开 Pairlog 时才能看到通知。',
    turnOn: '打开通知',
    turnOff: '关闭通知',
    blocked: '你已禁止 Pairlog 发送通知。请先在手机或浏览器的设置里允许，再回到这里。',
    homeScreen:
      '在 iPhone 或 iPad 上，要从主屏幕打开才行，系统需为 iOS 16.4 或更新版本：点“分享”，选“添加到主屏幕”，再从主屏幕打开 Pairlog。',
    noSupport: '这个浏览器做不到。打开 Pairlog 时就能看到通知。',
    noHub: '你的小组用文件往来，没打开 Pairlog 时收不到通知。',
    revoked: '本机已不再登录，收不到通知。',
    failed: '没有成功：没有网络，或者这个浏览器没有推送服务。请稍后再试。',
  },
  reminders: {
    title: '提醒',
    what: '到了你平时记录的时间还没有记录，“今天”页面会提醒你：每天最多一次，最多连续三天。全部由本机自己推算。',
    pace: (days, hour) =>
      days === 1
        ? `你每天都记录，多在 ${hour} 左右。`
        : `你大约每 ${days} 天记录一次，多在 ${hour} 左右。`,
    noPace: '大约有四天的记录之后，提醒才会开始。',
    isOn: (pace) => `已打开。${pace}`,
    isOff: (pace) => `已关闭。${pace}`,
    turnOn: '打开提醒',
    turnOff: '关闭提醒',
    badge: '没打开 Pairlog 时，图标上可能显示 1。多久检查一次由浏览器决定。',
    onlyOpen: '这个浏览器在 Pairlog 关闭时什么也不做，打开后才能看到提醒。',
  },
  askReminders: {
    title: '要提醒你记录吗？',
    why: (pace) => `${pace}到那时还没有记录，“今天”页面会提醒你，每天最多一次。`,
    turnOn: '提醒我',
    no: '不用了',
    isOn: '提醒已打开，可以在设置里关闭。',
  },
  due: {
    title: (days) => (days === 1 ? '从昨天起没有记录' : `已有 ${days} 天没有记录`),
    ask: '如果跑过，现在就可以记录。',
    close: '今天不用',
  },
};
