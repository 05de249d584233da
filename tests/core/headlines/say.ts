/** Names as sentences use them, without a screen: rounds, pairs and testers by their number. */
import type { Say } from '../../../app/words/say-names.ts';
import { idOf } from '../records/make.ts';

const numberOf = (id: string): number =>
  Array.from({ length: 300 }, (_, n) => n).find((n) => idOf(n) === id) ?? -1;

export const sayForTests: Say = {
  round: (id) => (id === idOf(1) ? 'Round 1' : 'Round 2'),
  pair: (id) => String(numberOf(id)),
  tester: (id) => `T${numberOf(id)}`,
  testers: (ids) => ids.map((id) => `T${numberOf(id)}`).join(', '),
  felt: ({ zone, kind }) => `${kind} at ${zone}`,
  distance: (distance) => `${Math.round(distance / 1000)} km`,
  number: (value) => String(value),
  date: String,
  list: (names) => new Intl.ListFormat('en', { type: 'conjunction' }).format(names),
  upper: (text) => text.charAt(0).toUpperCase() + text.slice(1),
};

/** The same with the rounds as a Chinese group names them. */
export const sayInChinese: Say = {
  ...sayForTests,
  round: (id) => (id === idOf(1) ? '第 1 轮' : '第 2 轮'),
  list: (names) => new Intl.ListFormat('zh', { type: 'conjunction' }).format(names),
};
