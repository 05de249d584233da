/** Something that is looked at now and then, under the list of pairs or testers. */
import type { ComponentChildren } from 'preact';
import { OnceOpened } from '../frame/once-opened.tsx';

export const Fold = (props: { readonly title: string; readonly children: ComponentChildren }) => (
  <OnceOpened title={props.title} bodyClass="people-fold">
    {props.children}
  </OnceOpened>
);
