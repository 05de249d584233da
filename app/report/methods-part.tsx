/** How the figures are read, how they were made, and what they do not say. */
import { tradeData, tradeOf } from '../../core/foot/index.ts';
import { setPercentOf } from '../words/figures.ts';
import type { DocumentProps } from './document-props.ts';
import { Lines, Say } from './spoken.tsx';

/** What the document shows: of a trade's sheet only what its findings need. */
const shownIn = ({ report, trade }: Pick<DocumentProps, 'report' | 'trade'>) => {
  const whole = trade === null;
  const own = [...report.findings, ...report.carried].filter(
    ({ body }) => whole || tradeOf[body.part] === trade,
  );
  return {
    whole,
    figures: whole || own.some(({ body }) => body.evidence !== undefined),
    complaints: whole || own.some(({ body }) => body.kind !== undefined),
    /** Whether it says that a limit of the trade's wear holds or not. */
    holds:
      trade !== null &&
      report.verdict.items.some(
        (item) => item.what === 'wear' && tradeData(trade).wear.includes(item.kind),
      ),
    curves: whole || own.some(({ body }) => body.evidence?.place !== undefined),
  };
};

/** What an interval, p, an e-value and points are, for who makes shoes and no statistics. */
export const ReadingPart = (props: DocumentProps) => {
  const { languages } = props;
  const { figures, complaints } = shownIn(props);
  if (!figures) return null;
  return (
    <section class="methods">
      <h2>
        <Say in={languages} of={({ words }) => words.sections.reading} />
      </h2>
      <Lines
        in={languages}
        of={({ words: { reading } }) => [
          reading.interval,
          ...(complaints ? [reading.p, reading.eValue, reading.points] : []),
        ]}
      />
    </section>
  );
};

export const MethodsPart = (props: DocumentProps) => {
  const { report, languages } = props;
  const { complaint, pain } = report.project.brief.allowedRate;
  const { whole, complaints, curves, holds } = shownIn(props);
  return (
    <section class="methods">
      <h2>
        <Say in={languages} of={({ words }) => words.sections.methods} />
      </h2>
      <Lines
        in={languages}
        as="p"
        of={({ words, paper, speaker: { desk, number } }) => [
          ...(complaints
            ? [desk.complaints.how(setPercentOf(complaint, number), setPercentOf(pain, number))]
            : []),
          ...(whole ? [desk.comfort.how] : []),
          ...(curves ? [desk.wear.key] : []),
          ...(whole ? [desk.verdict.how] : holds ? [paper.sheet.holdsHow] : []),
          ...(complaints ? [words.suspects, words.silence] : []),
          // A record that cannot be read is the lead's to mend.
          ...(whole && report.leftOut > 0 ? [words.leftOut(report.leftOut)] : []),
          desk.verdict.caution,
        ]}
      />
    </section>
  );
};
