/** One run: everything that was said, beside the tester's other runs; what a lead can put right; its earlier versions. */
import { useState } from 'preact/hooks';
import type { RecordId, Run, Sha256 } from '../../../core/records/index.ts';
import type { RunLook } from '../../../core/review/index.ts';
import { formatDate, formatStart } from '../../parts/format.ts';
import { latePart } from '../../parts/late.tsx';
import { useStored } from '../../parts/state.ts';
import { d, p, t } from '../../words/index.ts';
import { namesIn, useWork, type PlaceProps, type TabProps } from '../desk-state.ts';
import { TalkSection } from '../ask/talk.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { roundDistance, sayOf } from '../frame/say.ts';
import { Mark } from '../frame/stamp.tsx';
import { PainItem } from '../people/pain-answers.tsx';
import type { RunPageAnswer } from '../worker/runs-answers.ts';
import { ComfortDots } from './comfort-dots.tsx';
import { CorrectRun } from './correct-run.tsx';
import { FeltOnFeet } from './felt-on-feet.tsx';
import { PaceBars } from './pace-bars.tsx';
import { RunHistory } from './run-history.tsx';
import { RunSaid } from './run-said.tsx';
import { RunStanding } from './run-standing.tsx';

// Measuring tracks is code that few runs need.
const TrackLine = latePart(async () => (await import('./track-line.tsx')).TrackLine);

/** After the run's own address: its form is open. */
const CORRECT = 'correct';

const complaintsOf = ({ feet }: Run) => (feet?.answer === 'complaints' ? feet.complaints : []);

const Stamps = ({ look }: { readonly look: RunLook }) => {
  const words = p().runs;
  return (
    <>
      {look.state !== 'counts' && (
        <Mark tone="open" title={words.stateMeaning[look.state]}>
          {words.states[look.state]}
        </Mark>
      )}
      {look.run.correctedBy && <Mark tone="plain">{words.marks.corrected}</Mark>}
      {look.run.wornDespiteStop !== undefined && (
        <Mark tone="danger">{words.marks.despiteStop}</Mark>
      )}
    </>
  );
};

const Head = (props: TabProps & RunPageAnswer) => {
  const { look, headline, review } = props;
  const words = p().runs;
  const names = namesIn(review, props.records);
  const links = linksOf(review.project.id);
  const { run, round } = look;
  const near = [
    look.before && { ...look.before, words: words.before },
    look.after && { ...look.after, words: words.after },
  ].filter((one) => one !== null);
  return (
    <PlaceHead
      headline={words.runHeadline(headline, sayOf(props))}
      crumbs={[
        { words: p().frame.places.runs, href: links.place('runs') },
        ...(round ? [{ words: names.round(round), href: links.round(round) }] : []),
        { words: words.pairCrumb(names.pair(run.pair)), href: links.pair(run.pair) },
        ...(look.nth === null ? [] : [{ words: words.nth(look.nth, look.of) }]),
      ]}
      sub={
        <>
          <a href={links.tester(run.tester)}>{names.tester(run.tester)}</a>
          {d().joined.clauses(['', formatStart(run), roundDistance(run.distanceM)])}
          {near.map(({ id, startMs, words: say }) => (
            <span key={id} class="run-near">
              <a href={links.run(id)}>{say(formatDate(startMs))}</a>
            </span>
          ))}
        </>
      }
      stamp={<Stamps look={look} />}
    />
  );
};

/** The run is not among those that are read: its tester took it back, or the address is wrong. */
const Gone = (props: TabProps & { readonly id: RecordId }) => {
  const words = p().runs;
  const names = namesIn(props.review, props.records);
  const history = useStored(
    async (from) => ({ found: await from.history(props.id) }),
    ['run'],
    [props.id],
  );
  if (!history) return <p class="soft">{t().loading}</p>;
  const { found } = history;
  const isErased = found?.head.kind === 'run' && found.head.body === null;
  return (
    <>
      <PlaceHead
        headline={isErased ? words.erased(names.tester(found.head.author)) : words.gone}
        crumbs={[
          {
            words: p().frame.places.runs,
            href: linksOf(props.review.project.id).place('runs'),
          },
        ]}
        sub={isErased ? undefined : words.goneNote}
      />
      {isErased && !found.head.erased && <RunHistory {...props} />}
    </>
  );
};

/** What was asked about the run and what came back, and the way to ask. */
const RunTalk = (props: TabProps & { readonly look: RunLook }) => {
  const { review, records, look } = props;
  const { id, run } = look;
  const { startedAt, distanceM, durationS, pair, tester } = run;
  return (
    <TalkSection
      records={records}
      review={review}
      subject={{ record: id }}
      isHere
      label={p().ask.askRun(namesIn(review, records).tester(tester))}
      asking={{
        testers: [tester],
        about: () => ({ record: { id, kind: 'run' }, pair }),
        run: { id, startedAt, distanceM, durationS, pair },
      }}
    />
  );
};

export const RunPage = (props: PlaceProps & { readonly id: RecordId }) => {
  const { review, records, id } = props;
  const words = p().runs;
  const [isCorrecting, setCorrecting] = useState(props.rest[1] === CORRECT);
  const answer = useWork((desk) => desk.runPage(review.project.id, id), records, [
    review.project.id,
    id,
  ]);
  // While the log is read anew, after a correction, the run stays as it was shown.
  if (!answer) return <p class="soft">{t().loading}</p>;
  if (!answer.run) return <Gone {...props} />;
  const { look } = answer.run;
  const { run } = look;
  const names = namesIn(review, records);
  const complaints = complaintsOf(run);
  const pain = review.pains.find((one) => one.run === id);
  const { track } = run;
  const pace = track?.paceByKmS ?? [];
  return (
    <>
      <Head {...props} {...answer.run} />
      {pain && (
        <section class="paper to-ask to-ask-danger" aria-label={words.painTitle}>
          {pain.stands && <p>{words.caution}</p>}
          <ul class="plain-list">
            <PainItem {...props} of={pain} isHere />
          </ul>
        </section>
      )}
      {isCorrecting ? (
        <CorrectRun {...props} run={run} close={() => setCorrecting(false)} />
      ) : (
        <div class="run-body">
          <div class="run-comfort">
            <ComfortDots comfort={look.comfort} tester={names.tester(run.tester)} />
          </div>
          {(complaints.length > 0 || track?.attachment || pace.length > 1) && (
            <div class="run-pictures">
              {complaints.length > 0 && (
                <FeltOnFeet complaints={complaints} project={review.project.id} />
              )}
              {track?.attachment && <TrackLine attachment={track.attachment as Sha256} />}
              {pace.length > 1 && <PaceBars paceByKmS={pace} />}
            </div>
          )}
          <div class="run-said">
            <RunSaid {...props} look={look} />
            <RunStanding {...props} {...answer.run} correct={() => setCorrecting(true)} />
            <RunTalk {...props} look={look} />
            <RunHistory {...props} />
          </div>
        </div>
      )}
    </>
  );
};
