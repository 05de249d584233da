/** One bench check: each reading beside the pair's earlier ones, and what a lead can put right of it. */
import { useState } from 'preact/hooks';
import { checkHeadline } from '../../../core/headlines/index.ts';
import { readBody, type RecordId, type RecordOf } from '../../../core/records/index.ts';
import type { CheckLook } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { formatDate, formatDateTime, formatNumber } from '../../parts/format.ts';
import { PhotoView } from '../../parts/photos/photo-view.tsx';
import { session, useStored } from '../../parts/state.ts';
import { p, t } from '../../words/index.ts';
import { CheckForm } from '../bench/check-form.tsx';
import { bringCheckBack, eraseCheck, takeCorrectionBack } from '../bench/check-writes.ts';
import { useWork, type PlaceProps, type TabProps } from '../desk-state.ts';
import { OpenForm } from '../parts/form-parts.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { CheckReadings } from './check-readings.tsx';

type Props = PlaceProps & { readonly check: RecordId };
type Check = RecordOf<'bench-check'>;

const crumbsOf = ({ review }: TabProps, here: string) => {
  const links = linksOf(review.project.id);
  return [
    { words: p().frame.places.wear, href: links.place('wear') },
    { words: p().wear.checks.title, href: links.place('wear', 'checks') },
    { words: here },
  ];
};

/** The check as it stood before it was erased; null while that is read, undefined where there is none. */
const useErased = (id: RecordId): { readonly check: Check | null } | null =>
  useStored(
    async (from) => {
      const history = await from.history(id);
      const last = history?.head.deleted
        ? history.older.findLast(({ body }) => body !== null)
        : undefined;
      const read = last ? readBody('bench-check', last.body) : null;
      return {
        check: last && read?.ok ? { kind: 'bench-check', body: read.body, revision: last } : null,
      };
    },
    ['bench-check'],
    [id],
  );

/** In the place of a check that was erased: that it was, and the way back. */
const Gone = (props: Props) => {
  const words = p().wear.check;
  const erased = useErased(props.check);
  if (!erased) return <p class="soft">{t().loading}</p>;
  const { check } = erased;
  const title = check
    ? words.of(sayOf(props).pair(check.body.pair), formatDate(check.body.at))
    : words.none;
  return (
    <PlaceHead
      crumbs={crumbsOf(props, title)}
      headline={check ? words.gone : words.none}
      sub={check && words.goneSub(sayOf(props).pair(check.body.pair), formatDate(check.body.at))}
      actions={
        check && (
          <Button onClick={() => void bringCheckBack(props.records.decision, props.check, check)}>
            {words.bringBack}
          </Button>
        )
      }
    />
  );
};

/** Who corrected it, why, and the way back. */
const Corrected = (props: TabProps & { readonly record: Check }) => {
  const { record, records } = props;
  const words = p().wear.check;
  const { correctedBy } = record.body;
  if (!correctedBy) return null;
  const who = correctedBy.by === session.value?.member ? words.you : words.otherLead;
  return (
    <div class="check-acts">
      <p>{words.correctedBy(who, formatDate(correctedBy.at), correctedBy.why)}</p>
      <Button kind="quiet" onClick={() => void takeCorrectionBack(records.decision, record)}>
        {words.takeBack}
      </Button>
    </div>
  );
};

const Circumstances = ({ record }: { readonly record: Check }) => {
  const words = p().wear.check;
  const { temperatureC, restedH, operator, words: notes, photos } = record.body;
  return (
    <aside class="paper check-aside">
      <h2>{words.circumstances}</h2>
      <ul class="plain-list">
        {operator !== undefined && <li>{words.by(operator)}</li>}
        {temperatureC !== undefined && <li>{words.room(formatNumber(temperatureC, 1))}</li>}
        {restedH !== undefined && <li>{words.rested(formatNumber(restedH, 1))}</li>}
      </ul>
      {notes && <p>{notes}</p>}
      {photos && photos.length > 0 && (
        <ul class="plain-list photos">
          {photos.map((sha256, at) => (
            <li key={sha256}>
              <PhotoView sha256={sha256 as never} label={`${words.photos} ${at + 1}`} />
            </li>
          ))}
        </ul>
      )}
      {!notes && !photos?.length && <p class="soft small">{words.noPhotos}</p>}
    </aside>
  );
};

const OfCheck = (props: Props & { readonly record: Check; readonly look: CheckLook }) => {
  const { record, look, records, review } = props;
  const words = p().wear.check;
  const say = sayOf(props);
  const links = linksOf(review.project.id);
  const [editing, setEditing] = useState(false);
  const close = () => setEditing(false);
  const headline = checkHeadline(look);
  return (
    <>
      <PlaceHead
        crumbs={crumbsOf(props, words.of(say.pair(look.pair), formatDate(look.at)))}
        headline={words.headline(headline, say)}
        sub={
          <>
            {words.sub(formatDateTime(look.at), words.from[look.distanceFrom])}{' '}
            <a href={links.pair(look.pair)}>{p().verdict.pair(say.pair(look.pair))}</a>{' '}
            <a href={links.round(look.round)}>{say.round(look.round)}</a>
            {headline.case === 'waiting' && (
              <>
                {' '}
                <a href={links.place('waiting')}>{words.wait}</a>
              </>
            )}
          </>
        }
        actions={
          !editing && (
            <>
              <Button onClick={() => setEditing(true)}>{words.edit}</Button>
              <Button onClick={() => void eraseCheck(records.decision, record)}>
                {words.erase}
              </Button>
            </>
          )
        }
      />
      <Corrected records={records} review={review} record={record} />
      {editing ? (
        <OpenForm label={words.edit} close={close}>
          <CheckForm records={records} review={review} before={record} close={close} />
        </OpenForm>
      ) : (
        <div class="check-columns">
          <CheckReadings records={records} review={review} look={look} record={record} />
          <Circumstances record={record} />
        </div>
      )}
    </>
  );
};

export const CheckPage = (props: Props) => {
  const { review, records, check } = props;
  const project = review.project.id;
  const record = records['bench-check'].find(({ revision }) => revision.id === check);
  const look = useWork((desk) => desk.checkLook(project, check), records, [project, check]);
  if (!record) return <Gone {...props} />;
  // Just brought back or just written: the worker answers in a moment.
  if (!look) return <p class="soft">{t().loading}</p>;
  return <OfCheck {...props} record={record} look={look} />;
};
