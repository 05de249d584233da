/** Each limit of the brief with its stamp, in one row of boxes. */
import { stampOf } from '../../core/headlines/index.ts';
import type { Limit } from '../../core/records/index.ts';
import { unitsOf } from '../../core/records/index.ts';
import type { RoundReport, VerdictItem } from '../../core/review/index.ts';
import { setPercentOf } from '../words/figures.ts';
import { siteName } from '../words/say-place.ts';
import type { PartProps } from './document-props.ts';
import { Say, type Spoken } from './spoken.tsx';

/** What a limit asks for: "at least 34 mm". */
export const asked = (
  { measure, bound, value, basis }: Limit,
  { paper, speaker }: Spoken,
): string => {
  const word = paper.bounds[bound];
  return basis === 'share-of-new'
    ? paper.limitAsks.ofNew(word, setPercentOf(value, speaker.number))
    : paper.limitAsks.reading(
        word,
        `${speaker.number(value, 2)}\u00a0${speaker.glossary.units[unitsOf[measure][0]]}`,
      );
};

/** Whether no other limit is about the same measure: its site then need not be said. */
const isAlone = (item: Extract<VerdictItem, { what: 'wear' }>, { verdict }: RoundReport): boolean =>
  verdict.items.every(
    (other) =>
      other === item || other.what !== 'wear' || other.limit.measure !== item.limit.measure,
  );

const limitName = (
  { measure, site }: Pick<Limit, 'measure'> & { readonly site?: string | undefined },
  { speaker }: Spoken,
): string =>
  speaker.desk.joined.clauses([
    speaker.glossary.measures[measure],
    ...(site === undefined ? [] : [siteName(site, speaker)]),
  ]);

interface Said {
  readonly name: string;
  readonly asks: string;
  readonly says: string;
}

const saidOf = (item: VerdictItem, report: RoundReport, spoken: Spoken): Said => {
  const { paper, speaker } = spoken;
  const { limit, limitAsks, limitSays } = paper;
  switch (item.what) {
    case 'wear': {
      const at = item.distance?.median;
      const greatest = report.curves.find(
        ({ kind, site }) => kind === item.kind && site === item.site,
      )?.greatest;
      return {
        name: limitName(
          { ...item.limit, site: isAlone(item, report) ? undefined : item.site },
          spoken,
        ),
        asks: asked(item.limit, spoken),
        says:
          typeof at === 'number'
            ? limitSays.reached(spoken.far(at), spoken.far(report.project.brief.distanceM))
            : greatest === undefined
              ? ''
              : limitSays.checked(spoken.far(greatest)),
      };
    }
    case 'not-measured':
      return {
        name: limitName(item.limit, spoken),
        asks: asked(item.limit, spoken),
        says: limitSays.notMeasured,
      };
    case 'structure':
      return {
        name: limit.structure,
        asks: limitAsks.structure,
        says: limitSays.cameApart(item.failed, item.pairs),
      };
    case 'allowed-rate':
      return {
        name: limit['allowed-rate'],
        asks: limitAsks['allowed-rate'](setPercentOf(item.allowed.complaint, speaker.number)),
        says:
          item.cells.length > 0 ? limitSays.recurring(item.cells.length) : limitSays.nothingRecurs,
      };
    case 'complaints':
      return {
        name: limit.complaints,
        asks: limitAsks.complaints,
        says:
          item.growing.length > 0 ? limitSays.growing(item.growing.length) : limitSays.noneGrows,
      };
    case 'stop-use':
      return {
        name: limit['stop-use'],
        asks: limitAsks['stop-use'],
        says:
          item.pairs.length > 0
            ? limitSays.withdrawn(spoken.list(item.pairs.map(speaker.pair)))
            : limitSays.none,
      };
  }
};

export const LimitStrip = ({ report, languages }: PartProps) => (
  <section class="limits whole">
    <h2>
      <Say in={languages} of={({ paper }) => paper.limits} />
    </h2>
    <ul>
      {report.verdict.items.map((item, at) => {
        const stamp = stampOf(item.word);
        return (
          <li key={at}>
            <strong>
              <Say in={languages} of={(spoken) => saidOf(item, report, spoken).name} />
            </strong>
            <span>
              <Say in={languages} of={(spoken) => saidOf(item, report, spoken).asks} />
            </span>
            <span class={`stamp stamp-${stamp}`}>
              <Say in={languages} of={({ paper }) => paper.sure[stamp]} />
            </span>
            <span class="soft">
              <Say in={languages} of={(spoken) => saidOf(item, report, spoken).says} />
            </span>
          </li>
        );
      })}
    </ul>
  </section>
);
