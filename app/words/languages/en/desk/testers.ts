import { countTesters } from '../count.ts';

export const testers = {
  none: 'No tester yet.',
  add: 'Add a tester',
  addSeveral: 'Add several testers',
  list: 'Testers, a line each',
  listHint:
    'Name and foot length in mm, left/right where they differ: Ada 265/267. Each line gets the next code, T01, T02 …, unless it begins with one: T07 Ada. The foot length tells the size. Both may be missing. Cells of a table can be pasted.',
  noLength: 'size not known',
  howMany: 'Without names: how many testers',
  giveCodes: 'Fill up with codes',
  giveCodesHint: 'Adds codes alone until the list has so many. Names and feet can follow.',
  taken: 'This code is another tester’s.',
  wrongLength: 'A foot length is from 100 to 400 mm, left/right where they differ: 265/267.',
  tooManyCells:
    'More than code, name and foot length. Two lengths stand together, left/right: 265/267.',
  testers: countTesters,
  code: 'Code',
  codeHint: 'Capitals and digits, for example T07.',
  name: 'Name',
  nameStays: 'stays in the group',
  length: 'Foot length, mm (left / right)',
  mass: 'Body mass, kg',
  height: 'Height, cm',
  invite: 'Invite',
  inviteAgain: 'Another phone',
  file: 'Hand-out file',
  joins: {
    tester: (group: string, code: string) =>
      `The phone that scans this, or types the code, joins ${group} as tester ${code}.`,
    lead: (group: string) =>
      `The device that scans this, or types the code, joins ${group} as a lead: it sees and changes everything.`,
    specialist: (group: string) =>
      `The device that scans this, or types the code, joins ${group} as a specialist: it reads findings and reports, nothing else.`,
  },
  localOnly:
    'This address works on this machine only. For phones start the hub with --lan, or behind a web server.',
  validUntil: (date: string) => `Good once, until ${date}.`,
  needsHub: 'Without a hub, send the hand-out file.',
  silent: (days: number) => `silent for ${days} days`,
};
