import type { FitWords } from '../../types.ts';

/** 手机上的合脚试穿：谁穿哪双，站着和走动时合不合脚，哪里要改 */
export const fit: FitWords = {
  title: '合脚试穿',
  notHere: '本机没有这场试穿会，或试穿会已结束。请问负责人。',

  card: {
    title: (name) => `合脚试穿：${name}`,
    what: '穿上试一分钟，不用跑。',
    start: '试一双鞋',
    goOn: '继续试穿',
    done: (n) => `本机已记录 ${n} 人`,
  },

  who: {
    title: '谁来试？',
    me: (code) => (code === '' ? '我' : `我，${code}`),
    another: '在场的另一个人',
    tester: '哪位试穿员？',
    code: '这个人的代号',
    codeHint: '不写姓名。再试另一双时用同一个代号。',
    again: (code) => `又是 ${code}`,
    pair: '哪双鞋？',
    pairOf: (code, size) => `${code}，${size} 码`,
    lacing: '鞋带',
    start: '穿上站好',
  },

  standing: {
    title: '合脚吗？',
    of: (who, pair) => `${who} · ${pair}`,
    hint: '双脚站立。',
    feet: '哪只脚？',
    both: '两脚一样',
    left: '左脚',
    right: '右脚',
    fine: '正好',
    far: (place) => `${place}：差多少？`,
    mm: (n) => `${n} mm`,
    next: '走一走',
    restNext: '其余都正好，走一走',
    skip: '其余不回答，走一走',
  },

  walking: {
    title: '走起来呢？',
    where: '怎么走的？',
    heel: '你的后跟',
    spots: '有没有压脚、磨脚或张口？',
    nothing: '没有',
    something: '有，标出位置',
    here: (place) => `${place}：是哪一种？`,
    pain: '疼不疼，麻不麻？',
    painNone: '都没有',
    takeOff: '请立即脱下鞋。',
    wanted: '哪里要改？',
    wantedHint: '点一下你想改的地方。',
    noneSuggested: '你的回答没有对应的改动。',
    other: '改别的地方',
    add: '加上',
    words: '其他想说的话',
    back: '回到站立',
    save: (who) => `保存 ${who} 的试穿`,
  },

  saved: (who) => `已保存：${who}。下一位？`,
  afresh: '重新开始',
  full: '手机空间不足。请腾出空间后再保存。',
  lost: '未能保存，请再试一次。',
  errors: {
    pair: '请选择试穿的鞋。',
    code: '请填代号：大写字母、数字和短横，例如 T01-1。',
    'code-taken': '这是试穿员的代号，请给这个人换一个。',
    'nothing-said': '还没有任何回答，请至少回答一项。',
  },
};
