/** What was changed in the round, and what came of it against the round before. */
import { isAbsent, type RoundComparison } from '../../core/review/index.ts';
import { arrivalLines } from '../words/say-arrival.ts';
import {
  benchLine,
  comparisonLines,
  feltTitle,
  knewLine,
  orderLine,
  riseLine,
} from '../words/say-change.ts';
import type { PartProps } from './document-props.ts';
import { AsWritten } from './own-words.tsx';
import { Lines, Say, type Languages, type Spoken } from './spoken.tsx';

export const ChangesPart = ({ report, languages }: PartProps) => {
  const { against, round } = report;
  return (
    <section>
      <h2>
        <Say in={languages} of={({ words }) => words.sections.changes} />
      </h2>
      {round.changes.length === 0 && (
        <p>
          <Say in={languages} of={({ speaker }) => speaker.desk.rounds.noChanges} />
        </p>
      )}
      {against ? (
        <Compared against={against} languages={languages} />
      ) : (
        round.changes.map((change) => (
          <p key={`${change.part} ${change.what}`}>
            <Say in={languages} of={({ speaker }) => speaker.glossary.parts[change.part].name} />
            {' · '}
            <AsWritten in={languages} text={change.what} />
          </p>
        ))
      )}
    </section>
  );
};

const Compared = ({
  against,
  languages,
}: {
  readonly against: RoundComparison;
  readonly languages: Languages;
}) => {
  const { both, onlyEarlier, onlyLater } = against.testers;
  return (
    <>
      <Lines
        in={languages}
        as="p"
        of={({ speaker }) => [
          speaker.desk.changes.worn(
            both,
            speaker.round(against.earlier),
            onlyEarlier,
            speaker.round(against.later),
            onlyLater,
          ),
          ...[orderLine(against, speaker), knewLine(against, speaker)].filter(
            (line) => line !== null,
          ),
        ]}
      />
      {against.changes.map((change) => (
        <section class="item" key={`${change.part} ${change.what}`}>
          <h3>
            <Say
              in={languages}
              of={({ speaker }) =>
                change.found && !isAbsent(change.arrival)
                  ? speaker.desk.joined.of(
                      speaker.glossary.parts[change.part].name,
                      speaker.glossary.changeVerdicts[change.found.verdict].name,
                    )
                  : speaker.glossary.parts[change.part].name
              }
            />
          </h3>
          <p>
            <AsWritten in={languages} text={change.what} />
          </p>
          <Lines
            in={languages}
            of={({ speaker }) => [
              ...arrivalLines(change, speaker),
              ...(change.found && change.mends
                ? [
                    speaker.desk.changes.mends(feltTitle(change.mends, speaker)),
                    ...comparisonLines(change.found, against, speaker),
                  ]
                : [speaker.desk.changes.mendsNothing]),
            ]}
          />
        </section>
      ))}
      <h3>
        <Say in={languages} of={({ speaker }) => speaker.desk.changes.newTitle} />
      </h3>
      <Lines in={languages} of={(spoken) => risesOf(against, spoken)} />
      {against.bench.length > 0 && (
        <>
          <h3>
            <Say in={languages} of={({ speaker }) => speaker.desk.changes.bench} />
          </h3>
          <Lines
            in={languages}
            of={({ speaker }) => against.bench.map((change) => benchLine(change, speaker))}
          />
        </>
      )}
    </>
  );
};

const risesOf = ({ cells }: RoundComparison, { speaker }: Spoken): string[] => {
  const { changes: words, joined } = speaker.desk;
  const rises = cells.flatMap((cell) =>
    cell.word === null ? [] : [joined.of(words.newWords[cell.word], riseLine(cell, speaker))],
  );
  return rises.length > 0 ? rises : [words.nothingNew];
};
