/** Hand-outs of a pair or of a tester, latest first: their dates can be put right, and that can be undone. */
import { useState } from 'preact/hooks';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { formatDate, formatDateTime } from '../../parts/format.ts';
import { p } from '../../words/index.ts';
import {
  draftOfHandOut,
  isOutNow,
  readHandOutDraft,
  readReturn,
  type HandOutTrouble,
} from '../../drafts/hand-out.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { DateTimeField, OpenForm, SmallForm } from '../parts/form-parts.tsx';
import { linksOf } from '../frame/route.ts';
import { BlindField } from '../pairs/hand-out-fields.tsx';
import { saveSeveral } from '../parts/save-several.ts';
import { Some } from '../parts/some.tsx';

const troubleInWords = (trouble: HandOutTrouble): string => {
  const words = p().pairs.hands;
  switch (trouble.why) {
    case 'missing':
      return words.missing;
    case 'not-yet':
      return p().pairs.inFuture;
    case 'before-from':
      return words.beforeFrom;
    case 'held':
      return words.held(
        formatDateTime(trouble.fromMs),
        trouble.untilMs === null ? null : formatDateTime(trouble.untilMs),
      );
  }
};

const EditDates = (
  props: TabProps & { readonly of: RecordOf<'hand-out'>; readonly close: () => void },
) => {
  const { records, of, close } = props;
  const words = p().pairs.hands;
  const [draft, setDraft] = useState(() => draftOfHandOut(of.body));
  /** Saving was tried: from then on each field says what is wrong with it. */
  const [tried, setTried] = useState(false);
  const change = (part: Partial<typeof draft>) => setDraft((now) => ({ ...now, ...part }));
  const read = readHandOutDraft(draft, of, records['hand-out'], Date.now());
  const save = async () => {
    setTried(true);
    if (!read.ok) return '';
    const trouble = await saveSeveral(
      'hand-out',
      [{ id: of.revision.id, body: read.body }],
      [of],
      words.saved,
    );
    if (trouble === null) close();
    return trouble;
  };
  const field = (name: 'from' | 'until') => {
    const wrong = tried && !read.ok ? read.troubles.find((one) => one.field === name) : undefined;
    return {
      label: words[name],
      value: draft[name],
      onInput: (typed: string) => change({ [name]: typed }),
      error: wrong && troubleInWords(wrong),
    };
  };
  return (
    <SmallForm save={save}>
      <div class="field-row">
        <DateTimeField {...field('from')} />
        <DateTimeField {...field('until')} hint={words.untilHint} optional />
      </div>
      <BlindField value={draft.blind} onChange={(blind) => change({ blind })} />
    </SmallForm>
  );
};

const Row = (
  props: TabProps & { readonly of: RecordOf<'hand-out'>; readonly side: 'pair' | 'tester' },
) => {
  const { review, records, of, side } = props;
  const words = p().pairs.hands;
  const [editing, setEditing] = useState(false);
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const { body } = of;
  const [pair, tester] = [names.code(body.pair), names.tester(body.tester)];
  const label = words.editOf(pair, tester);
  const takeBack = async () => {
    const read = readReturn(null, [of], Date.now());
    if (read.ok) await saveSeveral('hand-out', read.returned, [of], p().pairs.tookBack(1));
  };
  return (
    <li>
      <div class="hand-out">
        <span>
          {side === 'pair' ? (
            <a href={links.tester(body.tester)}>{tester}</a>
          ) : (
            <a href={links.pair(body.pair)}>{pair}</a>
          )}{' '}
          {words.span(formatDate(body.from), body.until ? formatDate(body.until) : null)}{' '}
          <span class="soft small">{body.blind ? words.blind : words.notBlind}</span>
        </span>
        <span class="row no-print">
          <Button kind="quiet" aria-label={label} onClick={() => setEditing(true)}>
            {words.edit}
          </Button>
          {isOutNow(body, review.nowMs) && (
            <Button
              kind="quiet"
              aria-label={words.backOf(pair, tester)}
              onClick={() => void takeBack()}
            >
              {words.back}
            </Button>
          )}
        </span>
      </div>
      {editing && (
        <OpenForm label={label} close={() => setEditing(false)}>
          <EditDates {...props} close={() => setEditing(false)} />
        </OpenForm>
      )}
    </li>
  );
};

/** @param of the pair or the tester; @param side which of the two it is */
export const HandOutList = (
  props: TabProps & { readonly of: RecordId; readonly side: 'pair' | 'tester' },
) => {
  const { records, review, of, side } = props;
  const words = p().pairs.hands;
  const own = records['hand-out']
    .filter(({ body }) => body.project === review.project.id && body[side] === of)
    .sort((a, b) => Date.parse(b.body.from) - Date.parse(a.body.from));
  return (
    <section aria-label={words.title}>
      <h2>{words.title}</h2>
      {own.length === 0 ? (
        <p class="soft">{words.none}</p>
      ) : (
        <ul class="plain-list">
          <Some of={own} step={8}>
            {(one) => <Row key={one.revision.id} {...props} of={one} />}
          </Some>
        </ul>
      )}
    </section>
  );
};
