/** A part that comes in a file of its own once the screen around it stands. */
import { useEffect, useState } from 'preact/hooks';

/** What `load` brought; null until then, and where it cannot be fetched. @param load the same function at each drawing */
export const useLoaded = <T>(load: () => Promise<T>): T | null => {
  const [loaded, setLoaded] = useState<{ readonly part: T } | null>(null);
  useEffect(() => {
    load().then(
      (part) => setLoaded({ part }),
      () => undefined,
    );
  }, [load]);
  return loaded?.part ?? null;
};
