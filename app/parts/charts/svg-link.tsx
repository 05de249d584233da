/**
 * A link around a mark of a drawing. The router follows links of the page alone, not those of an SVG, which would load
 * the whole app anew. A reader's tree and the keyboard find the same links in the drawing's table.
 */
import type { ComponentChildren } from 'preact';
import { useLocation } from 'preact-iso';

export const SvgLink = (props: {
  readonly href: string;
  /** Shown while the pointer rests on it. */
  readonly title: string;
  readonly children: ComponentChildren;
}) => {
  const { route } = useLocation();
  return (
    <a
      href={props.href}
      tabIndex={-1}
      onClick={(event) => {
        if (event.ctrlKey || event.metaKey || event.shiftKey || event.button !== 0) return;
        event.preventDefault();
        route(props.href);
      }}
    >
      <title>{props.title}</title>
      {props.children}
    </a>
  );
};
