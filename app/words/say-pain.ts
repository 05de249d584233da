/** What did the testers answer to the question after pain, in sentences? The same at desk, report and terminal. */
import { PAIN_FROM } from '../../core/complaints/index.ts';
import { isProven, type PainSummary } from '../../core/review/index.ts';
import { chanceOf, percentOf, setPercentOf } from './figures.ts';
import { evidenceName, evidenceValue, type Speaker } from './say-complaint.ts';

/**
 * How many testers and answers, the share against what the brief allows, and for whom it is proven.
 * @param howSure false: without what stands behind "How sure?"
 */
export const painLines = (pain: PainSummary | null, speaker: Speaker, howSure = true): string[] => {
  const { desk, number } = speaker;
  const words = desk.pain;
  if (pain === null) return [words.nobodyAsked];
  const percent = (share: number) => percentOf(share, number);
  const { asked, runShare } = pain;
  const sure = (...lines: string[]) => (howSure ? lines : []);
  const answered = words.asked(asked.runs, asked.testers);
  const allowed = setPercentOf(pain.allowedRate, number);
  if (pain.runs === 0)
    return [
      answered,
      pain.anyRuns === 0 ? words.none : words.onlyLight(pain.anyRuns, pain.most, PAIN_FROM),
      ...sure(
        words.silence(percent(runShare.upper), allowed, chanceOf(pain.silenceChance, number)),
      ),
    ];
  return [
    answered,
    words.testers(pain.testersOnce, pain.testersTwice, asked.testers, PAIN_FROM),
    ...sure(
      words.runs(
        pain.runs,
        asked.runs,
        desk.proof.interval(percent(runShare.lower), percent(runShare.upper)),
        allowed,
      ),
      ...(isProven(pain) ? [desk.proof.ratherHigh] : []),
    ),
    words.beside(pain.anyRuns, pain.most, pain.cautionRuns),
    ...(pain.word === 'recurs-for-one-tester'
      ? [
          desk.proof.who(
            desk.joined.names(pain.provenTesters.map(({ tester }) => speaker.tester(tester))),
          ),
        ]
      : []),
    ...sure(
      desk.proof.value(evidenceValue(pain.eValue, speaker), evidenceValue(pain.needed, speaker)),
    ),
    words.ask,
  ];
};

/** The same in one clause, for the verdict; null where nobody had pain that counts. */
export const painClause = (
  pain: Pick<PainSummary, 'runs' | 'asked' | 'testersOnce' | 'word'> | null,
  { desk, glossary }: Speaker,
): string | null =>
  pain && pain.runs > 0
    ? desk.pain.clause(
        pain.runs,
        pain.asked.runs,
        pain.testersOnce,
        pain.asked.testers,
        PAIN_FROM,
        evidenceName(pain, { desk, glossary }),
      )
    : null;
