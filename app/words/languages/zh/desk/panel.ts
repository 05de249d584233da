import type { DeskWords } from '../../../types.ts';

export const panel: DeskWords['panel'] = {
  plan: {
    title: '发鞋方案',
    go: '发鞋方案',
    lead: '谁在何时穿哪双：由种子随机抽取，并在尺码和缺席允许的范围内尽量均衡。仅负责人可见，因为它能区分样鞋。',
    none: '还没有方案。',
    make: '抽取新方案',
    rounds: '要比较的轮次',
    periods: '期数',
    periodsHint: '每名试穿员每期穿一双；期数不超过轮次数。',
    periodsOfOne: '只有一轮时只有一期：每名试穿员一直穿同一双。',
    weeks: '每期周数',
    from: '第一天',
    allowed: '鞋与脚允许相差，mm',
    allowedHint: '样鞋尺码对较长一只脚。',
    outComeBack: '现在发出的样鞋会在第一天前收回',
    who: '谁参加，谁何时缺席',
    takesPart: '参加',
    awayIn: (tester, period) => `${tester} 第 ${period} 期缺席`,
    takesPartName: (tester) => `${tester} 参加`,
    awayShort: (period) => `第 ${period} 期缺席`,
    draw: '抽取方案',
    drawAgain: '换一个种子再抽',
    drawing: '正在抽取……',
    save: '保存方案',
    saved: (date) => `${date} 的方案`,
    which: '方案',
    seed: (seed) => `种子 ${seed}：同样的问题和种子得出同样的方案。`,
    trouble: {
      'no-round': '请至少选一个轮次。',
      'no-tester': '请至少选一名试穿员。',
      'more-periods-than-rounds': '期数多于轮次数：同一轮次不重复试穿。',
      'no-pair': '这些轮次没有可发的样鞋。',
    },
    leftOut: (out, withdrawn) =>
      [
        out > 0 ? `${out} 双尚未收回，未列入` : '',
        withdrawn > 0 ? `${withdrawn} 双已停用，未列入` : '',
      ]
        .filter(Boolean)
        .join('；'),
    withoutSize: (names) => `${names} 的尺码未知：请记录脚长，否则分不到样鞋。`,
    tester: '试穿员',
    period: (number) => `第 ${number} 期`,
    away: '缺席',
    gone: '不再参加',
    emptyPlace: '无鞋',
    handedOut: '已发',
    empty: (count) => `${count} 个位置没有样鞋，因为没有剩下合脚的。`,
    basis: {
      'carry-over-balanced':
        '每个轮次在各期出现次数相同，紧接在其他各轮次之后的次数也相同（Williams 1949）。',
      'balanced-blocks':
        '每个轮次试穿次数相同，任意两个轮次由同样多的试穿员共同试穿（平衡不完全区组）。',
      'best-found': '就这些试穿员找到的最均衡的次序。',
    },
    evenness: '均衡程度',
    table: {
      inPeriod: '同一期内同一轮次',
      inAll: '各轮次合计',
      together: '同一试穿员穿过的两个轮次',
      after: '一个轮次紧接另一个',
    },
    count: (least, most, differ) =>
      least === most
        ? `${most} 次`
        : `${least} 至 ${most} 次，${differ === 0 ? '应相同处均相同' : `相差至多 ${differ}`}`,
    line: (table, count, state) => `${table}：${count}；${state}`,
    even: '已最均衡',
    over: (imbalance) => `比最小可能值高 ${imbalance}`,
    whole: (imbalance, least) =>
      imbalance === 0
        ? '不均衡度 0：理论最优，没有更均衡的方案。'
        : least === imbalance
          ? `不均衡度 ${imbalance}：同样人数、轮次和期数的方案都不会更低（已证明）。`
          : least === null
            ? `不均衡度 ${imbalance}；0 为完全均衡。在这些尺码和缺席下能否更低尚不清楚。`
            : `不均衡度 ${imbalance}；若不受尺码限制，最低为 ${least}。`,
    how: '不均衡度：四张表中各次数的平方和，超出“次数最多相差 1”时的部分。',
    handOut: (period) => `发放第 ${period} 期`,
    handOutHow: '收回前几期的样鞋，并按盲测发鞋。',
    handedOutNow: (count) => `已发 ${count} 双`,
    cannot: {
      withdrawn: (pair, tester) => `给 ${tester} 的 ${pair}：已停用。`,
      out: (pair, tester) => `给 ${tester} 的 ${pair}：仍在他人手中。请先收回，再发放。`,
    },
    takeAllBack: '这些样鞋已回来：收回并发放',
    allHandedOut: '各期均已发放。',
    dropOut: '退出',
    dropOutName: (tester) => `${tester} 退出`,
    dropOutFrom: (tester, period) =>
      `${tester} 从第 ${period} 期起不再参加。已发的不变；其余为其他人重新抽取。`,
    imbalances: (before, untouched, after) =>
      `原不均衡度：${before}。只去掉该试穿员、其余不变：${untouched}。重新抽取：${after}。`,
    keep: '保存新方案',
    print: '打印',
    notDrawn: '其余部分无法抽取方案。',
    drawCode: '抽取编号',
    noCode: '三位数编号已用完。',
  },
  power: {
    title: '需要多少试穿员和跑步？',
    testers: '试穿员',
    runs: '每人每轮跑步次数',
    before: '改动前出现不适的跑步，%',
    after: '改动后，%',
    comfort: '舒适度之差，满分 100',
    fall: (t, r, before, after, share) =>
      `${t} 名试穿员、每人 ${r} 次跑步，${share} 的试验能看出从 ${before} 降到 ${after}。`,
    about: (share) => `约 ${share}`,
    nearlyAll: '99 % 以上',
    hardlyAny: '不到 1 %',
    noFall: '没有下降可看。',
    comfortLine: (t, points, share) =>
      `${t} 名试穿员，${share} 的试验能看出 ${points} 分的舒适度之差。`,
    seen: (t, share, of) =>
      `若 ${of} 的试穿员有某种不适，${share} 的试验中 ${t} 人里至少一人会遇到。`,
    needed: (count) =>
      count === null ? '要达到 80 %，需 200 名以上试穿员。' : `要达到 80 %，需 ${count} 名试穿员。`,
    neededOnce: (count) =>
      count === null ? '要达到 95 %，需 200 名以上试穿员。' : `要达到 95 %，需 ${count} 名试穿员。`,
    how: (alike, sd) =>
      `精确计算，双侧 5 %，两轮为同一批试穿员。不适：以试穿员为单位，对其跑步比例作符号检验；试穿员各不相同（同一人两次跑步的相关为 ${alike}：经验判断，无来源），两轮各自抽取。舒适度：配对 t 检验；试穿员之差的标准差为 ${sd}（Hébert-Losier 2025）。`,
  },
  check: {
    title: '试穿员的回答稳定吗？',
    nobody: '还没有人记录跑步。',
    few: '数据太少，无法比较：至少两名试穿员须对至少两个轮次各评分两次。',
    same: '每名试穿员在各轮次的评分都没有差别：谈不上一致与否。',
    alike: '所有试穿员的评分在轮次之间变动完全相同。彼此没有差异，就无法判断其中多少出于偶然。',
    icc: (t, rounds) => `${t} 名试穿员评价了 ${rounds}。总体舒适度的差异中来自轮次的比例：`,
    correlation: {
      shown: (icc, lower, upper) => `${icc}（95 % 区间 ${lower} 至 ${upper}）`,
      open: (icc, upper) => `${icc}，但也可能是 0：尚不能说明评分一致（95 % 区间 0 至 ${upper}）`,
      none: (upper) => `看不出一致${upper === null ? '' : `（95 % 区间 0 至 ${upper}）`}`,
    },
    one: (correlation) => `单个试穿员的评分：${correlation}`,
    oneLevelled: (correlation) => `扣除各人自身水平后：${correlation}`,
    panel: (correlation) => `全体平均：${correlation}`,
    error: (se, lower, upper, change, groups, scores) =>
      `同一试穿员对同一双鞋的评分各次之间变动 ${se}（满分 100；标准误；95 % 区间 ${lower} 至 ${upper}；${groups} 个“人与鞋”组合，共 ${scores} 次评分）。两次单独评分相差不到 ${change} 时无法区分。`,
    noError: '没有试穿员对同一双鞋评分两次：评分自身变动多少尚不清楚。',
    ask: '值得友好地问一问',
    agreement: '评分有多一致',
    none: (t, enough) =>
      enough === 0
        ? '还没有人有五条记录。'
        : `没有要问的：${t} 名试穿员中 ${enough} 名有五条以上记录。`,
    question: {
      'same-score': (tester, logs, least, most) =>
        `${tester}：全部 ${logs} 条记录的总体舒适度都在 ${least} 至 ${most} 之间。请问这些鞋确实感觉一样，还是评分线不好用。`,
      'no-complaint': (tester, asked, share, others, p) =>
        `${tester}：${asked} 次被询问的跑步都没有不适；其他 ${others} 名试穿员为 ${share}（校正 p ${p}）。请问是否一切都好，还是觉得小事不值一提。`,
      'many-complaints': (tester, reported, asked, share, others, p) =>
        `${tester}：${asked} 次被询问的跑步中 ${reported} 次有不适；其他 ${others} 名为 ${share}（校正 p ${p}）。请问脚、尺码和袜子的情况：对方可能察觉到了别人没注意的。`,
      'written-late': (tester, late, logs, median) =>
        `${tester}：${logs} 条记录中 ${late} 条在跑步两天后才写（半数晚于 ${median} 小时）。请问怎样才能更方便地当场记录。`,
      clock: (tester, logs) =>
        `${tester}：${logs} 次跑步在开始之前就已写下。请对方检查手机时钟和所填日期。`,
      'other-way-round': (tester, r, lower, upper, cells) =>
        `${tester}：别人评分低处他评分高（r ${r}，95 % 区间 ${lower} 至 ${upper}，${cells} 个轮次的项目）。请问评分线哪一端表示好。`,
    },
    how: '这是提问，不是打分：与众不同者也许正是对的。一致性：Shrout & Fleiss 1979 的组内相关 (2,1)、(3,1)、(2,k)，取首次试穿之后至少两次评分的平均；区间按 McGraw & Wong 1996，下限不低于 0。误差：Bland & Altman 1986，含里程带来的变化。不适：以其他试穿员预测（β-二项，Skellam 1948），对试穿员作 Holm 校正。晚记：以手机首次保存为准。无来源的界限为经验判断。',
  },
};
