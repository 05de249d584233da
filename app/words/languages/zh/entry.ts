import type { EntryWords } from '../../types.ts';

/** 填写时和保存前的提示。 */
export const entry: EntryWords = {
  timeHint: '只输数字即可：10500 表示 1:05:00。',
  understood: (h, m, s, pace, unit) =>
    `${h && `${h} 小时 `}${m} 分 ${s} 秒${pace && `，每${unit === 'km' ? '公里' : '英里'} ${pace}`}`,
  wrongDistance: (example) => `跑了多远？例如 ${example}。`,
  wrongTime: '看不懂这个用时。例如 52:30、10500 或 1 小时 05 分。',
  wrongTemperature: '温度格式不对。例如 14。',
  wrongWhen: '什么时候开始的？请填日期和时间。',
  aheadOfNow: '这是将来的时间：什么时候开始的？',
  doubt: (distance, time) => `${distance}${time === null ? '' : `，用时 ${time}`}：对吗？`,
  doubtDay: (pair, when) => `按记录，${when} 时样鞋 ${pair} 不在你手中。日期对吗？`,
  doubtPair: (pair, when, others) =>
    `按日志，${when} 你手中没有 ${pair}，而是 ${others}。鞋选对了吗？`,
  doubtTwice: (distance, pair, when) =>
    `你已记录过 ${pair} 的一次跑步：${distance}，${when} 开始。这是另一次吗？`,
  doubtClock: (phone, others) =>
    `按本机时间，${phone} 开始；按小组的时间，是 ${others}。本机时间对吗？`,
  doubtSame: '是同一次，不保存这条',
  doubtSure: '对，保存',
  doubtChange: '修改',
  twoSided: {
    title: '过了，还是不够？',
    hint: '中间就是正好。',
    right: '正好',
    clear: '清除',
    degree: (degree, end) => {
      if (degree === 'too') return end;
      const word = degree === 'little' ? '略' : '非常';
      return end.includes('太') ? end.replace('太', word) : `${word}${end}`;
    },
    ends: (unanswered, low, high) => `${unanswered}；左端：${low}，中间：正好，右端：${high}`,
  },
  limit: {
    left: (count) => `还可输入 ${count} 字`,
    reached: (most) => `已到 ${most} 字的上限。`,
    cut: (most, cut) => `已到 ${most} 字的上限：粘贴内容的最后 ${cut} 字未能放入。`,
  },

  track: {
    add: '轨迹（GPX 文件）',
    title: '轨迹',
    moving: (time) => `移动 ${time}`,
    climb: (metres) => `爬升 ${metres} m`,
    made: {
      smoothed:
        '按 WGS84 椭球计算；已去除定位噪声，并补上定位点之间的弯道。停留不计；爬升以 3 m 起计。',
      'as-recorded': '按 WGS84 椭球计算；已补上定位点之间的弯道。停留不计；爬升以 3 m 起计。',
    },
    noTimes: '文件中没有可用的时间（缺失或全部相同），只取了距离。请在上方输入用时。',
    skipped: (points) => `有 ${points} 个点的坐标无效，已略去。请核对距离。`,
    again: (when) => `此轨迹已记录过：${when} 的跑步。`,
    differs: (track, typed, percent) =>
      `轨迹为 ${track}，你输入 ${typed}（${percent} %）。两者都保留；以上方的数字为准。`,
    useTrack: '采用轨迹的',
    paint: '沿途路面',
    base: '未标注之处以下方所选路面为准。',
    from: (unit) => `从 ${unit}`,
    to: (unit) => `到 ${unit}`,
    surface: '那里的路面',
    paintIt: '标注',
    clean: '清除标注',
    stretch: (from, to, surface) => `${from} 至 ${to}：${surface}`,
    openMap: '打开地图',
    mapOf: '跑步地图；各路段列在上方',
    tiles: (host) => `底图来自 ${host}，对方能看到你查看的位置。`,
    north: '北',
    tapFirst: '点线路上另一种路面开始之处。',
    tapSecond: '再点结束之处。',
    chooseSurface: '两点之间是什么路面？',
    unknown: '未说明',
    send: '把轨迹发送给负责人',
    sendHint: (metres, times) =>
      `否则只留在本机。发送的轨迹不含首尾各 ${metres} m，也不含两端附近的任何点${times === 'minutes' ? '，时间取整分钟' : ''}。`,
    choosePair: '这次跑步穿的是哪双？',
    wrong: {
      'not-gpx': () => '这不是 GPX 文件。请从手表导出 GPX。',
      'broken-xml': (line) => `文件在第 ${line} 行损坏。请重新导出。`,
      doctype: () => '文件含有文档类型声明，手表不会这样写，因此未打开。',
      'too-deep': () => '文件嵌套过深，不像轨迹，因此未打开。',
      'too-large': () => '文件过大：最多五千万个字符。',
      'too-many-points': () => '轨迹超过五十万个点。',
      'no-track': () => '文件中没有轨迹，只有地点或路线。请把这次跑步本身导出为 GPX。',
      'no-points': () => '文件中没有任何记录点。请重新导出这次跑步。',
      'no-places': (line) =>
        `文件中所有点的经纬度都无效（第一个在第 ${line} 行）。请重新导出这次跑步。`,
      'storage-full': () => '手机没有空间存放轨迹。请腾出空间后再添加。',
    },
  },
};
