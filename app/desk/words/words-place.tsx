/** What testers say: every remark of the test, searched and narrowed by the address, to be marked and quoted. */
import { useEffect, useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { toMetres } from '../../../core/units/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { settings } from '../../parts/settings.ts';
import { p, t } from '../../words/index.ts';
import { useWork, type PlaceProps } from '../desk-state.ts';
import { queryNow } from '../frame/query-now.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { IntoFinding } from './into-finding.tsx';
import { left, readLeft } from './left-mentions.ts';
import { markRemarks, type ChosenRemark } from './quote-writes.ts';
import { RemarkRow } from './remark-row.tsx';
import { WordFilterPart } from './word-filters.tsx';
import { wordFiltersIn, wordsAddress, type WordFilters } from './words-address.ts';
import './words.css';

/** So many remarks stand there first; each press then doubles them. */
const FIRST_ROWS = 8;

const Chosen = (
  props: PlaceProps & { readonly chosen: readonly ChosenRemark[]; readonly none: () => void },
) => {
  const { chosen, none, review } = props;
  const words = p().words;
  if (chosen.length === 0) return null;
  const mark = async () => {
    await markRemarks(chosen, review.project.id);
    none();
  };
  return (
    <div class="row no-print">
      <b>{words.chosen(chosen.length)}</b>
      {chosen.some(({ marks }) => marks.length === 0) && (
        <Button kind="quiet" onClick={() => void mark()}>
          {words.mark}
        </Button>
      )}
      <Button kind="quiet" onClick={none}>
        {words.chooseNone}
      </Button>
    </div>
  );
};

export const WordsPlace = (props: PlaceProps) => {
  const { review, records } = props;
  const words = p().words;
  const { id } = review.project;
  const links = linksOf(id);
  const { query, route } = useLocation();
  const filters = wordFiltersIn(query);
  const asked = JSON.stringify(filters);
  const unit = settings.value.distance;
  const [most, setMost] = useState(FIRST_ROWS);
  const [chosen, setChosen] = useState<readonly ChosenRemark[]>([]);
  useEffect(() => void readLeft(), []);
  useEffect(() => setMost(FIRST_ROWS), [asked]);
  const answer = useWork(
    (desk) => desk.words(id, { ...filters, most, left: left.value, unitM: toMetres(1, unit) }),
    records,
    [id, asked, most, left.value, unit],
  );
  // While the next rows are worked out the last ones stay, so that nothing jumps.
  const [shown, setShown] = useState(answer);
  useEffect(() => {
    if (answer) setShown(answer);
  }, [answer]);
  if (!shown) return <p class="soft">{t().loading}</p>;
  const { headline, slice } = shown;
  const change = (part: Partial<WordFilters>) =>
    route(wordsAddress(links.place('words'), { ...wordFiltersIn(queryNow()), ...part }), true);
  const none = () => setChosen([]);
  const rest = slice.found - slice.rows.length;
  return (
    <>
      <PlaceHead
        crumbs={[
          { words: p().frame.places.testers, href: links.place('testers') },
          { words: words.title },
        ]}
        headline={words.headline(headline)}
        sub={
          headline.case === 'none'
            ? words.nothingYet
            : headline.case === 'all'
              ? words.subAll
              : words.sub(slice.found, slice.all, slice.foundUntapped)
        }
      />
      {headline.case !== 'none' && (
        <div class="words-body">
          <WordFilterPart {...props} filters={filters} found={slice} change={change} />
          <section class="remarks" aria-label={words.list}>
            <Chosen {...props} chosen={chosen} none={none} />
            <ul class="plain-list">
              {slice.rows.map((remark) => (
                <RemarkRow
                  key={remark.id}
                  {...props}
                  remark={remark}
                  chosen={chosen.find((one) => one.id === remark.id) ?? null}
                  choose={(one) =>
                    setChosen((now) => [
                      ...now.filter(({ id: other }) => other !== remark.id),
                      ...(one ? [one] : []),
                    ])
                  }
                />
              ))}
            </ul>
            {rest > 0 && (
              <Button kind="quiet" onClick={() => setMost((now) => 2 * now)}>
                {words.more(Math.min(rest, most))}
              </Button>
            )}
          </section>
          <IntoFinding {...props} chosen={chosen} done={none} />
        </div>
      )}
    </>
  );
};
