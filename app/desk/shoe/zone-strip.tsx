/** Who felt it, and when: a row for each tester, a dot for each run that reported it along the kilometres of the pair. */
import type { Metres } from '../../../core/units/index.ts';
import { fromMetres, toMetres } from '../../../core/units/index.ts';
import type { ZoneDot, ZoneLook, ZoneRound } from '../../../core/review/index.ts';
import { niceTicks } from '../../parts/charts/ticks.ts';
import { formatDate, formatNumber } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { p, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { Picture } from '../frame/picture.tsx';
import { linksOf } from '../frame/route.ts';
import { roundDistance } from '../frame/say.ts';

const MIDDLE = 11;
const radiusOf = ({ severity }: ZoneDot): number => 3 + 0.4 * (severity ?? 2);

const Dots = (props: {
  readonly dots: readonly ZoneDot[];
  readonly x: (pairM: Metres) => string;
  readonly hrefOf: (dot: ZoneDot) => string;
  readonly says: (dot: ZoneDot) => string;
}) => {
  const { dots, x, hrefOf, says } = props;
  return (
    <>
      {dots.map((dot) =>
        dot.felt === null ? (
          <line
            key={dot.run}
            class="strip-silent"
            x1={x(dot.pairM)}
            x2={x(dot.pairM)}
            y1={MIDDLE - 3}
            y2={MIDDLE + 3}
          />
        ) : (
          // The list below holds the same links for keyboard and screen reader.
          <a key={dot.run} href={hrefOf(dot)} tabindex={-1}>
            <circle
              class={dot.felt === 'here' ? 'strip-felt' : 'strip-other'}
              cx={x(dot.pairM)}
              cy={MIDDLE}
              r={radiusOf(dot)}
            >
              <title>{says(dot)}</title>
            </circle>
          </a>
        ),
      )}
    </>
  );
};

const Head = (props: TabProps & { readonly round: ZoneRound; readonly most: boolean }) => {
  const { round, review, records, most } = props;
  const words = p().shoe.zone;
  const counts = words.counts(round.runs, round.askedRuns, round.testers, round.askedTesters);
  return (
    <div class="strip-head">
      <a href={linksOf(review.project.id).round(round.round)}>
        {namesIn(review, records).round(round.round)}
      </a>
      {round.layers !== null && <span class="soft small"> {words.layers(round.layers)}</span>}
      <div class="small">
        {round.askedRuns === 0 ? p().shoe.nobodyAsked : most ? <b>{counts}</b> : counts}
      </div>
    </div>
  );
};

export const ZoneStrip = (props: TabProps & { readonly look: ZoneLook }) => {
  const { review, records, look } = props;
  const words = p().shoe.zone;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const unit = settings.value.distance;
  // Where every run was the first of its pair the axis still goes somewhere.
  const ticks = niceTicks(0, Math.max(1, fromMetres(look.farthestM, unit)), 3);
  const end = toMetres(ticks.at(-1) ?? 1, unit);
  const x = (pairM: Metres) => `${((100 * pairM) / end).toFixed(2)}%`;
  const most = Math.max(...look.rounds.map(({ runs }) => runs));
  const says = (tester: string) => (dot: ZoneDot) =>
    words.dot(
      tester,
      formatDate(dot.atMs),
      roundDistance(dot.pairM),
      dot.severity === null ? '' : words.severity(dot.severity),
    );
  const felt = look.kind === null ? p().shoe.anything : terms().kinds[look.kind].name;
  return (
    <Picture title={words.who} says={words.says(felt, terms().zones[look.zone].name)}>
      <p class="strip-key small soft" aria-hidden="true">
        {(['silent', 'here', 'other'] as const).map((one) => (
          <span key={one}>
            <svg class="strip-mark" viewBox="0 0 22 22">
              {one === 'silent' ? (
                <line class="strip-silent" x1="11" x2="11" y1="8" y2="14" />
              ) : (
                <circle
                  class={one === 'here' ? 'strip-felt' : 'strip-other'}
                  cx="11"
                  cy="11"
                  r="5"
                />
              )}
            </svg>{' '}
            {words.legend[one]}
          </span>
        ))}
      </p>
      <div class="strips">
        {look.rounds.map((round, at) => (
          <section class="strip-round" key={round.round} aria-label={names.round(round.round)}>
            <Head {...props} round={round} most={round.runs > 0 && round.runs === most} />
            <ul class="plain-list">
              {look.rows.map(({ tester, rounds }) => {
                const { dots, asked } = rounds[at] ?? { dots: [], asked: 0 };
                const told = dots.filter((dot) => dot.felt !== null).length;
                const code = names.tester(tester);
                return (
                  <li key={tester} class={dots.length === 0 ? 'strip strip-empty' : 'strip'}>
                    <a class="small" href={links.tester(tester)}>
                      {code}
                    </a>
                    {dots.length === 0 ? (
                      <span class="small soft">{words.notWorn}</span>
                    ) : (
                      <>
                        <span class="hidden-words">{words.row(code, told, asked)}</span>
                        <svg aria-hidden="true" height={2 * MIDDLE}>
                          {ticks.map((tick) => (
                            <line
                              key={tick}
                              class="strip-grid"
                              x1={x(toMetres(tick, unit))}
                              x2={x(toMetres(tick, unit))}
                              y1="0"
                              y2={2 * MIDDLE}
                            />
                          ))}
                          <Dots
                            dots={dots}
                            x={x}
                            hrefOf={(dot) => links.run(dot.run)}
                            says={says(code)}
                          />
                        </svg>
                      </>
                    )}
                  </li>
                );
              })}
            </ul>
            <p class="strip-axis small soft" aria-hidden="true">
              {ticks.map((tick, place) => (
                <span key={tick}>
                  {formatNumber(tick, 0)}
                  {place === ticks.length - 1 && ` ${unit}`}
                </span>
              ))}
            </p>
          </section>
        ))}
      </div>
    </Picture>
  );
};
