/** Behind How sure?: the verdict on each round, item by item, with its figures and methods. */
import { SurvivalChart } from '../../parts/charts/survival-chart.tsx';
import { settings } from '../../parts/settings.ts';
import {
  isOutOfTolerance,
  type RoundInfluence,
  type Verdict as RoundVerdict,
} from '../../../core/review/index.ts';
import { d, listed, terms } from '../../words/index.ts';
import { influenceLines } from '../../words/say-waiting.ts';
import { itemInWords } from '../../words/say-verdict.ts';
import type { TabProps } from '../desk-state.ts';
import { speakerOf } from '../parts/speaker.ts';
import { Judged } from '../parts/judged.tsx';

export const VerdictFigures = (
  props: TabProps & {
    readonly verdicts: readonly RoundVerdict[];
    readonly influences: readonly RoundInfluence[] | null;
  },
) => {
  const words = d().verdict;
  return (
    <>
      {props.verdicts.toReversed().map((verdict) => (
        <OfRound
          records={props.records}
          review={props.review}
          verdict={verdict}
          influence={props.influences?.find(({ round }) => round === verdict.round)}
          key={verdict.round}
        />
      ))}
      <p>{words.how}</p>
      <p>{words.caution}</p>
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
        <p class="outside">{d().blueprint.outPairs(listed(out.map(({ code }) => code)))}</p>
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
