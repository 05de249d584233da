/** What is a question about, and how does it read on this phone? */
import type { Question, RecordOf } from '../../../core/records/index.ts';
import { questionInWords, type AskedThing } from '../../parts/asked.ts';
import { formatDateTime, formatDistance } from '../../parts/format.ts';
import type { Store } from '../../store/index.ts';
import { talkWords, terms } from '../../words/index.ts';

/** The run and the pair that a question names, as far as they are on this phone. */
export const readThing = async (
  from: Pick<Store, 'get'>,
  { about = {} }: Pick<Question, 'about'>,
): Promise<AskedThing> => {
  const { record } = about;
  const run = record?.kind === 'run' ? await from.get('run', record.id) : null;
  const pair = about.pair ?? run?.body.pair;
  const worn = pair ? await from.get('pair', pair) : null;
  return { about, run: run?.body ?? null, pair: worn?.body.code ?? '' };
};

export const sayQuestion = ({ body }: RecordOf<'question'>, thing: AskedThing): string =>
  questionInWords(body, thing);

/** Such as "Your run of 12.0 km in 637, 3 Nov 2026, 07:10"; empty: nothing in particular. */
export const aboutInWords = ({ about, run, pair }: AskedThing): string => {
  const words = talkWords().phone;
  if (run)
    return words.aboutRun(formatDistance(run.distanceM), pair, formatDateTime(run.startedAt));
  if (about.record?.kind === 'damage-report') return words.aboutDamage(pair);
  const named = [
    ...(pair === '' ? [] : [words.aboutPair(pair)]),
    ...(about.zone ? [terms().zones[about.zone].name] : []),
  ];
  return words.together(named);
};
