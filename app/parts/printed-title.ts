/** What the page is called while it is printed: browsers put it into the paper's header and the PDF's name. */
import { useEffect } from 'preact/hooks';

/** Draws nothing: calls the page by this title while it is printed, and by its own again afterwards. */
export const PrintedTitle = ({ title }: { readonly title: string }) => {
  useEffect(() => {
    const own = document.title;
    const setTo = (text: string) => () => {
      document.title = text;
    };
    const [before, after] = [setTo(title), setTo(own)];
    window.addEventListener('beforeprint', before);
    window.addEventListener('afterprint', after);
    return () => {
      after();
      window.removeEventListener('beforeprint', before);
      window.removeEventListener('afterprint', after);
    };
  }, [title]);
  return null;
};
