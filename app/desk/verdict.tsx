/** Does each round hold for what its brief promises, item by item, and what would settle what is open? */
import { Button } from '../parts/controls/controls.tsx';
import { SurvivalChart } from '../parts/charts/survival-chart.tsx';
import { formatDistance } from '../parts/format.ts';
import { settings } from '../parts/settings.ts';
import {
  isOutOfTolerance,
  type RoundInfluence,
  type Verdict as RoundVerdict,
} from '../../core/review/index.ts';
import { d, t, terms } from '../words/index.ts';
import { influenceLines } from '../words/say-waiting.ts';
import { itemInWords } from '../words/say-wear.ts';
import { useWork, type TabProps } from './desk-state.ts';
import { speakerOf } from './speaker.ts';
import { Judged } from './judged.tsx';

export const Verdict = (props: TabProps) => {
  const { review, records } = props;
  const words = d().verdict;
  const verdicts = useWork((desk) => desk.verdicts(review.project.id), records, [
    review.project.id,
  ]);
  // It takes longer than the verdicts, which are shown meanwhile.
  const influences = useWork((desk) => desk.influences(review.project.id), records, [
    review.project.id,
  ]);
  const { name, brief } = review.project;
  if (!verdicts) return <p class="soft">{t().loading}</p>;
  if (verdicts.length === 0) return <p>{d().rounds.none}</p>;
  return (
    <>
      <div class="row row-apart">
        <p>{words.brief(name, formatDistance(brief.distanceM))}</p>
        <span class="no-print">
          <Button kind="quiet" onClick={() => window.print()}>
            {d().complaints.print}
          </Button>
        </span>
      </div>
      {brief.limits.length === 0 && (
        <p>
          {words.noLimits} <a href={`/desk/${review.project.id}/brief`}>{d().brief.edit}</a>
        </p>
      )}
      {verdicts.toReversed().map((verdict) => (
        <OfRound
          {...props}
          verdict={verdict}
          influence={influences?.find(({ round }) => round === verdict.round)}
          key={verdict.round}
        />
      ))}
      <p class="soft small">{words.how}</p>
      <p class="soft small">{words.caution}</p>
    </>
  );
};

const OfRound = (
  props: TabProps & { verdict: RoundVerdict; influence: RoundInfluence | undefined },
) => {
  const { review, verdict, influence } = props;
  const speaker = speakerOf(props);
  const items = verdict.items.map((item) => ({
    ...itemInWords(item, review.project.brief.distanceM, speaker),
    steps: item.what === 'structure' ? item.steps : [],
  }));
  const out = review.pairs.filter(
    ({ round, outOfTolerance }) => round === verdict.round && isOutOfTolerance(outOfTolerance),
  );
  return (
    <section class="sheet">
      <div class="row row-apart">
        <h2>{speaker.round(verdict.round)}</h2>
        <Word word={verdict.word} />
      </div>
      {influence &&
        influenceLines(influence, speaker).map((line) => (
          <p key={line} class={influence.decisive === null ? 'soft small' : ''}>
            {line}
          </p>
        ))}
      {out.length > 0 && (
        <p class="outside">{d().blueprint.outPairs(out.map(({ code }) => code).join(', '))}</p>
      )}
      <dl class="verdict">
        {items.map(({ title, word, lines, settle, steps }) => (
          <div key={title}>
            <dt>
              {title} <Word word={word} />
            </dt>
            <dd>
              {lines.map((line) => (
                <p key={line}>{line}</p>
              ))}
              {settle.length > 0 && (
                <details>
                  <summary class="button button-quiet">{d().verdict.settle}</summary>
                  <ul>
                    {settle.map((line) => (
                      <li key={line}>{line}</li>
                    ))}
                  </ul>
                </details>
              )}
              {steps.length > 0 && (
                <SurvivalChart
                  title={d().verdict.holding}
                  xTitle={d().bench.xTitle(settings.value.distance)}
                  yTitle={d().verdict.holdingShare}
                  eventName={d().verdict.cameApart}
                  steps={steps}
                />
              )}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
};

const Word = ({ word }: { word: RoundVerdict['word'] }) => (
  <Judged word={word}>{terms().holds[word]}</Judged>
);
