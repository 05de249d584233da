/** Pain, numbness, blisters and damage in one table, with the usual cautions: for the lead, who answers for the testers. */
import { kindsOfComplaint } from '../../core/foot/index.ts';
import { PAIN_FROM, surenessOf } from '../../core/complaints/index.ts';
import type { CellSummary, RoundReport } from '../../core/review/index.ts';
import type { PartProps } from './document-props.ts';
import { Lines, Say, type Spoken } from './spoken.tsx';
import { Table } from './table.tsx';

type Cell = (spoken: Spoken) => string;
type Row = readonly [what: Cell, where: Cell, testers: Cell, runs: Cell, most: Cell, now: Cell];

const asTitle = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const nothing: Cell = () => '–';
const ofAll = (some: number, all: number): string => `${some} / ${all}`;

const painRows = ({ round: { pain }, hurting }: RoundReport): readonly Row[] =>
  pain === null || pain.runs === 0
    ? []
    : [
        [
          ({ paper }) => paper.care.pain(PAIN_FROM),
          nothing,
          () => ofAll(pain.testersOnce, pain.asked.testers),
          () => ofAll(pain.runs, pain.asked.runs),
          ({ paper }) => paper.care.ofTen(pain.most),
          ({ paper, speaker, list }) =>
            hurting.length === 0
              ? paper.care.noneOut
              : paper.care.stayOut(list(hurting.map(speaker.tester))),
        ],
      ];

const zoneRow =
  (asked: RoundReport['round']['complaints']['asked']) =>
  ({ zone, kind, testersOnce, runs, severity, word }: CellSummary): Row => [
    ({ speaker }) => speaker.glossary.kinds[kind].name,
    ({ paper }) => paper.places[zone],
    () => ofAll(testersOnce, asked.testers),
    () => ofAll(runs, asked.runs),
    ({ paper }) => (severity ? paper.care.ofTen(severity.most) : '–'),
    ({ paper }) => paper.sheet.recurs[surenessOf(word, testersOnce)],
  ];

const rowsOf = (report: RoundReport): readonly Row[] => {
  const { asked, cells } = report.round.complaints;
  return [
    ...painRows(report),
    ...cells.filter(({ kind }) => kindsOfComplaint[kind].painLike).map(zoneRow(asked)),
    ...report.skin.map(({ zone, kind, skin, testers, runs }): Row => [
      ({ paper }) => paper.care.skin[skin],
      ({ paper, speaker }) => paper.felt(speaker.glossary.kinds[kind].name, paper.places[zone]),
      () => ofAll(testers, asked.testers),
      () => ofAll(runs, asked.runs),
      nothing,
      nothing,
    ]),
    ...report.damages.map(({ pair, what, at, stands }): Row => [
      ({ speaker }) => asTitle(speaker.glossary.damages[what]),
      ({ paper, speaker, date }) => paper.care.onPair(speaker.pair(pair), date(at)),
      nothing,
      nothing,
      nothing,
      ({ paper }) => (stands ? paper.care.doNotWear : paper.care.answered),
    ]),
  ];
};

export const CarePart = ({ report, languages }: PartProps) => {
  const rows = rowsOf(report);
  const { pain, complaints, size } = report.round;
  return (
    <section class={rows.length < 6 ? 'care whole' : 'care'}>
      <h2 class="page-title">
        <Say in={languages} of={({ paper }) => paper.care.title} />
      </h2>
      {rows.length === 0 ? (
        <p>
          <Say
            in={languages}
            of={({ paper, speaker }) =>
              (pain?.asked.runs ?? 0) + complaints.asked.runs === 0
                ? speaker.desk.pain.nobodyAsked
                : paper.care.none(pain?.asked.runs ?? 0, complaints.asked.runs, size.pairs)
            }
          />
        </p>
      ) : (
        <Table
          languages={languages}
          title={({ paper }) => paper.care.title}
          columns={(['what', 'where', 'testers', 'runs', 'most', 'now'] as const).map(
            (column) =>
              ({ paper }: Spoken) =>
                paper.care.columns[column],
          )}
          rows={rows}
        />
      )}
      <Lines in={languages} as="p" of={({ paper }) => paper.care.cautions} />
    </section>
  );
};
