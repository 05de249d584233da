/**
 * The report of a round, or the sheet of it for one trade, as one document: the same on the desk's page, in
 * the file that is saved or sent, and from the terminal. It needs no network, no script and no clock.
 */
import { trades, tradeOf, type Trade } from '../../core/foot/index.ts';
import type { RoundReport } from '../../core/review/index.ts';
import { setPercentOf } from '../words/figures.ts';
import { askedLines } from '../words/say-complaint.ts';
import { CarePart } from './care-part.tsx';
import { ChangesPage } from './changes-page.tsx';
import { ChangesPart } from './changes-part.tsx';
import { ComfortPart } from './comfort-part.tsx';
import { ComplaintsPart, MapsPart, PainPart } from './complaints-part.tsx';
import type { DocumentProps, PartProps } from './document-props.ts';
import { Findings } from './findings-part.tsx';
import { FirstPage, sizeWords } from './first-page.tsx';
import { MethodsPart, ReadingPart } from './methods-part.tsx';
import { Sheet } from './sheet.tsx';
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

/** Stands on every printed page: project, round, for whom, whose eyes, and until when the data go. */
const RunningHead = ({ report, languages, trade }: DocumentProps) => (
  <header class="running">
    <div>
      <span>
        <strong>{report.project.name}</strong>
      </span>
      <span>{report.round.name}</span>
      <span>
        <Say in={languages} of={({ paper }) => paper.for[trade ?? 'whole']} />
      </span>
      <span class="fill">
        <Say in={languages} of={({ paper }) => paper.mark} />
      </span>
      <span>
        <Say in={languages} of={({ date }) => date(report.nowMs)} />
      </span>
    </div>
  </header>
);

const BriefPart = ({ report, languages }: PartProps) => {
  const { brief } = report.project;
  const { size, stage } = report.round;
  const { outside } = report;
  return (
    <section class="two whole">
      <div>
        <h2>
          <Say in={languages} of={({ words }) => words.sections.brief} />
        </h2>
        <Lines
          in={languages}
          as="p"
          of={({ words, paper, far, speaker, surface }) => [
            words.briefOf(
              speaker.glossary.runners[brief.runner],
              speaker.glossary.uses[brief.use],
              speaker.desk.joined.names(brief.surfaces.map(surface)),
            ),
            paper.sentences([
              words.briefDistance(far(brief.distanceM)),
              words.briefAllowed(
                setPercentOf(brief.allowedRate.complaint, speaker.number),
                setPercentOf(brief.allowedRate.pain, speaker.number),
              ),
            ]),
          ]}
        />
      </div>
      <div>
        <h2>
          <Say in={languages} of={({ words }) => words.sections.sample} />
        </h2>
        <Lines
          in={languages}
          as="p"
          of={({ words, paper, far, speaker }) => [
            paper.sentences([
              words.stage(speaker.glossary.stages[stage]),
              words.sample(size.pairs, size.testers, size.runs, far(size.distanceM)),
            ]),
            ...askedLines(report.round, speaker),
            ...(outside.waiting + outside.setAside > 0
              ? [speaker.desk.waiting.outside(outside.waiting, outside.setAside)]
              : []),
          ]}
        />
      </div>
    </section>
  );
};

/** All figures with their intervals and proofs: nothing of it is needed to act. */
const Appendix = (props: DocumentProps) => {
  const { report, languages, trade } = props;
  const own = ({ body }: RoundReport['findings'][number]) =>
    trade === null || tradeOf[body.part] === trade;
  const carried = report.carried.filter(own);
  const findings = report.findings.filter(own);
  return (
    <section class="appendix">
      <h2 class="page-title">
        <Say in={languages} of={({ paper }) => paper.appendix} />
      </h2>
      <BriefPart {...props} />
      {trade === null && <ChangesPart {...props} />}
      {trade === null && <VerdictPart {...props} />}
      {(trade === null || findings.length > 0) && (
        <Findings {...props} findings={findings} heading="findings" />
      )}
      {carried.length > 0 && <Findings {...props} findings={carried} heading="carried" />}
      {trade === null && (
        <>
          <MapsPart {...props} />
          <PainPart {...props} />
          <ComplaintsPart {...props} />
          <ComfortPart {...props} />
          <WearPart {...props} />
          <DeviationsPart {...props} />
        </>
      )}
      <ReadingPart {...props} />
      <MethodsPart {...props} />
    </section>
  );
};

/** The whole document, from what to do to its methods. */
export const ReportDocument = (props: DocumentProps) => {
  const { report, languages, trade } = props;
  return (
    <article class="report on-white" lang={languages[0].locale} data-languages={languages.length}>
      <RunningHead {...props} />
      <div class="body">
        {trade === null ? (
          <>
            <FirstPage {...props} />
            <ChangesPage {...props} />
            <CarePart {...props} />
            {trades.map((one) => (
              <Sheet {...props} trade={one} key={one} />
            ))}
          </>
        ) : (
          <Sheet {...props} trade={trade} under={(spoken) => sizeWords(report, spoken)} />
        )}
        <Appendix {...props} />
      </div>
    </article>
  );
};
