export const tabs = {
  overview: 'Overview',
  pairs: 'Pairs',
  comfort: 'Comfort',
  complaints: 'Complaints',
  bench: 'Bench checks',
  rounds: 'Rounds',
  verdict: 'Verdict',
  changes: 'Changes',
  findings: 'Findings',
  report: 'Report',
  testers: 'Testers',
};
