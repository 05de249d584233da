/** Slips to print: one for each pair that goes out, with whose it is, from when, and a square that opens its log. */
import { useState } from 'preact/hooks';
import { byCode } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { formatDate, formatDay, formatSize } from '../../parts/format.ts';
import { toLocalDay } from '../../parts/instant.ts';
import { d, p } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { PlaceHead, type Crumb } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { SelectField } from '../parts/form-parts.tsx';
import { Some } from '../parts/some.tsx';
import { SquareCode } from '../parts/square-code.tsx';
import { datedPlaces, slipsOf, type DatedPlace } from './plan-facts.ts';

/** More slips than this at once stall the screen; a printer takes them a day at a time. */
const AT_A_TIME = 120;

export const crumbsOfPlan = ({ review }: TabProps, here: string): readonly Crumb[] => {
  const links = linksOf(review.project.id);
  return [
    { words: p().frame.places.testers, href: links.place('testers') },
    { words: p().plan.name, href: links.place('plan') },
    { words: here },
  ];
};

/** It goes into the tester's hands, so it holds what that tester may know: never the round. */
const Slip = ({ of, ...tab }: TabProps & { readonly of: DatedPlace }) => {
  const { records, review } = tab;
  const words = p().plan.slips;
  const names = namesIn(review, records);
  const code = names.code(of.place.pair);
  const pair = records.pair.find(({ revision }) => revision.id === of.place.pair)?.body;
  const tester = records.tester.find(({ revision }) => revision.id === of.place.tester)?.body;
  return (
    <li class="slip">
      <div class="slip-says">
        <strong class="slip-code">{words.pair(code)}</strong>
        {pair && <span>{words.size(formatSize(pair.sizeMm))}</span>}
        <span>{words.for([tester?.code, tester?.name].filter(Boolean).join(' '))}</span>
        <span>{words.from(formatDate(of.fromMs), formatDate(of.untilMs))}</span>
        <span class="slip-scan">{words.scan}</span>
      </div>
      <SquareCode address={`${location.origin}/pair/${encodeURIComponent(code)}`} />
    </li>
  );
};

export const SlipsPage = (props: TabProps) => {
  const { records, review } = props;
  const words = p().plan.slips;
  const [day, setDay] = useState<string>('all');
  const plan = records['hand-out-plan']
    .filter(({ body }) => body.project === review.project.id)
    .sort((a, b) => Date.parse(b.body.at) - Date.parse(a.body.at))[0];
  const places = plan ? slipsOf(datedPlaces(plan.body, records, review.nowMs), review.nowMs) : [];
  const names = namesIn(review, records);
  const days = [...new Set(places.map(({ fromMs }) => toLocalDay(fromMs)))];
  const shown = places
    .filter(({ fromMs }) => day === 'all' || toLocalDay(fromMs) === day)
    .map((one) => ({ one, code: names.code(one.place.pair) }))
    .sort((a, b) => a.one.fromMs - b.one.fromMs || byCode(a, b))
    .map(({ one }) => one);
  return (
    <>
      <PlaceHead
        crumbs={crumbsOfPlan(props, words.name)}
        headline={
          !plan ? words.noPlan : shown.length === 0 ? words.none : words.title(shown.length)
        }
        sub={words.sub}
      />
      {shown.length > 0 && (
        <div class="row no-print slips-tools">
          <SelectField
            label={words.day}
            value={day}
            options={[
              { value: 'all', label: words.allDays },
              ...days.map((one) => ({ value: one, label: formatDay(one) })),
            ]}
            onChange={setDay}
          />
          <Button kind="main" onClick={() => window.print()}>
            {words.print}
          </Button>
        </div>
      )}
      <ul class="slips on-white" aria-label={d().joined.of(words.name, String(shown.length))}>
        <Some of={shown} step={AT_A_TIME}>
          {(one) => <Slip key={`${one.place.tester}${one.place.pair}`} {...props} of={one} />}
        </Some>
      </ul>
    </>
  );
};
