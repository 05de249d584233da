/** A document in a tree of its own, where neither its styles nor the app's touch the other. */
import { render, type ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

/**
 * Gives an element a tree of its own with these styles; the same tree where it has one.
 * @param styles CSS, as text
 */
export const ownTree = (host: HTMLElement, styles: string): ShadowRoot => {
  const root = host.shadowRoot ?? host.attachShadow({ mode: 'open' });
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(styles);
  root.adoptedStyleSheets = [sheet];
  return root;
};

/** Draws its children in such a tree: they look as in a file that has these styles and no others. */
export const OwnTree = (props: {
  readonly class?: string;
  readonly styles: string;
  readonly children: ComponentChildren;
}) => {
  const { styles, children } = props;
  const place = useRef<HTMLDivElement>(null);
  const tree = useRef<ShadowRoot | null>(null);
  useLayoutEffect(() => {
    tree.current = place.current && ownTree(place.current, styles);
    return () => {
      // What is drawn in it ends with it.
      if (tree.current) render(null, tree.current);
    };
  }, [styles]);
  useLayoutEffect(() => {
    if (tree.current) render(<>{children}</>, tree.current);
  });
  return <div class={props.class} ref={place} />;
};
