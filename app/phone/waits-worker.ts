/** The worker that looks through a file: reviewing whole projects stays out of the page, and off its first load. */
import { expose } from 'comlink';
import { newlyWaiting } from '../../core/review/index.ts';

const work = { newlyWaiting };
export type WaitsWork = typeof work;
expose(work);
