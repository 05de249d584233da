/** Where it presses, rubs or gapes: tapped on the shoe, then what it is. "Nothing" is an answer of its own. */
import { useState } from 'preact/hooks';
import type { ZoneCode } from '../../../core/foot/index.ts';
import { fitSpots, type Foot } from '../../../core/records/index.ts';
import { Choice, Choices } from '../../parts/controls/controls.tsx';
import { FootMap, zoneKey } from '../../parts/foot-map/foot-map.tsx';
import { useReveal } from '../../parts/reveal.ts';
import { withSpot } from '../../drafts/fit-trial.ts';
import { clauses, fitWords, t, terms } from '../../words/index.ts';
import type { StepProps } from './step-props.ts';
import '../../parts/foot-map/foot-map.css';

const zoneName = (zone: ZoneCode): string => terms().zones[zone].name;

export const SpotsPart = ({ form, change }: StepProps) => {
  const words = fitWords().walking;
  const phone = t();
  const spots = form.spots ?? [];
  const [isOpen, setOpen] = useState(spots.length > 0);
  const [at, setAt] = useState<{ readonly foot: Foot; readonly zone: ZoneCode } | null>(null);
  const here = useReveal<HTMLDivElement>(at && zoneKey(at.foot, at.zone));
  const selected = new Set(spots.map(({ foot, zone }) => zoneKey(foot, zone)));
  if (at) selected.add(zoneKey(at.foot, at.zone));
  const answer = isOpen ? 'something' : form.spots === null ? null : 'nothing';
  return (
    <section class="stack" aria-label={words.spots}>
      <Choice
        label={words.spots}
        options={[
          { value: 'nothing', label: words.nothing },
          { value: 'something', label: words.something },
        ]}
        value={answer}
        onChange={(said) => {
          setOpen(said === 'something');
          setAt(null);
          change((now) => ({ ...now, spots: said === 'nothing' ? [] : null }));
        }}
      />
      {isOpen && (
        <FootMap
          view="upper"
          mode="pick"
          selected={selected}
          onPick={(foot, zone) => setAt({ foot, zone })}
          names={zoneName}
          labels={{
            ...{ left: phone.left, right: phone.right, sole: phone.sole, upper: phone.upper },
            joined: phone.joined,
          }}
        />
      )}
      <div ref={here}>
        {isOpen && at && (
          <Choices
            label={words.here(clauses(phone.foot[at.foot], zoneName(at.zone)))}
            options={fitSpots.map((value) => ({ value, label: terms().fitSpots[value] }))}
            values={
              new Set(
                spots
                  .filter(({ foot, zone }) => foot === at.foot && zone === at.zone)
                  .map(({ what }) => what),
              )
            }
            onToggle={(what) => change((now) => withSpot(now, { ...at, what }))}
          />
        )}
      </div>
    </section>
  );
};
