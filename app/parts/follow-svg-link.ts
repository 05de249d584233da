/** A press on a link within a drawing stays in the app: the router follows only links of the page's own kind. */
import { useLocation } from 'preact-iso';

/** For `onClick` of whatever holds the drawing. */
export const useFollowSvgLink = (): ((event: MouseEvent) => void) => {
  const { route } = useLocation();
  return (event) => {
    const { target, button, ctrlKey, metaKey, altKey, shiftKey } = event;
    if (button !== 0 || ctrlKey || metaKey || altKey || shiftKey || event.defaultPrevented) return;
    const link = target instanceof SVGElement ? target.closest('a') : null;
    const href = link instanceof SVGElement ? link.getAttribute('href') : null;
    if (href === null) return;
    event.preventDefault();
    route(href);
  };
};
