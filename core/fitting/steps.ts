/** By how many millimetres may a place be off? What a fitter is offered: about the moves that are usual (common practice). */
import type { FitPlace } from '../foot/index.ts';

export const fitSteps: Readonly<Record<FitPlace, readonly number[]>> = {
  length: [3, 5, 8, 10],
  'toe-height': [1, 2, 3, 5],
  'toe-width': [1, 2, 3, 5],
  ball: [2, 4, 6, 8],
  instep: [2, 4, 6, 8],
  heel: [1, 2, 3, 5],
  collar: [2, 3, 5, 8],
};
