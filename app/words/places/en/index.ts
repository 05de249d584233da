/** The desk's places, in English; one file a place. */
import { frame } from './frame.ts';
import { sheet } from './sheet.ts';
import { shoe } from './shoe.ts';
import { shoes } from './shoes.ts';
import { verdict } from './verdict.ts';
import { wear } from './wear.ts';

export const places = { frame, sheet, shoe, shoes };
export const places = { frame, sheet, shoes, verdict, wear };
