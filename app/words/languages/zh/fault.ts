import type { FaultWords } from '../../types.ts';

/** 故障页：写在 index.html 里，所以要短，只知道是哪一类故障。 */
export const fault: FaultWords = {
  title: {
    store: 'Pairlog 无法保存数据',
    code: 'Pairlog 没有完整载入',
    broken: 'Pairlog 停止了运行',
  },
  why: {
    store: '浏览器拒绝存储数据。',
    code: '可能没有网络，也可能刚换上新版本。',
    broken: '是程序出了故障，不是你操作有误。',
  },
  kept: '你之前保存的内容都还在，这个页面没有改动任何数据。',
  storeSteps: ['退出无痕浏览，再重新打开 Pairlog。', '存储空间满了？清出一些空间，再重新载入。'],
  otherSteps: ['确认有网络，再重新载入。', '关掉所有打开的 Pairlog，再重新打开。'],
  tell: '还是不行？先把这次跑步记在纸上，并把这一行发给负责人：',
  sign: { store: '存储被拒绝', code: '部分未载入', broken: '程序停止' },
  reload: '重新载入',
  send: '把我的记录作为文件发送',
  sendHint: '文件不含照片和轨迹，它们仍留在这台设备上。',
};
