/** What is asked about a run before it is saved: what must be known for it, and the questions in words. */
import { stampParts, type RecordId, type RecordOf, type Run } from '../../../core/records/index.ts';
import { formatDuration, fromMetres } from '../../../core/units/index.ts';
import { formatDateTime, formatDistance, formatNumber } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { store } from '../../parts/state.ts';
import { entryWords, listed } from '../../words/index.ts';
import { clockOff, doubtsOf, type DoubtContext, type RunDoubt } from './run-doubts.ts';
import type { RunForm } from '../../drafts/run.ts';

/** The records that the question rests on; whatever else the form knows is not looked at. */
interface About {
  readonly pair: RecordOf<'pair'>;
  readonly project: RecordOf<'project'>;
  readonly handOuts: readonly RecordOf<'hand-out'>[];
  readonly before: RecordOf<'run'> | null;
}

/** When the others last wrote about the pair, by their stamps; 0: never. */
const lastTold = ({ pair, project, handOuts }: About, me: RecordId): number =>
  Math.max(
    0,
    ...[pair, project, ...handOuts.filter(({ body }) => body.tester === me)]
      .filter(({ revision }) => revision.author !== me)
      .map(({ revision }) => stampParts(revision.stamp).ms),
  );

/** A doubt as a question. */
const inWords = async (doubt: RunDoubt, run: Run, code: string): Promise<string> => {
  const words = entryWords();
  const { distance: unit } = settings.value;
  const { startedAt, distanceM, durationS } = run;
  switch (doubt.why) {
    case 'not-handed-out':
      return words.doubtDay(code, formatDateTime(startedAt));
    case 'other-pair': {
      const others = await Promise.all(doubt.held.map((id) => store.get('pair', id)));
      return words.doubtPair(
        code,
        formatDateTime(startedAt),
        listed(others.map((one) => one?.body.code ?? '?')),
      );
    }
    case 'clock':
      return words.doubtClock(formatDateTime(startedAt), formatDateTime(doubt.startMs));
    case 'logged-twice': {
      const { other } = doubt;
      const pair = await store.get('pair', other.pair);
      return words.doubtTwice(
        formatDistance(other.distanceM),
        pair?.body.code ?? '',
        formatDateTime(other.startMs),
      );
    }
    case 'distance-or-pace':
      return words.doubt(
        `${formatNumber(fromMetres(distanceM, unit), 3)} ${unit}`,
        durationS === undefined ? null : formatDuration(durationS),
      );
  }
};

/** A question, and where the clock is doubted, when the run began by the others', milliseconds since 1970. */
export interface Asked {
  readonly why: RunDoubt['why'];
  readonly question: string;
  readonly startMs?: number;
}

/** By how much this phone's clock is off, as far as it can know. */
export const readClockOff = async (about: About, me: RecordId, nowMs: number): Promise<number> =>
  clockOff(nowMs, await store.clockOffset(), lastTold(about, me));

/** What is asked about a run, by what is on this phone at this moment: another tab may just have saved it. */
export const askDoubts = async (
  run: Run,
  form: RunForm,
  about: About,
  clock: Pick<DoubtContext, 'nowMs' | 'clockOffMs'>,
): Promise<readonly Asked[]> => {
  const { handOuts, before } = about;
  const context: DoubtContext = { handOuts, before, runs: await store.list('run'), ...clock };
  return Promise.all(
    doubtsOf(run, form, context).map(async (doubt) => ({
      why: doubt.why,
      question: await inWords(doubt, run, about.pair.body.code),
      ...(doubt.why === 'clock' && { startMs: doubt.startMs }),
    })),
  );
};
