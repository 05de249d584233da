/** How the figures were made, and what they do not say. */
import { tradeOf } from '../../core/foot/index.ts';
import { setPercentOf } from '../words/figures.ts';
import type { DocumentProps } from './document-props.ts';
import { Lines, Say } from './spoken.tsx';

export const MethodsPart = ({ report, languages, trade }: DocumentProps) => {
  const { complaint, pain } = report.project.brief.allowedRate;
  const whole = trade === null;
  const own = report.findings.filter(({ body }) => whole || tradeOf[body.part] === trade);
  const mapped = whole || own.some(({ body }) => body.kind !== undefined);
  const drawn = whole || own.some(({ body }) => body.evidence?.place !== undefined);
  return (
    <section class="methods">
      <h2>
        <Say in={languages} of={({ words }) => words.sections.methods} />
      </h2>
      <Lines
        in={languages}
        as="p"
        of={({ words, speaker: { desk, number } }) => [
          ...(mapped
            ? [desk.complaints.how(setPercentOf(complaint, number), setPercentOf(pain, number))]
            : []),
          ...(whole ? [desk.comfort.how] : []),
          ...(drawn ? [desk.wear.key] : []),
          desk.verdict.how,
          ...(mapped ? [words.suspects, words.silence] : []),
          ...(report.leftOut > 0 ? [words.leftOut(report.leftOut)] : []),
          desk.verdict.caution,
        ]}
      />
    </section>
  );
};
