/** What a code makes of a device, and what the address on a pair's slip opens. */
export const join = {
  invited: {
    tester: (group: string, tester: string | null) =>
      `This phone joins ${group} as tester${tester === null ? '' : ` ${tester}`}.`,
    lead: (group: string) => `This device joins ${group} as a lead.`,
    specialist: (group: string) => `This device joins ${group} as a specialist.`,
  },
  willSee: {
    tester:
      'You log your runs in the pairs you hold. Your lead reads what you log; other testers do not.',
    lead: 'You see and change everything in the group: briefs, rounds, pairs, testers, runs, findings and reports.',
    specialist:
      'You read the findings and reports that the leads write. You do not see the testers’ runs, and there is nothing to fill in.',
  },
  notWithYou: (code: string) => `Pair ${code} is not with you now`,
  notWithYouHint:
    'If it was just handed to you, wait until this phone has a network. Otherwise ask your lead.',
};
