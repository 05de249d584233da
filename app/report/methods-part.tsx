/** How the figures were made, and what they do not say. */
import { setPercentOf } from '../words/figures.ts';
import type { DocumentProps } from './document.tsx';
import { Lines, Say } from './spoken.tsx';

export const MethodsPart = ({ report, languages, trade }: DocumentProps) => {
  const { complaint, pain } = report.project.brief.allowedRate;
  return (
    <section class="methods">
      <h2>
        <Say in={languages} of={({ words }) => words.sections.methods} />
      </h2>
      <Lines
        in={languages}
        as="p"
        of={({ words, speaker: { desk, number } }) => [
          desk.complaints.how(setPercentOf(complaint, number), setPercentOf(pain, number)),
          ...(trade === null ? [desk.comfort.how] : []),
          desk.wear.key,
          desk.verdict.how,
          words.suspects,
          words.silence,
          ...(report.leftOut > 0 ? [words.leftOut(report.leftOut)] : []),
          desk.verdict.caution,
        ]}
      />
    </section>
  );
};
