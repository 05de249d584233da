/** How comfortable the round is, and against the round before: scores with interval and sample. */
import { comfortAttributeIds } from '../../core/foot/index.ts';
import { comfortChangeInWords, driftInWords, scoreInWords } from '../words/say-comfort.ts';
import { moveInWords } from '../words/say-two-sided.ts';
import type { PartProps } from './document-props.ts';
import { joined, Lines, Say } from './spoken.tsx';
import { TwoSidedTable } from './two-sided-table.tsx';

export const ComfortPart = ({ report, languages }: PartProps) => {
  const { round, before, preferences } = report;
  const { twoSided, twoSidedChanges } = round;
  const rows = comfortAttributeIds.flatMap(
    (id) => round.comfort.find(({ attribute, wear }) => attribute === id && wear) ?? [],
  );
  return (
    <section>
      <h2>
        <Say in={languages} of={({ words }) => words.sections.comfort} />
      </h2>
      <TwoSidedTable
        languages={languages}
        answers={twoSided}
        title={({ speaker }) => speaker.desk.comfort.twoSided.title}
        whole
      />
      {before && (
        <Lines
          in={languages}
          of={({ speaker }) =>
            twoSidedChanges.map((change) =>
              speaker.desk.joined.of(
                speaker.glossary.twoSided[change.attribute].name,
                moveInWords(change, speaker),
              ),
            )
          }
        />
      )}
      {rows.length === 0 ? (
        <p>
          <Say in={languages} of={({ words }) => words.nobodyScored} />
        </p>
      ) : (
        <div
          class="table-wrap"
          tabIndex={0}
          role="region"
          aria-label={joined(languages, ({ words }) => words.sections.comfort)}
        >
          <table>
            <thead>
              <tr>
                <th scope="col">
                  <Say in={languages} of={({ speaker }) => speaker.desk.comfort.attribute} />
                </th>
                <th scope="col">
                  <Say in={languages} of={({ words }) => words.thisRound(round.name)} />
                </th>
                <th scope="col">
                  <Say in={languages} of={({ speaker }) => speaker.desk.comfort.drift} />
                </th>
                {before && (
                  <th scope="col">
                    <Say in={languages} of={({ words }) => words.change(before.name)} />
                  </th>
                )}
              </tr>
            </thead>
            <tbody>
              {rows.map(({ attribute, wear, drift }) => {
                const change = round.comfortChanges.find((one) => one.attribute === attribute);
                return (
                  <tr key={attribute}>
                    <th scope="row">
                      <Say
                        in={languages}
                        of={({ speaker }) => speaker.glossary.attributes[attribute].name}
                      />
                    </th>
                    <td>
                      {wear && (
                        <Say in={languages} of={({ speaker }) => scoreInWords(wear, speaker)} />
                      )}
                    </td>
                    <td>
                      <Say
                        in={languages}
                        of={({ speaker }) =>
                          drift ? driftInWords(drift, speaker) : speaker.desk.none
                        }
                      />
                    </td>
                    {before && (
                      <td>
                        <Say
                          in={languages}
                          of={({ words, speaker }) =>
                            change ? comfortChangeInWords(change, speaker) : words.noEarlier
                          }
                        />
                      </td>
                    )}
                  </tr>
                );
              })}
            </tbody>
          </table>
        </div>
      )}
      <Lines
        in={languages}
        of={({ speaker, paper }) =>
          preferences.map(({ first, second, preferFirst, preferSecond, equal, unblinded }) =>
            paper.sentences([
              speaker.desk.comfort.prefer(
                { name: speaker.round(first), testers: preferFirst },
                { name: speaker.round(second), testers: preferSecond },
                equal,
              ),
              ...(unblinded > 0 ? [speaker.desk.comfort.unblinded(unblinded)] : []),
            ]),
          )
        }
      />
    </section>
  );
};
