/** After the first saved run: put the app on the home screen. Says so once, and never again once it was declined. */
import { useState } from 'preact/hooks';
import { Button, LinkButton, Notice } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { useStored } from '../../parts/state.ts';
import { ownWords } from '../../words/index.ts';
import { canPrompt, decline, isInstalled, promptInstall, wasDeclined } from './install.ts';

export const InstallCard = () => {
  const words = ownWords().install;
  const declined = useStored(wasDeclined, []);
  const [gone, setGone] = useState(isInstalled);
  if (gone || declined !== false) return null;
  const leave = () => {
    setGone(true);
    void decline();
  };
  const install = async () => {
    if (!(await promptInstall())) return leave();
    setGone(true);
    showToast({ text: words.done });
  };
  return (
    <Notice>
      <h2>{words.title}</h2>
      <p>{words.why}</p>
      <div class="row">
        {canPrompt() ? (
          <Button onClick={() => void install()}>{words.now}</Button>
        ) : (
          <LinkButton href="/install">{words.how}</LinkButton>
        )}
        <Button kind="quiet" onClick={leave}>
          {words.later}
        </Button>
      </div>
    </Notice>
  );
};
