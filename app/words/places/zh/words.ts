import type { PlaceWords } from '../../types.ts';
import { apart } from './apart.ts';

/** A longer search is cut in a headline. */
const MOST_SEARCHED = 24;
const cut = (text: string) =>
  text.length > MOST_SEARCHED ? `${text.slice(0, MOST_SEARCHED)}……` : text;

export const words: PlaceWords['words'] = {
  title: '试穿员的话',
  headline: (h) => {
    switch (h.case) {
      case 'none':
        return '还没有人写过什么。';
      case 'nothing':
        return h.searched === null
          ? '没有符合筛选条件的留言。'
          : `没有留言提到“${cut(h.searched)}”。`;
      case 'mention':
        return h.testers === 0
          ? `只有车间提到“${cut(h.searched)}”。`
          : `${h.testers} 名试穿员提到“${cut(h.searched)}”。`;
      case 'some':
        return `${h.of} 条留言中有 ${h.remarks} 条符合，来自 ${h.testers} 名试穿员。`;
      case 'all':
        return h.untapped === 0
          ? `${h.testers} 名试穿员写了 ${h.remarks} 条留言。`
          : `${h.testers} 名试穿员写了 ${h.remarks} 条留言，${h.untapped} 条可能提到没有点选的问题。`;
    }
  },
  sub: (found, all, untapped) =>
    `${all} 条留言中的 ${found} 条，其中 ${untapped} 条可能提到当次没有点选的问题。`,
  subAll: '可以搜索和筛选，再把需要的话引用到问题项。',
  nothingYet: '试穿员在手机上写：跑步、不适或损坏的下方都可以写。',
  search: '搜索留言',
  also: (list) => `也会找到${apart(list)}`,
  filters: '搜索与筛选',
  any: '全部',
  option: (name, n) => `${name}（${n}）`,
  round: '轮次',
  zone: '部位（点选或提到）',
  on: '写在哪里',
  tester: '试穿员',
  pair: '样鞋',
  distance: (unit) => `跑前里程（${unit}）`,
  from: '从',
  to: '不到',
  stretch: (from, to, unit, n) => `${from} 至 ${to} ${unit}：${n} 条留言`,
  photo: '有照片',
  untapped: '可能提到没有点选的问题',
  marked: '已标记或已引用',
  sort: '排序',
  sorts: { newest: '最新在前', distance: '按样鞋里程' },
  clear: '清除搜索与筛选',
  places: {
    run: '跑步记录',
    complaint: '不适',
    pain: '疼痛',
    stop: '停穿后仍跑',
    damage: '损坏报告',
    check: '测量',
    ranking: '样鞋排序',
  },
  list: '留言',
  theShop: '车间',
  pairOf: (pair, round) => (round === '' ? `样鞋 ${pair}` : `样鞋 ${pair}，${round}`),
  notTapped: '没有点选',
  choose: (who, date) => `选择${apart(who)}在 ${date} 的留言`,
  chosen: (n) => `已选 ${n} 条`,
  chooseNone: '全部不选',
  mark: '标记',
  markedNow: (n) => `已标记 ${n} 条留言`,
  isMarked: '已标记',
  unmark: '取消标记',
  unmarked: '已取消标记',
  quotedIn: (title) => `已引用于“${title}”`,
  perhaps: (what) => `也许还有${apart(what)}？`,
  perhapsAt: (zone) => `也许${apart(zone)}有问题？`,
  perhapsWho: (who) => `${who} 没有点选。不计入任何数字。`,
  leave: '不用管它',
  leftNow: '本机不再提示',
  more: (n) => `再显示 ${n} 条`,
  into: '引用到问题项',
  quoteWhat: '引用哪一句',
  wholeRemark: '全部',
  intoHelp: '先选择留言，再引用到这里。每条引文都保留它的跑步记录、样鞋和试穿员。',
  which: '问题项',
  newOne: '新建问题项',
  newTitle: '问题项标题',
  noTitle: '请填写问题项标题。',
  part: '部件',
  quote: (n) => `引用 ${n} 条留言`,
  quotedNow: (n, title) => `${n} 条留言已引用于“${title}”`,
  allWords: '全部留言',
  ofZone: '关于这个部位的全部留言',
  ofPair: '关于这双样鞋的全部留言',
  quotes: '试穿员怎么说',
  noQuotes: '这里还没有引文。',
  findMore: '查找可引用的留言',
  states: {
    'as-said': '',
    changed: '试穿员后来改过这段话。',
    aside: '这段话所在的记录目前不计入任何数字。',
  },
  send: '发给专员',
  sent: (date) => `专员自 ${date} 起可以阅读。`,
  sentNow: '专员现在可以阅读。已经发出的报告文件保持原样。',
  unsend: '从专员处撤回',
  unsentNow: '已撤回。之前发出的报告文件保持原样。',
  onlyLeads: '只有负责人可以阅读。',
  keeps: '试穿员撤回记录时，引文随之永久删除；已经发出的报告文件保持原样。',
  remove: '删除这条引文',
  removed: '已删除引文',
};
