/** 打印的报告：首页给决策的人，其后每个工种一张。 */
import type { PaperWords } from '../../types.ts';
import { withSpaces } from '../../places/zh/apart.ts';
import { sheet } from './sheet.ts';

const look = (pairs: string) => `请先查看样鞋 ${pairs}。`;
const rest = (open: number) => (open === 0 ? '其余保持不变。' : '其余尚无定论，继续试穿。');

export const paper: PaperWords = withSpaces<PaperWords>({
  for: {
    whole: '致项目负责人',
    last: '致鞋楦师',
    upper: '致版师',
    materials: '致材料开发',
    foam: '致发泡开发',
    tooling: '致鞋底与模具开发',
  },
  mark: '保密：仅供参与制作这款鞋的人员使用。',
  headline: (h, say) => {
    switch (h.case) {
      case 'nobody-ran':
        return '本轮还没有人跑过，暂无可决定的事项。';
      case 'change':
        return `${h.look.length > 0 ? look(say.list(say.pairs)) : ''}请修改${say.list(say.names)}。${rest(h.open)}`;
      case 'look':
        return `${look(say.list(say.pairs))}${h.open > 0 ? `还有 ${h.open} 项限值尚无定论。` : ''}`;
      case 'fails':
        return `本轮不达标：${paper.failing[h.what]}。请先找原因。`;
      case 'watch':
        return `${say.isProved ? '' : '目前没有已证实的问题，'}请留意${say.list(say.names)}。`;
      case 'keep':
        return `保持不变：${h.limits} 项限值全部达标。`;
      case 'go-on':
        return `暂不修改，继续试穿：还有 ${h.open} 项限值尚无定论。`;
    }
  },
  failing: {
    wear: '磨损过快',
    'not-measured': '有一项限值没有测量',
    structure: '样鞋损坏',
    'allowed-rate': '有不适反复出现',
    complaints: '有不适随里程加重',
    'stop-use': '有样鞋须停穿',
  },
  places: {
    P1: '鞋底大脚趾处',
    P2: '鞋底二至五趾处',
    P3: '前掌内侧',
    P4: '前掌中部',
    P5: '前掌外侧',
    P6: '鞋底内腰',
    P7: '鞋底外腰',
    P8: '后跟内侧',
    P9: '后跟外侧',
    U1: '鞋头前端',
    U2: '鞋头内侧',
    U3: '鞋头外侧',
    U4: '前帮',
    U5: '鞋舌与眼片',
    U6: '鞋身内腰',
    U7: '鞋身外腰',
    U8: '领口',
    U9: '后领',
    U10: '后套',
  },
  felt: (kind, place) => `${place}${kind}`,
  onFoot: (foot, place) => `${foot === 'left' ? '左鞋' : '右鞋'}${place}`,
  wearAt: (measure, site) => `${measure}（${site}）`,
  sentences: (some) => some.join(''),
  sizes: (testers, pairs, runs, distance) =>
    `${testers} 名试穿员，${pairs} 双样鞋，${runs} 次跑步，共 ${distance}。`,
  farthest: (distance, brief) => `跑得最远的一双 ${distance}，要求 ${brief}。`,
  views: {
    left: { sole: '左鞋底', upper: '左鞋面' },
    right: { sole: '右鞋底', upper: '右鞋面' },
  },
  columns: {
    so: '现状',
    change: '要改什么',
    amount: '改多少',
    who: '谁来改',
    by: '期限',
    sure: '有多确定',
  },
  so: {
    complaint: (testers, of, runs, ofRuns) =>
      `${of} 名试穿员中 ${testers} 名，${ofRuns} 次跑步中 ${runs} 次`,
    oneTester: (tester, runs, ofRuns) => `仅 ${tester}：${ofRuns} 次跑步中 ${runs} 次`,
    side: { left: '只在左鞋', right: '只在右鞋', both: '左右鞋都有' },
    better: (before, earlier, after, later) => `${earlier}：${before}；${later}：${after}`,
    changedBy: (part, round) => `你的改动（${part}，${round}）：`,
    changedByOther: (part, round, role) => `${role}的改动（${part}，${round}）：`,
    changedByNone: '改动清单里没有针对它的改动。',
    share: (runs, of) => `${of} 次中 ${runs} 次`,
    tolerance: (pair, site, by) => `样鞋 ${pair}：${site}偏差 ${by}`,
    damage: (pair, distance) => `样鞋 ${pair}，${distance}`,
    wear: (site, value, at, brief) => `${site}：约 ${at} 时降到 ${value}；要求 ${brief}`,
    wearTitle: (measure) => `${measure}磨损快`,
    toleranceTitle: '超差',
    betterTitle: (felt) => `${felt}：已改善`,
  },
  acts: {
    change: '还没有写下要改什么。',
    look: '查看样鞋，找出原因。',
    watch: '暂不修改，继续留意。',
    keep: '保持不变。',
    damage: '拆开样鞋，找出原因。',
    tolerance: '挑出这双样鞋，或修正模具。',
    wear: '暂不修改，再测一次。',
    oneTester: '属该脚的合脚问题。',
    asked: '还没有写下要改什么。',
    first: (parts) => `先看：${parts}。`,
  },
  noAmount: '暂无数值',
  noDate: '日期未定',
  nobodyYet: '未定',
  inRound: (round) => `随${round}`,
  sure: {
    clear: '已证实',
    'one-tester': '仅一人',
    likely: '很可能',
    'too-early': '为时尚早',
    fails: '不达标',
    open: '尚无定论',
    holds: '达标',
    asked: '负责人提出',
  },
  moreRows: (n) => `另有 ${n} 项，见各工种的分页。`,
  nothingShows: '没有反复出现、过早磨损或损坏的地方。',
  limits: '对照任务书',
  limit: {
    structure: '无损坏',
    'allowed-rate': '不适',
    complaints: '不适不加重',
    'stop-use': '无停穿',
  },
  limitAsks: {
    structure: '10 双中 9 双',
    'allowed-rate': (share) => `不超过 ${share} 的跑步`,
    complaints: '随里程',
    'stop-use': '没有生效的通知',
    reading: (bound, value) => `${bound} ${value}`,
    ofNew: (bound, value) => `${bound}新鞋的 ${value}`,
  },
  bounds: { 'at-least': '不低于', 'at-most': '不高于' },
  limitSays: {
    checked: (distance) => `已测到 ${distance}`,
    reached: (at, brief) => `${at}，要求 ${brief}`,
    cameApart: (n, of) => `${of} 双中 ${n} 双损坏`,
    recurring: (n) => `${n} 项反复出现`,
    nothingRecurs: '无已证实的问题',
    growing: (n) => `${n} 项加重`,
    noneGrows: '未见加重',
    withdrawn: (pairs) => `样鞋 ${pairs}`,
    none: '无',
    notMeasured: '没有测量',
  },
  curveOf: (distance) => `已测到 ${distance}。`,
  curveKey: '标记：每双一种。线：一双新鞋。灰：可能的范围。点线：超出检测里程。',
  atLimit: (value) => `限值 ${value}`,
  mapTitle: (kind, testers) => `${kind}：${testers} 名试穿员中反映过的人数`,
  shoes: { left: '左鞋', right: '右鞋' },
  mapNobody: '无人',
  mapZone: (place, testers, of) => `${place} ${of} 名中 ${testers} 名`,
  howSure: '有多确定？',
  sureLines: {
    clear: (names) => `按任务书的规则已证实：${names}。`,
    'one-tester': (names) => `只对一名试穿员证实：${names}。`,
    likely: (names) => `很可能反复，尚未证实：${names}。`,
    'too-early': (names) => `为时尚早：${names}。`,
    fails: (names) => `样鞋上已看到：${names}。`,
    open: (names) => `尚无定论：${names}。`,
    holds: (names) => `达标：${names}。`,
    asked: (names) => `负责人提出：${names}。`,
  },
  behind: '数据与方法见附录。',

  changes: {
    first: '这是第一轮，没有可比较的轮次。',
    noted: '本轮没有记录任何改动。',
    headline: (h, say) => {
      switch (h.case) {
        case 'one-round':
          return '这是第一轮，没有可比较的轮次。';
        case 'nobody-ran':
          return `${say.round(h.round)}还没有人跑过，无法比较。`;
        case 'mixed':
          return `改善：${say.names(h.better)}；变差：${say.names(h.worse)}。`;
        case 'worse':
          return `明显变差：${say.names(h.worse)}。`;
        case 'mended':
        case 'better':
          return `${h.case === 'mended' ? '已解决' : '有改善'}：${say.names(h.better)}。${h.open ? `请询问：${say.names([h.open])}。` : ''}`;
        case 'no-different':
          return `未显示有差别：${say.names(h.same)}。`;
        case 'not-in-shoe':
          return h.better.length > 0
            ? `有改善，但改动没有做到鞋上：${say.names(h.better)}。`
            : `没有做到鞋上：针对${say.names(h.named)}的改动。`;
        case 'too-early':
          return `为时尚早：${say.names(h.open)}。`;
        case 'nothing-moved':
          return `${say.round(h.round)}没有明显变化。`;
      }
    },
    against: (earlier, later, both) => `${earlier}与${later}相比，${both} 名试穿员两轮都穿过。`,
    meant: (felt) => `用于解决：${felt}。`,
    mendsNothing: '没有写明要解决什么。',
    arrived: '做到了吗？',
    arrivedLine: (place, from, to, by) => `${place}：之前 ${from}，现在 ${to}（${by}）`,
    arrivedAs: (line, word) => `${line}：${word}`,
    arrivedKey: '改动用数字写明，或图纸改了数值，才能判断是否做到；只用文字写的改动无法测量。',
    notOnBlueprint: '无法判断：没有用数字写明，图纸也没有为此改数值。',
    unlisted: '图纸已改，改动清单里没有提到',
    worked: '有效吗？',
    notJudged: '无法判断。',
    noAim: '无法判断：没有写明针对哪种不适。',
    else: '还有别的变化吗？',
    elseKey: '跑步次数的占比，之前与现在。虚线为任务书允许的比例。',
    found: '另外发现的差别：没有人要求',
    foundNothing: '测量和记录的其他方面都没有差别。',
    comfort: '舒适度',
    rightNow: (question) => `${question}（正好的人数）`,
    ofAll: (some, all) => `${some}／${all}`,
    comfortWord: {
      better: '明显更好',
      worse: '明显更差',
      'no-relevant': '无差别',
      open: '为时尚早',
    },
    word: {
      worse: '变差',
      mended: '已解决',
      better: '有改善',
      'no-different': '无差别',
      look: '请询问',
      'too-little': '为时尚早',
    },
    knew: (testers) => `${testers} 知道改了什么：仅此一点就可能提高舒适度评分。`,
    close: '可以结案吗？',
  },

  care: {
    title: '疼痛、麻木、水泡与损坏',
    columns: {
      what: '现象',
      where: '位置',
      testers: '试穿员',
      runs: '跑步',
      most: '最重',
      now: '目前',
    },
    pain: (from) => `疼痛 ${from} 分及以上（满分 10），或伴有肿胀等征象`,
    ofTen: (score) => `${score} 分`,
    stayOut: (testers) => `${testers}：负责人答复之前不要再穿这双鞋跑`,
    noneOut: '已答复，或已不疼',
    skin: { blister: '水泡', broken: '破皮' },
    onPair: (pair, date) => `样鞋 ${pair}，${date}`,
    doNotWear: '不要再穿',
    answered: '负责人说可以继续',
    none: (pain, feet, pairs) =>
      `${pain} 次回答中没有 3 分及以上的疼痛；${feet} 次回答中没有麻木、水泡或破皮；${pairs} 双样鞋都没有损坏。`,
    cautions: [
      '新出现的 3 分及以上疼痛，或伴有肿胀、跛行、麻木、夜间痛、不能负重的疼痛：试穿员应停止本试穿的跑步，并就诊或咨询物理治疗师；若不能负重或严重肿胀，当天就诊。损坏的样鞋不要再穿。',
      '这里只统计回答，不是医疗建议。以医生和当地规定为准。',
    ],
  },

  sheet,
  alsoReported: '另有反映，尚未证实：',
  appendix: '附录：数据与方法',
  named: (names) => `（非译文；词表从中找到：${names}）`,
  asIn: (language) => (language === null ? '（外文原文）' : `（${language}原文）`),
  inLanguage: (language) => `${language}原文：`,
});
