import type { DeskWords } from '../../../types.ts';

export const pain: DeskWords['pain'] = {
  title: '疼痛提问',
  nobodyAsked: '没有人回答疼痛提问。这不等于没有疼痛。',
  asked: (r, t) => `${t} 名试穿员在 ${r} 次跑步后回答了疼痛提问。`,
  none: '没有人反馈疼痛。',
  onlyLight: (count, most, from) =>
    `${count} 次跑步有低于 ${from} 分（满分 10）且无肿胀等征象的疼痛，最高 ${most} 分；没有更重的。`,
  silence: (upTo, allowed, chance) =>
    `长期来看，更重的疼痛仍可能占跑步的 ${upTo} 以内（95 %）；任务书允许 ${allowed}。若半数试穿员有五分之一的跑步会疼，这样的沉默仍有 ${chance} 的可能。`,
  testers: (once, twice, of, from) =>
    `${of} 名试穿员中 ${once} 名疼痛达到 ${from} 分（满分 10）或以上，或伴有肿胀等征象；其中 ${twice} 名至少两次。`,
  runs: (count, of, interval, allowed) =>
    `${of} 次回答中出现 ${count} 次。长期来看可能出现在 ${interval} 的跑步中；任务书允许 ${allowed}。`,
  beside: (any, most, caution) =>
    `有任何疼痛的跑步 ${any} 次，最高 ${most} 分（满分 10）；其中 ${caution} 次须给出注意事项。`,
  ask: '请询问这些试穿员的情况。这里只统计回答，不构成医疗建议。',
  clause: (count, of, t, asked, from, word) =>
    `疼痛提问：${asked} 名试穿员中 ${t} 名、${of} 次回答中 ${count} 次达到 ${from} 分或伴有征象：${word}`,
};
