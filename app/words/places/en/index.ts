/** The desk's places, in English; one file a place. */
import { frame } from './frame.ts';

export const places = { frame };
