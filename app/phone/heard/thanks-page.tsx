/** One thank-you to read: where it was on the foot, what came of it, and what was changed where the lead tells it. */
import { useEffect } from 'preact/hooks';
import { zones, type ZoneCode } from '../../../core/foot/index.ts';
import type { Foot, RecordId } from '../../../core/records/index.ts';
import { changeSpeaker } from '../../parts/change-speaker.ts';
import { LinkButton, Page } from '../../parts/controls/controls.tsx';
import { ShoeDrawing, type DrawnZone } from '../../parts/foot-map/shoe-drawing.tsx';
import { formatDate } from '../../parts/format.ts';
import { session, store, useStored } from '../../parts/state.ts';
import { ownWords, t, terms } from '../../words/index.ts';
import { thanksInWords } from '../../words/say-thanks.ts';
import { noteHeard } from './heard-read.ts';
import { feetTold } from './told.ts';
import '../../parts/foot-map/foot-map.css';
import '../own/own.css';

const Where = ({ zone, feet }: { readonly zone: ZoneCode; readonly feet: readonly Foot[] }) => {
  const { view } = zones[zone];
  const says = terms().zones[zone].name;
  const marked = new Map<ZoneCode, DrawnZone>([[zone, { level: 4, says, marked: true }]]);
  return (
    <div class="own-feet heard-feet">
      {feet.map((foot) => {
        const label = `${t().foot[foot]} ${t()[view]}`;
        return (
          <figure key={foot}>
            <ShoeDrawing view={view} foot={foot} zones={marked} label={label} />
            <figcaption class="small soft">{t().foot[foot]}</figcaption>
          </figure>
        );
      })}
    </div>
  );
};

export const ThanksPage = ({ id }: { readonly id: string }) => {
  const words = ownWords().heard;
  const member = session.value?.member;
  const found = useStored(
    async (from) => {
      const one = await from.get('thanks', id as RecordId);
      const own = one?.body.tester === member ? one : undefined;
      return { own, feet: own ? feetTold(await from.list('run'), own.body) : [] };
    },
    ['thanks', 'run'],
    [id, member],
  );
  const isThere = found?.own !== undefined;
  useEffect(() => {
    if (isThere) void noteHeard(store, 'thanks', id);
  }, [id, isThere]);
  const back = { href: '/', label: t().back };
  if (found === null) return <p class="soft">{t().loading}</p>;
  if (!found.own)
    return (
      <Page title={words.cameOf} back={back}>
        <p>{words.gone}</p>
      </Page>
    );
  const { body } = found.own;
  const said = thanksInWords(body, changeSpeaker());
  return (
    <Page title={said.title} back={back}>
      <p class="soft">{words.from(formatDate(body.at))}</p>
      <div class="heard-told">
        {body.zone && <Where zone={body.zone} feet={found.feet} />}
        <div class="stack">
          {said.told !== null && <p>{said.told}</p>}
          {said.lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
      </div>
      {said.words !== null && <blockquote class="heard-words">{said.words}</blockquote>}
      <a class="button button-quiet" href={`/test/${body.project}`}>
        {words.seeTest}
      </a>
      <div class="foot-bar">
        <LinkButton big href="/">
          {t().toToday}
        </LinkButton>
      </div>
    </Page>
  );
};
