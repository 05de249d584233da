/** What midsole and outsole of a round are made of, in words: the same on the desk and on paper. */
import type { Compound, Round } from '../../core/records/index.ts';
import type { Speaker } from './say-complaint.ts';

export type SoleOfRound = Pick<Round, 'foam' | 'midsole' | 'outsole'>;

const saidOf = (
  compound: Compound | undefined,
  { glossary, number }: Pick<Speaker, 'glossary' | 'number'>,
): readonly string[] => [
  ...(compound?.name === undefined ? [] : [compound.name]),
  ...(compound?.hardness === undefined
    ? []
    : [`${number(compound.hardness.value, 1)}\u00a0${glossary.units[compound.hardness.unit]}`]),
];

/** The midsole: kind of foam, what it is called, hardness. Null where nothing is noted. */
export const midsoleLine = ({ foam, midsole }: SoleOfRound, speaker: Speaker): string | null => {
  const { desk, glossary } = speaker;
  const parts = [...(foam ? [glossary.foams[foam]] : []), ...saidOf(midsole, speaker)];
  return parts.length === 0
    ? null
    : desk.joined.of(desk.rounds.midsoleOf, desk.joined.clauses(parts));
};

/** The outsole: what its rubber is called, hardness. Null where nothing is noted. */
export const outsoleLine = ({ outsole }: SoleOfRound, speaker: Speaker): string | null => {
  const { desk } = speaker;
  const parts = saidOf(outsole, speaker);
  return parts.length === 0
    ? null
    : desk.joined.of(desk.rounds.outsoleOf, desk.joined.clauses(parts));
};
