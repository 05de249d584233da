/** A sample that comes apart: reported on its own, and the pair is to be taken off now. */
import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { damages, type DamageReport, type Foot, type RecordId } from '../../core/records/index.ts';
import { Button, Choice, Notice, Page } from '../parts/controls/controls.tsx';
import { LimitedField } from '../parts/controls/limited-field.tsx';
import { showToast } from '../parts/controls/toast.tsx';
import { PhotoPicker } from '../parts/photos/photo-picker.tsx';
import { session, store } from '../parts/state.ts';
import { t, terms } from '../words/index.ts';
import { toInstant } from '../parts/instant.ts';

export const Damage = ({ pair }: { pair: string }) => {
  const words = t();
  const { route } = useLocation();
  const [what, setWhat] = useState<DamageReport['what'] | null>(null);
  const [foot, setFoot] = useState<Foot | null>(null);
  const [said, setSaid] = useState('');
  const [photos, setPhotos] = useState<readonly string[]>([]);
  const [trouble, setTrouble] = useState<string | null>(null);
  const report = async () => {
    if (!what) return setTrouble(words.damage.missing);
    const found = await store.get('pair', pair as RecordId);
    const tester = session.value?.member;
    if (!found || !tester) return setTrouble(words.log.unknownPair);
    const saved = await store.save('damage-report', {
      project: found.body.project,
      pair: found.revision.id,
      tester,
      at: toInstant(Date.now()),
      what,
      ...(foot && { foot }),
      ...(said.trim() !== '' && { words: said.trim() }),
      ...(photos.length > 0 && { photos: [...photos] }),
    });
    if (!saved.ok)
      return setTrouble(saved.why === 'storage-full' ? words.log.full : words.log.lost);
    showToast({ text: words.damage.saved });
    route('/', true);
  };
  return (
    <Page title={words.damage.title} back={{ href: '/', label: words.back }}>
      <Notice tone="danger">{words.damage.now}</Notice>
      <Choice
        label={words.damage.what}
        options={damages.map((value) => ({ value, label: terms().damages[value] }))}
        value={what}
        onChange={setWhat}
      />
      <Choice
        label={words.damage.which}
        options={[
          { value: 'left', label: words.left },
          { value: 'right', label: words.right },
        ]}
        value={foot}
        onChange={setFoot}
      />
      <LimitedField label={words.log.words} rows={3} most={4000} value={said} onInput={setSaid} />
      <PhotoPicker label={words.damage.title} photos={photos} onChange={setPhotos} />
      {trouble && (
        <Notice tone="danger" live>
          {trouble}
        </Notice>
      )}
      <Button kind="main" big onClick={() => void report()}>
        {words.save}
      </Button>
    </Page>
  );
};
