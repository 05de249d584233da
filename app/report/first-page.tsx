/** The first page, for who decides: what is so, what to change, how much, who, by when, and what proves it. */
import { zones } from '../../core/foot/index.ts';
import {
  decisionHeadline,
  decisionRows,
  type DecisionHeadline,
  type DecisionRow,
} from '../../core/headlines/index.ts';
import type { RoundReport, WearLook } from '../../core/review/index.ts';
import { ReportMap } from './complaints-part.tsx';
import type { PartProps } from './document-props.ts';
import { LimitStrip } from './limit-strip.tsx';
import { ActsTable } from './acts-table.tsx';
import { clearlyOff, offSentence } from './off-rows.ts';
import { PaperCurve } from './paper-curve.tsx';
import { rowName } from './row-words.ts';
import { ShoePicture } from './shoe-picture.tsx';
import { Say, type Spoken } from './spoken.tsx';

/** So many rows stand on the page; in two languages each is twice as tall. */
const MOST_ROWS = [5, 3] as const;

/** Of these so many are what is too much or too little. */
const MOST_OFF = 1;
/** With so many rows it has the page to itself. */
const ROWS_OF_PAGE = 2;

/** Sentences that ask for no change. */
const quiet: ReadonlySet<DecisionHeadline['case']> = new Set(['watch', 'keep', 'go-on'] as const);

/** The sentence that says what to do. */
export const headlineWords = (report: RoundReport, spoken: Spoken): string => {
  const h = decisionHeadline(report, decisionRows(report));
  const named = h.case === 'change' ? h.change : h.case === 'watch' ? h.watch : [];
  const pairs = h.case === 'change' || h.case === 'look' ? h.look : [];
  // Where something is asked or comes apart that goes first; its row says the rest.
  const off = quiet.has(h.case)
    ? clearlyOff({ report, trade: null })
        .slice(0, MOST_OFF)
        .map((one) => offSentence(one, spoken))
    : [];
  const said = spoken.paper.headline(h, {
    isProved: off.length > 0,
    names: [...new Set(named.map((row) => rowName(row, spoken)))],
    pairs: pairs.map(spoken.speaker.pair),
    list: spoken.list,
  });
  return spoken.paper.sentences([...off, said]);
};

/** How many testers, pairs, runs and kilometres, and how far the farthest pair has come. */
export const sizeWords = (
  { round: { size }, lines, project }: RoundReport,
  { paper, far }: Spoken,
): string =>
  paper.sentences([
    paper.sizes(size.testers, size.pairs, size.runs, far(size.distanceM)),
    ...(lines[0] ? [paper.farthest(far(lines[0].totalM), far(project.brief.distanceM))] : []),
  ]);

export const FirstPage = (props: PartProps) => {
  const { report, languages } = props;
  const all = decisionRows(report);
  const off = clearlyOff({ report, trade: null }).slice(0, MOST_OFF);
  const rows = all.slice(0, MOST_ROWS[languages.length > 1 ? 1 : 0] - off.length);
  return (
    // What was changed begins on a page of its own, but where this one says little nothing waits for it.
    <section class={`first-page${report.story && rows.length >= ROWS_OF_PAGE ? ' alone' : ''}`}>
      <h1>
        <Say in={languages} of={(spoken) => headlineWords(report, spoken)} />
      </h1>
      <p class="soft">
        <Say in={languages} of={(spoken) => sizeWords(report, spoken)} />
      </p>
      <ShoePicture {...props} rows={rows} />
      {rows.length + off.length === 0 ? (
        <p>
          <Say in={languages} of={({ paper }) => paper.nothingShows} />
        </p>
      ) : (
        <>
          <ActsTable {...{ languages, rows, off }} />
          {all.length > rows.length && (
            <p class="soft">
              <Say in={languages} of={({ paper }) => paper.moreRows(all.length - rows.length)} />
            </p>
          )}
        </>
      )}
      <Proof {...props} rows={rows} />
      <LimitStrip {...props} />
      <Sure {...props} rows={rows} />
    </section>
  );
};

/** The curve that the rows speak of; else the one of the first limit of the brief. */
const curveOf = (
  { curves, wear }: RoundReport,
  rows: readonly DecisionRow[],
): WearLook | undefined => {
  const row = rows.find(({ callout }) => callout?.what === 'wear')?.callout;
  return row?.what === 'wear'
    ? curves.find(
        ({ site, limits }) => site === row.site && limits.some(({ limit }) => limit === row.limit),
      )
    : wear[0];
};

/** Two pictures that prove the first rows: the map of the first complaint, the curve of the first wear. */
const Proof = (props: PartProps & { readonly rows: readonly DecisionRow[] }) => {
  const { report, languages, rows } = props;
  const felt = rows.find(({ callout }) => callout?.what === 'complaint')?.callout;
  const kind = felt?.what === 'complaint' ? felt : null;
  const own = kind && report.zonesByKind[kind.kind];
  const look = curveOf(report, rows);
  return (
    <div class="two whole">
      {kind && own && (
        <figure>
          <figcaption>
            <strong>
              <Say
                in={languages}
                of={({ paper, speaker }) =>
                  paper.mapTitle(
                    speaker.glossary.kinds[kind.kind].name,
                    report.round.complaints.asked.testers,
                  )
                }
              />
            </strong>
          </figcaption>
          <ReportMap {...props} view={zones[kind.zone].view} zones={own} marked={kind.zone} />
        </figure>
      )}
      {look && <PaperCurve {...props} look={look} />}
    </div>
  );
};

const sures = [
  'clear',
  'one-tester',
  'fails',
  'likely',
  'too-early',
  'open',
  'holds',
  'asked',
] as const;

/** How sure each row is, in plain words; figures are in the appendix. */
const Sure = ({ languages, rows }: PartProps & { readonly rows: readonly DecisionRow[] }) => (
  <p class="sure">
    <Say
      in={languages}
      of={(spoken) =>
        spoken.paper.sentences([
          spoken.paper.howSure,
          ...sures.flatMap((sure) => {
            const own = rows.filter((row) => row.sure === sure);
            return own.length === 0
              ? []
              : [
                  spoken.paper.sureLines[sure](
                    spoken.speaker.desk.joined.names(
                      own.map((row) => String(rows.indexOf(row) + 1)),
                    ),
                  ),
                ];
          }),
          spoken.paper.behind,
        ])
      }
    />
  </p>
);
