/** How the figures are read, how they were made, and what they do not say. */
import { tradeOf } from '../../core/foot/index.ts';
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
  const { whole, complaints, curves } = shownIn(props);
  return (
    <section class="methods">
      <h2>
        <Say in={languages} of={({ words }) => words.sections.methods} />
      </h2>
      <Lines
        in={languages}
        as="p"
        of={({ words, speaker: { desk, number } }) => [
          ...(complaints
            ? [desk.complaints.how(setPercentOf(complaint, number), setPercentOf(pain, number))]
            : []),
          ...(whole ? [desk.comfort.how] : []),
          ...(whole && report.round.twoSided.length > 0 ? [desk.comfort.twoSided.how] : []),
          ...(curves ? [desk.wear.key] : []),
          desk.verdict.how,
          ...(complaints ? [words.suspects, words.silence] : []),
          ...(report.leftOut > 0 ? [words.leftOut(report.leftOut)] : []),
          desk.verdict.caution,
        ]}
      />
    </section>
  );
};
