/** Is there room for a table? Below that, rows are cards (`list.css` says the same). */
import { useEffect, useState } from 'preact/hooks';

const query = () => window.matchMedia('(min-width: 48.01rem)');

export const useWide = (): boolean => {
  const [isWide, setWide] = useState(() => query().matches);
  useEffect(() => {
    const room = query();
    const tell = () => setWide(room.matches);
    room.addEventListener('change', tell);
    return () => room.removeEventListener('change', tell);
  }, []);
  return isWide;
};
