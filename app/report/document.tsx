/**
 * The report of a round, or the sheet of it for one trade, as one document: the same on the desk's page, in
 * the file that is saved or sent, and from the terminal. It needs no network, no script and no clock.
 */
import { trades, tradeOf, type Trade } from '../../core/foot/index.ts';
import type { RoundReport } from '../../core/review/index.ts';
import { setPercentOf } from '../words/figures.ts';
import { askedLines } from '../words/say-complaint.ts';
import { verdictTitle } from '../words/say-verdict.ts';
import { ChangesPart } from './changes-part.tsx';
import { ComfortPart } from './comfort-part.tsx';
import { ComplaintsPart, MapsPart, PainPart } from './complaints-part.tsx';
import type { DocumentProps, PartProps } from './document-props.ts';
import { Findings } from './findings-part.tsx';
import { MethodsPart, ReadingPart } from './methods-part.tsx';
import { joined, Lines, Say, type Spoken } from './spoken.tsx';
import { DeviationsPart, VerdictPart, WearPart } from './wear-part.tsx';

export const isTrade = (text: string | null | undefined): text is Trade =>
  (trades as readonly (string | null | undefined)[]).includes(text);

/** SHA-256 of the photos that the document shows, each once. */
export const shownPhotos = (
  { findings, carried }: RoundReport,
  trade: Trade | null,
): readonly string[] => [
  ...new Set(
    [...findings, ...carried].flatMap(({ body }) =>
      trade === null || tradeOf[body.part] === trade ? (body.photos ?? []) : [],
    ),
  ),
];

const titleIn = (
  { words, speaker }: Spoken,
  { report: { project, round }, trade }: Pick<DocumentProps, 'report' | 'trade'>,
): string =>
  trade === null
    ? words.title(project.name, round.name)
    : words.sheetTitle(project.name, round.name, speaker.glossary.trades[trade]);

type Titled = Omit<DocumentProps, 'photos'>;

/** What the document is called, in all its languages. */
export const documentTitle = (props: Titled): string =>
  joined(props.languages, (spoken) => titleIn(spoken, props));

/** What it is called on paper and as a file: in its first language, with the date of its data. */
export const printedTitle = (props: Titled): string => {
  const [lead] = props.languages;
  return lead.words.printed(titleIn(lead, props), lead.date(props.report.nowMs));
};

const Head = (props: DocumentProps) => {
  const { report, languages } = props;
  return (
    <header>
      <h1>
        <Say in={languages} of={(spoken) => titleIn(spoken, props)} />
      </h1>
      <p>
        <Say in={languages} of={({ words, date }) => words.asOf(date(report.nowMs))} />
      </p>
      <p class="soft">
        <Say in={languages} of={({ words }) => words.mark} />
      </p>
    </header>
  );
};

const BriefPart = ({ report, languages }: PartProps) => {
  const { brief } = report.project;
  const { size, stage } = report.round;
  const { outside } = report;
  return (
    <section>
      <h2>
        <Say in={languages} of={({ words }) => words.sections.brief} />
      </h2>
      <Lines
        in={languages}
        as="p"
        of={({ words, speaker, surface }) => [
          words.briefOf(
            speaker.glossary.runners[brief.runner],
            speaker.glossary.uses[brief.use],
            speaker.desk.joined.names(brief.surfaces.map(surface)),
          ),
          [
            words.briefDistance(speaker.distance(brief.distanceM)),
            words.briefAllowed(
              setPercentOf(brief.allowedRate.complaint, speaker.number),
              setPercentOf(brief.allowedRate.pain, speaker.number),
            ),
          ].join(' '),
        ]}
      />
      <h2>
        <Say in={languages} of={({ words }) => words.sections.sample} />
      </h2>
      <Lines
        in={languages}
        as="p"
        of={({ words, speaker }) => [
          [
            words.stage(speaker.glossary.stages[stage]),
            words.sample(size.pairs, size.testers, size.runs, speaker.distance(size.distanceM)),
          ].join(' '),
          ...askedLines(report.round, speaker),
          ...(outside.waiting + outside.setAside > 0
            ? [speaker.desk.waiting.outside(outside.waiting, outside.setAside)]
            : []),
        ]}
      />
    </section>
  );
};

const Whole = (props: DocumentProps) => {
  const { report, languages } = props;
  return (
    <>
      <BriefPart {...props} />
      <ChangesPart {...props} />
      <VerdictPart {...props} />
      <Findings {...props} findings={report.findings} heading="findings" drawn={false} />
      {report.carried.length > 0 && (
        <Findings {...props} findings={report.carried} heading="carried" drawn={false} />
      )}
      <MapsPart {...props} />
      <PainPart {...props} />
      <ComplaintsPart {...props} />
      <ComfortPart {...props} />
      <WearPart {...props} />
      <DeviationsPart {...props} />
      {report.damages.length > 0 && (
        <section>
          <h2>
            <Say in={languages} of={({ words }) => words.sections.damages} />
          </h2>
          <Lines
            in={languages}
            of={({ speaker, date }) =>
              report.damages.map(({ pair, what, at, words }) =>
                speaker.desk.joined.clauses(
                  [
                    speaker.pair(pair),
                    speaker.glossary.damages[what],
                    date(at),
                    words ?? '',
                  ].filter((one) => one !== ''),
                ),
              )
            }
          />
        </section>
      )}
    </>
  );
};

const Sheet = (props: DocumentProps & { readonly trade: Trade }) => {
  const { report, languages, trade } = props;
  const own = ({ body }: RoundReport['findings'][number]) => tradeOf[body.part] === trade;
  const carried = report.carried.filter(own);
  return (
    <>
      <section>
        <Lines
          in={languages}
          as="p"
          of={({ words, speaker }) => [
            words.sample(
              report.round.size.pairs,
              report.round.size.testers,
              report.round.size.runs,
              speaker.distance(report.round.size.distanceM),
            ),
            verdictTitle(report.verdict, speaker),
          ]}
        />
      </section>
      <Findings {...props} findings={report.findings.filter(own)} heading="findings" drawn />
      {carried.length > 0 && (
        <Findings {...props} findings={carried} heading="carried" drawn={false} />
      )}
    </>
  );
};

/** The whole document, from its title to its methods. */
export const ReportDocument = (props: DocumentProps) => (
  <article
    class="report on-white"
    lang={props.languages[0].locale}
    data-languages={props.languages.length}
  >
    <Head {...props} />
    {props.trade === null ? <Whole {...props} /> : <Sheet {...props} trade={props.trade} />}
    <ReadingPart {...props} />
    <MethodsPart {...props} />
  </article>
);
