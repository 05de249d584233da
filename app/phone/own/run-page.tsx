/** One of my runs, to read: what I said of it, and where on the feet it was. Changing it is a screen of its own. */
import { zones, type FootView, type ZoneCode } from '../../../core/foot/index.ts';
import type { ComfortAttributeId, TwoSidedId } from '../../../core/foot/index.ts';
import type { Complaint, RecordId, Run } from '../../../core/records/index.ts';
import { LinkButton, Page } from '../../parts/controls/controls.tsx';
import { ShoeDrawing, type DrawnZone } from '../../parts/foot-map/shoe-drawing.tsx';
import { formatStart, formatDistance, formatNumber, formatPace } from '../../parts/format.ts';
import { latePart } from '../../parts/late.tsx';
import { PhotoRow } from '../../parts/photos/photo-view.tsx';
import { useStored } from '../../parts/state.ts';
import {
  complaintInWords,
  complaintLevel,
  fieldInWords,
  runFieldName,
} from '../../parts/said-in-run.ts';
import { entryWords, need, ownWords, t, terms } from '../../words/index.ts';
import { markInWords } from '../../words/say-mark.ts';
import { CameOf } from '../heard/came-of.tsx';
import { LeadsNote } from '../leads-note.tsx';
import '../../parts/foot-map/foot-map.css';
import './own.css';

const FIELDS = [
  'startedAt',
  'durationS',
  'surfaces',
  'ground',
  'temperatureC',
  'sock',
  'pain',
  'words',
  'wornDespiteStop',
] as const;
/** What every run is asked stands there unanswered too. */
const ASKED: ReadonlySet<string> = new Set(['durationS', 'surfaces', 'pain']);

const Said = ({ run, code }: { readonly run: Run; readonly code: string }) => {
  const words = ownWords().run;
  const pace = formatPace(run.distanceM, run.durationS);
  const rows = FIELDS.flatMap((field) => {
    const said = fieldInWords(field, run, () => code);
    if (said === '' && !ASKED.has(field)) return [];
    return [
      [runFieldName(field), said === '' ? words.notAnswered : said] as const,
      ...(field === 'durationS' && pace !== '' ? [[words.pace, pace] as const] : []),
    ];
  });
  return (
    <section class="sheet">
      <h2>{words.said}</h2>
      <dl class="own-terms">
        {rows.map(([term, said]) => [
          <dt key={`${term} term`}>{term}</dt>,
          <dd key={term}>{said}</dd>,
        ])}
      </dl>
      <PhotoRow photos={run.photos ?? []} label={words.said} />
    </section>
  );
};

/** A question on whose line the good point is in the middle, and what the answer says. */
const markSaid = (question: TwoSidedId, value: number) => {
  const { name, low, high } = terms().twoSided[question];
  return [
    <dt key={`${question} two-sided term`}>{name}</dt>,
    <dd key={`${question} two-sided`}>
      {markInWords({ value, low, high, words: entryWords().twoSided })}
    </dd>,
  ];
};

const Comfort = ({ comfort, comfort2 }: Pick<Run, 'comfort' | 'comfort2'>) => {
  const words = ownWords().run;
  const scores = Object.entries(comfort ?? {}) as [ComfortAttributeId, number][];
  const marks = Object.entries(comfort2 ?? {}) as [TwoSidedId, number][];
  return (
    <section class="sheet">
      <h2>{words.comfort}</h2>
      {scores.length + marks.length === 0 ? (
        <p class="soft">{words.noComfort}</p>
      ) : (
        <dl class="own-terms">
          {scores.map(([attribute, score]) => {
            const { name } = terms().attributes[attribute];
            return [
              <dt key={`${attribute} term`}>{name}</dt>,
              <dd key={attribute}>
                <meter min={0} max={100} value={score} aria-label={name} /> {formatNumber(score, 0)}
              </dd>,
            ];
          })}
          {marks.map(([question, mark]) => markSaid(question, mark))}
        </dl>
      )}
    </section>
  );
};

/** The feet with the zones of these complaints, of the views that have any. */
const Drawn = ({ complaints }: { readonly complaints: readonly Complaint[] }) => {
  const views = (['upper', 'sole'] as const satisfies readonly FootView[]).filter((view) =>
    complaints.some(({ zone }) => zones[zone].view === view),
  );
  return (
    <div class="own-feet">
      {views.flatMap((view) =>
        (['left', 'right'] as const).map((foot) => {
          const label = `${t().foot[foot]} ${t()[view]}`;
          const marked = new Map<ZoneCode, DrawnZone>(
            complaints
              .filter((one) => one.foot === foot && zones[one.zone].view === view)
              .map((one) => [
                one.zone,
                { level: complaintLevel(one), says: complaintInWords(one), marked: true },
              ]),
          );
          return (
            <figure key={label}>
              <ShoeDrawing view={view} foot={foot} zones={marked} label={label} />
              <figcaption class="small soft">{label}</figcaption>
            </figure>
          );
        }),
      )}
    </div>
  );
};

const Feet = ({ feet }: Pick<Run, 'feet'>) => {
  const words = ownWords().run;
  return (
    <section class="sheet">
      <h2>{words.feet}</h2>
      {feet === undefined ? (
        <p class="soft">{words.notAnswered}</p>
      ) : feet.answer === 'nothing' ? (
        <p>{t().log.nothing}</p>
      ) : (
        <>
          <Drawn complaints={feet.complaints} />
          <ul class="plain-list stack">
            {feet.complaints.map((one) => (
              <li key={`${one.foot} ${one.zone} ${one.kind}`}>
                {complaintInWords(one)}
                <PhotoRow photos={one.photos ?? []} label={complaintInWords(one)} />
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
};

const Talk = latePart(async () => {
  const [{ RunTalk }] = await Promise.all([
    import('../talk/own-talk.tsx'),
    need('talk', 'glossary', 'entry'),
  ]);
  return RunTalk;
});

export const OwnRunPage = ({ run: id }: { readonly run: string }) => {
  const words = ownWords().run;
  const found = useStored(
    async (from) => {
      const run = await from.get('run', id as RecordId);
      return { run, pair: run && (await from.get('pair', run.body.pair)) };
    },
    ['run', 'pair'],
    [id],
  );
  const back = { href: '/runs', label: t().back };
  if (found === null) return <p class="soft">{t().loading}</p>;
  if (!found.run)
    return (
      <Page title={t().runs.title} back={back}>
        <p>{words.gone}</p>
      </Page>
    );
  const { body, revision } = found.run;
  const code = found.pair?.body.code ?? '?';
  return (
    <Page title={words.of(formatDistance(body.distanceM), code)} back={back}>
      <p class="soft">{formatStart(body)}</p>
      <LeadsNote run={body} />
      <Talk run={revision.id} />
      <Feet feet={body.feet} />
      <CameOf runs={[found.run]} tester={body.tester} />
      <Comfort {...body} />
      <Said run={body} code={code} />
      <a class="button button-quiet" href={`/runs/${revision.id}/history`}>
        {words.history}
      </a>
      <div class="foot-bar">
        <LinkButton big href={`/runs/${revision.id}`}>
          {words.change}
        </LinkButton>
      </div>
    </Page>
  );
};
