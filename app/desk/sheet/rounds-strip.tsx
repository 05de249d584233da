/** The rounds side by side: stamp, how far their pairs have come against the brief, and what is so. */
import { roundCardLine, type RoundCardLine } from '../../../core/headlines/index.ts';
import { p, terms } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { roundDistance } from '../frame/say.ts';
import { Stamp } from '../frame/stamp.tsx';
import type { SheetRound } from '../worker/sheet-answers.ts';

const BAR = 6;

const Bars = (props: {
  readonly round: SheetRound;
  readonly briefM: number;
  readonly says: string;
}) => {
  const { round, briefM, says } = props;
  const most = Math.max(briefM, round.farthestM);
  const height = Math.max(1, round.bars.length) * BAR;
  return (
    <svg
      class="round-bars"
      viewBox={`0 0 100 ${height}`}
      preserveAspectRatio="none"
      style={{ blockSize: `${height}px` }}
      role="img"
      aria-label={says}
    >
      {round.bars.map(({ pair, totalM, stopped }, at) => (
        <path
          key={pair}
          class={stopped ? 'round-bar round-bar-stopped' : 'round-bar'}
          d={`M0,${at * BAR + 2}H${(100 * totalM) / most}`}
        />
      ))}
      <path class="round-brief" d={`M${(100 * briefM) / most},0V${height}`} />
    </svg>
  );
};

/** The card's line of complaints. @param asked testers of the round who were asked */
const lineInWords = (line: RoundCardLine, asked: number): string => {
  const words = p().sheet;
  if (line.case === 'nobody-ran') return words.nobodyRan;
  if (line.case === 'nothing') return words.nothingRecurs;
  const { kind, zone, testersOnce, runs } = line.cell;
  const felt = p().frame.feltTitle(terms().kinds[kind].name, terms().zones[zone].name);
  if (line.case === 'early') return words.early(felt, runs);
  return words.recurs(felt, line.sure, testersOnce, asked);
};

export const RoundsStrip = (props: TabProps & { readonly rounds: readonly SheetRound[] }) => {
  const { review, rounds } = props;
  const words = p().sheet;
  const links = linksOf(review.project.id);
  const briefM = review.project.brief.distanceM;
  return (
    <ul class="rounds-strip" aria-label={words.rounds}>
      {rounds.map((round) => {
        const reviewed = review.rounds.find(({ id }) => id === round.id);
        if (!reviewed) return null;
        const farthest = roundDistance(round.farthestM);
        const brief = roundDistance(briefM);
        return (
          <li key={round.id} class="round-card">
            <p class="round-head">
              <a href={links.round(round.id)}>{reviewed.name}</a>
              <Stamp word={round.stamp} />
              <span class="soft small">{words.farthest(farthest, brief)}</span>
            </p>
            <Bars
              round={round}
              briefM={briefM}
              says={words.roundBars(reviewed.name, p().frame.stamps[round.stamp], farthest, brief)}
            />
            <p class="small">
              {lineInWords(
                roundCardLine(reviewed.complaints.cells, round.runs),
                reviewed.complaints.asked.testers,
              )}
            </p>
          </li>
        );
      })}
    </ul>
  );
};
