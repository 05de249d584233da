/**
 * Where does a fitter say tight, right or loose? From the toes to the heel, as fit trials of running shoes ask it
 * (common practice, no source). Each has a good middle: `little` is too little of what is named, `much` too much. Of the
 * room in the shoe that is too short, low or tight, and too long, high or loose; of the collar, too low and too high.
 */
export const fitPlaces = [
  'length',
  'toe-height',
  'toe-width',
  'ball',
  'instep',
  'heel',
  'collar',
] as const;
export type FitPlace = (typeof fitPlaces)[number];
