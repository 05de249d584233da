export const countRuns = (count: number) => `${count} ${count === 1 ? 'run' : 'runs'}`;

export const countTesters = (count: number) => `${count} ${count === 1 ? 'tester' : 'testers'}`;

export const countPairs = (count: number) => `${count} ${count === 1 ? 'pair' : 'pairs'}`;

/** All testers of the group, and how many of them have run in the pairs at hand. */
export const countPanel = (all: number, haveRun: number) =>
  `${countTesters(all)} in the group (${haveRun} ${haveRun === 1 ? 'has' : 'have'} run)`;
