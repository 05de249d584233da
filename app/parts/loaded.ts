/** A part that comes in a file of its own once the screen around it stands. */
import { useEffect, useState } from 'preact/hooks';

/** A page in the background draws nothing. */
const UNSEEN_MS = 1000;

/** Resolves once what is drawn now is on the screen: what can wait must not compete with it. */
export const onceShown = (): Promise<void> =>
  new Promise((done) => {
    requestAnimationFrame(() => setTimeout(done));
    setTimeout(done, UNSEEN_MS);
  });

/**
 * What `load` brought; null until then, and where it cannot be fetched.
 * @param load the same function at each drawing
 * @param ready whether the screen says already what it is there for; the file is fetched once that is shown
 */
export const useLoaded = <T>(load: () => Promise<T>, ready = true): T | null => {
  const [loaded, setLoaded] = useState<{ readonly part: T } | null>(null);
  useEffect(() => {
    if (!ready) return;
    onceShown()
      .then(load)
      .then(
        (part) => setLoaded({ part }),
        () => undefined,
      );
  }, [load, ready]);
  return loaded?.part ?? null;
};

/** Whether the screen stands: false while it is drawn for the first time. */
export const useShown = (): boolean => {
  const [isShown, setShown] = useState(false);
  useEffect(() => void onceShown().then(() => setShown(true)), []);
  return isShown;
};
