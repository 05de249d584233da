import type { CareWords } from '../../types.ts';

/** 穿鞋前必须知道的事：疼痛与损坏。 */
export const care: CareWords = {
  caution: {
    title: '请暂停试穿',
    body: '新出现的 3 分及以上疼痛，或伴有肿胀、跛行、麻木、夜间痛、不能负重的疼痛：请停止本试穿的跑步，并就诊或咨询物理治疗师。若不能负重或严重肿胀，请当天就诊。',
    disclaimer: '本提示不是医疗建议。以你的医生和当地规定为准。',
    lead: '负责人会得到通知。',
    read: '我已阅读',
  },

  pain: {
    of: (score, when) => `${when} 的跑步：疼痛 ${score} 分（满分 10）`,
    over: '已经不疼了',
    overHint: '确实不疼了再点。负责人会得到通知。',
    overSaved: '已记下：不疼了。',
    overTrouble: '未能保存，请再试一次。',
    run: (when) => `查看或更正 ${when} 的跑步`,
  },

  damage: {
    title: '样鞋损坏了',
    titleChange: '你的报告',
    now: '请立即脱下，不要再穿它跑步。',
    what: '哪里坏了？',
    which: '哪一只？',
    saved: '已报告。请勿再穿这双鞋。',
    corrected: '报告已更正',
    missing: '请说明哪里坏了。',
    keep: '请勿再穿这双鞋',
    reported: (what, shoe, when) => `${when} 报告：${shoe === null ? '' : `${shoe}，`}${what}。`,
    open: '查看或更正报告',
    takeBack: '收回报告',
    takeBackAsk: '报告及其照片将在所有去过的地方永久消失。确定收回？',
    takenBack: '报告已收回',
    gone: '本机已没有这份报告。',
  },

  lead: {
    none: '负责人尚未答复。',
    says: {
      'go-on': (when) => `负责人 ${when} 答复：这双鞋可以继续穿着跑。`,
      'stay-out': (when) => `负责人 ${when} 答复：先别穿这双鞋跑。`,
    },
    words: (words) => `“${words}”`,
  },
};
