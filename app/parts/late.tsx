/** A part of a screen that comes in a file of its own: where that cannot be fetched, the rest of the screen works on. */
import type { FunctionComponent } from 'preact';
import { lazy } from 'preact-iso';
import { t } from '../words/index.ts';
import { Notice } from './controls/controls.tsx';

const NotFetched = () => <Notice tone="warn">{t().partNotFetched}</Notice>;

export const latePart = <P,>(load: () => Promise<FunctionComponent<P>>): FunctionComponent<P> =>
  lazy(() => load().catch((): FunctionComponent<P> => NotFetched));
