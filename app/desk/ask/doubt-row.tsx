/** One thing to ask: what makes one doubt, the ready-made question with what can be tapped, and one press that asks it. */
import { useState } from 'preact/hooks';
import type { ToAsk } from '../../../core/review/index.ts';
import { beginQuestion, offeredOptions, readQuestion } from '../../drafts/question.ts';
import { askAbout, tapInWords } from '../../parts/asked.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatNumber } from '../../parts/format.ts';
import { toInstant } from '../../parts/instant.ts';
import { settings } from '../../parts/settings.ts';
import { d, p, talkWords, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { sayOf } from '../frame/say.ts';
import { Mark } from '../frame/stamp.tsx';
import { OpenForm } from '../parts/form-parts.tsx';
import { AskForm } from './ask-form.tsx';
import { Reveals } from './reveals.tsx';
import { sendQuestion } from './send.ts';
import { aboutOf } from './about.ts';

type Props = TabProps & { readonly doubt: ToAsk };

const damageIn = ({ records, doubt }: Props): string => {
  const report = records['damage-report'].find(
    ({ revision }) => revision.id === doubt.about.record?.id,
  );
  return report ? terms().damages[report.body.what] : '?';
};

/** What makes one doubt, as a sentence. */
const doubtInWords = (props: Props): string => {
  const { doubt } = props;
  const words = p().ask.doubt;
  const say = sayOf(props);
  const tester = say.tester(doubt.tester);
  switch (doubt.kind) {
    case 'pain':
      return words.pain(tester, doubt.score);
    case 'damage':
      return words.damage(tester, damageIn(props));
    case 'odd-run':
      return words['odd-run'](tester, say.list(doubt.whys.map((why) => d().ask.oddity[why])));
    case 'early-sign':
      return words['early-sign'](
        tester,
        say.felt({ zone: doubt.zone, kind: doubt.complaint }),
        doubt.runs,
      );
    case 'outlying-score':
      return words['outlying-score'](
        tester,
        terms().attributes[doubt.attribute].name,
        formatNumber(doubt.score, 0),
        formatNumber(doubt.usual, 0),
      );
    case 'missing-answer':
      return words[doubt.missing](tester, doubt.runs);
    case 'silence':
      return words.silence(tester, doubt.days);
  }
};

/** Tells doubts apart. */
export const doubtKey = ({ kind, tester, about }: ToAsk): string =>
  JSON.stringify([kind, tester, about]);

const DANGER: ReadonlySet<ToAsk['kind']> = new Set(['pain', 'damage']);

/** @param isHere it stands on the page of what it is about */
export const DoubtRow = (props: Props & { readonly isHere?: boolean }) => {
  const { doubt, review, records, isHere = false } = props;
  const words = p().ask;
  const [isEditing, setEditing] = useState(false);
  const names = namesIn(review, records);
  const tester = names.tester(doubt.tester);
  const context = aboutOf(props, doubt);
  const pair = doubt.about.pair ? names.code(doubt.about.pair) : '';
  const say = (ask: ToAsk['asks'][number]) =>
    askAbout(ask, { run: doubt.run, pair, about: doubt.about });
  const draft = beginQuestion(doubt.tester, doubt.asks[0] ?? '', say);
  const taps = offeredOptions(draft).map((one) => tapInWords(one, doubt.asks[0]));
  const send = async () => {
    const read = readQuestion(draft, {
      ...{ project: review.project.id, about: doubt.about, say },
      ...{ at: toInstant(Date.now()), language: settings.value.language },
    });
    const trouble = read.ok ? await sendQuestion(read.body, tester) : d().trouble;
    if (trouble !== null) showToast({ text: trouble });
  };
  return (
    <li class={DANGER.has(doubt.kind) ? 'doubt doubt-danger' : 'doubt'}>
      <div class="doubt-what">
        <p>
          <strong>{doubtInWords(props)}</strong>
        </p>
        {!isHere && (
          <p class="small soft">
            <a href={context.href}>{context.words}</a>
          </p>
        )}
      </div>
      {!isHere && (
        <div class="doubt-mark">
          <Mark tone={DANGER.has(doubt.kind) ? 'danger' : 'plain'}>
            {talkWords().doubts[doubt.kind]}
          </Mark>
        </div>
      )}
      {isEditing ? (
        <div class="doubt-form">
          <OpenForm label={words.button(tester)} close={() => setEditing(false)} takesFocus>
            <AskForm
              records={records}
              review={review}
              of={{
                testers: [doubt.tester],
                about: () => doubt.about,
                run: doubt.run,
                first: doubt.asks,
              }}
              name={doubtKey(doubt)}
              close={() => setEditing(false)}
            />
          </OpenForm>
        </div>
      ) : (
        <>
          <div class="doubt-question">
            <p>{words.quoted(draft.words)}</p>
            {taps.length > 0 && <p class="small soft">{taps.join(' / ')}</p>}
            <Reveals {...props} tester={doubt.tester} words={draft.words} />
          </div>
          <div class="doubt-acts no-print">
            <Button aria-label={words.buttonName(tester, draft.words)} onClick={() => void send()}>
              {words.button(tester)}
            </Button>
            <Button
              kind="quiet"
              aria-label={words.editName(draft.words)}
              onClick={() => setEditing(true)}
            >
              {words.edit}
            </Button>
          </div>
        </>
      )}
    </li>
  );
};
