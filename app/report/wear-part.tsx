/** Verdict, wear curves and arrival readings of a round. */
import { isOut } from '../../core/rounds/index.ts';
import { readingInWords, summaryLine } from '../words/say-blueprint.ts';
import { wearLines } from '../words/say-wear.ts';
import { itemInWords, verdictTitle } from '../words/say-verdict.ts';
import { influenceLines } from '../words/say-waiting.ts';
import type { PartProps } from './document-props.ts';
import { Lines, Say } from './spoken.tsx';

/** Every item of the verdict with its evidence, and what would settle what is open. */
export const VerdictPart = ({ report, languages }: PartProps) => {
  const { verdict, influence, project } = report;
  const said = new Map(
    languages.map((spoken) => [
      spoken,
      verdict.items.map((item) => itemInWords(item, project.brief.distanceM, spoken.speaker)),
    ]),
  );
  return (
    <section>
      <h2>
        <Say in={languages} of={({ words }) => words.sections.verdict} />
      </h2>
      <p class={`word word-${verdict.word}`}>
        <Say in={languages} of={({ speaker }) => verdictTitle(verdict, speaker)} />
      </p>
      <Lines in={languages} of={({ speaker }) => influenceLines(influence, speaker)} />
      {project.brief.limits.length === 0 && (
        <p>
          <Say in={languages} of={({ speaker }) => speaker.desk.verdict.noLimits} />
        </p>
      )}
      {verdict.items.map(({ word }, at) => (
        <section class="item" key={at}>
          <h3>
            <Say
              in={languages}
              of={(spoken) =>
                spoken.speaker.desk.joined.of(
                  said.get(spoken)?.[at]?.title ?? '',
                  spoken.speaker.glossary.holds[word],
                )
              }
            />
          </h3>
          <Lines in={languages} of={(spoken) => said.get(spoken)?.[at]?.lines ?? []} />
          {(said.get(languages[0])?.[at]?.settle.length ?? 0) > 0 && (
            <>
              <p>
                <Say in={languages} of={({ speaker }) => speaker.desk.verdict.settle} />
              </p>
              <Lines in={languages} of={(spoken) => said.get(spoken)?.[at]?.settle ?? []} />
            </>
          )}
        </section>
      ))}
    </section>
  );
};

/** What each curve says, in sentences; the curves stand on the sheets of the trades. */
export const WearPart = ({ report, languages }: PartProps) => (
  <section>
    <h2>
      <Say in={languages} of={({ words }) => words.sections.wear} />
    </h2>
    {report.wear.length === 0 ? (
      <p>
        <Say in={languages} of={({ words }) => words.noCheck} />
      </p>
    ) : (
      report.wear.map((look) => (
        <section class="item" key={`${look.kind} ${look.site}`}>
          <Lines
            in={languages}
            of={({ speaker }) => wearLines(look, report.project.brief.distanceM, speaker)}
          />
        </section>
      ))
    )}
  </section>
);

/** What is out, or too near a limit for its gauge to tell, with the decision on each. */
export const DeviationsPart = ({ report, languages }: PartProps) => {
  const shown = report.deviations.filter(({ word }) => isOut(word) || word === 'undecided');
  return (
    <section>
      <h2>
        <Say in={languages} of={({ words }) => words.sections.deviations} />
      </h2>
      <p>
        <Say
          in={languages}
          of={({ speaker }) =>
            report.deviations.length === 0
              ? speaker.desk.bench.noBlueprint
              : summaryLine(report.deviations, speaker)
          }
        />
      </p>
      <Lines
        in={languages}
        of={({ speaker }) =>
          shown.map((one) =>
            readingInWords({ ...one, place: one, pair: speaker.pair(one.pair) }, speaker),
          )
        }
      />
      {report.deviations.length > 0 && (
        <p class="soft">
          <Say in={languages} of={({ speaker }) => speaker.desk.blueprint.how} />
        </p>
      )}
    </section>
  );
};
