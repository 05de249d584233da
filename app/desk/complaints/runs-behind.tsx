/** The runs behind one zone of the foot map: whose, when, in their words, with their photos. */
import { useState } from 'preact/hooks';
import type { ComplaintKind, ZoneCode } from '../../../core/foot/index.ts';
import type { Foot } from '../../../core/records/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { formatDate, formatDistance } from '../../parts/format.ts';
import { PhotoRow } from '../../parts/photos/photo-view.tsx';
import { d, t, terms } from '../../words/index.ts';
import { namesIn, useWork } from '../desk-state.ts';
import type { RoundProps } from './round-props.ts';

const STEP = 10;

export const RunsBehind = (
  props: RoundProps & { foot: Foot; zone: ZoneCode; kind: ComplaintKind | null },
) => {
  const { records, review, round, foot, zone, kind } = props;
  const [most, setMost] = useState(STEP);
  const names = namesIn(review, records);
  const behind = useWork(
    (desk) => desk.runsBehind(review.project.id, { round: round.id, foot, zone, kind }, most),
    records,
    [round.id, foot, zone, kind, most],
  );
  const name = terms().zones[zone].name;
  return (
    <div class="sheet" aria-live="polite">
      <h2>{d().complaints.runsBehind(`${t().foot[foot]}, ${name}`)}</h2>
      {!behind ? (
        <p class="soft">{t().loading}</p>
      ) : behind.all === 0 ? (
        <p>
          {round.complaints.asked.runs === 0 ? d().complaints.nobodyAsked : d().complaints.none}
        </p>
      ) : (
        <ul class="plain-list">
          {behind.runs.map(({ id, tester, pair, startedAt, distanceM, complaints }) => (
            <li key={id}>
              {[
                names.tester(tester),
                names.pair(pair),
                formatDate(startedAt),
                formatDistance(distanceM),
                complaints
                  .map(
                    ({ kind, severity, words }) =>
                      `${terms().kinds[kind].name}${severity === undefined ? '' : ` ${severity}`}${words ? ` “${words}”` : ''}`,
                  )
                  .join(', '),
              ].join(' · ')}
              <PhotoRow
                photos={complaints.flatMap(({ photos }) => photos ?? [])}
                label={`${names.tester(tester)}, ${name}`}
              />
            </li>
          ))}
        </ul>
      )}
      {behind && behind.all > behind.runs.length && (
        <Button kind="quiet" onClick={() => setMost(most + STEP)}>
          {d().more(
            Math.min(STEP, behind.all - behind.runs.length),
            behind.all - behind.runs.length,
          )}
        </Button>
      )}
    </div>
  );
};
