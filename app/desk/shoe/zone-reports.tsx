/** What testers said of the zone, newest first: run, pair, kilometres, strength, their words and their photos. */
import type { ZoneLook, ZoneReport } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { formatDate, formatNumber } from '../../parts/format.ts';
import { PhotoRow } from '../../parts/photos/photo-view.tsx';
import { p, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { roundDistance } from '../frame/say.ts';

const Words = ({ report, look }: { readonly report: ZoneReport; readonly look: ZoneLook }) => {
  const words = p().shoe.zone;
  const { complaints, note } = report;
  const said = complaints.flatMap((one) => (one.words ? [one.words] : []));
  const quotes = said.length > 0 ? said : note === null ? [] : [note];
  const skin = [...new Set(complaints.flatMap((one) => (one.skin ? [words.skin[one.skin]] : [])))];
  const kinds =
    look.kind === null ? [...new Set(complaints.map(({ kind }) => terms().kinds[kind].name))] : [];
  return (
    <>
      {[...kinds, ...skin].length > 0 && (
        <span class="small">{[...kinds, ...skin].join(words.comma)} </span>
      )}
      {quotes.map((quote) => (
        <q key={quote}>{quote}</q>
      ))}
      {quotes.length + kinds.length + skin.length === 0 && (
        <span class="soft small">{words.noWords}</span>
      )}
    </>
  );
};

const Strength = ({ value }: { readonly value: number | null }) =>
  value === null ? null : (
    <span class="strength">
      <svg viewBox="0 0 60 8" preserveAspectRatio="none" aria-hidden="true">
        <path class="strength-ground" d="M0 0H60V8H0Z" />
        <path class="strength-bar" d={`M0 0H${6 * value}V8H0Z`} />
      </svg>{' '}
      {formatNumber(value, 0)}
    </span>
  );

const greatest = (values: readonly (number | undefined)[]): number | null => {
  const known = values.filter((value) => value !== undefined);
  return known.length === 0 ? null : Math.max(...known);
};

export const ZoneReports = (
  props: TabProps & { readonly look: ZoneLook; readonly onAll: () => void },
) => {
  const { review, records, look, onAll } = props;
  const words = p().shoe.zone;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  if (look.reports.length === 0) return null;
  const head = [words.tester, words.pair, words.onPair, words.from, words.strength, words.inWords];
  return (
    <section class="zone-reports" aria-label={words.words}>
      <h2>{words.words}</h2>
      <div class="table-wrap" tabIndex={0} role="region" aria-label={words.words}>
        <table class="place-table">
          <thead>
            <tr>
              {[words.run, ...head].map((one) => (
                <th scope="col" key={one}>
                  {one}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {look.reports.map((report) => {
              const { run, tester, pair, atMs, pairM, complaints } = report;
              const from = complaints.find(({ fromM }) => fromM !== undefined)?.fromM;
              return (
                <tr key={run}>
                  <th scope="row">
                    <a href={links.run(run)}>{formatDate(atMs)}</a>
                  </th>
                  <td>
                    <a href={links.tester(tester)}>{names.tester(tester)}</a>
                  </td>
                  <td>
                    <a href={links.pair(pair)}>{names.pair(pair)}</a>
                  </td>
                  <td>{roundDistance(pairM)}</td>
                  <td>{from === undefined ? '' : roundDistance(from)}</td>
                  <td>
                    <Strength value={greatest(complaints.map(({ severity }) => severity))} />
                  </td>
                  <td class="zone-words">
                    <Words report={report} look={look} />{' '}
                    <PhotoRow
                      photos={complaints.flatMap(({ photos }) => photos ?? [])}
                      label={words.photos(names.tester(tester))}
                    />
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      {look.allReports > look.reports.length && (
        <Button kind="quiet" onClick={onAll}>
          {words.allReports(look.allReports)}
        </Button>
      )}
    </section>
  );
};
