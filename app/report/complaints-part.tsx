/** Where it bothered, and what recurs: foot maps and the sentences behind each proven complaint. */
import { useId } from 'preact/hooks';
import { zones, type ComplaintKind, type FootView, type ZoneCode } from '../../core/foot/index.ts';
import type { Foot } from '../../core/records/index.ts';
import { isProven, type ZonesOfFeet } from '../../core/review/index.ts';
import { FootMap, zoneKey } from '../parts/foot-map/foot-map.tsx';
import { hatchId, Hatching } from '../parts/foot-map/hatching.tsx';
import { heatOfZones } from '../parts/foot-map/heat.ts';
import { percentOf } from '../words/figures.ts';
import {
  cellLines,
  cellTitle,
  evidenceName,
  lookLines,
  suspectLine,
} from '../words/say-complaint.ts';
import { painLines } from '../words/say-pain.ts';
import type { PartProps } from './document-props.ts';
import { joined, Lines, Say, type Languages, type Spoken } from './spoken.tsx';

/** One view of both feet; nobody asked is drawn otherwise than nobody reported. */
export const ReportMap = (
  props: PartProps & {
    readonly view: FootView;
    readonly zones: ZonesOfFeet;
    /** Outlined on both feet. */
    readonly marked?: ZoneCode;
    /** Testers who reported it once at least, as the tables beside it count, or twice. */
    readonly times?: 'once' | 'twice';
  },
) => {
  const { report, languages, view, zones: own, marked, times = 'once' } = props;
  const [{ speaker }] = languages;
  const phone = (word: 'left' | 'right' | 'sole' | 'upper') =>
    joined(languages, (spoken) => spoken.phone[word]);
  return (
    <FootMap
      view={view}
      mode="heat"
      heat={heatOfZones(own, report.round.complaints.asked.testers, view, times, (share) =>
        percentOf(share, speaker.number),
      )}
      {...(marked && {
        selected: new Set((['left', 'right'] as Foot[]).map((foot) => zoneKey(foot, marked))),
      })}
      names={(zone) => joined(languages, (spoken) => spoken.speaker.glossary.zones[zone].name)}
      labels={{
        left: phone('left'),
        right: phone('right'),
        sole: phone('sole'),
        upper: phone('upper'),
        // Read out in one language: that of the page.
        joined: languages[0].speaker.desk.joined,
        unasked: joined(languages, (spoken) => spoken.speaker.desk.complaints.unasked),
      }}
    />
  );
};

/** What the numbers of a map of one kind say, in words, foot by foot. */
export const MapKey = ({
  report,
  languages,
  view,
  zones: own,
}: PartProps & { readonly view: FootView; readonly zones: ZonesOfFeet }) => {
  const { testers: of } = report.round.complaints.asked;
  const told = (foot: Foot, { paper, speaker }: Spoken) =>
    speaker.desk.joined.of(
      paper.shoes[foot],
      own[foot].length === 0
        ? paper.mapNobody
        : speaker.desk.joined.names(
            own[foot]
              .filter(({ zone, testers }) => testers > 0 && zones[zone].view === view)
              .toSorted((a, b) => b.testers - a.testers)
              .map(({ zone, testers }) => paper.mapZone(paper.places[zone], testers, of)),
          ) || paper.mapNobody,
    );
  return (
    <p class="key">
      <Say
        in={languages}
        of={(spoken) =>
          spoken.paper.sentences(
            (['left', 'right'] as const).map((foot) =>
              spoken.speaker.desk.joined.sentence(told(foot, spoken)),
            ),
          )
        }
      />
    </p>
  );
};

const BOX = 'M0 0H56V28H0Z';
const levels = [0, 1, 2, 3, 4, 'unasked'] as const;

/** What colours and hatching mean, in words that may be as long as two languages need. */
export const ReportLegend = ({ languages }: { readonly languages: Languages }) => {
  const id = useId();
  const inWords = (level: (typeof levels)[number]): string =>
    joined(languages, ({ speaker: { desk } }) =>
      level === 'unasked' ? desk.complaints.unasked : (desk.complaints.levels[level] ?? ''),
    );
  return (
    <p class="legend">
      <span>{joined(languages, ({ speaker }) => `${speaker.desk.complaints.legend}:`)}</span>
      {levels.map((level) => (
        <span key={level}>
          <svg class="foot-map" viewBox="0 0 56 28" aria-hidden="true">
            <defs>
              <Hatching id={`${id}-${level}`} />
            </defs>
            <g class="foot-map-zone" data-level={level}>
              <path class="foot-map-area" d={BOX} />
              {level !== 0 && level !== 'unasked' && (
                <path
                  class="foot-map-hatch"
                  d={BOX}
                  fill={`url(#${hatchId(`${id}-${level}`, level)})`}
                />
              )}
              {level === 'unasked' && (
                <g class="foot-map-above">
                  <path class="foot-map-unasked-gap" d={BOX} />
                  <path class="foot-map-unasked" d={BOX} />
                </g>
              )}
            </g>
          </svg>
          {inWords(level)}
        </span>
      ))}
    </p>
  );
};

