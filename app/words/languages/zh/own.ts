import type { OwnWords } from '../../types.ts';

export const own: OwnWords = {
  shoe: (done, target) => `鞋周的缝线：${target} 中已缝 ${done}`,
  course: (count) => `你最近 ${count} 次的舒适度`,
  courseSays: (scores) => `你的舒适度，从早到晚：${scores.join('、')}`,

  saved: {
    title: (distance, code) => `已保存：${code}，${distance}`,
    open: '查看这次跑步',
    close: '关闭',
  },

  run: {
    of: (distance, code) => `${code}，${distance}`,
    said: '你的回答',
    comfort: '舒适度',
    feet: '脚部',
    noComfort: '你没有回答舒适度。',
    notAnswered: '未回答',
    change: '修改这次跑步',
    history: '以前的版本',
    gone: '本机没有这次跑步。',
    pace: '配速',
  },

  pair: {
    title: (code) => `样鞋 ${code}`,
    km: (done, target) => `这双鞋应能跑 ${target}，你已跑 ${done}。`,
    over: (done, target) => `这双鞋应能跑 ${target}，你已跑到 ${done}。`,
    forTesters: '负责人请你做的',
    courseTitle: '舒适度随里程的变化',
    x: (unit) => `你穿这双鞋跑的里程，${unit}`,
    y: '总体舒适度，0 到 100',
    point: (score, at, when) => `${at} 后为 ${score}，${when}`,
    noCourse: '有两次跑步回答了舒适度后，这里会出现图表。',
    runs: '你穿它跑的',
    allRuns: '我的全部跑步',
    none: '还没有穿它跑过。',
    notYours: '这双样鞋不在你手上。',
  },

  heard: {
    open: '看一看',
    close: '关闭',
    from: (date) => `负责人，${date}`,
    cameOf: '你反映的问题有什么结果',
    seeTest: '你在这次试穿中发现的全部问题',
    gone: '本机没有这条消息。',
  },

  test: {
    over: '试穿结束了，谢谢你。',
    soFar: '你的试穿进展',
    youRan: (project, distance, runs, pairs) =>
      `${project}：你穿 ${pairs} 双样鞋跑了 ${runs} 次，共 ${distance}。`,
    see: '看看你发现了什么',
    span: (project, from, until) =>
      from === until ? `${project}，${from}` : `${project}，${from} 至 ${until}`,
    byYou: '你跑的',
    runs: () => '次跑步',
    pairs: () => '双样鞋',
    found: '你发现的问题',
    foundIn: (project) => `${project}：你发现的问题`,
    foundSoFar: (project) => `${project}：你的试穿进展`,
    upper: (text) => text,
    onRuns: (n) => `${n} 次跑步`,
    nothing: '没有哪个问题反复出现。',
    noRuns: '你在这次试穿里还没有跑过。',
    stays: '你的记录留在本机，直到你自己删除。',
  },

  install: {
    title: '把 Pairlog 放到主屏幕',
    why: '之后没有网络也能打开，手机也不会清除你的记录。',
    now: '放到主屏幕',
    how: '怎么放',
    later: '以后再说',
    done: 'Pairlog 已在主屏幕上。',
    page: '把 Pairlog 放到主屏幕',
    first: '无论放不放，已有的记录都保留在本机。',
    ios: 'iPhone 或 iPad',
    iosSteps: [
      '点“共享”，即带箭头的方框。',
      '向下滑动，点“添加到主屏幕”。',
      '点“添加”。以后从那里打开 Pairlog。',
    ],
    iosNote: '主屏幕上的应用有自己的记录，会再要一次邀请码。请向负责人要一个新的。',
    other: '其他手机',
    otherSteps: [
      '打开浏览器菜单（三个点）。',
      '点“安装应用”或“添加到主屏幕”。',
      '以后从那里打开 Pairlog。',
    ],
  },

  last: {
    none: '你手上还没有样鞋，所以没有可记录的。',
  },

  shared: {
    photoTitle: '这张照片属于哪里？',
    photoRun: (distance, code, when) => `我穿 ${code} 跑的 ${distance}，${when}`,
    photoDamage: (code) => `报告 ${code} 的损坏`,
    photoNone: '你还没有可以放照片的跑步或样鞋。',
    photoAdded: '照片已加到这次跑步',
    otherTrack: (name) =>
      `Pairlog 读不了 ${name}。请在手表的应用里打开这次跑步，导出为 GPX 文件，再共享过来。`,
    otherFile: (name) =>
      `Pairlog 用不上 ${name}。它接受轨迹（.gpx）、照片和 Pairlog 自己的文件（.pairlog）。`,
  },
};
