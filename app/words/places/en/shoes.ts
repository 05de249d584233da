/** All shoes of the group. */
import type { ShoesHeadline } from '../../../../core/headlines/index.ts';

export const shoes = {
  headline: (h: ShoesHeadline, list: (names: readonly string[]) => string): string => {
    switch (h.case) {
      case 'none':
        return 'Six steps to the first run. Stop anywhere; nothing is lost.';
      case 'urgent':
        return h.names.length <= 3
          ? `${list(h.names)} ${h.names.length === 1 ? 'needs' : 'need'} you today.`
          : `${h.names.length} shoes need you today.`;
      case 'waiting':
        return h.of === 1
          ? 'Nothing is urgent. Some things wait for you.'
          : `Nothing is urgent. Something waits in ${h.count} of ${h.of} shoes.`;
      case 'quiet':
        return 'Nothing waits for you.';
    }
  },
  sub: (count: number) =>
    count === 1
      ? 'One shoe. A stamp for each round; the bar is the pair that has run farthest.'
      : `${count} shoes, those that need you first. A stamp for each round; the bar is the pair that has run farthest.`,
  add: 'New shoe',
  noRound: 'no round yet',
  ofBrief: (distance: string, brief: string) => `${distance} of ${brief}`,
  runs: (count: number) => `${count} ${count === 1 ? 'run' : 'runs'}`,
  nothingToDo: 'Nothing to do',
  archived: (count: number) => `Archived (${count})`,
  since: (date: string) => `since ${date}`,
  bringBack: (name: string) => `Bring ${name} back`,
};