/** What a map of one kind, or of all, shows and of how many. */
export const MapTitle = (props: PartProps & { readonly kind: ComplaintKind | null }) => {
  const { asked } = props.report.round.complaints;
  return (
    <Say
      in={props.languages}
      of={({ words, speaker }) =>
        words.mapOf(
          props.kind === null
            ? speaker.desk.complaints.any
            : speaker.glossary.kinds[props.kind].name,
          asked.testers,
          asked.runs,
        )
      }
    />
  );
};

/** Upper and sole, over all kinds. */
export const MapsPart = (props: PartProps) => {
  const { report, languages } = props;
  return (
    <section>
      <h2>
        <Say in={languages} of={({ words }) => words.sections.maps} />
      </h2>
      <div class="whole">
        <p>
          <MapTitle {...props} kind={null} />
        </p>
        <div class="maps">
          <ReportMap {...props} view="upper" zones={report.zones} times="twice" />
          <ReportMap {...props} view="sole" zones={report.zones} times="twice" />
        </div>
        <ReportLegend languages={languages} />
      </div>
    </section>
  );
};

/** The answers to the question after pain. */
export const PainPart = ({ report, languages }: PartProps) => {
  const { pain } = report.round;
  return (
    <section>
      <h2>
        <Say in={languages} of={({ speaker }) => speaker.desk.pain.title} />
      </h2>
      <Lines
        in={languages}
        of={({ speaker }) => [
          ...(pain ? [speaker.desk.joined.sentence(evidenceName(pain, speaker))] : []),
          ...painLines(pain, speaker),
        ]}
      />
    </section>
  );
};

/** Every proven complaint with its evidence, and how many signs there are beside. */
export const ComplaintsPart = (props: PartProps) => {
  const { report, languages } = props;
  const { cells, asked } = report.round.complaints;
  const proven = cells.filter(isProven);
  const rest = cells.length - proven.length;
  return (
    <section>
      <h2>
        <Say in={languages} of={({ words }) => words.sections.recurring} />
      </h2>
      {proven.length === 0 && (
        <p>
          <Say
            in={languages}
            of={({ speaker: { desk } }) =>
              asked.runs === 0
                ? desk.complaints.nobodyAsked
                : cells.length === 0
                  ? desk.complaints.none
                  : desk.complaints.nothingProven
            }
          />
        </p>
      )}
      {proven.map((cell) => {
        const look = report.looks.find(
          (one) => one.cell.zone === cell.zone && one.cell.kind === cell.kind,
        );
        return (
          <section class="item" key={`${cell.zone} ${cell.kind}`}>
            <h3>
              <Say
                in={languages}
                of={({ speaker }) =>
                  speaker.desk.joined.aside(cellTitle(cell, speaker), evidenceName(cell, speaker))
                }
              />
            </h3>
            <Lines
              in={languages}
              of={({ speaker }) => [
                ...cellLines(cell, report.round.complaints, speaker),
                ...(look ? lookLines(look, speaker) : []),
                suspectLine(cell, speaker),
              ]}
            />
          </section>
        );
      })}
      {rest > 0 && proven.length > 0 && (
        <p>
          <Say in={languages} of={({ paper }) => paper.alsoReported} />
        </p>
      )}
      {rest > 0 && <Others {...props} />}
    </section>
  );
};

/** What was reported and is not proven: named, so that silence and weak signs stay apart. */
const Others = ({ report, languages }: PartProps) => (
  <div
    class="table-wrap"
    tabIndex={0}
    role="region"
    aria-label={joined(languages, ({ words }) => words.sections.recurring)}
  >
    <table>
      <thead>
        <tr>
          {(['zone', 'kind', 'proof', 'testers', 'runs'] as const).map((column) => (
            <th scope="col" key={column}>
              <Say in={languages} of={({ speaker }) => speaker.desk.complaints[column]} />
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {report.round.complaints.cells
          .filter((cell) => !isProven(cell))
          .map((cell) => (
            <tr key={`${cell.zone} ${cell.kind}`}>
              <th scope="row">
                <Say in={languages} of={({ speaker }) => speaker.glossary.zones[cell.zone].name} />
              </th>
              <td>
                <Say in={languages} of={({ speaker }) => speaker.glossary.kinds[cell.kind].name} />
              </td>
              <td>
                <Say in={languages} of={({ speaker }) => evidenceName(cell, speaker)} />
              </td>
              <td>{`${cell.testersOnce} / ${report.round.complaints.asked.testers}`}</td>
              <td>{`${cell.runs} / ${report.round.complaints.asked.runs}`}</td>
            </tr>
          ))}
      </tbody>
    </table>
  </div>
);
