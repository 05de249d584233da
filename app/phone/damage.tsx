/** A sample that comes apart: reported on its own, and the pair is to be taken off now. Seen, corrected, taken back. */
import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import {
  damages,
  editBody,
  type DamageReport,
  type Foot,
  type RecordId,
  type RecordOf,
} from '../../core/records/index.ts';
import { Button, Choice, Notice, Page } from '../parts/controls/controls.tsx';
import { LimitedField } from '../parts/controls/limited-field.tsx';
import { showToast } from '../parts/controls/toast.tsx';
import { toInstant } from '../parts/instant.ts';
import { PhotoPicker } from '../parts/photos/photo-picker.tsx';
import { session, store, useStored } from '../parts/state.ts';
import { careWords, t, terms } from '../words/index.ts';
import { takeSharedPhoto } from './own/shared-photo.ts';

interface Subject {
  readonly pair: RecordOf<'pair'>;
  /** The report that is corrected; null: a new one. */
  readonly before: RecordOf<'damage-report'> | null;
}

const Form = ({ pair, before }: Subject) => {
  const words = t();
  const { damage } = careWords();
  const { route } = useLocation();
  const [what, setWhat] = useState<DamageReport['what'] | null>(before?.body.what ?? null);
  const [foot, setFoot] = useState<Foot | null>(before?.body.foot ?? null);
  const [said, setSaid] = useState(before?.body.words ?? '');
  const [photos, setPhotos] = useState<readonly string[]>(
    () => before?.body.photos ?? [takeSharedPhoto() ?? []].flat(),
  );
  const [asked, setAsked] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const isMissing = asked && what === null;
  const report = async () => {
    setAsked(true);
    const tester = before?.body.tester ?? session.value?.member;
    if (!what || !tester) {
      requestAnimationFrame(() => document.querySelector<HTMLElement>('[aria-invalid]')?.focus());
      return;
    }
    const told = {
      what,
      foot: foot ?? undefined,
      words: said.trim() === '' ? undefined : said.trim(),
      photos: photos.length === 0 ? undefined : [...photos],
    };
    const at = toInstant(Date.now());
    const started = { project: pair.body.project, pair: pair.revision.id, tester, at, what };
    const body = editBody<'damage-report'>(before?.body ?? started, told);
    const saved = await store.save('damage-report', body, before?.revision.id);
    if (!saved.ok)
      return setTrouble(saved.why === 'storage-full' ? words.log.full : words.log.lost);
    showToast({ text: before ? damage.corrected : damage.saved });
    route('/', true);
  };
  const takeBack = async ({ revision }: RecordOf<'damage-report'>) => {
    if (!window.confirm(damage.takeBackAsk)) return;
    if (!(await store.eraseForGood(revision.id)).ok) return setTrouble(words.log.lost);
    showToast({ text: damage.takenBack });
    route('/', true);
  };
  return (
    <form
      class="stack"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void report();
      }}
    >
      <Notice tone="danger">{damage.now}</Notice>
      <Choice
        label={damage.what}
        options={damages.map((value) => ({ value, label: terms().damages[value] }))}
        value={what}
        onChange={setWhat}
      />
      {isMissing && (
        <p class="field-error" role="alert" tabIndex={-1} aria-invalid>
          {damage.missing}
        </p>
      )}
      <Choice
        label={damage.which}
        options={[
          { value: 'left', label: words.left },
          { value: 'right', label: words.right },
        ]}
        value={foot}
        onChange={setFoot}
      />
      <LimitedField label={words.log.words} rows={3} most={4000} value={said} onInput={setSaid} />
      <PhotoPicker label={damage.title} photos={photos} onChange={setPhotos} />
      {before && (
        <div class="row">
          <Button kind="danger" onClick={() => void takeBack(before)}>
            {damage.takeBack}
          </Button>
        </div>
      )}
      {trouble && (
        <Notice tone="danger" live>
          {trouble}
        </Notice>
      )}
      <div class="foot-bar">
        <Button kind="main" big submit>
          {words.save}
        </Button>
      </div>
    </form>
  );
};

/** A new report about `pair`, or the one that `report` names. */
export const Damage = (props: { readonly pair: string; readonly report?: string }) => {
  const words = t();
  const { damage } = careWords();
  const subject = useStored(
    async (from) => ({
      pair: await from.get('pair', props.pair as RecordId),
      before: props.report ? await from.get('damage-report', props.report as RecordId) : null,
    }),
    [],
    [props.pair, props.report],
  );
  return (
    <Page
      title={props.report ? damage.titleChange : damage.title}
      back={{ href: '/', label: words.back }}
      aside={
        subject?.pair && (
          <span class="soft">
            {words.log.pair} <strong>{subject.pair.body.code}</strong>
          </span>
        )
      }
    >
      {subject === null ? (
        <p class="soft">{words.loading}</p>
      ) : subject.pair === null ? (
        <p>{words.log.unknownPair}</p>
      ) : props.report && subject.before === null ? (
        <p>{damage.gone}</p>
      ) : (
        <Form pair={subject.pair} before={subject.before} />
      )}
    </Page>
  );
};
