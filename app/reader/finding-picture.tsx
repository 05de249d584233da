/** What a finding shows, before any words on how sure it is: who felt it, where on the shoe, how it wears. */
import { zones } from '../../core/foot/index.ts';
import type { Finding, Foot } from '../../core/records/index.ts';
import { heatLevel } from '../parts/foot-map/heat.ts';
import { ShoeDrawing } from '../parts/foot-map/shoe-drawing.tsx';
import { proposeWords, t, terms } from '../words/index.ts';
import { placeName } from '../words/say-place.ts';
import { readerSpeaker } from './say-reader.ts';
import { WearPicture } from './wear-picture.tsx';
import '../parts/foot-map/foot-map.css';

type Complaint = NonNullable<NonNullable<Finding['evidence']>['complaint']>;

/** A shoe is named alone where the other one has less than half of its reports; judgement. */
const feetOf = (complaint: Complaint | undefined): Foot | 'both' => {
  if (!complaint) return 'both';
  const { left, right } = complaint;
  if (left > 2 * right) return 'left';
  return right > 2 * left ? 'right' : 'both';
};

export const FindingPicture = ({ body }: { readonly body: Finding }) => {
  const words = proposeWords();
  const { kind, zone, evidence } = body;
  const complaint = evidence?.complaint;
  const foot = feetOf(complaint);
  const drawn: readonly Foot[] = foot === 'both' ? ['left', 'right'] : [foot];
  const share =
    complaint && complaint.askedTesters > 0 ? complaint.testersOnce / complaint.askedTesters : 0;
  const about = kind && terms().kinds[kind].name;
  return (
    <>
      {complaint && (
        <p class="reader-answer">
          <b>
            {about !== undefined && zone ? `${words.zoneOf(terms().zones[zone].name, about)} ` : ''}
          </b>
          {words.counts(
            complaint.testersOnce,
            complaint.askedTesters,
            complaint.runs,
            complaint.askedRuns,
          )}
          {' · '}
          {words.onFoot[foot]}
        </p>
      )}
      {zone && (
        <figure class="reader-shoes">
          {drawn.map((one) => (
            <div key={one}>
              <ShoeDrawing
                foot={one}
                view={zones[zone].view}
                label={words.zoneOf(t().foot[one], terms().zones[zone].name)}
                zones={new Map([[zone, { level: heatLevel(share), marked: true }]])}
              />
              <span class="soft small">{t().foot[one]}</span>
            </div>
          ))}
          <figcaption>{terms().zones[zone].trade}</figcaption>
        </figure>
      )}
      {evidence?.place && !evidence.wear && (
        <p class="reader-answer">{placeName(evidence.place, readerSpeaker())}</p>
      )}
      {evidence?.wear && evidence.place && (
        <WearPicture place={evidence.place} wear={evidence.wear} />
      )}
    </>
  );
};
