/** Findings with their evidence and the change that is wanted, for the appendix; and what a trade's sheet shows of each. */
import type { ReportedFinding } from '../../core/review/index.ts';
import { isForeign, wantedSize } from '../words/figures.ts';
import type { WrittenLines } from '../words/say-evidence.ts';
import { findingInWords, type SaidFinding } from '../words/say-finding.ts';
import type { DocumentProps } from './document-props.ts';
import { Lines, Say, type Languages, type Spoken } from './spoken.tsx';
import { Own, Quote } from './own-words.tsx';

interface FindingsProps extends DocumentProps {
  readonly findings: readonly ReportedFinding[];
  readonly heading: 'findings' | 'carried';
}

export const Findings = (props: FindingsProps) => {
  const { languages, findings, heading } = props;
  return (
    <section>
      <h2>
        <Say in={languages} of={({ words }) => words.sections[heading]} />
      </h2>
      {findings.length === 0 && (
        <p>
          <Say in={languages} of={({ words }) => words.noFinding} />
        </p>
      )}
      {findings.map((finding) => (
        <OneFinding {...props} finding={finding} key={finding.id} />
      ))}
    </section>
  );
};

const OneFinding = (props: FindingsProps & { readonly finding: ReportedFinding }) => {
  const { report, languages, finding, heading } = props;
  const { body } = finding;
  const said = new Map(
    languages.map((spoken) => [
      spoken,
      findingInWords(body, spoken.speaker, (id) => report.names.rounds[id] ?? null, spoken.date),
    ]),
  );
  const of = (pick: (one: SaidFinding) => string | null) => (spoken: Spoken) => {
    const one = said.get(spoken);
    return (one && pick(one)) ?? '';
  };
  const [lead] = languages;
  const first = said.get(lead);
  if (!first) return null;
  return (
    <section class="item finding">
      <h3>
        <Own of={body} field="title" in={languages} />
      </h3>
      {first.about !== null && (
        <p>
          <Say in={languages} of={of(({ about }) => about)} />
        </p>
      )}
      <p>
        <Say
          in={languages}
          of={(spoken) =>
            spoken.paper.sentences(
              [
                of(({ part }) => part)(spoken),
                of(({ urgency }) => urgency)(spoken),
                heading === 'carried'
                  ? spoken.words.shownBy(spoken.speaker.round(body.round))
                  : of(({ carriedBy }) => carriedBy)(spoken),
              ].filter((one) => one !== ''),
            )
          }
        />
      </p>
      <Wanted languages={languages} body={body} />
      <p class="soft">
        <Say
          in={languages}
          of={(spoken) =>
            [
              of(({ frozen }) => frozen)(spoken) || spoken.words.noEvidence,
              of(({ source }) => source)(spoken),
            ]
              .filter((one) => one !== '')
              .join(' · ')
          }
        />
      </p>
      <Lines in={languages} of={(spoken) => said.get(spoken)?.evidence?.said ?? []} />
      <Written languages={languages} of={(spoken) => said.get(spoken)?.evidence?.written ?? null} />
      {first.outcome && (
        <>
          <p class="wanted">
            <Say in={languages} of={of(({ outcome }) => outcome?.title ?? null)} />
          </p>
          <Written
            languages={languages}
            of={(spoken) => said.get(spoken)?.outcome?.written ?? null}
          />
        </>
      )}
    </section>
  );
};

/**
 * On a trade's sheet: what its table has no room for. Words that were quoted, photos, and findings that no row speaks of.
 * @param props.said the findings that a row has said already
 */
export const FindingNotes = (
  props: DocumentProps & {
    readonly findings: readonly ReportedFinding[];
    readonly said: ReadonlySet<string>;
  },
) => {
  const { report, languages, findings, said } = props;
  const shown = findings.filter(
    ({ id, body }) =>
      !said.has(id) || (report.quotes[id] ?? []).length > 0 || (body.photos ?? []).length > 0,
  );
  return (
    <>
      {shown.map((finding) => (
        <section class="item finding" key={finding.id}>
          <h3>
            <Own of={finding.body} field="title" in={languages} />
          </h3>
          {!said.has(finding.id) && (
            <>
              <p class="soft">
                <Say
                  in={languages}
                  of={({ paper, speaker }) =>
                    paper.sentences([
                      speaker.desk.joined.sentence(speaker.glossary.parts[finding.body.part].name),
                      speaker.desk.joined.sentence(speaker.desk.finding.states[finding.body.state]),
                    ])
                  }
                />
              </p>
              <Wanted languages={languages} body={finding.body} />
            </>
          )}
          {(report.quotes[finding.id] ?? []).map((words, at) => (
            <blockquote key={at}>
              <Quote in={languages} text={words} />
            </blockquote>
          ))}
          <Photos {...props} finding={finding} />
        </section>
      ))}
    </>
  );
};

/** What is wanted, in the lead's words and in millimetres. */
const Wanted = ({
  languages,
  body,
}: {
  readonly languages: Languages;
  readonly body: ReportedFinding['body'];
}) =>
  body.wanted === undefined && body.wantedMm === undefined ? null : (
    <p class="wanted">
      <Own of={body} field="wanted" in={languages} />
      {body.wantedMm !== undefined && (
        <strong class="amount">{` ${wantedSize(body.wantedMm, languages[0].speaker.number)}\u00a0mm`}</strong>
      )}
    </p>
  );

/** Lines that stay as somebody wrote them, under their language's name in each language. */
const Written = (props: {
  readonly languages: Languages;
  readonly of: (spoken: Spoken) => WrittenLines | null;
}) => {
  const { languages, of } = props;
  const written = of(languages[0]);
  if (!written || written.lines.length === 0) return null;
  const locales = languages.map(({ locale }) => locale);
  return (
    <>
      {isForeign(written.tag, locales) && (
        <p class="soft">
          <Say in={languages} of={(spoken) => of(spoken)?.title ?? ''} />
        </p>
      )}
      <ul lang={written.tag ?? undefined}>
        {written.lines.map((line, at) => (
          <li key={at}>{line}</li>
        ))}
      </ul>
    </>
  );
};

const Photos = ({
  finding: { body },
  photos,
  languages,
}: DocumentProps & { readonly finding: ReportedFinding }) => {
  const named = body.photos ?? [];
  const [{ words }] = languages;
  const missing = named.filter((sha256) => !photos.has(sha256)).length;
  return (
    <>
      {missing < named.length && (
        <div class="pictures">
          {named.flatMap((sha256, at) => {
            const source = photos.get(sha256);
            return source === undefined
              ? []
              : [<img key={sha256} src={source} alt={words.photo(body.title, at + 1)} />];
          })}
        </div>
      )}
      {missing > 0 && (
        <p class="soft">
          <Say in={languages} of={(spoken) => spoken.words.photosLeftOut(missing)} />
        </p>
      )}
    </>
  );
};
