import { countPairs, countPanel, countRuns } from '../count.ts';

export const common = {
  title: 'Desk',
  phone: 'To the phone',
  projects: 'Projects',
  groupTitle: 'Group',
  onlyLeads: 'The desk is for leads. Your screens are on the phone side.',
  evidence: (p: number, t: number, haveRun: number, r: number, distance: string) =>
    `${countPairs(p)}, ${countPanel(t, haveRun)}, ${countRuns(r)}, ${distance}`,
  save: 'Save',
  add: 'Add',
  cancel: 'Cancel',
  wrongNumber: 'A number is missing or wrong.',
  mustBe: (least: string, most: string) => `Must be from ${least} to ${most}.`,
  missing: 'This is missing.',
  optional: (label: string, more: string | null) =>
    `${label} (optional${more === null ? '' : `; ${more}`})`,
  notACode: 'Only capitals, digits and hyphens, 12 at most, for example T07.',
  trouble: 'It was not saved. Nothing is lost: try again.',
  saved: 'Saved',
  kept: {
    fromBefore: 'You typed this earlier and did not save it.',
    afresh: 'Start afresh',
    dropped: 'What you had typed is gone.',
  },
  none: '–',
  workTrouble:
    'The log could not be reviewed. Nothing is lost: close this page and open it again. If that does not help, save the log as a file and tell your lead.',
  notPrinted: (left: number) => `${left} more are not shown here.`,
  more: (next: number, left: number) =>
    next === left ? `Show the other ${left}` : `Show ${next} more of ${left}`,
};
