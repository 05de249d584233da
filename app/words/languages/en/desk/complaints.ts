import { countRuns, countTesters } from '../count.ts';

export const complaints = {
  round: 'Round',
  any: 'Any complaint',
  legend: 'Share of the testers asked',
  levels: ['none', 'up to 10 %', 'up to 25 %', 'up to 50 %', 'more'],
  savePicture: (form: string) => `Save the map as ${form}`,
  print: 'Print',
  nothingProven: 'Nothing is proven to recur in this round.',
  all: 'All reported complaints',
  unreported: {
    complaint: (word: string, asked: number, upTo: string, chance: string) =>
      `Every other complaint: ${word} in ${countRuns(asked)}; up to ${upTo} of testers may still have it (95 %). If half of the testers had one in a fifth of their runs, a test would be this silent about it in ${chance} of cases.`,
    pain: (word: string, asked: number, upTo: string, chance: string) =>
      `Pain in other zones: ${word} in ${countRuns(asked)}; up to ${upTo} of testers may still have it (95 %). If half of the testers had it in a fifth of their runs, a test would be this silent about it in ${chance} of cases.`,
  },
  proof: 'What the log says',
  suspects: (first: string, second: string) =>
    `Usually looked at first: ${first || 'nothing in particular'}${second ? `; then: ${second}` : ''}. Common practice, not a measured cause.`,
  firstRepeat: 'Testers without it twice, by their own kilometres in the pair',
  withItTwice: 'Testers had it twice here',
  withoutIt: 'Testers without it, %',
  look: 'When, where and with whom',
  asked: (r: number, t: number) =>
    `${countRuns(r)} of ${countTesters(t)} were asked about their feet.`,
  unanswered: (open: number, of: number) =>
    `The question was left open after ${open} of ${countRuns(of)}. If it is answered mainly when something hurts, complaints look more frequent than they are, and too much is called proven.`,
  nobodyAsked: 'Nobody was asked yet. That is not the same as no complaint.',
  none: 'Asked, and nobody named a zone that bothered.',
  zone: 'Zone',
  kind: 'Complaint',
  testers: 'Testers',
  twice: 'twice or more',
  runs: 'Runs',
  feet: 'left / right',
  severity: 'Severity, mean / most',
  unasked: 'nobody asked',
  how: (complaint: string, pain: string) =>
    `A run counts as asked if the feet question was answered. Proof: the brief allows ${complaint} of the asked runs (pain: ${pain}); e-values against that rate, valid however often one looks (Ramdas 2023; Vovk & Wang 2021), for at least two testers (Benjamini & Heller 2008), of what one reading of all complaints calls proven at most 10 % is false on average, for each of the two claims (Wang & Ramdas 2022); findings frozen on different days are not held together by that. It leans on two things. Complaints must not linger: one that stays on in every third run or more is called too often, for single testers most of all. And the question must be answered after good runs too. The share at the moment of proof is too high: in simulations by a sixth to a third, the more the weaker the complaint. Intervals, 95 %: testers by Wilson; runs with the tester as the unit (Rao & Scott 1992).`,
};
